// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.ProblemBank;
import hotside.problem.Template;
import java.util.ArrayList;
import java.util.List;

/** Whether this program's problems are those that a set was made of. */
public final class SetCheck {
    private SetCheck() {}

    /**
     * The templates of a set, in its order.
     *
     * @throws RefusedException {@link Reason#UNKNOWN_VERSION} if one is missing or reads otherwise
     *     here
     */
    public static List<Template> templates(ProblemSet set, ProblemBank bank) {
        List<Template> found = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        List<String> changed = new ArrayList<>();
        for (ProblemSet.Item item : set.items()) {
            Template template = bank.find(item.problem()).orElse(null);
            if (template == null) {
                missing.add(item.problem());
            } else if (!template.fingerprint().equals(item.fingerprint())) {
                changed.add(item.problem());
            } else {
                found.add(template);
            }
        }
        if (!missing.isEmpty() || !changed.isEmpty()) {
            throw new RefusedException(
                    Reason.UNKNOWN_VERSION,
                    ClassWords.of(
                            "set.other-problems",
                            set.title(),
                            told("set.not-here", missing) + told("set.reads-otherwise", changed)));
        }
        return found;
    }

    private static String told(String key, List<String> ids) {
        return ids.isEmpty() ? "" : ClassWords.of(key, String.join(", ", ids));
    }
}

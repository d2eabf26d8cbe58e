// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.ProblemBank;
import hotside.problem.Template;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Chooses problems for a set. The same wishes choose the same problems. */
public final class Composer {
    private Composer() {}

    /**
     * Problems of these skills, mixed so that neighbours exercise different skills as far as the
     * choice allows: practice that is mixed stays longer.
     *
     * @param skills ids of skills, or of strands for all their skills; none for all
     * @param least level
     * @param most level
     * @param count how many at most
     */
    public static List<Template> choose(
            ProblemBank bank, List<String> skills, int least, int most, int count) {
        Map<String, Deque<Template>> bySkill = new LinkedHashMap<>();
        bank.all().stream()
                .filter(t -> skills.isEmpty() || skills.stream().anyMatch(s -> isOf(t, s)))
                .filter(t -> t.level() >= least && t.level() <= most)
                .sorted(Comparator.comparing(Template::level).thenComparing(Template::id))
                .forEach(t -> bySkill.computeIfAbsent(t.skill(), s -> new ArrayDeque<>()).add(t));
        List<Template> chosen = new ArrayList<>();
        while (chosen.size() < count && bySkill.values().stream().anyMatch(q -> !q.isEmpty())) {
            for (Deque<Template> queue : bySkill.values()) {
                if (!queue.isEmpty() && chosen.size() < count) {
                    chosen.add(queue.poll());
                }
            }
        }
        return chosen;
    }

    private static boolean isOf(Template template, String skill) {
        return template.skill().equals(skill) || template.skill().startsWith(skill + ".");
    }

    /** An item of this problem as it reads now. */
    public static ProblemSet.Item item(Template template, int points) {
        return new ProblemSet.Item(template.id(), template.fingerprint(), points);
    }
}

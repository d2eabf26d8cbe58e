// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.ProblemBank;
import hotside.problem.Template;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Chooses problems for a set. The same wishes choose the same problems. */
public final class Composer {
    private Composer() {}

    /**
     * Problems of these skills, spread evenly over the levels as far as there are any, easy ones
     * first, and mixed so that neighbours exercise different skills as far as the choice allows:
     * practice that is mixed stays longer.
     *
     * @param skills ids of skills, or of strands for all their skills; none for all
     * @param least level
     * @param most level
     * @param count how many at most
     */
    public static List<Template> choose(
            ProblemBank bank, List<String> skills, int least, int most, int count) {
        List<Template> fitting =
                bank.all().stream()
                        .filter(t -> skills.isEmpty() || skills.stream().anyMatch(s -> isOf(t, s)))
                        .filter(t -> t.level() >= least && t.level() <= most)
                        .sorted(Comparator.comparing(Template::id))
                        .toList();
        List<Template> left = new ArrayList<>(fitting);
        List<Template> chosen = new ArrayList<>();
        Map<String, Integer> taken = new HashMap<>();
        while (chosen.size() < count && !left.isEmpty()) {
            for (int level = least; level <= most && chosen.size() < count; level++) {
                int its = level;
                left.stream()
                        .filter(t -> t.level() == its)
                        .min(Comparator.comparingInt(t -> taken.getOrDefault(t.skill(), 0)))
                        .ifPresent(
                                t -> {
                                    left.remove(t);
                                    chosen.add(t);
                                    taken.merge(t.skill(), 1, Integer::sum);
                                });
            }
        }
        return mixed(chosen);
    }

    /** By level; within one the skill most of which is left goes first, unless it was just had. */
    private static List<Template> mixed(List<Template> chosen) {
        List<Template> left = new ArrayList<>(chosen);
        left.sort(Comparator.comparing(Template::level));
        List<Template> mixed = new ArrayList<>();
        while (!left.isEmpty()) {
            int level = left.get(0).level();
            String last = mixed.isEmpty() ? "" : mixed.get(mixed.size() - 1).skill();
            Template next =
                    left.stream()
                            .filter(t -> t.level() == level)
                            .min(
                                    Comparator.comparing((Template t) -> t.skill().equals(last))
                                            .thenComparing(t -> -more(left, t)))
                            .orElseThrow();
            left.remove(next);
            mixed.add(next);
        }
        return mixed;
    }

    private static long more(List<Template> left, Template one) {
        return left.stream()
                .filter(t -> t.level() == one.level() && t.skill().equals(one.skill()))
                .count();
    }

    private static boolean isOf(Template template, String skill) {
        return template.skill().equals(skill) || template.skill().startsWith(skill + ".");
    }

    /** An item of this problem as it reads now. */
    public static ProblemSet.Item item(Template template, int points) {
        return new ProblemSet.Item(template.id(), template.fingerprint(), points);
    }
}

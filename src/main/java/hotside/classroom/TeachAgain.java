// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variants;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A skill that the class should be taught again.
 *
 * @param skill its id
 * @param share of its points that the class reached, 0 to 1
 * @param learners how many were marked
 * @param falling how many of them reached less than is enough
 * @param mistakes those that a quarter of the class or more make
 */
public record TeachAgain(
        String skill, double share, int learners, int falling, List<MistakeCount> mistakes) {
    /** A class that reaches less has not understood. */
    private static final double ENOUGH = 0.6;

    private static final int PROBLEMS_A_SKILL = 3;

    public TeachAgain {
        mistakes = List.copyOf(mistakes);
    }

    /** The skills to teach again, the weakest first; none if nobody was marked. */
    public static List<TeachAgain> of(
            Regrader regrader, List<MarkedHandIn> marked, List<MistakeCount> counts) {
        Map<String, double[]> points = new LinkedHashMap<>();
        Map<String, List<MistakeCount>> frequent = new LinkedHashMap<>();
        for (int slot = 0; slot < regrader.set().items().size(); slot++) {
            int at = slot;
            String skill = regrader.template(slot).skill();
            double[] sums = points.computeIfAbsent(skill, s -> new double[2]);
            sums[0] += marked.stream().mapToDouble(m -> m.items().get(at).reached()).sum();
            sums[1] += (double) marked.size() * regrader.set().items().get(slot).points();
            counts.stream()
                    .filter(c -> c.slot() == at && c.teachAgain())
                    .forEach(c -> frequent.computeIfAbsent(skill, s -> new ArrayList<>()).add(c));
        }
        return points.entrySet().stream()
                .filter(e -> e.getValue()[1] > 0)
                .map(
                        e ->
                                new TeachAgain(
                                        e.getKey(),
                                        e.getValue()[0] / e.getValue()[1],
                                        marked.size(),
                                        falling(regrader, marked, e.getKey()),
                                        frequent.getOrDefault(e.getKey(), List.of())))
                .filter(t -> t.share < ENOUGH || !t.mistakes.isEmpty())
                .sorted(Comparator.comparingDouble(TeachAgain::share))
                .toList();
    }

    private static int falling(Regrader regrader, List<MarkedHandIn> marked, String skill) {
        List<Integer> slots =
                IntStream.range(0, regrader.set().items().size())
                        .filter(slot -> regrader.template(slot).skill().equals(skill))
                        .boxed()
                        .toList();
        double most = slots.stream().mapToDouble(s -> regrader.set().items().get(s).points()).sum();
        return (int)
                marked.stream()
                        .filter(
                                in ->
                                        slots.stream()
                                                        .mapToDouble(
                                                                s -> in.items().get(s).reached())
                                                        .sum()
                                                < ENOUGH * most)
                        .count();
    }

    /**
     * A set to practise these skills: problems that the class has not had first, own numbers,
     * hints, and feedback at once.
     *
     * @return nothing if there is nothing to teach again
     */
    public static Optional<ProblemSet> drill(
            List<TeachAgain> again, ProblemSet after, ProblemBank bank) {
        Set<String> had = new LinkedHashSet<>();
        after.items().forEach(i -> had.add(i.problem()));
        List<List<Template>> queues = new ArrayList<>();
        for (TeachAgain one : again) {
            queues.add(
                    bank.all().stream()
                            .filter(t -> t.skill().equals(one.skill))
                            .sorted(
                                    Comparator.comparing((Template t) -> had.contains(t.id()))
                                            .thenComparing(Template::level))
                            .limit(PROBLEMS_A_SKILL)
                            .toList());
        }
        List<ProblemSet.Item> items = new ArrayList<>();
        for (int i = 0; i < PROBLEMS_A_SKILL; i++) {
            for (List<Template> queue : queues) {
                if (i < queue.size() && items.size() < ProblemSet.MOST_ITEMS) {
                    items.add(Composer.item(queue.get(i), 1));
                }
            }
        }
        return items.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new ProblemSet(
                                Ids.fresh(),
                                1,
                                cut(ClassWords.of("drill.title", after.title())),
                                Variants.GENERATOR_VERSION,
                                new ProblemSet.Rules(
                                        after.rules().units(),
                                        ProblemSet.Numbers.OWN,
                                        0,
                                        true,
                                        ProblemSet.Feedback.NOW,
                                        Optional.empty()),
                                items));
    }

    private static String cut(String title) {
        return title.substring(0, Math.min(title.length(), ProblemSet.LONGEST_TITLE));
    }
}

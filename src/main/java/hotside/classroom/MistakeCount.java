// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How often one mistake was made in one problem.
 *
 * @param slot the problem's index
 * @param mistake its id; empty for wrong answers that are like no known mistake
 * @param count of learners
 * @param answered how many answered the problem
 * @param examples some of those answers
 * @param feedback what a learner who makes it is told
 */
public record MistakeCount(
        int slot,
        String mistake,
        int count,
        int answered,
        List<Example> examples,
        String feedback) {
    /** So large a share is a thing to teach again. */
    public static final double TEACH_AGAIN = 0.25;

    /** One learner alone is no class. */
    private static final int FEWEST = 2;

    private static final int MOST_EXAMPLES = 3;

    public MistakeCount {
        examples = List.copyOf(examples);
    }

    /** An answer as a learner typed it. */
    public record Example(String learner, String answer) {}

    /** The share of those who answered the problem. */
    public double share() {
        return (double) count / answered;
    }

    /** True if so many make it that it should be taught again. */
    public boolean teachAgain() {
        return !mistake.isEmpty() && count >= FEWEST && share() >= TEACH_AGAIN;
    }

    /** All mistakes of a class, by problem, the most frequent first. */
    public static List<MistakeCount> of(List<MarkedHandIn> marked, int slots) {
        List<MistakeCount> counts = new ArrayList<>();
        for (int slot = 0; slot < slots; slot++) {
            counts.addAll(of(marked, slot, answered(marked, slot)));
        }
        return counts;
    }

    private static long answered(List<MarkedHandIn> marked, int slot) {
        return marked.stream().filter(m -> !m.items().get(slot).blank()).count();
    }

    private static List<MistakeCount> of(List<MarkedHandIn> marked, int slot, long answered) {
        Map<String, Tally> tallies = new LinkedHashMap<>();
        for (MarkedHandIn one : marked) {
            MarkedItem item = one.items().get(slot);
            for (int i = 0; i < item.verdicts().size(); i++) {
                Verdict verdict = item.verdicts().get(i).orElse(null);
                if (verdict != null && verdict.kind().counts() && !verdict.kind().good()) {
                    tallies.computeIfAbsent(verdict.mistake().orElse(""), m -> new Tally())
                            .add(one.learner(), item.answers().get(i), verdict.feedback());
                }
            }
        }
        return tallies.entrySet().stream()
                .map(e -> e.getValue().count(slot, e.getKey(), answered))
                .sorted(Comparator.comparingInt(MistakeCount::count).reversed())
                .toList();
    }

    private static final class Tally {
        private final Map<String, Example> byLearner = new LinkedHashMap<>();
        private String feedback = "";

        void add(String learner, String answer, String said) {
            byLearner.putIfAbsent(learner, new Example(learner, answer));
            feedback = feedback.isEmpty() ? said : feedback;
        }

        MistakeCount count(int slot, String mistake, long answered) {
            return new MistakeCount(
                    slot,
                    mistake,
                    byLearner.size(),
                    (int) answered,
                    byLearner.values().stream().limit(MOST_EXAMPLES).toList(),
                    mistake.isEmpty() ? "" : feedback);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.problem.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * One problem of a hand-in, marked.
 *
 * @param answers those that counted, one for each ask, blank where none was given
 * @param verdicts on them
 * @param tries how many tries counted
 * @param rung the highest hint that was read; 0 for none
 * @param minutes worked on it, by the learner's clock; long pauses cut
 * @param points what the problem is worth
 * @param right the right answers, SI where they are numbers
 * @param byHand points that the instructor set instead, if any
 */
public record MarkedItem(
        List<String> answers,
        List<Optional<Verdict>> verdicts,
        int tries,
        int rung,
        double minutes,
        int points,
        List<Double> right,
        Optional<ByHand> byHand) {
    public MarkedItem {
        answers = List.copyOf(answers);
        verdicts = List.copyOf(verdicts);
        right = List.copyOf(right);
    }

    /**
     * The share of what was asked that is good, 0 to 1. What follows rightly from a wrong earlier
     * answer is good: it shows the method.
     */
    public double credit() {
        long good =
                verdicts.stream().filter(v -> v.map(x -> x.kind().good()).orElse(false)).count();
        return verdicts.isEmpty() ? 0 : (double) good / verdicts.size();
    }

    /** Points as worked out from the answers. */
    public double worked() {
        return credit() * points;
    }

    /** Points reached: those set by hand, else those worked out. */
    public double reached() {
        return byHand.map(ByHand::points).orElse(worked());
    }

    /** The same with points set by hand, or without. */
    MarkedItem with(Optional<ByHand> points) {
        return new MarkedItem(answers, verdicts, tries, rung, minutes, this.points, right, points);
    }

    /** True if nothing was answered. */
    public boolean blank() {
        return verdicts.stream().allMatch(Optional::isEmpty);
    }

    /**
     * True if an answer could not be judged as it stands, so that a person should look at it, and
     * none has yet.
     */
    public boolean unsettled() {
        return byHand.isEmpty()
                && verdicts.stream().anyMatch(v -> v.map(x -> !x.kind().counts()).orElse(false));
    }
}

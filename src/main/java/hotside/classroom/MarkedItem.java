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
 */
public record MarkedItem(
        List<String> answers,
        List<Optional<Verdict>> verdicts,
        int tries,
        int rung,
        double minutes,
        int points,
        List<Double> right) {
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

    /** Points reached. */
    public double reached() {
        return credit() * points;
    }

    /** True if nothing was answered. */
    public boolean blank() {
        return verdicts.stream().allMatch(Optional::isEmpty);
    }

    /** True if an answer could not be judged as it stands, so that a person should look at it. */
    public boolean unsettled() {
        return verdicts.stream().anyMatch(v -> v.map(x -> !x.kind().counts()).orElse(false));
    }
}

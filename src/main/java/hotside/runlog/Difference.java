// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.statistics.Estimate;
import hotside.statistics.MeanSpread;
import hotside.statistics.WelchGain;
import java.util.Optional;

/**
 * How far two rows of readings lie apart.
 *
 * @param before mean of the first row, SI
 * @param after mean of the second, SI
 * @param estimate with its error, by Welch; empty unless both rows hold two readings
 */
public record Difference(double before, double after, Optional<Estimate> estimate) {
    /** Neither row may be empty. */
    static Difference of(double[] before, double[] after) {
        MeanSpread.Summary a = MeanSpread.of(before);
        MeanSpread.Summary b = MeanSpread.of(after);
        boolean repeated = before.length > 1 && after.length > 1;
        return new Difference(
                a.mean(), b.mean(), repeated ? Optional.of(WelchGain.of(a, b)) : Optional.empty());
    }

    /** After less before. */
    public double value() {
        return after - before;
    }

    /** Half the width of the interval; NaN where repeats are missing. */
    public double halfWidth(double confidence) {
        return estimate.map(e -> e.halfWidth(confidence)).orElse(Double.NaN);
    }

    /** Standard error; 0 where repeats are missing and it is not known. */
    double knownError() {
        return estimate.map(Estimate::standardError).orElse(0.0);
    }

    double freedom() {
        return estimate.map(Estimate::degreesOfFreedom).orElse(Double.POSITIVE_INFINITY);
    }
}

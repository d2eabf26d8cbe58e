// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.statistics.GainSplitRegression;
import hotside.statistics.MeanSpread;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A gain split by what the pulls themselves say of boost, or why they cannot say it.
 *
 * @param result empty if the pulls cannot tell part from boost
 * @param trouble what stands in the way or weakens the result
 */
public record RegressionSplit(Optional<GainSplitRegression.Result> result, Trouble trouble) {
    /** Beyond this correlation the intervals are more than three times those of a good design. */
    private static final double NEARLY_TOGETHER = 0.95;

    private static final int FEWEST = 4;

    /**
     * Power in proportion to manifold pressure is the trade's rule; a worth of three times that has
     * another cause. A judgement, no source.
     */
    private static final double MOST_TIMES_RULE = 3;

    /** Why a split by regression cannot be trusted. */
    public enum Trouble {
        NONE,
        /** One pull a part, or fewer than four in all. */
        TOO_FEW_PULLS,
        /** Boost moved only when the part did. */
        BOOST_NOT_MOVED,
        /** Part and boost moved nearly together: an answer, but a weak one. */
        MOVED_TOGETHER,
        /** The worth of boost that comes out is none that an engine can have. */
        WORTH_IMPOSSIBLE,
        /** The pulls do not show that boost is worth anything. */
        WORTH_NOT_SHOWN
    }

    /**
     * @param power of each pull, W, first those before
     * @param boost absolute manifold pressure of each pull, Pa, in the same order
     * @param before how many of them are before
     */
    static RegressionSplit of(double[] power, double[] boost, int before, double confidence) {
        if (power.length < FEWEST) {
            return new RegressionSplit(Optional.empty(), Trouble.TOO_FEW_PULLS);
        }
        boolean[] changed = new boolean[power.length];
        Arrays.fill(changed, before, changed.length, true);
        try {
            GainSplitRegression.Result result = GainSplitRegression.of(power, boost, changed);
            double most = MOST_TIMES_RULE * mean(power) / mean(boost);
            return new RegressionSplit(Optional.of(result), trouble(result, most, confidence));
        } catch (IllegalArgumentException e) {
            return new RegressionSplit(Optional.empty(), Trouble.BOOST_NOT_MOVED);
        }
    }

    private static Trouble trouble(
            GainSplitRegression.Result result, double most, double confidence) {
        if (Math.abs(result.worth().value()) > most) {
            return Trouble.WORTH_IMPOSSIBLE;
        }
        if (Math.abs(result.fit().correlation(1, 2)) > NEARLY_TOGETHER) {
            return Trouble.MOVED_TOGETHER;
        }
        double low = result.worth().value() - result.worth().halfWidth(confidence);
        return low > 0 ? Trouble.NONE : Trouble.WORTH_NOT_SHOWN;
    }

    private static double mean(double[] readings) {
        return MeanSpread.of(readings).mean();
    }

    static double[] joined(double[] a, double[] b) {
        return IntStream.range(0, a.length + b.length)
                .mapToDouble(i -> i < a.length ? a[i] : b[i - a.length])
                .toArray();
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Slot;
import hotside.unit.Quantity;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Erf;

/** How wide an interval must be for a confidence, and the slot that asks for it. */
public final class Confidence {
    /** Above so many degrees of freedom Student's t and the normal agree to eight digits. */
    static final double AS_GOOD_AS_KNOWN = 1e8;

    private Confidence() {}

    /** The input slot {@code confidence}, 95 % unless said otherwise. */
    static Slot slot() {
        return Slot.number("confidence", "c", Quantity.PERCENTAGE, "confidence of the interval")
                .between(0, 1)
                .usual(0.5, 0.999, "confidence is usually 90, 95 or 99 %")
                .orElse(0.95);
    }

    /**
     * Two-sided quantile of the normal distribution: the factor for a standard uncertainty that is
     * well known.
     *
     * @param confidence between 0 and 1, both excluded
     * @return about 1.96 for 0.95; correct to about 1e-12 of itself
     */
    public static double normal(double confidence) {
        return -new NormalDistribution(null, 0, 1)
                .inverseCumulativeProbability((1 - confidence) / 2);
    }

    /**
     * Two-sided quantile of Student's t: the factor for a standard uncertainty that was estimated.
     *
     * <p>Found from the logarithm of the tail, so that it stays exact for a confidence near 1.
     *
     * @param confidence between 0 and 1, both excluded
     * @param degreesOfFreedom at least 1/2, need not be whole, may be infinite
     * @return correct to about 1e-11 of itself for a confidence above 0.01
     */
    public static double student(double confidence, double degreesOfFreedom) {
        double normal = normal(confidence);
        if (degreesOfFreedom > AS_GOOD_AS_KNOWN) {
            return normal;
        }
        double tail = Math.log(1 - confidence);
        UnivariateFunction miss = t -> Math.log(bothTails(t, degreesOfFreedom)) - tail;
        double high = 2 * normal;
        while (miss.value(high) > 0) {
            high *= 2;
        }
        return new BrentSolver(1e-14, 1e-300, 1e-15).solve(500, miss, 0, high);
    }

    /**
     * Probability that Student's t lies farther from zero than {@code t}, on either side.
     *
     * @param t any sign, may be infinite
     * @param degreesOfFreedom above 0, may be infinite
     * @return 0 to 1, correct to about 1e-10; small tails keep their digits
     */
    public static double bothTails(double t, double degreesOfFreedom) {
        if (degreesOfFreedom > AS_GOOD_AS_KNOWN) {
            return Erf.erfc(Math.abs(t) / Math.sqrt(2));
        }
        double square = t * t;
        if (Double.isInfinite(square)) {
            return 0;
        }
        double half = degreesOfFreedom / 2;
        // Near the middle the beta function is asked from its other end, where t keeps its digits.
        return square < 1
                ? 1 - Beta.regularizedBeta(square / (degreesOfFreedom + square), 0.5, half)
                : Beta.regularizedBeta(degreesOfFreedom / (degreesOfFreedom + square), half, 0.5);
    }
}

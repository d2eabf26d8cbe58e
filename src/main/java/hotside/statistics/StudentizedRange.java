// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;

/**
 * Studentised range: largest less smallest of several means of one population, over their common
 * estimated standard error. It says how far the two farthest of many parts lie apart by luck.
 *
 * <p>Source: Tukey (1953) for its use; the distribution is P(W > w) = k ∫ φ(z) [Φ(z)^(k−1) − (Φ(z)
 * − Φ(z − w))^(k−1)] dz for a known spread (David and Nagaraja, Order Statistics, from memory),
 * averaged over the estimated one. Both integrals are numeric, to about 1e-10.
 */
public final class StudentizedRange {
    /** A trapezoid this fine is exact to 1e-15 for integrands that fall off like a normal curve. */
    private static final double STEP = 0.25;

    private static final double LOWEST = -9;
    private static final double[] DENSITY = new double[180];
    private static final double[] BELOW = new double[DENSITY.length];

    static {
        for (int i = 0; i < DENSITY.length; i++) {
            double z = LOWEST + i * STEP;
            DENSITY[i] = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
            BELOW[i] = below(z);
        }
    }

    private StudentizedRange() {}

    /**
     * Probability that luck alone gives a range above q.
     *
     * @param q at least 0
     * @param groups how many means, two at least
     * @param degreesOfFreedom of the common spread, at least 1
     */
    public static double upperTail(double q, int groups, double degreesOfFreedom) {
        if (q <= 0) {
            return 1;
        }
        if (degreesOfFreedom > Confidence.AS_GOOD_AS_KNOWN) {
            return rangeAbove(q, groups);
        }
        return EstimatedSpread.average(
                degreesOfFreedom, s -> rangeAbove(q * s, groups), 0, Double.MAX_VALUE / 16);
    }

    /**
     * The range that luck alone stays below with this confidence.
     *
     * @param confidence between 0 and 1, both excluded
     * @return correct to about 1e-8 of itself
     */
    public static double quantile(double confidence, int groups, double degreesOfFreedom) {
        double tail = Math.log(1 - confidence);
        UnivariateFunction miss = q -> Math.log(upperTail(q, groups, degreesOfFreedom)) - tail;
        double high = 2 * Confidence.student(confidence, degreesOfFreedom);
        while (miss.value(high) > 0) {
            high *= 2;
        }
        return new BrentSolver(1e-9, 1e-12, 1e-11).solve(300, miss, 0, high);
    }

    /** Tail of the range of normal values of known spread. */
    private static double rangeAbove(double w, int groups) {
        double sum = 0;
        for (int i = 0; i < DENSITY.length; i++) {
            double z = LOWEST + i * STEP;
            if (z > w / 2 + 9 && z > 9) {
                break;
            }
            double share = Math.min(1, below(z - w) / BELOW[i]);
            sum +=
                    DENSITY[i]
                            * Math.pow(BELOW[i], groups - 1)
                            * -Math.expm1((groups - 1) * Math.log1p(-share));
        }
        return Math.min(1, groups * STEP * sum);
    }

    private static double below(double z) {
        return Erf.erfc(-z / Math.sqrt(2)) / 2;
    }
}

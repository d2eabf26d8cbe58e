// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Studentised range: largest less smallest of several means of one population, over their common
 * estimated standard error. It says how far the two farthest of many parts lie apart by luck.
 *
 * <p>Source: Tukey (1953) for its use; the distribution is P(W > w) = k ∫ φ(z) [Φ(z)^(k−1) − (Φ(z)
 * − Φ(z − w))^(k−1)] dz for a known spread (David and Nagaraja, Order Statistics, from memory),
 * averaged over the estimated one. Both integrals are numeric, to about 1e-10.
 */
public final class StudentizedRange {
    /** Below it no largest of several normal values lies. */
    private static final double LOWEST = -6.5;

    /** Above half the range by so much, both ends of it are past all likelihood. */
    private static final double MARGIN = 7.5;

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
        return EstimatedSpread.average(degreesOfFreedom, s -> rangeAbove(q * s, groups));
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

    /**
     * Tail of the range of normal values of known spread, by the trapezoid rule: it converges
     * exponentially for integrands that fall off like a normal curve; more groups bend them more.
     */
    private static double rangeAbove(double w, int groups) {
        double h = 0.8 / Math.sqrt(groups);
        double highest = w / 2 + MARGIN;
        double sum = 0;
        for (double z = LOWEST; z < highest; z += h) {
            double below = below(z);
            double share = Math.min(1, below(z - w) / below);
            sum +=
                    Math.exp(-z * z / 2)
                            * Math.pow(below, groups - 1)
                            * -Math.expm1((groups - 1) * Math.log1p(-share));
        }
        return Math.min(1, groups * h / Math.sqrt(2 * Math.PI) * sum);
    }

    private static double below(double z) {
        return NormalTail.above(-z);
    }
}

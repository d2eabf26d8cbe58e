// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

/**
 * Noncentral t: what Student's t does when there is a gain to be found.
 *
 * <p>Source: by definition the ratio (Z + δ)/s of a normal Z and an independent estimated spread;
 * its tails are those of the normal averaged over s, integrated numerically to about 1e-12 (1e-10
 * between one and two degrees of freedom).
 */
public final class NoncentralT {
    private NoncentralT() {}

    /**
     * Probability of a value above {@code t}.
     *
     * @param t any finite number
     * @param degreesOfFreedom at least 1, need not be whole, may be infinite
     * @param shift the noncentrality δ: the true gain over its true standard error
     */
    public static double upperTail(double t, double degreesOfFreedom, double shift) {
        if (degreesOfFreedom > Confidence.AS_GOOD_AS_KNOWN) {
            return NormalTail.above(t - shift);
        }
        double size = Math.max(Math.abs(t), 1e-6);
        return EstimatedSpread.average(
                degreesOfFreedom, s -> NormalTail.above(t * s - shift), shift / t, 1 / size);
    }

    /** Probability of a value below {@code t}; as {@link #upperTail}. */
    public static double lowerTail(double t, double degreesOfFreedom, double shift) {
        return upperTail(-t, degreesOfFreedom, -shift);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.draw;

/**
 * Normally distributed numbers from a seed, frozen: a seed gives the same numbers on every machine
 * and in every later version.
 *
 * <p>Source: Box and Muller, A Note on the Generation of Random Normal Deviates, Annals of
 * Mathematical Statistics 29 (1958), in its trigonometric form; {@link StrictMath} makes it the
 * same everywhere.
 */
public final class Gaussian {
    /** Weight of the last of 53 bits. */
    private static final double BIT = 0x1.0p-53;

    private final SplitMix64 random;
    private double spare = Double.NaN;

    public Gaussian(SplitMix64 random) {
        this.random = random;
    }

    /** The next number with mean 0 and standard deviation 1. */
    public double next() {
        if (!Double.isNaN(spare)) {
            double kept = spare;
            spare = Double.NaN;
            return kept;
        }
        // Counted from 1, so that the logarithm is finite.
        double radius = StrictMath.sqrt(-2 * StrictMath.log(((random.next() >>> 11) + 1) * BIT));
        double angle = 2 * Math.PI * ((random.next() >>> 11) * BIT);
        spare = radius * StrictMath.sin(angle);
        return radius * StrictMath.cos(angle);
    }
}

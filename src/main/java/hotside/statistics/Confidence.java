// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Slot;
import hotside.unit.Quantity;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/** How wide an interval must be for a confidence, and the slot that asks for it. */
public final class Confidence {
    /** Above so many degrees of freedom Student's t and the normal agree to nine digits. */
    private static final double AS_GOOD_AS_KNOWN = 1e9;

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
     * @return about 1.96 for 0.95; correct to 1e-12 of itself
     */
    public static double normal(double confidence) {
        return -new NormalDistribution(null, 0, 1)
                .inverseCumulativeProbability((1 - confidence) / 2);
    }

    /**
     * Two-sided quantile of Student's t: the factor for a standard uncertainty that was estimated.
     *
     * <p>Taken from the lower tail, so that it stays exact for a confidence near 1.
     *
     * @param confidence between 0 and 1, both excluded
     * @param degreesOfFreedom above 0, need not be whole, may be infinite
     * @return correct to about 1e-9
     */
    public static double student(double confidence, double degreesOfFreedom) {
        if (degreesOfFreedom > AS_GOOD_AS_KNOWN) {
            return normal(confidence);
        }
        return -new TDistribution(null, degreesOfFreedom, 1e-12)
                .inverseCumulativeProbability((1 - confidence) / 2);
    }
}

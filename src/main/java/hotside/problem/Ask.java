// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;

/**
 * One thing the learner is asked.
 *
 * @param place where the answer stands in the chain, {@code use.slot}
 * @param phrase what is asked, for people, without question mark
 * @param quantity what it measures
 * @param siScale the scale it is asked on in an SI shop
 * @param usScale the scale it is asked on in a US shop
 * @param tolerance how far an answer may be off
 */
public record Ask(
        String place,
        String phrase,
        Quantity quantity,
        Scale siScale,
        Scale usScale,
        Tolerance tolerance) {

    public Scale scale(UnitSystem system) {
        return system == UnitSystem.SI_SHOP ? siScale : usScale;
    }

    /**
     * How far an answer may be off: the larger of a share of the right answer and a fixed amount.
     *
     * @param relative share of the right answer, at least 0
     * @param absolute in SI, at least 0
     */
    public record Tolerance(double relative, double absolute) {
        /** What a slide through rounded intermediate results and legitimate constants may cost. */
        public static final Tolerance USUAL = new Tolerance(0.02, 0);

        /** The half width of the band around this number, SI. */
        public double band(double value) {
            return Math.max(relative * Math.abs(value), absolute);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Uncertainty that the steps of a display leave, whatever the sensor behind it.
 *
 * <p>Source: JCGM 100:2008 (GUM), F.2.2.1: a rectangular distribution one step wide has a standard
 * deviation of the step over √12.
 */
public final class ResolutionLimit {
    public static final Relation RELATION =
            Relation.named("resolution-limit", "What the steps of a display hide", "Reading curves")
                    .says(
                            "A display that counts in steps hides what happens within one. That alone leaves a standard"
                                    + " uncertainty of the step over root twelve in each reading, and root two times as"
                                    + " much in a difference of two.")
                    .tex("u = \\frac{q}{\\sqrt{12}}")
                    .input(
                            Slot.number(
                                            "step",
                                            "q",
                                            Quantity.AS_MEASURED,
                                            "smallest step of the display")
                                    .range(0, 1e9)
                                    .usual(
                                            0,
                                            100,
                                            "displays count in steps below 100; check the unit")
                                    .typical(1))
                    .input(
                            Slot.number(
                                            "noise",
                                            "s",
                                            Quantity.AS_MEASURED,
                                            "spread of a reading before it is rounded")
                                    .range(0, 1e9)
                                    .usual(
                                            0,
                                            100,
                                            "in kW, hp or N·m noise is below 100; check the unit")
                                    .orElse(0)
                                    .typical(0.8))
                    .output("largestError", "e", Quantity.AS_MEASURED, "largest error of rounding")
                    .output(
                            "uncertainty",
                            "u",
                            Quantity.AS_MEASURED,
                            "standard uncertainty of the step alone")
                    .output(
                            "combined",
                            "u_c",
                            Quantity.AS_MEASURED,
                            "standard uncertainty with the noise")
                    .output(
                            "differenceUncertainty",
                            "u_d",
                            Quantity.AS_MEASURED,
                            "standard uncertainty of a difference of two readings")
                    .assumes(
                            "the display rounds to the nearest step",
                            "where in the step the truth lies is a matter of luck")
                    .source("JCGM 100:2008 (GUM), F.2.2.1")
                    .by(ResolutionLimit::work);

    private ResolutionLimit() {}

    /**
     * Standard uncertainty of rounding.
     *
     * @param step smallest step of the display, at least 0
     * @return in the unit of {@code step}
     */
    public static double of(double step) {
        return step / Math.sqrt(12);
    }

    private static void work(Working w) {
        double step = w.in("step");
        double noise = w.in("noise");
        w.out("largestError", "@step/2", step / 2, "The truth is at most half a step away.");
        double u =
                w.out(
                        "uncertainty",
                        "\\frac{@step}{\\sqrt{12}}",
                        of(step),
                        "Anywhere within the step is as likely.");
        double both =
                w.out(
                        "combined",
                        "\\sqrt{@uncertainty^2 + @noise^2}",
                        Math.hypot(u, noise),
                        "Noise adds by squares.");
        w.out(
                "differenceUncertainty",
                "\\sqrt 2 \\cdot @combined",
                Math.sqrt(2) * both,
                "Both readings are rounded.");
        w.caution(
                noise > 0 && noise < step / 3,
                "noise",
                () ->
                        "noise is small against the step, so repeated readings show the same number and their mean is"
                                + " no better than one of them");
    }
}

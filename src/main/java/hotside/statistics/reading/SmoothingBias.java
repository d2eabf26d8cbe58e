// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * What a moving average takes off a peak, and what it takes off the noise.
 *
 * <p>Source: the mean of a parabola over N even points centred on its top lies c·h²·(N² − 1)/12
 * below it (sum of squares of whole numbers); the mean of N independent readings scatters by 1/√N.
 * A peak with straight flanks loses more.
 */
public final class SmoothingBias {
    private static final String ID = "smoothing-bias";

    public static final Relation RELATION =
            Relation.named(ID, "What smoothing takes off a peak", "Reading curves")
                    .says(
                            "A moving average replaces the peak by the mean of what lies about it, which is lower. Twice"
                                    + " the window takes four times as much off the peak but only 29 % off"
                                    + " the noise.")
                    .tex(
                            "b = -\\frac{d}{x^2}\\,\\frac{h^2 (N^2 - 1)}{12}, \\quad"
                                    + " s_N = \\frac{s}{\\sqrt N}")
                    .input(
                            Slot.number(
                                            "drop",
                                            "d",
                                            Quantity.AS_MEASURED,
                                            "how far the curve has fallen at that distance from its peak")
                                    .range(0, 1e9)
                                    .usual(
                                            0,
                                            1000,
                                            "in kW or N·m this is below 1000; check the unit")
                                    .typical(10))
                    .input(
                            Slot.number(
                                            "distance",
                                            "x",
                                            Quantity.ROTATION,
                                            "distance from the peak at which it has fallen so far")
                                    .above(0, 1000)
                                    .usual(1, 50, "a peak is looked at within 60 to 3000 rev/min")
                                    .typical(500.0 / 60))
                    .input(
                            Slot.number(
                                            "spacing",
                                            "h",
                                            Quantity.ROTATION,
                                            "distance from one reading to the next")
                                    .above(0, 100)
                                    .usual(0.01, 5, "readings come every 1 to 300 rev/min")
                                    .typical(50.0 / 60))
                    .input(
                            Slot.number("points", "N", Quantity.COUNT, "readings in one average")
                                    .range(1, 10_001)
                                    .usual(1, 101, "averages run over 1 to 101 readings")
                                    .typical(5))
                    .input(
                            Slot.number("noise", "s", Quantity.AS_MEASURED, "spread of one reading")
                                    .range(0, 1e9)
                                    .usual(
                                            0,
                                            100,
                                            "in kW or N·m noise is below 100; check the unit")
                                    .orElse(0)
                                    .typical(1.5))
                    .output(
                            "width",
                            "b_w",
                            Quantity.ROTATION,
                            "width of the window, first to last reading")
                    .output("bias", "b", Quantity.AS_MEASURED, "smoothed peak less true peak")
                    .output(
                            "noiseLeft",
                            "s_N",
                            Quantity.AS_MEASURED,
                            "spread of a smoothed reading")
                    .assumes(
                            "the top of the curve is a parabola over the window",
                            "readings are evenly spaced and all count alike",
                            "noise of one reading says nothing of the next")
                    .source("mean of a parabola over even points; variance of a mean")
                    .by(SmoothingBias::work);

    private SmoothingBias() {}

    /**
     * Smoothed peak less true peak.
     *
     * @param drop fall of the curve at {@code distance} from its peak, any unit
     * @param distance above 0, any unit
     * @param spacing from one reading to the next, unit of {@code distance}
     * @param points readings in one average, at least 1
     * @return in the unit of {@code drop}; 0 or negative
     */
    public static double of(double drop, double distance, double spacing, double points) {
        double step = spacing / distance;
        return -drop * step * step * (points * points - 1) / 12;
    }

    private static void work(Working w) {
        double points = w.in("points");
        if (points != Math.rint(points)) {
            throw new RelationException(
                    "points", ID + ": points = " + points + " is not a whole number of readings");
        }
        double distance = w.in("distance");
        double spacing = w.in("spacing");
        double width =
                w.out(
                        "width",
                        "(@points - 1) \\cdot @spacing",
                        (points - 1) * spacing,
                        "From the first to the last reading of an average.");
        w.out(
                "noiseLeft",
                "\\frac{@noise}{\\sqrt{@points}}",
                w.in("noise") / Math.sqrt(points),
                "Noise falls with the root of the number.");
        w.step(
                "curvature",
                "c",
                Quantity.RATIO,
                "\\frac{@drop}{@distance^2}",
                w.in("drop") / (distance * distance),
                "How sharply the curve bends at its top.");
        w.out(
                "bias",
                "-\\frac{@curvature \\cdot @spacing^2 \\cdot (@points^2 - 1)}{12}",
                of(w.in("drop"), distance, spacing, points),
                "The mean of the window lies below its middle.");
        w.caution(
                width / 2 > distance,
                "points",
                () ->
                        "the window reaches farther from the peak than the fall that was given, so the curve there is"
                                + " guessed");
    }
}

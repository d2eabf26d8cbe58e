// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * A step from a small pipe into a larger one.
 *
 * <p>Source: Borda and Carnot, from momentum and continuity; exact for uniform profiles of constant
 * density, and within 5 % of measurements. The coefficient counts velocity heads of the
 * <em>small</em> pipe.
 */
public final class SuddenExpansion {
    public static final Relation RELATION =
            Fitting.withFlow(
                            Relation.named(
                                            "sudden-expansion",
                                            "A step into a larger pipe",
                                            "Exhaust flow")
                                    .says(
                                            "Where a pipe steps up, the jet breaks up in eddies and part of its velocity head is lost. The"
                                                    + " static pressure still rises: a tap behind the step reads more, though total pressure fell.")
                                    .tex("K = \\left(1 - \\frac{d^2}{D^2}\\right)^2")
                                    .input(DuctSlots.smallDiameter())
                                    .input(DuctSlots.largeDiameter()),
                            "in the small pipe")
                    .output(
                            "staticRise",
                            "p_2 - p_1",
                            Quantity.PRESSURE_DIFFERENCE,
                            "how much more a tap behind the step reads")
                    .assumes(
                            "uniform velocity in both pipes, settled five bores behind the step",
                            "constant density: below Mach 0.3 in the small pipe")
                    .source("Borda (1766) and Carnot (1803); any fluid mechanics text")
                    .by(SuddenExpansion::work);

    private SuddenExpansion() {}

    /**
     * Loss coefficient in velocity heads of the small pipe.
     *
     * @param small bore before the step, m
     * @param large bore behind it, m, at least {@code small}
     */
    public static double coefficient(double small, double large) {
        double gap = 1 - Fitting.areaRatio(small, large);
        return gap * gap;
    }

    private static void work(Working w) {
        double small = w.in("smallDiameter");
        double large = w.in("largeDiameter");
        Fitting.requireOrder("sudden-expansion", small, large);
        double k = coefficient(small, large);
        Fitting.writeAreaRatio(w, small, large);
        w.out("lossCoefficient", "(1 - @areaRatio)^2", k, "What Borda and Carnot found.");
        double head = Fitting.writeHead(w, "smallDiameter");
        Fitting.writeDrop(w, k, head);
        double ratio = Fitting.areaRatio(small, large);
        w.out(
                "staticRise",
                "@dynamicPressure\\,(1 - @areaRatio^2) - @drop",
                head * (1 - ratio * ratio - k),
                "The gas gives back the head of its lost speed, less what the eddies took.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * A sharp step from a large pipe into a smaller one.
 *
 * <p>Source: Idelchik, Handbook of Hydraulic Resistance, the linear law 0.5 (1 − d²/D²) for a sharp
 * edge, from memory. The coefficient counts velocity heads of the <em>small</em> pipe. Rennels and
 * Hudson give up to a third more. Rounding the edge by a tenth of the bore takes more than half of
 * it away. A flush pipe out of a large vessel is the limit, 0.5.
 */
public final class SuddenContraction {
    public static final Relation RELATION =
            Fitting.withFlow(
                            Relation.named(
                                            "sudden-contraction",
                                            "A step into a smaller pipe",
                                            "Exhaust flow")
                                    .says(
                                            "Where a pipe steps down, the gas tears off behind the edge and loses up to half a velocity head."
                                                    + " A tap behind the step reads far less, mostly because the gas is faster there.")
                                    .tex("K = \\tfrac12\\left(1 - \\frac{d^2}{D^2}\\right)")
                                    .input(DuctSlots.largeDiameter())
                                    .input(DuctSlots.smallDiameter()),
                            "in the small pipe")
                    .output(
                            "staticFall",
                            "p_1 - p_2",
                            Quantity.PRESSURE_DIFFERENCE,
                            "how much less a tap behind the step reads")
                    .assumes(
                            "a sharp edge, square to the pipe",
                            "constant density: below Mach 0.3 in the small pipe")
                    .source("Idelchik, Handbook of Hydraulic Resistance; from memory")
                    .by(SuddenContraction::work);

    private SuddenContraction() {}

    /**
     * Loss coefficient in velocity heads of the small pipe.
     *
     * @param small bore behind the step, m
     * @param large bore before it, m, at least {@code small}
     */
    public static double coefficient(double small, double large) {
        return (1 - Fitting.areaRatio(small, large)) / 2;
    }

    private static void work(Working w) {
        double small = w.in("smallDiameter");
        double large = w.in("largeDiameter");
        Fitting.requireOrder("sudden-contraction", small, large);
        double k = coefficient(small, large);
        Fitting.writeAreaRatio(w, small, large);
        w.out("lossCoefficient", "\\tfrac12\\,(1 - @areaRatio)", k, "The law for a sharp edge.");
        double head = Fitting.writeHead(w, "smallDiameter");
        Fitting.writeDrop(w, k, head);
        double ratio = Fitting.areaRatio(small, large);
        w.out(
                "staticFall",
                "@dynamicPressure\\,(1 - @areaRatio^2) + @drop",
                head * (1 - ratio * ratio + k),
                "Speeding the gas up takes pressure too, and that part is not lost.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * A cone from a small pipe into a larger one.
 *
 * <p>Source: Crane, Technical Paper 410, from memory: 2.6 sin(α/2) of the loss of a sudden step up
 * to 45° of total angle, all of it above. Idelchik, and Rennels and Hudson, differ by up to 30 %.
 * The coefficient counts velocity heads of the <em>small</em> pipe. Wall friction of a long slender
 * cone is left out: below about 7° it is larger than this loss.
 */
public final class DiffuserLoss {
    public static final Relation RELATION =
            Fitting.withFlow(
                            Relation.named(
                                            "diffuser-loss",
                                            "A cone into a larger pipe",
                                            "Exhaust flow")
                                    .says(
                                            "A slender cone slows the gas gently and turns speed back into pressure. Opened too fast, the"
                                                    + " stream leaves the wall and the cone is no better than a step.")
                                    .tex(
                                            "K = \\min\\left(2.6\\,\\sin\\tfrac{\\alpha}{2},\\,1\\right)\\left(1 - \\frac{d^2}{D^2}\\right)^2")
                                    .input(DuctSlots.smallDiameter())
                                    .input(DuctSlots.largeDiameter())
                                    .input(
                                            Slot.number(
                                                            "angle",
                                                            "\\alpha",
                                                            Quantity.ANGLE,
                                                            "total angle of the cone, both sides together")
                                                    .above(0, Math.PI)
                                                    .usual(
                                                            Math.toRadians(7),
                                                            Math.toRadians(45),
                                                            "below 7 degrees wall friction, which is not counted, is the larger loss;"
                                                                    + " above 45 degrees a cone is a step")
                                                    .typical(Math.toRadians(12))),
                            "in the small pipe")
                    .output(
                            "staticRise",
                            "p_2 - p_1",
                            Quantity.PRESSURE_DIFFERENCE,
                            "how much more a tap behind the cone reads")
                    .assumes(
                            "straight pipe before the cone",
                            "constant density: below Mach 0.3 in the small pipe",
                            "wall friction of the cone is left out")
                    .source("Crane, Technical Paper 410; from memory")
                    .by(DiffuserLoss::work);

    private static final double STEP_FROM = Math.PI / 4;

    private DiffuserLoss() {}

    /**
     * Loss coefficient in velocity heads of the small pipe.
     *
     * @param small bore before the cone, m
     * @param large bore behind it, m, at least {@code small}
     * @param angle total angle of the cone, rad, 0 to π
     */
    public static double coefficient(double small, double large, double angle) {
        return shareOfStep(angle) * SuddenExpansion.coefficient(small, large);
    }

    private static double shareOfStep(double angle) {
        return angle <= STEP_FROM ? 2.6 * Math.sin(angle / 2) : 1;
    }

    private static void work(Working w) {
        double small = w.in("smallDiameter");
        double large = w.in("largeDiameter");
        double angle = w.in("angle");
        Fitting.requireOrder("diffuser-loss", small, large);
        double k = coefficient(small, large, angle);
        w.step(
                "coneLength",
                "l",
                Quantity.LENGTH,
                "\\frac{@largeDiameter - @smallDiameter}{2\\tan(@angle/2)}",
                (large - small) / (2 * Math.tan(angle / 2)),
                "The room that the cone needs.");
        Fitting.writeAreaRatio(w, small, large);
        w.step(
                "share",
                "c",
                Quantity.RATIO,
                angle <= STEP_FROM ? "2.6\\,\\sin(@angle/2)" : "1",
                shareOfStep(angle),
                "The part of a sudden step's loss that this cone still has.");
        w.out(
                "lossCoefficient",
                "@share\\,(1 - @areaRatio)^2",
                k,
                "That part of what Borda and Carnot found for a step.");
        double head = Fitting.writeHead(w, "smallDiameter");
        Fitting.writeDrop(w, k, head);
        double ratio = Fitting.areaRatio(small, large);
        w.out(
                "staticRise",
                "@dynamicPressure\\,(1 - @areaRatio^2) - @drop",
                head * (1 - ratio * ratio - k),
                "The gas gives back the head of its lost speed, less the loss.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * What a smooth round bend costs.
 *
 * <p>Source: Crane, Technical Paper 410, page A-29, from memory: multiples of the friction factor
 * at full turbulence over the radius of the bend, straight lines between them. Beyond 90° each
 * further quarter turn adds half of the first and its own wall. Below 90° in proportion to the
 * angle, which is common practice and no part of that page. Other handbooks (Miller, Rennels and
 * Hudson) give 10 to 20 % less for a radius of 1 to 1.5 bores; correlations differ by up to 40 %.
 * For a bend of full bore: a crushed bend is narrower, and costs the fourth power of that.
 */
public final class BendLoss {
    public static final Relation RELATION =
            Fitting.withFlow(
                            Relation.named("bend-loss", "What a bend costs", "Exhaust flow")
                                    .says(
                                            "Gas that is led round a bend swirls and leaves the inner wall, and that is paid in velocity"
                                                    + " heads. A radius of about two bores is best: tighter swirls more, wider rubs longer.")
                                    .tex(
                                            "\\Delta p_0 = K\\,\\tfrac12\\rho v^2,\\qquad K = n(r/D)\\,f_T")
                                    .input(DuctSlots.diameter())
                                    .input(
                                            Slot.number(
                                                            "bendRadiusRatio",
                                                            "r/D",
                                                            Quantity.RATIO,
                                                            "radius of the bend's middle line over the bore")
                                                    .range(1, 20)
                                                    .usual(
                                                            1,
                                                            6,
                                                            "exhaust bends have radii of 1 to 3 bores; a wider sweep is better"
                                                                    + " counted as pipe with its own friction")
                                                    .typical(1.5))
                                    .input(
                                            Slot.number(
                                                            "angle",
                                                            "\\theta",
                                                            Quantity.ANGLE,
                                                            "angle through which the pipe turns")
                                                    .above(0, 2 * Math.PI)
                                                    .usual(
                                                            0.17,
                                                            Math.PI,
                                                            "one bend turns through 10 to 180 degrees")
                                                    .typical(Math.PI / 2))
                                    .input(frictionFactor()),
                            "of the pipe")
                    .assumes(
                            "a smooth bend of full bore, with straight pipe before and after",
                            "constant density: below Mach 0.3")
                    .source(
                            "Crane, Technical Paper 410, page A-29; from memory",
                            "below 90 degrees in proportion to the angle: common practice, no source")
                    .by(BendLoss::work);

    private static final double[] RADII = {1, 1.5, 2, 3, 4, 6, 8, 10, 12, 14, 16, 20};
    private static final double[] MULTIPLES = {20, 14, 12, 12, 14, 17, 24, 30, 34, 38, 42, 50};
    private static final double QUARTER_TURN = Math.PI / 2;

    private BendLoss() {}

    /** The slot for the friction factor that Crane's multiples are meant for. */
    static Slot frictionFactor() {
        return Slot.number(
                        "frictionFactor",
                        "f_T",
                        Quantity.RATIO,
                        "Darcy's friction factor of the pipe at full turbulence")
                .range(0.005, 0.1)
                .usual(
                        0.01,
                        0.04,
                        "Darcy's factor of a pipe at full turbulence is 0.015 to 0.025; a quarter of that is"
                                + " Fanning's")
                .orElse(0.018);
    }

    /**
     * Loss coefficient in velocity heads of the pipe.
     *
     * @param radiusRatio radius of the middle line over the bore, 1 to 20
     * @param angle rad, above 0
     * @param frictionFactor Darcy's at full turbulence
     */
    public static double coefficient(double radiusRatio, double angle, double frictionFactor) {
        double quarter = multiple(radiusRatio) * frictionFactor;
        double turns = angle / QUARTER_TURN;
        if (turns <= 1) {
            return quarter * turns;
        }
        double further = Math.PI / 4 * frictionFactor * radiusRatio + quarter / 2;
        return quarter + (turns - 1) * further;
    }

    /** Friction factors that a quarter turn of this radius takes. */
    static double multiple(double radiusRatio) {
        return between(RADII, MULTIPLES, radiusRatio);
    }

    /** Straight lines between the points of a table; {@code x} within it. */
    static double between(double[] xs, double[] ys, double x) {
        int i = 1;
        while (i < xs.length - 1 && x > xs[i]) {
            i++;
        }
        return ys[i - 1] + (ys[i] - ys[i - 1]) * (x - xs[i - 1]) / (xs[i] - xs[i - 1]);
    }

    private static void work(Working w) {
        double radius = w.in("bendRadiusRatio");
        double angle = w.in("angle");
        double factor = w.in("frictionFactor");
        double k = coefficient(radius, angle, factor);
        w.step(
                "multiple",
                "n",
                Quantity.RATIO,
                "",
                multiple(radius),
                "From Crane's table: friction factors that a quarter turn of this radius takes.");
        w.step(
                "quarterTurns",
                "m",
                Quantity.RATIO,
                "\\frac{@angle}{\\pi/2}",
                angle / QUARTER_TURN,
                "The angle in quarter turns.");
        w.out(
                "lossCoefficient",
                angle <= QUARTER_TURN
                        ? "@multiple\\,@frictionFactor\\cdot @quarterTurns"
                        : "@multiple\\,@frictionFactor + (@quarterTurns - 1)\\left(\\tfrac{\\pi}{4}\\,@frictionFactor\\,@bendRadiusRatio + \\tfrac12\\,@multiple\\,@frictionFactor\\right)",
                k,
                angle <= QUARTER_TURN
                        ? "Up to a quarter turn in proportion to the angle."
                        : "Each further quarter turn costs half of the first, and its wall.");
        Fitting.writeDrop(w, k, Fitting.writeHead(w, "diameter"));
    }
}

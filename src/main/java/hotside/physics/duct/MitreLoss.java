// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * What a bend costs that is welded up from straight cuts of pipe.
 *
 * <p>Source: Crane, Technical Paper 410, page A-29, from memory: multiples of the friction factor
 * over the angle of one joint, straight lines between them. Several joints add up as if each stood
 * alone; close together they cost 10 to 30 % less or more, by their distance.
 */
public final class MitreLoss {
    public static final Relation RELATION =
            Fitting.withFlow(
                            Relation.named(
                                            "mitre-loss",
                                            "What a bend of cut pieces costs",
                                            "Exhaust flow")
                                    .says(
                                            "A bend can be welded from cut pieces. One sharp corner costs three times a smooth bend; many"
                                                    + " small corners come close to it.")
                                    .tex(
                                            "\\Delta p_0 = K\\,\\tfrac12\\rho v^2,\\qquad K = z\\,n(\\theta/z)\\,f_T")
                                    .input(DuctSlots.diameter())
                                    .input(
                                            Slot.number(
                                                            "angle",
                                                            "\\theta",
                                                            Quantity.ANGLE,
                                                            "angle through which the whole bend turns")
                                                    .above(0, Math.PI)
                                                    .usual(
                                                            0.17,
                                                            Math.PI,
                                                            "one bend turns through 10 to 180 degrees")
                                                    .typical(Math.PI / 2))
                                    .input(
                                            Slot.number(
                                                            "joints",
                                                            "z",
                                                            Quantity.COUNT,
                                                            "number of welded corners")
                                                    .range(1, 20)
                                                    .usual(
                                                            1,
                                                            12,
                                                            "more than about 12 corners are a smooth bend with weld seams in it")
                                                    .typical(5))
                                    .input(BendLoss.frictionFactor()),
                            "of the pipe")
                    .assumes(
                            "clean corners of full bore, no weld beads inside",
                            "each corner counts as if it stood alone",
                            "constant density: below Mach 0.3")
                    .source("Crane, Technical Paper 410, page A-29; from memory")
                    .by(MitreLoss::work);

    private static final double[] DEGREES = {0, 15, 30, 45, 60, 75, 90};
    private static final double[] MULTIPLES = {2, 4, 8, 15, 25, 40, 60};

    private MitreLoss() {}

    /**
     * Loss coefficient of the whole bend in velocity heads of the pipe.
     *
     * @param angle of the whole bend, rad, above 0
     * @param joints number of corners, 1 at least; at most 90° each
     * @param frictionFactor Darcy's at full turbulence
     */
    public static double coefficient(double angle, int joints, double frictionFactor) {
        return joints * multiple(angle / joints) * frictionFactor;
    }

    /** Friction factors that one corner of this angle takes. */
    static double multiple(double angle) {
        return BendLoss.between(DEGREES, MULTIPLES, Math.toDegrees(angle));
    }

    private static void work(Working w) {
        double angle = w.in("angle");
        int joints = wholeJoints(w.in("joints"), angle);
        double k = coefficient(angle, joints, w.in("frictionFactor"));
        w.step(
                "corner",
                "\\theta_1",
                Quantity.ANGLE,
                "\\frac{@angle}{@joints}",
                angle / joints,
                "The angle of one corner.");
        w.step(
                "multiple",
                "n",
                Quantity.RATIO,
                "",
                multiple(angle / joints),
                "From Crane's table: friction factors that one such corner takes.");
        w.out(
                "lossCoefficient",
                "@joints\\,@multiple\\,@frictionFactor",
                k,
                "All corners together.");
        Fitting.writeDrop(w, k, Fitting.writeHead(w, "diameter"));
    }

    private static int wholeJoints(double joints, double angle) {
        if (joints != Math.rint(joints)) {
            throw new RelationException(
                    "joints", "mitre-loss: joints = " + joints + " is not a whole number");
        }
        if (angle / joints > Math.PI / 2 * (1 + 1e-12)) {
            throw new RelationException(
                    "joints",
                    "mitre-loss: joints = %.0f makes corners of %.0f degrees; 90 is the most that the table has"
                            .formatted(joints, Math.toDegrees(angle / joints)));
        }
        return (int) joints;
    }
}

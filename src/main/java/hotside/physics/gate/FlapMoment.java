// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Moment of the exhaust on the flap of an internal gate about its shaft, and the force with which
 * the actuator rod must hold against it.
 *
 * <p>Source: balance of moments about the shaft. The flap is shut, so the exhaust acts on the seat
 * area, at the middle of the seat; friction of the shaft and weight are left out (together commonly
 * a few newtons at the rod).
 */
public final class FlapMoment {
    public static final Relation RELATION =
            Relation.named("flap-moment", "Flap, lever and rod of an internal gate", "Gate")
                    .says(
                            "An internal gate is a flap on a lever. The exhaust turns the flap about its shaft; outside, a crank"
                                    + " on the same shaft turns that moment into a pull on the rod. A longer crank, or a rod"
                                    + " square to it, holds the same flap with less force.")
                    .tex("M = F\\,a,\\quad F_r = \\frac{M}{c\\,\\sin\\varphi}")
                    .input(GateSlots.seatDiameter().typical(0.028))
                    .input(GateSlots.upstream())
                    .input(GateSlots.downstream())
                    .input(
                            arm("flapArm", "a", "distance from the shaft to the middle of the flap")
                                    .typical(0.024))
                    .input(
                            arm("crankArm", "c", "distance from the shaft to the pin of the rod")
                                    .typical(0.030))
                    .input(
                            Slot.number(
                                            "crankAngle",
                                            "\\varphi",
                                            Quantity.ANGLE,
                                            "angle between crank and rod")
                                    .between(0, Math.PI)
                                    .usual(
                                            Math.PI / 4,
                                            3 * Math.PI / 4,
                                            "far from a right angle the rod pushes along the crank, and small errors"
                                                    + " of the angle matter")
                                    .orElse(Math.PI / 2))
                    .output(
                            "moment",
                            "M",
                            Quantity.TORQUE,
                            "moment of the exhaust about the shaft, positive opens")
                    .output(
                            "rodForce",
                            "F_r",
                            Quantity.FORCE,
                            "force with which the rod must hold the flap shut")
                    .output(
                            "equivalentSeatDiameter",
                            "d_e",
                            Quantity.LENGTH,
                            "seat that would push as hard on the rod without any lever")
                    .assumes(
                            "the flap is shut, and the pressures act at the middle of the seat",
                            "friction of the shaft and weights are left out")
                    .source("balance of moments; any mechanics text")
                    .by(FlapMoment::work);

    private FlapMoment() {}

    /**
     * @param seatDiameter bore under the flap, m
     * @param upstream absolute pressure under the flap, Pa
     * @param downstream absolute pressure behind it, Pa
     * @param flapArm shaft to middle of the flap, m
     * @return moment about the shaft, N·m, positive opens
     */
    public static double moment(
            double seatDiameter, double upstream, double downstream, double flapArm) {
        return ValveForce.of(seatDiameter, upstream, downstream) * flapArm;
    }

    /**
     * @param moment about the shaft, N·m
     * @param crankArm shaft to pin of the rod, m, above 0
     * @param crankAngle between crank and rod, rad, above 0 and below π
     * @return force along the rod, N, of the sign of the moment
     */
    public static double rodForce(double moment, double crankArm, double crankAngle) {
        return moment / (crankArm * Math.sin(crankAngle));
    }

    /**
     * Newtons at the rod for each newton on the flap. Its inverse is the rod's way over the flap's,
     * for small lifts.
     *
     * @param flapArm shaft to middle of the flap, m
     * @param crankArm shaft to pin of the rod, m, above 0
     * @param crankAngle between crank and rod, rad, above 0 and below π
     */
    public static double leverRatio(double flapArm, double crankArm, double crankAngle) {
        return rodForce(flapArm, crankArm, crankAngle);
    }

    private static Slot arm(String name, String symbol, String meaning) {
        return Slot.number(name, symbol, Quantity.LENGTH, meaning)
                .above(0, 0.3)
                .usual(0.01, 0.1, "levers of internal gates are about 10 to 100 mm long");
    }

    private static void work(Working w) {
        double seat = w.in("seatDiameter");
        double flapArm = w.in("flapArm");
        double crankArm = w.in("crankArm");
        double angle = w.in("crankAngle");
        GateSteps.seatArea(w);
        w.step(
                "flapForce",
                "F",
                Quantity.FORCE,
                "@seatArea\\,(@upstream - @downstream)",
                ValveForce.of(seat, w.in("upstream"), w.in("downstream")),
                "The exhaust pushes on the flap as on any valve.");
        double moment =
                w.out(
                        "moment",
                        "@flapForce\\,@flapArm",
                        moment(seat, w.in("upstream"), w.in("downstream"), flapArm),
                        "It acts at the flap's arm from the shaft.");
        w.step(
                "squareArm",
                "c_\\perp",
                Quantity.LENGTH,
                "@crankArm\\,\\sin @crankAngle",
                crankArm * Math.sin(angle),
                "Only the part of the crank square to the rod turns the shaft.");
        w.out(
                "rodForce",
                "\\frac{@moment}{@squareArm}",
                rodForce(moment, crankArm, angle),
                "The rod holds the same moment at its own arm.");
        double ratio =
                w.step(
                        "leverRatio",
                        "i",
                        Quantity.RATIO,
                        "\\frac{@flapArm}{@squareArm}",
                        leverRatio(flapArm, crankArm, angle),
                        "So much of a newton on the flap arrives at the rod.");
        w.out(
                "equivalentSeatDiameter",
                "@seatDiameter\\,\\sqrt{@leverRatio}",
                seat * Math.sqrt(ratio),
                "With this seat a gate without lever would push as hard: use it where forces at the rod are balanced.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Torque that a sweep spends on spinning up what turns, so that the brake does not read it.
 *
 * <p>Source: Newton's law for rotation, T = T_read + J·α; any mechanics text. The inertia is all
 * that speeds up between the gas and the load cell, referred to the shaft whose speed is given.
 */
public final class SweepInertia {
    public static final Relation RELATION =
            Relation.named("sweep-inertia", "Torque that a sweep takes", "Reading curves")
                    .says(
                            "While speed rises, part of the torque spins up crank, clutch and drum instead of pressing"
                                    + " on the load cell. A faster ramp reads lower with the same engine.")
                    .tex("T = T_r + 2\\pi J\\,\\dot n")
                    .input(
                            Slot.number(
                                            "measuredTorque",
                                            "T_r",
                                            Quantity.TORQUE,
                                            "torque read during the sweep")
                                    .above(0, 1e6)
                                    .usual(20, 3000, "road engines give from 20 to 3000 N·m")
                                    .typical(450))
                    .input(
                            Slot.number(
                                            "inertia",
                                            "J",
                                            Quantity.INERTIA,
                                            "inertia of all that speeds up, as felt at the crank")
                                    .range(0, 1e4)
                                    .usual(
                                            0.02,
                                            20,
                                            "engine and brake have some tenths, a drum felt at the crank some kg·m²")
                                    .typical(0.6))
                    .input(
                            Slot.number(
                                            "sweepRate",
                                            "\\dot n",
                                            Quantity.ROTATION_RATE,
                                            "rise of rotational frequency in one second")
                                    .range(-1e3, 1e3)
                                    .usual(
                                            0,
                                            20,
                                            "pulls rise by up to 1200 rev/min each second; a fall gives torque back")
                                    .typical(5))
                    .input(
                            Slot.number("speed", "n", Quantity.ROTATION, "rotational frequency")
                                    .range(0, 1000)
                                    .usual(
                                            10,
                                            200,
                                            "engines are pulled between 600 and 12000 rev/min")
                                    .typical(80))
                    .output(
                            "inertiaTorque",
                            "T_J",
                            Quantity.TORQUE,
                            "torque that spins up the masses, not read")
                    .output("torque", "T", Quantity.TORQUE, "torque of the engine")
                    .output(
                            "share",
                            "\\epsilon",
                            Quantity.PERCENTAGE,
                            "torque not read over torque read")
                    .output("powerTaken", "P_J", Quantity.POWER, "power not read at this speed")
                    .assumes("speed rises evenly", "the drive is stiff: all turns as one")
                    .source("Newton's law for rotation; any mechanics text")
                    .by(SweepInertia::work);

    private SweepInertia() {}

    /**
     * Torque that spins up an inertia.
     *
     * @param inertia kg·m², at least 0
     * @param sweepRate rise of rotational frequency, 1/s² (whole turns a second, each second)
     * @return N·m; negative if speed falls
     */
    public static double torque(double inertia, double sweepRate) {
        return 2 * Math.PI * inertia * sweepRate;
    }

    private static void work(Working w) {
        double read = w.in("measuredTorque");
        double taken =
                w.out(
                        "inertiaTorque",
                        "2\\pi \\cdot @inertia \\cdot @sweepRate",
                        torque(w.in("inertia"), w.in("sweepRate")),
                        "Inertia times angular acceleration; a turn has 2π radians.");
        w.out(
                "powerTaken",
                "2\\pi \\cdot @speed \\cdot @inertiaTorque",
                2 * Math.PI * w.in("speed") * taken,
                "Torque times angular speed.");
        w.out(
                "share",
                "\\frac{@inertiaTorque}{@measuredTorque}",
                taken / read,
                "Small on a slow ramp, not on a fast one.");
        w.out(
                "torque",
                "@measuredTorque + @inertiaTorque",
                read + taken,
                "What the brake reads is what is left.");
    }
}

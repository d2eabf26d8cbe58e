// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Power of a turning shaft from its torque and speed.
 *
 * <p>Source: definition of work; any mechanics text. Exact.
 */
public final class TorquePower {
    public static final Relation RELATION =
            Relation.named("torque-power", "Torque, speed and power", "Engine and power")
                    .says(
                            "Power is torque times how fast the shaft turns. A brake measures the one and a pick-up the"
                                    + " other: torque and power are one measurement shown in two ways.")
                    .tex("P = 2\\pi\\,n\\,T")
                    .input(
                            Slot.number("torque", "T", Quantity.TORQUE, "torque on the shaft")
                                    .range(-20e3, 20e3)
                                    .usual(
                                            0,
                                            2000,
                                            "road engines give up to about 2000 N·m; below zero the brake drives the engine")
                                    .typical(420))
                    .input(
                            Slot.number("speed", "n", Quantity.ROTATION, "speed of that same shaft")
                                    .range(0, 5000)
                                    .usual(
                                            0,
                                            200,
                                            "crankshafts turn at up to about 12 000 rev/min; make sure torque and speed"
                                                    + " belong to one shaft")
                                    .typical(5500 / 60.0))
                    .output("power", "P", Quantity.POWER, "power that the shaft carries")
                    .assumes(
                            "torque and speed are those of the same shaft at the same moment",
                            "the speed is steady, so no torque goes into spinning anything up")
                    .source("definition of work and power; any mechanics text")
                    .by(TorquePower::work);

    private TorquePower() {}

    /**
     * @param torque N·m; negative if the shaft is driven
     * @param speed turns per second, not radians
     * @return power, W
     */
    public static double of(double torque, double speed) {
        return torque * Rotation.angular(speed);
    }

    /**
     * @param power W
     * @param speed turns per second, above 0
     * @return torque, N·m
     */
    public static double torque(double power, double speed) {
        return power / Rotation.angular(speed);
    }

    private static void work(Working w) {
        w.out(
                "power",
                "2\\pi \\cdot @speed \\cdot @torque",
                of(w.in("torque"), w.in("speed")),
                "Each turn sweeps 2π radians; torque times the angle swept in a second is work in a second.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Brake mean effective pressure of a four-stroke engine: its torque with its size taken out.
 *
 * <p>Source: definition (Heywood 1988, section 2.7, from memory). Exact.
 */
public final class MeanEffectivePressure {
    public static final Relation RELATION =
            Relation.named(
                            "mean-effective-pressure",
                            "Torque with the size taken out",
                            "Engine and power")
                    .says(
                            "A steady pressure that, pushing through the whole displacement once in two turns, would do the"
                                    + " work that the brake measures. It compares engines of unlike size, and its change is"
                                    + " the change of torque.")
                    .tex("p_{me} = \\frac{4\\pi\\,T}{V_d}")
                    .input(
                            Slot.number("torque", "T", Quantity.TORQUE, "torque at the crankshaft")
                                    .range(-20e3, 20e3)
                                    .usual(
                                            0,
                                            2000,
                                            "road engines give up to about 2000 N·m; below zero the brake drives the engine")
                                    .typical(420))
                    .input(EngineSlots.displacement())
                    .output(
                            "meanEffectivePressure",
                            "p_{me}",
                            Quantity.PRESSURE_DIFFERENCE,
                            "brake mean effective pressure")
                    .assumes("a four-stroke engine", "torque is that at the crankshaft")
                    .source(
                            "Heywood, Internal Combustion Engine Fundamentals (1988), section 2.7, from memory")
                    .by(MeanEffectivePressure::work);

    private MeanEffectivePressure() {}

    /**
     * @param torque at the crankshaft, N·m
     * @param displacement m³, above 0
     * @return brake mean effective pressure, Pa; neither absolute nor gauge
     */
    public static double of(double torque, double displacement) {
        return 2 * Rotation.angular(torque) / displacement;
    }

    private static void work(Working w) {
        double torque = w.in("torque");
        double displacement = w.in("displacement");
        w.step(
                "workPerCycle",
                "W",
                Quantity.ENERGY,
                "2 \\cdot 2\\pi \\cdot @torque",
                2 * Rotation.angular(torque),
                "Torque times the angle of two turns is the work of one cycle.");
        w.out(
                "meanEffectivePressure",
                "\\frac{@workPerCycle}{@displacement}",
                of(torque, displacement),
                "Work is pressure times swept volume.");
        w.caution(
                of(torque, displacement) > 4e6,
                "meanEffectivePressure",
                () ->
                        "Even the most highly boosted four-strokes stay near 40 bar; is the displacement that of all"
                                + " cylinders, and the torque that of the crankshaft and not of the wheels?");
    }
}

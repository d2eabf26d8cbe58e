// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Power of a flow with a known work on, or from, each kilogram: of a compressor or a turbine.
 *
 * <p>Source: first law for steady flow; any thermodynamics text. Exact.
 */
public final class WheelPower {
    public static final Relation RELATION =
            Relation.named("wheel-power", "Power of a wheel in a flow", "Compressor and cooler")
                    .says(
                            "Work on each kilogram times kilograms in a second is power: what a compressor takes, or what a"
                                    + " turbine gives. On an engine of 300 kW it is some 20 to 40 kW, and never seen by the"
                                    + " crankshaft.")
                    .tex("P = \\dot m\\,w")
                    .input(
                            Slot.number(
                                            "massFlow",
                                            "\\dot m",
                                            Quantity.MASS_FLOW,
                                            "flow through the wheel")
                                    .range(0, 20)
                                    .usual(
                                            0,
                                            3,
                                            "turbos for engines on wheels pass up to about 3 kg/s")
                                    .typical(0.25))
                    .input(
                            Slot.number(
                                            "specificWork",
                                            "w",
                                            Quantity.SPECIFIC_ENERGY,
                                            "work on, or from, each kilogram")
                                    .range(0, 2e6)
                                    .usual(
                                            0,
                                            400e3,
                                            "one wheel does up to about 400 kJ on a kilogram")
                                    .typical(75e3))
                    .output("power", "P", Quantity.POWER, "power of the wheel")
                    .assumes("steady flow; heat through the housing is left out")
                    .source("first law for steady flow; any thermodynamics text")
                    .by(WheelPower::work);

    private WheelPower() {}

    /**
     * @param massFlow kg/s
     * @param specificWork J/kg
     * @return power, W
     */
    public static double of(double massFlow, double specificWork) {
        return massFlow * specificWork;
    }

    private static void work(Working w) {
        w.out(
                "power",
                "@massFlow \\cdot @specificWork",
                of(w.in("massFlow"), w.in("specificWork")),
                "Kilograms in a second times joules for each.");
    }
}

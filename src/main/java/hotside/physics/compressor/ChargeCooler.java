// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.physics.gas.DryAir;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * What a charge cooler of known effectiveness leaves of the heat.
 *
 * <p>Source: definition of the effectiveness of the charge side; cp of dry air. Exact by
 * definition; no water condenses.
 */
public final class ChargeCooler {
    public static final Relation RELATION =
            Relation.named("charge-cooler", "Air behind a charge cooler", "Compressor and cooler")
                    .says(
                            "A cooler can bring the charge at best to the temperature of what cools it. Effectiveness says how"
                                    + " much of that way it goes. The cooler's air is the air that reaches it: on a stand it"
                                    + " warms up from pull to pull.")
                    .tex("T_m = T_2 - \\varepsilon\\,(T_2 - T_k),\\quad q = c_p\\,(T_2 - T_m)")
                    .input(
                            Slot.number(
                                            "inletTemperature",
                                            "T_2",
                                            Quantity.TEMPERATURE,
                                            "temperature of the charge before the cooler")
                                    .range(200, 900)
                                    .usual(260, 520, "compressors give 30 to 250 °C")
                                    .typical(378))
                    .input(
                            Slot.number(
                                            "coolantTemperature",
                                            "T_k",
                                            Quantity.TEMPERATURE,
                                            "temperature of the coolant, air or water, where it enters the cooler")
                                    .range(200, 450)
                                    .usual(240, 380, "coolers get air or water of −30 to 100 °C")
                                    .typical(300))
                    .input(
                            Slot.number(
                                            "effectiveness",
                                            "\\varepsilon",
                                            Quantity.RATIO,
                                            "share of the greatest possible cooling that is reached")
                                    .range(0, 1)
                                    .usual(
                                            0,
                                            0.97,
                                            "coolers reach 0.5 to 0.9; nearly 1 asks for an endless core or for ice")
                                    .typical(0.7))
                    .output(
                            "outletTemperature",
                            "T_m",
                            Quantity.TEMPERATURE,
                            "temperature of the charge behind the cooler")
                    .output(
                            "heatPerAir",
                            "q",
                            Quantity.SPECIFIC_ENERGY,
                            "heat taken from each kilogram of air; negative if the cooler warms it")
                    .assumes(
                            "effectiveness is that of the charge side",
                            "dry air, 1005 J/(kg·K); no water condenses")
                    .source(
                            "definition of effectiveness; Kays and London, Compact Heat Exchangers, from memory")
                    .by(ChargeCooler::work);

    private ChargeCooler() {}

    /**
     * @param inletTemperature of the charge, K
     * @param coolantTemperature at the coolant's inlet, K
     * @param effectiveness of the charge side, 0 to 1
     * @return charge temperature behind the cooler, K
     */
    public static double temperature(
            double inletTemperature, double coolantTemperature, double effectiveness) {
        return inletTemperature - effectiveness * (inletTemperature - coolantTemperature);
    }

    private static void work(Working w) {
        double inlet = w.in("inletTemperature");
        double coolant = w.in("coolantTemperature");
        double effectiveness = w.in("effectiveness");
        w.step(
                "span",
                "\\Delta T_0",
                Quantity.TEMPERATURE_DIFFERENCE,
                "@inletTemperature - @coolantTemperature",
                inlet - coolant,
                "The charge can at best come down to the coolant.");
        double outlet =
                w.out(
                        "outletTemperature",
                        "@inletTemperature - @effectiveness \\cdot @span",
                        temperature(inlet, coolant, effectiveness),
                        "It goes this share of the way.");
        w.out(
                "heatPerAir",
                "1005\\,(@inletTemperature - @outletTemperature)",
                DryAir.CP * (inlet - outlet),
                "Specific heat times the cooling.");
        w.caution(
                coolant > inlet,
                "coolantTemperature",
                () -> "The coolant is warmer than the charge: this cooler is a heater.");
    }
}

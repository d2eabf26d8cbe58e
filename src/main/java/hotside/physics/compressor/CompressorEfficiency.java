// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * Isentropic efficiency of a compressor from two pressures and two temperatures.
 *
 * <p>Source: definition of isentropic efficiency, as in {@link CompressorOutlet}. A reading 3 K out
 * in a rise of 80 K moves the result by 4 %; heat from the turbine makes it read low at small flow.
 */
public final class CompressorEfficiency {
    public static final Relation RELATION =
            Relation.named(
                            "compressor-efficiency",
                            "Compressor efficiency from readings",
                            "Compressor and cooler")
                    .says(
                            "Measure pressure and temperature before and behind a compressor: the heating of a perfect one,"
                                    + " over the heating seen, is its efficiency there.")
                    .tex(
                            "\\eta_c = \\frac{T_1\\left(\\Pi_c^{(\\gamma-1)/\\gamma} - 1\\right)}{T_2 - T_1}")
                    .input(AirSlots.inletPressure())
                    .input(
                            Slot.number(
                                            "outletPressure",
                                            "p_2",
                                            Quantity.PRESSURE,
                                            "pressure at the outlet")
                                    .above(0, 2e6)
                                    .usual(
                                            95e3,
                                            500e3,
                                            "one compressor wheel gives up to about 500 kPa; is this absolute?")
                                    .typical(176.4e3))
                    .input(AirSlots.inletTemperature("inletTemperature", "T_1"))
                    .input(
                            Slot.number(
                                            "outletTemperature",
                                            "T_2",
                                            Quantity.TEMPERATURE,
                                            "temperature at the outlet")
                                    .range(200, 900)
                                    .usual(260, 520, "compressors give 30 to 250 °C")
                                    .typical(373))
                    .output("pressureRatio", "\\Pi_c", Quantity.RATIO, "outlet over inlet pressure")
                    .output("efficiency", "\\eta_c", Quantity.RATIO, "isentropic efficiency")
                    .assumes(
                            "dry air with constant specific heats, γ 1.4",
                            "no heat comes through the housing, none goes into the sensor's mount",
                            "pressures and temperatures are total ones")
                    .source("definition of isentropic efficiency; any thermodynamics text")
                    .by(CompressorEfficiency::work);

    private CompressorEfficiency() {}

    private static void work(Working w) {
        double inlet = w.in("inletTemperature");
        double outlet = w.in("outletTemperature");
        if (outlet <= inlet) {
            throw new RelationException(
                    "outletTemperature",
                    "compressor-efficiency: outletTemperature = "
                            + Numbers.plain(outlet)
                            + " K is not above inletTemperature = "
                            + Numbers.plain(inlet)
                            + " K; a compressor heats the air, so look at the sensors");
        }
        double ratio =
                w.out(
                        "pressureRatio",
                        "\\frac{@outletPressure}{@inletPressure}",
                        w.in("outletPressure") / w.in("inletPressure"),
                        "Absolute over absolute.");
        w.step(
                "rise",
                "\\Delta T",
                Quantity.TEMPERATURE_DIFFERENCE,
                "@outletTemperature - @inletTemperature",
                outlet - inlet,
                "The heating that was seen.");
        double efficiency =
                w.out(
                        "efficiency",
                        "\\frac{@inletTemperature\\left(@pressureRatio^{0.4/1.4} - 1\\right)}{@rise}",
                        CompressorOutlet.efficiency(ratio, inlet, outlet),
                        "The heating of a perfect compressor over that.");
        w.caution(
                efficiency > 0.85 || efficiency < 0.4,
                "efficiency",
                () ->
                        "Turbo compressors have 0.4 to 0.85. Above, a reading is out (gauge for absolute? a sensor that lags?);"
                                + " below, heat from the turbine or a choked wheel.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.relation.Slot;
import hotside.unit.Quantity;

/** Slots that several relations about charge air share, so that they mean and allow the same. */
public final class AirSlots {
    private AirSlots() {}

    /** {@code inletPressure} of the compressor, Pa absolute. */
    static Slot inletPressure() {
        return Slot.number(
                        "inletPressure",
                        "p_1",
                        Quantity.PRESSURE,
                        "pressure at the compressor's inlet, behind the filter")
                .above(0, 1e6)
                .usual(
                        50e3,
                        110e3,
                        "a compressor that breathes from outside has 50 to 110 kPa at its inlet; is this absolute?")
                .typical(98e3);
    }

    /** A temperature at the compressor's inlet, K. */
    public static Slot inletTemperature(String name, String symbol) {
        return Slot.number(
                        name, symbol, Quantity.TEMPERATURE, "temperature at the compressor's inlet")
                .range(200, 700)
                .usual(
                        240,
                        340,
                        "inlet air has −30 to 65 °C, unless another compressor comes before")
                .typical(298.15);
    }

    /** {@code pressureRatio} of a compressor. */
    public static Slot pressureRatio() {
        return Slot.number(
                        "pressureRatio",
                        "\\Pi_c",
                        Quantity.RATIO,
                        "compressor outlet over inlet pressure, both absolute")
                .range(1, 12)
                .usual(1, 4.5, "one compressor wheel gives up to about 4.5")
                .typical(1.8);
    }

    /** An isentropic efficiency of a compressor. */
    public static Slot efficiency(String name) {
        return Slot.number(
                        name,
                        "\\eta_c",
                        Quantity.RATIO,
                        "isentropic efficiency of the compressor, total to total")
                .above(0, 1)
                .usual(
                        0.4,
                        0.85,
                        "turbo compressors reach 0.65 to 0.8 where they should run, and 0.5 near choke")
                .typical(0.74);
    }

    static Slot referencePressure() {
        return Slot.number("refPressure", "p_{ref}", Quantity.PRESSURE, "reference pressure")
                .range(10e3, 200e3)
                .usual(90e3, 105e3, "references in use are near 96, 100 or 101.3 kPa")
                .orElse(100e3);
    }

    static Slot referenceTemperature() {
        return Slot.number(
                        "refTemperature", "T_{ref}", Quantity.TEMPERATURE, "reference temperature")
                .range(200, 400)
                .usual(285, 305, "references in use are near 288, 298 or 303 K")
                .orElse(298);
    }
}

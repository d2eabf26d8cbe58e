// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Flow that a compressor, at the same inner flow pattern, would pass from a reference state: the
 * number that its map is drawn in.
 *
 * <p>Source: similarity of compressible flow, one gas, Reynolds number left out; default reference
 * 298 K and 100 kPa as in SAE J1826, from memory. Older maps use others (SAE J922: 302.6 K and 96
 * kPa, from memory), which shifts the number by 3 % or more: say the reference with the number.
 */
public final class CorrectedFlow {
    public static final Relation RELATION =
            Relation.named(
                            "corrected-flow",
                            "Flow as a compressor map counts it",
                            "Compressor and cooler")
                    .says(
                            "A compressor feels volume and the speed of sound, not kilograms. Corrected flow is what it would"
                                    + " pass at a reference inlet while working just the same; only with its reference named"
                                    + " does it mean anything.")
                    .tex("\\dot m_c = \\dot m\\,\\frac{\\sqrt{T_1/T_{ref}}}{p_1/p_{ref}}")
                    .input(
                            Slot.number(
                                            "massFlow",
                                            "\\dot m",
                                            Quantity.MASS_FLOW,
                                            "flow through one compressor")
                                    .range(0, 20)
                                    .usual(
                                            0,
                                            3,
                                            "turbos for engines on wheels pass up to about 3 kg/s")
                                    .typical(0.25))
                    .input(AirSlots.inletPressure())
                    .input(AirSlots.inletTemperature("inletTemperature", "T_1"))
                    .input(AirSlots.referencePressure())
                    .input(AirSlots.referenceTemperature())
                    .output(
                            "correctedFlow",
                            "\\dot m_c",
                            Quantity.MASS_FLOW,
                            "flow at the reference")
                    .assumes(
                            "the same gas, and Reynolds number does not matter",
                            "inlet pressure and temperature are total ones")
                    .source(
                            "similarity of compressible flow; reference of SAE J1826 (298 K, 100 kPa), from memory")
                    .by(CorrectedFlow::work);

    private CorrectedFlow() {}

    /**
     * @param massFlow kg/s
     * @param inletPressure absolute, Pa, above 0
     * @param inletTemperature K
     * @param referencePressure absolute, Pa
     * @param referenceTemperature K, above 0
     * @return corrected flow, kg/s
     */
    public static double of(
            double massFlow,
            double inletPressure,
            double inletTemperature,
            double referencePressure,
            double referenceTemperature) {
        return massFlow
                * Math.sqrt(inletTemperature / referenceTemperature)
                / (inletPressure / referencePressure);
    }

    private static void work(Working w) {
        double pressure = w.in("inletPressure");
        double temperature = w.in("inletTemperature");
        double referencePressure = w.in("refPressure");
        double referenceTemperature = w.in("refTemperature");
        w.step(
                "temperatureTerm",
                "\\sqrt\\theta",
                Quantity.RATIO,
                "\\sqrt{\\frac{@inletTemperature}{@refTemperature}}",
                Math.sqrt(temperature / referenceTemperature),
                "Speed of sound at the inlet over that at the reference.");
        w.step(
                "pressureTerm",
                "\\delta",
                Quantity.RATIO,
                "\\frac{@inletPressure}{@refPressure}",
                pressure / referencePressure,
                "Pressure at the inlet over that at the reference.");
        w.out(
                "correctedFlow",
                "@massFlow \\cdot \\frac{@temperatureTerm}{@pressureTerm}",
                of(
                        w.in("massFlow"),
                        pressure,
                        temperature,
                        referencePressure,
                        referenceTemperature),
                "Thin or warm air at the inlet asks for a wheel as if for more flow.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.physics.gas.DryAir;
import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Pressure, temperature and work of air through a compressor of known efficiency.
 *
 * <p>Source: definition of isentropic efficiency for a perfect gas (Heywood 1988, section 6.8, from
 * memory); dry air, cp 1005 J/(kg·K), γ 1.4. Constant specific heats cost 0.5 % of the temperature
 * rise at a ratio of 2, 1.5 % at 4. Heat that a hot turbine sends through the housing is left out;
 * at small flow it can add tens of kelvin.
 */
public final class CompressorOutlet {
    private static final double EXPONENT = (DryAir.GAMMA - 1) / DryAir.GAMMA;

    public static final Relation RELATION =
            Relation.named("compressor-outlet", "Air behind a compressor", "Compressor and cooler")
                    .says(
                            "Squeezing air heats it, even in a perfect compressor. A real one heats it more for the same"
                                    + " pressure: the shortfall of its efficiency turns into heat in the charge and into work"
                                    + " that the turbine must give.")
                    .tex(
                            "T_2 = T_1\\left[1 + \\frac{\\Pi_c^{(\\gamma-1)/\\gamma} - 1}{\\eta_c}\\right],\\quad"
                                    + " w_c = c_p\\,(T_2 - T_1)")
                    .input(AirSlots.inletPressure())
                    .input(AirSlots.inletTemperature("inletTemperature", "T_1"))
                    .input(AirSlots.pressureRatio())
                    .input(AirSlots.efficiency("efficiency"))
                    .output("outletPressure", "p_2", Quantity.PRESSURE, "pressure at the outlet")
                    .output(
                            "outletTemperature",
                            "T_2",
                            Quantity.TEMPERATURE,
                            "temperature at the outlet")
                    .output(
                            "specificWork",
                            "w_c",
                            Quantity.SPECIFIC_ENERGY,
                            "work on each kilogram of air")
                    .assumes(
                            "dry air with constant specific heats, 1005 J/(kg·K) and γ 1.4",
                            "no heat comes through the housing",
                            "pressures and temperatures are total ones")
                    .source(
                            "isentropic efficiency: Heywood, Internal Combustion Engine Fundamentals (1988), section"
                                    + " 6.8, from memory")
                    .by(CompressorOutlet::work);

    private CompressorOutlet() {}

    /**
     * Rise in a perfect compressor, over the inlet temperature.
     *
     * @param pressureRatio outlet over inlet, absolute, above 0
     */
    private static double idealRise(double pressureRatio) {
        return Math.expm1(EXPONENT * Math.log(pressureRatio));
    }

    /**
     * @param inletTemperature K
     * @param pressureRatio outlet over inlet, absolute, above 0
     * @param efficiency isentropic, above 0
     * @return outlet temperature, K
     */
    public static double temperature(
            double inletTemperature, double pressureRatio, double efficiency) {
        return inletTemperature * (1 + idealRise(pressureRatio) / efficiency);
    }

    /**
     * @param inletTemperature K
     * @param pressureRatio outlet over inlet, absolute, above 0
     * @param efficiency isentropic, above 0
     * @return work on each kilogram, J/kg
     */
    public static double specificWork(
            double inletTemperature, double pressureRatio, double efficiency) {
        return DryAir.CP * inletTemperature * idealRise(pressureRatio) / efficiency;
    }

    /**
     * Pressure ratio that a work reaches; the inverse of {@link #specificWork}.
     *
     * @param inletTemperature K
     * @param specificWork on each kilogram, J/kg
     * @param efficiency isentropic, above 0
     * @return outlet over inlet, absolute
     */
    public static double pressureRatio(
            double inletTemperature, double specificWork, double efficiency) {
        double rise = specificWork * efficiency / (DryAir.CP * inletTemperature);
        return Math.exp(Math.log1p(rise) / EXPONENT);
    }

    /**
     * Isentropic efficiency from what was measured.
     *
     * @param pressureRatio outlet over inlet, absolute, above 1
     * @param inletTemperature K
     * @param outletTemperature K, above {@code inletTemperature}
     * @return efficiency; above 1 the readings cannot all be right
     */
    public static double efficiency(
            double pressureRatio, double inletTemperature, double outletTemperature) {
        return inletTemperature * idealRise(pressureRatio) / (outletTemperature - inletTemperature);
    }

    private static void work(Working w) {
        double inlet = w.in("inletTemperature");
        double ratio = w.in("pressureRatio");
        double efficiency = w.in("efficiency");
        w.out(
                "outletPressure",
                "@pressureRatio \\cdot @inletPressure",
                ratio * w.in("inletPressure"),
                "The ratio of absolute pressures.");
        w.step(
                "idealRise",
                "\\Delta T_s",
                Quantity.TEMPERATURE_DIFFERENCE,
                "@inletTemperature\\left(@pressureRatio^{0.4/1.4} - 1\\right)",
                inlet * idealRise(ratio),
                "What a perfect compressor would heat the air by.");
        w.out(
                "outletTemperature",
                "@inletTemperature + \\frac{@idealRise}{@efficiency}",
                temperature(inlet, ratio, efficiency),
                "A real one heats it more, by its efficiency.");
        w.out(
                "specificWork",
                "1005\\,(@outletTemperature - @inletTemperature)",
                specificWork(inlet, ratio, efficiency),
                "All work goes into the heat of the air.");
    }
}

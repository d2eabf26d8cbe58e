// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * Temperature and work of exhaust through a turbine of known efficiency.
 *
 * <p>Source: isentropic efficiency, total to static, for a perfect gas (Heywood 1988, section 6.8,
 * from memory). Steady flow: pulses of a divided housing carry some more work than their mean
 * pressure shows. Heat lost by the housing cools the gas further than this says.
 */
public final class TurbineExpansion {
    public static final Relation RELATION =
            Relation.named("turbine-expansion", "Exhaust through a turbine", "Turbine and turbo")
                    .says(
                            "A turbine lives on the ratio of the pressures before and behind it, and on the heat of the gas."
                                    + " Lower the pressure behind and the same exhaust does more work on the wheel.")
                    .tex(
                            "T_4 = T_3\\left[1 - \\eta_t\\left(1 - \\left(\\frac{p_4}{p_3}\\right)^{(\\gamma-1)/\\gamma}\\right)\\right],\\quad"
                                    + " w_t = c_p\\,(T_3 - T_4)")
                    .input(ExhaustSlots.inletPressure())
                    .input(ExhaustSlots.outletPressure())
                    .input(ExhaustSlots.inletTemperature("inletTemperature"))
                    .input(ExhaustSlots.efficiency("efficiency"))
                    .input(ExhaustSlots.gamma())
                    .input(ExhaustSlots.cp())
                    .output(
                            "expansionRatio",
                            "\\Pi_t",
                            Quantity.RATIO,
                            "turbine inlet over outlet pressure")
                    .output(
                            "outletTemperature",
                            "T_4",
                            Quantity.TEMPERATURE,
                            "temperature behind the turbine")
                    .output(
                            "specificWork",
                            "w_t",
                            Quantity.SPECIFIC_ENERGY,
                            "work from each kilogram of exhaust")
                    .assumes(
                            "a perfect gas with constant specific heats",
                            "total pressure and temperature before, static pressure behind",
                            "steady flow, no heat through the housing")
                    .source(
                            "isentropic efficiency: Heywood, Internal Combustion Engine Fundamentals (1988), section"
                                    + " 6.8, from memory")
                    .by(TurbineExpansion::work);

    private TurbineExpansion() {}

    /**
     * Drop in a perfect turbine, over the inlet temperature.
     *
     * @param expansionRatio inlet over outlet, above 0
     */
    private static double idealDrop(double expansionRatio, double gamma) {
        return -Math.expm1(-(gamma - 1) / gamma * Math.log(expansionRatio));
    }

    /**
     * @param inletTemperature K
     * @param expansionRatio inlet total over outlet static pressure, at least 1
     * @param efficiency isentropic, total to static
     * @param gamma ratio of specific heats, above 1
     * @return outlet temperature, K
     */
    public static double temperature(
            double inletTemperature, double expansionRatio, double efficiency, double gamma) {
        return inletTemperature * (1 - efficiency * idealDrop(expansionRatio, gamma));
    }

    /**
     * @param inletTemperature K
     * @param expansionRatio inlet total over outlet static pressure, at least 1
     * @param efficiency isentropic, total to static
     * @param gamma ratio of specific heats, above 1
     * @param cp J/(kg·K)
     * @return work from each kilogram, J/kg
     */
    public static double specificWork(
            double inletTemperature,
            double expansionRatio,
            double efficiency,
            double gamma,
            double cp) {
        return cp * inletTemperature * efficiency * idealDrop(expansionRatio, gamma);
    }

    static void refuseUphill(String relation, double inlet, double outlet) {
        if (!(outlet > 0 && outlet <= inlet)) {
            throw new RelationException(
                    "outletPressure",
                    relation
                            + ": outletPressure = "
                            + Numbers.plain(outlet)
                            + " Pa; expected above 0 and not above inletPressure = "
                            + Numbers.plain(inlet)
                            + " Pa, both absolute");
        }
    }

    private static void work(Working w) {
        double inlet = w.in("inletPressure");
        double outlet = w.in("outletPressure");
        refuseUphill("turbine-expansion", inlet, outlet);
        double temperature = w.in("inletTemperature");
        double efficiency = w.in("efficiency");
        double gamma = w.in("gamma");
        double ratio =
                w.out(
                        "expansionRatio",
                        "\\frac{@inletPressure}{@outletPressure}",
                        inlet / outlet,
                        "Absolute over absolute.");
        w.step(
                "idealDrop",
                "\\Delta T_s",
                Quantity.TEMPERATURE_DIFFERENCE,
                "@inletTemperature\\left(1 - @expansionRatio^{-(@gamma - 1)/@gamma}\\right)",
                temperature * idealDrop(ratio, gamma),
                "What a perfect turbine would cool the gas by.");
        w.out(
                "outletTemperature",
                "@inletTemperature - @efficiency \\cdot @idealDrop",
                temperature(temperature, ratio, efficiency, gamma),
                "A real one cools it less, by its efficiency.");
        w.out(
                "specificWork",
                "@cp\\,(@inletTemperature - @outletTemperature)",
                specificWork(temperature, ratio, efficiency, gamma, w.in("cp")),
                "The heat that left the gas is the work on the wheel.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * Flow that a turbine swallows: Stodola's ellipse, scaled so that at a great pressure ratio it
 * passes what a choked nozzle of the turbine's effective area does.
 *
 * <p>Source: Stodola, Dampf- und Gasturbinen (1922), cone law, from memory; choked nozzle: NACA
 * Report 1135. An approximation, 2 to 5 % for a given turbine near its design speed: a real radial
 * wheel also swallows a little less the faster it turns. The ellipse passes 87 % of the choked flow
 * at a ratio of 2, where a plain nozzle is choked already: a turbine is two rows, one after the
 * other.
 */
public final class TurbineSwallow {
    public static final Relation RELATION =
            Relation.named("turbine-swallow", "Flow that a turbine swallows", "Turbine and turbo")
                    .says(
                            "A turbine is a hole with a wheel in it. It passes more the higher, denser and cooler the gas before"
                                    + " it, and the lower the pressure behind it, until the pressure behind no longer matters.")
                    .tex(
                            "\\dot m = A_t\\,\\frac{p_3}{\\sqrt{R\\,T_3}}\\;\\Gamma\\,\\sqrt{1 - \\left(\\frac{p_4}{p_3}\\right)^2},\\quad"
                                    + " \\Gamma = \\sqrt\\gamma\\left(\\frac{2}{\\gamma+1}\\right)^{\\frac{\\gamma+1}{2(\\gamma-1)}}")
                    .input(ExhaustSlots.effectiveArea())
                    .input(ExhaustSlots.inletPressure())
                    .input(ExhaustSlots.inletTemperature("inletTemperature"))
                    .input(ExhaustSlots.outletPressure())
                    .input(ExhaustSlots.gamma())
                    .input(ExhaustSlots.cp())
                    .output(
                            "massFlow",
                            "\\dot m",
                            Quantity.MASS_FLOW,
                            "exhaust through the turbine")
                    .assumes(
                            "one curve for all speeds of the wheel",
                            "steady flow of a perfect gas; total pressure before, static behind",
                            "the gate is another way round and not counted here")
                    .source(
                            "Stodola, Dampf- und Gasturbinen (1922), from memory",
                            "choked nozzle: NACA Report 1135 (1953)")
                    .by(TurbineSwallow::work);

    private TurbineSwallow() {}

    /**
     * @param area effective, m²
     * @param inletPressure absolute, Pa
     * @param inletTemperature K
     * @param outletPressure absolute, Pa, at least 0
     * @param gamma ratio of specific heats, above 1
     * @param gasConstant J/(kg·K)
     * @return flow, kg/s; 0 where {@code outletPressure} is not below {@code inletPressure}
     */
    public static double massFlow(
            double area,
            double inletPressure,
            double inletTemperature,
            double outletPressure,
            double gamma,
            double gasConstant) {
        if (outletPressure >= inletPressure) {
            return 0;
        }
        return conductance(area, inletTemperature, gamma, gasConstant)
                * Math.sqrt((inletPressure - outletPressure) * (inletPressure + outletPressure));
    }

    /**
     * Pressure before the turbine that drives a flow through it; the inverse of {@link #massFlow}.
     *
     * @param massFlow kg/s, at least 0
     * @param area effective, m², above 0
     * @param inletTemperature K
     * @param outletPressure absolute, Pa
     * @param gamma ratio of specific heats, above 1
     * @param gasConstant J/(kg·K)
     * @return absolute, Pa; {@code outletPressure} at no flow
     */
    public static double inletPressure(
            double massFlow,
            double area,
            double inletTemperature,
            double outletPressure,
            double gamma,
            double gasConstant) {
        return Math.hypot(
                outletPressure, massFlow / conductance(area, inletTemperature, gamma, gasConstant));
    }

    /**
     * Pressure behind the turbine that lets a flow through it; the other inverse of {@link
     * #massFlow}.
     *
     * @param massFlow kg/s, at least 0
     * @param area effective, m², above 0
     * @param inletPressure absolute, Pa
     * @param inletTemperature K
     * @param gamma ratio of specific heats, above 1
     * @param gasConstant J/(kg·K)
     * @return absolute, Pa; not a number if even no pressure behind draws so much through
     */
    public static double outletPressure(
            double massFlow,
            double area,
            double inletPressure,
            double inletTemperature,
            double gamma,
            double gasConstant) {
        double needed = massFlow / conductance(area, inletTemperature, gamma, gasConstant);
        return Math.sqrt((inletPressure - needed) * (inletPressure + needed));
    }

    /** Choked flow for each pascal before the turbine, kg/(s·Pa). */
    private static double conductance(
            double area, double inletTemperature, double gamma, double gasConstant) {
        return area * chokedFunction(gamma) / Math.sqrt(gasConstant * inletTemperature);
    }

    /** Γ = ṁ √(R T0)/(A p0) of a choked nozzle; NACA Report 1135 at M = 1. */
    private static double chokedFunction(double gamma) {
        return Math.sqrt(gamma) * Math.pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
    }

    private static void work(Working w) {
        double inlet = w.in("inletPressure");
        double outlet = w.in("outletPressure");
        if (outlet > inlet) {
            throw new RelationException(
                    "outletPressure",
                    "turbine-swallow: outletPressure = "
                            + Numbers.plain(outlet)
                            + " Pa is above inletPressure = "
                            + Numbers.plain(inlet)
                            + " Pa; expected both absolute, and the higher one before the turbine");
        }
        double area = w.in("effectiveArea");
        double temperature = w.in("inletTemperature");
        double gamma = w.in("gamma");
        double gasConstant =
                w.step(
                        "gasConstant",
                        "R",
                        Quantity.SPECIFIC_HEAT,
                        "@cp \\cdot \\frac{@gamma - 1}{@gamma}",
                        ExhaustSlots.gasConstant(gamma, w.in("cp")),
                        "The gas constant that belongs to the two.");
        w.step(
                "chokedFunction",
                "\\Gamma",
                Quantity.RATIO,
                "\\sqrt{@gamma}\\left(\\frac{2}{@gamma + 1}\\right)^{\\frac{@gamma + 1}{2(@gamma - 1)}}",
                chokedFunction(gamma),
                "What a choked nozzle passes, as a pure number.");
        w.step(
                "chokedFlow",
                "\\dot m^*",
                Quantity.MASS_FLOW,
                "@effectiveArea \\cdot \\frac{@inletPressure}{\\sqrt{@gasConstant \\cdot @inletTemperature}} \\cdot @chokedFunction",
                massFlow(area, inlet, temperature, 0, gamma, gasConstant),
                "More than this no pressure behind can draw through.");
        w.out(
                "massFlow",
                "@chokedFlow \\cdot \\sqrt{1 - \\left(\\frac{@outletPressure}{@inletPressure}\\right)^2}",
                massFlow(area, inlet, temperature, outlet, gamma, gasConstant),
                "The ellipse: the pressure behind holds some of it back.");
    }
}

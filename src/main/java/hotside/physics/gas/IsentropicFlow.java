// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * A perfect gas that speeds up or slows down without loss: static over total states.
 *
 * <p>Source: NACA Report 1135 (1953), isentropic flow relations; they hold for any gamma, its
 * tables for 1.4 only. Adiabatic, without friction, gamma constant: a real exhaust gas changes its
 * gamma by 0.003 on the way from rest to the speed of sound, which is 0.1 % of the pressure ratio.
 */
public final class IsentropicFlow {
    public static final Relation RELATION =
            Relation.named("isentropic-flow", "Moving gas against gas at rest", "Air and gas")
                    .says(
                            "Gas that is brought to speed without loss pays with pressure, temperature and density. The faster"
                                    + " it is, counted in speeds of sound, the less of each is left.")
                    .tex(
                            "\\frac{p}{p_0} = \\left(1 + \\frac{\\gamma - 1}{2}M^2\\right)^{-\\gamma/(\\gamma - 1)}")
                    .input(
                            Slot.number(
                                            "mach",
                                            "M",
                                            Quantity.RATIO,
                                            "speed over the local speed of sound")
                                    .above(0, 5)
                                    .usual(
                                            0.01,
                                            1,
                                            "a pipe without a throat carries no flow faster than sound")
                                    .typical(0.5))
                    .input(gammaSlot())
                    .output(
                            "pressureRatio",
                            "p/p_0",
                            Quantity.RATIO,
                            "static over total pressure, both absolute")
                    .output(
                            "temperatureRatio",
                            "T/T_0",
                            Quantity.RATIO,
                            "static over total temperature, both from absolute zero")
                    .output(
                            "densityRatio",
                            "\\rho/\\rho_0",
                            Quantity.RATIO,
                            "static over total density")
                    .output(
                            "areaRatio",
                            "A/A^*",
                            Quantity.RATIO,
                            "flow area over the area that would choke the same flow")
                    .assumes(
                            "no friction and no heat",
                            "a perfect gas of constant gamma, flowing steadily")
                    .source("NACA Report 1135 (1953), isentropic flow relations; from memory")
                    .by(IsentropicFlow::work);

    /** Static over total values, and the flow area over the area that chokes. */
    public record Ratios(double pressure, double temperature, double density, double area) {}

    private IsentropicFlow() {}

    /**
     * @param mach above 0
     * @param gamma above 1
     */
    public static Ratios of(double mach, double gamma) {
        return new Ratios(
                pressureRatio(mach, gamma),
                temperatureRatio(mach, gamma),
                Math.pow(temperatureRatio(mach, gamma), 1 / (gamma - 1)),
                areaRatio(mach, gamma));
    }

    /** Static over total pressure; {@code mach} at least 0. */
    public static double pressureRatio(double mach, double gamma) {
        return Math.pow(temperatureRatio(mach, gamma), gamma / (gamma - 1));
    }

    /** Static over total temperature; {@code mach} at least 0. */
    public static double temperatureRatio(double mach, double gamma) {
        return 1 / (1 + (gamma - 1) / 2 * mach * mach);
    }

    /** Flow area over the area that chokes the same flow; {@code mach} above 0. */
    public static double areaRatio(double mach, double gamma) {
        double base = 2 / (gamma + 1) / temperatureRatio(mach, gamma);
        return Math.pow(base, (gamma + 1) / (2 * (gamma - 1))) / mach;
    }

    /** The slot for gamma, the same wherever it is asked for. */
    public static Slot gammaSlot() {
        return Slot.number("gamma", "\\gamma", Quantity.RATIO, "ratio of the heat capacities")
                .above(1, 5.0 / 3)
                .usual(1.2, 1.41, "air has 1.40 cold and 1.33 at 1000 K, exhaust gas 1.28 to 1.35")
                .typical(1.33);
    }

    private static void work(Working w) {
        Ratios ratios = of(w.in("mach"), w.in("gamma"));
        w.out(
                "temperatureRatio",
                "\\left(1 + \\frac{@gamma - 1}{2}\\,@mach^2\\right)^{-1}",
                ratios.temperature,
                "Speed is paid for with heat.");
        w.out(
                "pressureRatio",
                "\\left(@temperatureRatio\\right)^{@gamma/(@gamma - 1)}",
                ratios.pressure,
                "Without loss, pressure follows temperature by this power.");
        w.out(
                "densityRatio",
                "\\left(@temperatureRatio\\right)^{1/(@gamma - 1)}",
                ratios.density,
                "Density is pressure over temperature.");
        w.out(
                "areaRatio",
                "\\frac{1}{@mach}\\left(\\frac{2}{@gamma + 1}\\cdot\\frac{1}{@temperatureRatio}\\right)^{(@gamma + 1)/(2(@gamma - 1))}",
                ratios.area,
                "The same flow chokes in an area this many times smaller.");
    }
}

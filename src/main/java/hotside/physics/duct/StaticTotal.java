// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.IsentropicFlow;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * What a hole in the wall reads and what it misses.
 *
 * <p>Source: isentropic relations, NACA Report 1135 (1953). The dynamic part is total less static,
 * which at Mach 0.3 is 2 %, at Mach 0.6 9 % more than half of density times velocity squared.
 */
public final class StaticTotal {
    public static final Relation RELATION =
            Relation.named("static-total", "What a wall tap misses", "Exhaust flow")
                    .says(
                            "A tap in the wall reads the static pressure. The gas also carries its speed, and bringing it to that"
                                    + " speed was paid for in pressure: static and dynamic together are the total.")
                    .tex(
                            "p_0 = p\\left(1 + \\frac{\\gamma - 1}{2}M^2\\right)^{\\gamma/(\\gamma - 1)}")
                    .input(
                            Slot.number(
                                            "static",
                                            "p",
                                            Quantity.PRESSURE,
                                            "pressure that a wall tap reads")
                                    .above(0, 2e6)
                                    .usual(
                                            60e3,
                                            500e3,
                                            "pressures here are absolute; less than 60 kPa is likely a gauge reading")
                                    .typical(108e3))
                    .input(
                            Slot.number(
                                            "mach",
                                            "M",
                                            Quantity.RATIO,
                                            "speed over the local speed of sound")
                                    .range(0, 5)
                                    .usual(
                                            0,
                                            1,
                                            "above the speed of sound a probe stands behind a shock and reads less than"
                                                    + " the total pressure")
                                    .typical(0.25))
                    .input(IsentropicFlow.gammaSlot())
                    .output(
                            "dynamic",
                            "q_c",
                            Quantity.PRESSURE_DIFFERENCE,
                            "total less static pressure")
                    .output(
                            "total",
                            "p_0",
                            Quantity.PRESSURE,
                            "pressure of the gas brought to rest without loss")
                    .assumes(
                            "the tap is square to the wall, without burr, away from bends",
                            "one speed over the bore; a real profile carries a few percent more")
                    .source("NACA Report 1135 (1953), isentropic flow relations; from memory")
                    .by(StaticTotal::work);

    private StaticTotal() {}

    /**
     * Total pressure, in the unit of {@code staticPressure}.
     *
     * @param staticPressure absolute, above 0
     * @param mach at least 0
     * @param gamma above 1
     */
    public static double total(double staticPressure, double mach, double gamma) {
        return staticPressure + dynamic(staticPressure, mach, gamma);
    }

    /** Total less static pressure, without loss of digits at a low Mach number. */
    public static double dynamic(double staticPressure, double mach, double gamma) {
        double heating = Math.log1p((gamma - 1) / 2 * mach * mach);
        return staticPressure * Math.expm1(gamma / (gamma - 1) * heating);
    }

    private static void work(Working w) {
        double tap = w.in("static");
        double mach = w.in("mach");
        double gamma = w.in("gamma");
        w.step(
                "head",
                "\\tfrac12\\rho v^2",
                Quantity.PRESSURE_DIFFERENCE,
                "\\tfrac12\\,@gamma\\,@static\\,@mach^2",
                gamma * tap * mach * mach / 2,
                "The velocity head alone, which is nearly all of it at low speed.");
        w.out(
                "dynamic",
                "@static\\left(\\left(1 + \\frac{@gamma - 1}{2}\\,@mach^2\\right)^{@gamma/(@gamma - 1)} - 1\\right)",
                dynamic(tap, mach, gamma),
                "What stopping the gas would add; the gas is squeezed as it stops.");
        w.out(
                "total",
                "@static + @dynamic",
                total(tap, mach, gamma),
                "The total is what the gas cost; the tap shows only the first part.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

import hotside.relation.Slot;
import hotside.unit.Quantity;

/** Slots and gas that the relations about a turbine share. */
public final class ExhaustSlots {
    /** Ratio of specific heats of exhaust at about 1000 K; Heywood 1988, chapter 4, from memory. */
    public static final double GAMMA = 1.33;

    /** Specific heat of exhaust at about 1000 K, J/(kg·K); Heywood 1988, chapter 4, from memory. */
    public static final double CP = 1150;

    private ExhaustSlots() {}

    /**
     * @param gamma ratio of specific heats, above 1
     * @param cp specific heat at constant pressure, J/(kg·K)
     * @return gas constant that belongs to both, J/(kg·K)
     */
    public static double gasConstant(double gamma, double cp) {
        return cp * (gamma - 1) / gamma;
    }

    static Slot inletPressure() {
        return Slot.number("inletPressure", "p_3", Quantity.PRESSURE, "pressure before the turbine")
                .above(0, 2e6)
                .usual(
                        80e3,
                        700e3,
                        "turbine inlets hold from ambient to about 700 kPa; is this absolute?")
                .typical(185e3);
    }

    public static Slot outletPressure() {
        return Slot.number(
                        "outletPressure",
                        "p_4",
                        Quantity.PRESSURE,
                        "pressure behind the turbine, where the pipe begins")
                .range(0, 1e6)
                .usual(
                        60e3,
                        300e3,
                        "behind a turbine there is ambient to about 300 kPa; is this absolute?")
                .typical(107e3);
    }

    public static Slot inletTemperature(String name) {
        return Slot.number(
                        name,
                        "T_3",
                        Quantity.TEMPERATURE,
                        "temperature of the exhaust before the turbine")
                .range(250, 2000)
                .usual(
                        500,
                        1350,
                        "exhaust before a turbine has 250 °C at part load to 1050 °C, above which wheels and housings"
                                + " suffer")
                .typical(1150);
    }

    public static Slot efficiency(String name) {
        return Slot.number(
                        name,
                        "\\eta_t",
                        Quantity.RATIO,
                        "isentropic efficiency of the turbine, total to static")
                .above(0, 1)
                .usual(
                        0.3,
                        0.85,
                        "turbo turbines reach 0.6 to 0.75 where they should run, less when spun too slowly")
                .typical(0.70);
    }

    public static Slot mechanicalEfficiency() {
        return Slot.number(
                        "mechanicalEfficiency",
                        "\\eta_m",
                        Quantity.RATIO,
                        "share of the turbine's power that the bearings let through")
                .above(0, 1)
                .usual(0.8, 1, "bearings let 0.9 to 0.98 through, at small load less")
                .orElse(0.96);
    }

    public static Slot effectiveArea() {
        return Slot.number(
                        "effectiveArea",
                        "A_t",
                        Quantity.AREA,
                        "effective flow area of the turbine; of all, if there are several")
                .above(0, 0.1)
                .usual(0.1e-3, 5e-3, "turbines for engines on wheels have about 100 to 5000 mm²")
                .typical(1.3e-3);
    }

    public static Slot gamma() {
        return Slot.number(
                        "gamma",
                        "\\gamma",
                        Quantity.RATIO,
                        "ratio of specific heats of the exhaust")
                .between(1, 1.7)
                .usual(1.25, 1.41, "exhaust has 1.30 to 1.36 between 1300 and 700 K, cold air 1.40")
                .orElse(GAMMA);
    }

    public static Slot cp() {
        return Slot.number(
                        "cp",
                        "c_p",
                        Quantity.SPECIFIC_HEAT,
                        "specific heat of the exhaust at constant pressure")
                .range(500, 3000)
                .usual(1000, 1350, "exhaust has 1080 to 1250 J/(kg·K) between 700 and 1300 K")
                .orElse(CP);
    }
}

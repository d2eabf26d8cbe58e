// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * How much fuel and air an engine takes in, and how much exhaust it gives, for a power.
 *
 * <p>Source: definitions of brake specific fuel consumption and of air–fuel ratio. Exact; as good
 * as those two numbers. Mass is kept: leaks and blow-by (about 1 % of the flow) are left out.
 */
public final class PowerToFlow {
    /** Kilograms per joule in one gram per kilowatt-hour. */
    static final double GRAM_PER_KILOWATT_HOUR = 1e-3 / 3.6e6;

    public static final Relation RELATION =
            Relation.named("power-to-flow", "Gas flow that a power needs", "Engine and power")
                    .says(
                            "An engine of known power burns fuel at a known rate, takes in so many times as much air, and"
                                    + " sends both out as exhaust. What a pipe or a turbine sees is this flow, not the"
                                    + " displacement.")
                    .tex(
                            "\\dot m_f = b\\,P,\\quad \\dot m_a = A\\,\\dot m_f,\\quad \\dot m_e = \\dot m_a + \\dot m_f")
                    .input(
                            Slot.number("power", "P", Quantity.POWER, "power at the crankshaft")
                                    .range(0, 5e6)
                                    .usual(
                                            0,
                                            1.5e6,
                                            "road and race engines give up to about 1500 kW")
                                    .typical(300e3))
                    .input(
                            Slot.number(
                                            "bsfc",
                                            "b",
                                            Quantity.FUEL_PER_ENERGY,
                                            "fuel burnt for each unit of work at the crankshaft")
                                    .above(0, 4000 * GRAM_PER_KILOWATT_HOUR)
                                    .usual(
                                            180 * GRAM_PER_KILOWATT_HOUR,
                                            700 * GRAM_PER_KILOWATT_HOUR,
                                            "at full load a diesel takes about 200 g/kWh, a boosted petrol engine 280 to"
                                                    + " 380, alcohol up to about 700")
                                    .typical(330 * GRAM_PER_KILOWATT_HOUR))
                    .input(EngineSlots.airFuelRatio())
                    .output("fuelFlow", "\\dot m_f", Quantity.MASS_FLOW, "fuel flow")
                    .output("airFlow", "\\dot m_a", Quantity.MASS_FLOW, "air flow")
                    .output("exhaustFlow", "\\dot m_e", Quantity.MASS_FLOW, "exhaust flow")
                    .assumes(
                            "power is that at the crankshaft, for which the fuel consumption holds",
                            "steady running, no leaks and no blow-by",
                            "no air is blown through unburnt while both valves are open")
                    .source("definitions of brake specific fuel consumption and air–fuel ratio")
                    .by(PowerToFlow::work);

    private PowerToFlow() {}

    /**
     * @param power at the crankshaft, W
     * @param bsfc brake specific fuel consumption, kg/J
     * @return fuel flow, kg/s
     */
    public static double fuelFlow(double power, double bsfc) {
        return power * bsfc;
    }

    /**
     * @param fuelFlow kg/s
     * @param airFuelRatio by mass
     * @return air flow, kg/s
     */
    public static double airFlow(double fuelFlow, double airFuelRatio) {
        return fuelFlow * airFuelRatio;
    }

    /**
     * Exhaust of an air flow with its fuel.
     *
     * @param airFlow kg/s
     * @param airFuelRatio by mass, above 0
     * @return exhaust flow, kg/s
     */
    public static double exhaustFlow(double airFlow, double airFuelRatio) {
        return airFlow * (1 + 1 / airFuelRatio);
    }

    /**
     * Air that went into an exhaust flow; the inverse of {@link #exhaustFlow}.
     *
     * @param exhaustFlow kg/s
     * @param airFuelRatio by mass, above 0
     * @return air flow, kg/s
     */
    public static double airFlowOf(double exhaustFlow, double airFuelRatio) {
        return exhaustFlow / (1 + 1 / airFuelRatio);
    }

    private static void work(Working w) {
        double ratio = w.in("airFuelRatio");
        double fuel =
                w.out(
                        "fuelFlow",
                        "@bsfc \\cdot @power",
                        fuelFlow(w.in("power"), w.in("bsfc")),
                        "Fuel for each joule times joules in a second.");
        double air =
                w.out(
                        "airFlow",
                        "@airFuelRatio \\cdot @fuelFlow",
                        airFlow(fuel, ratio),
                        "Each kilogram of fuel takes this many kilograms of air along.");
        w.out(
                "exhaustFlow",
                "@airFlow + @fuelFlow",
                exhaustFlow(air, ratio),
                "What goes in comes out: nothing is lost but heat.");
    }
}

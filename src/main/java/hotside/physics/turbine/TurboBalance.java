// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

import hotside.physics.compressor.AirSlots;
import hotside.physics.compressor.CompressorOutlet;
import hotside.physics.engine.EngineSlots;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * Expansion that a turbine needs to drive its compressor, and so the pressure before it.
 *
 * <p>Source: first law on a shaft at steady speed: turbine work times mechanical efficiency equals
 * compressor work (Heywood 1988, section 6.8, from memory). The balance fixes a <em>ratio</em> of
 * pressures: at held boost, what is added behind the turbine comes back before it multiplied by
 * that ratio. Left out: the flow and so the efficiency of the wheel change a little as well.
 */
public final class TurboBalance {
    public static final Relation RELATION =
            Relation.named("turbo-balance", "Pressure that the turbine needs", "Turbine and turbo")
                    .says(
                            "What the compressor takes the turbine must give. The boost fixes how far the exhaust has to expand:"
                                    + " a ratio, not a difference. So a kilopascal more behind the turbine asks for the ratio's"
                                    + " worth of kilopascals more before it.")
                    .tex(
                            "\\Pi_t = \\left[1 - \\frac{w_c}{\\eta_m\\,\\eta_t\\,(1-y)(1 + 1/A)\\,c_p\\,T_3}\\right]^{-\\gamma/(\\gamma-1)},\\quad"
                                    + " p_3 = \\Pi_t\\,p_4")
                    .input(AirSlots.pressureRatio())
                    .input(AirSlots.inletTemperature("compressorInletTemperature", "T_1"))
                    .input(AirSlots.efficiency("compressorEfficiency"))
                    .input(ExhaustSlots.inletTemperature("turbineInletTemperature"))
                    .input(ExhaustSlots.efficiency("turbineEfficiency"))
                    .input(EngineSlots.airFuelRatio())
                    .input(ExhaustSlots.outletPressure())
                    .input(ExhaustSlots.mechanicalEfficiency())
                    .input(
                            Slot.number(
                                            "bypassFraction",
                                            "y",
                                            Quantity.PERCENTAGE,
                                            "share of the exhaust that the gate lets round the turbine")
                                    .range(0, 0.95)
                                    .usual(
                                            0,
                                            0.6,
                                            "gates let up to about half of the exhaust round")
                                    .orElse(0))
                    .input(
                            Slot.number(
                                            "outletPressureRise",
                                            "\\Delta p_4",
                                            Quantity.PRESSURE_DIFFERENCE,
                                            "a rise of the pressure behind the turbine, to be followed")
                                    .range(-1e6, 1e6)
                                    .usual(
                                            -100e3,
                                            100e3,
                                            "pipes change the pressure behind a turbine by up to some tens of kPa")
                                    .orElse(0))
                    .input(ExhaustSlots.gamma())
                    .input(ExhaustSlots.cp())
                    .output(
                            "expansionRatio",
                            "\\Pi_t",
                            Quantity.RATIO,
                            "turbine inlet over outlet pressure that the balance needs")
                    .output(
                            "inletPressure",
                            "p_3",
                            Quantity.PRESSURE,
                            "pressure before the turbine")
                    .output(
                            "multiplication",
                            "\\frac{dp_3}{dp_4}",
                            Quantity.RATIO,
                            "rise before the turbine for each unit of rise behind it, boost held")
                    .output(
                            "inletPressureRise",
                            "\\Delta p_3",
                            Quantity.PRESSURE_DIFFERENCE,
                            "what that rise behind the turbine does before it")
                    .assumes(
                            "steady shaft speed",
                            "boost, flow, temperatures and efficiencies stay as they are when the outlet pressure rises",
                            "dry air before, a perfect gas with constant specific heats behind the engine")
                    .source(
                            "first law; Heywood, Internal Combustion Engine Fundamentals (1988), section 6.8, from memory")
                    .by(TurboBalance::work);

    private TurboBalance() {}

    /**
     * Expansion ratio at which turbine and compressor balance.
     *
     * @param compressorWork on each kilogram of air, J/kg, at least 0
     * @param available the greatest work that full expansion to nothing would pass to the
     *     compressor for each kilogram of air, J/kg; see {@link #available}
     * @param gamma ratio of specific heats of the exhaust, above 1
     * @return inlet over outlet pressure; infinite where even full expansion does not do
     */
    public static double expansionRatio(double compressorWork, double available, double gamma) {
        double share = compressorWork / available;
        return share < 1
                ? Math.exp(-gamma / (gamma - 1) * Math.log1p(-share))
                : Double.POSITIVE_INFINITY;
    }

    /**
     * Work that the exhaust of one kilogram of air could pass to the compressor if it expanded to
     * nothing.
     *
     * @param turbineInletTemperature K
     * @param turbineEfficiency isentropic, total to static
     * @param mechanicalEfficiency of the bearings
     * @param airFuelRatio by mass
     * @param bypassFraction share that goes round the turbine
     * @param cp of the exhaust, J/(kg·K)
     * @return J for each kg of air
     */
    public static double available(
            double turbineInletTemperature,
            double turbineEfficiency,
            double mechanicalEfficiency,
            double airFuelRatio,
            double bypassFraction,
            double cp) {
        return mechanicalEfficiency
                * turbineEfficiency
                * exhaustThrough(airFuelRatio, bypassFraction)
                * cp
                * turbineInletTemperature;
    }

    /** Exhaust through the turbine for each mass of air through the compressor. */
    private static double exhaustThrough(double airFuelRatio, double bypassFraction) {
        return (1 - bypassFraction) * (1 + 1 / airFuelRatio);
    }

    static RelationException tooLittle(String relation, double compressorWork, double available) {
        return new RelationException(
                "",
                relation
                        + ": the compressor takes "
                        + Numbers.significant(compressorWork / 1e3, 4)
                        + " kJ for each kg of air, and even full expansion of the exhaust gives "
                        + Numbers.significant(available / 1e3, 4)
                        + " kJ; expected less boost, hotter exhaust, better efficiencies or less bypass");
    }

    private static void work(Working w) {
        double compressorWork =
                w.step(
                        "compressorWork",
                        "w_c",
                        Quantity.SPECIFIC_ENERGY,
                        "1005 \\cdot \\frac{@compressorInletTemperature}{@compressorEfficiency}\\left(@pressureRatio^{0.4/1.4} - 1\\right)",
                        CompressorOutlet.specificWork(
                                w.in("compressorInletTemperature"),
                                w.in("pressureRatio"),
                                w.in("compressorEfficiency")),
                        "What the compressor takes for each kilogram of air.");
        double available = availableStep(w);
        double ratio = expansionRatio(compressorWork, available, w.in("gamma"));
        if (ratio == Double.POSITIVE_INFINITY) {
            throw tooLittle("turbo-balance", compressorWork, available);
        }
        w.out(
                "expansionRatio",
                "\\left(1 - \\frac{@compressorWork}{@available}\\right)^{-@gamma/(@gamma - 1)}",
                ratio,
                "Expansion far enough to give just what is taken.");
        w.out(
                "inletPressure",
                "@expansionRatio \\cdot @outletPressure",
                ratio * w.in("outletPressure"),
                "The balance fixes a ratio, so the pressure behind sets the one before.");
        w.out(
                "multiplication",
                "@expansionRatio",
                ratio,
                "With boost held the ratio stays, so p3 moves by the ratio for each unit that p4 moves.");
        w.out(
                "inletPressureRise",
                "@multiplication \\cdot @outletPressureRise",
                ratio * w.in("outletPressureRise"),
                "What is added behind comes back before the turbine, multiplied.");
        w.caution(
                ratio > 5,
                "expansionRatio",
                () ->
                        "One turbine wheel works at a ratio of up to about 4; beyond, its efficiency falls off.");
    }

    private static double availableStep(Working w) {
        w.step(
                "exhaustThrough",
                "m",
                Quantity.RATIO,
                "(1 - @bypassFraction)\\left(1 + \\frac{1}{@airFuelRatio}\\right)",
                exhaustThrough(w.in("airFuelRatio"), w.in("bypassFraction")),
                "Each kilogram of air leaves with its fuel; the gate takes some round the turbine.");
        return w.step(
                "available",
                "w_0",
                Quantity.SPECIFIC_ENERGY,
                "@mechanicalEfficiency \\cdot @turbineEfficiency \\cdot @exhaustThrough \\cdot @cp \\cdot @turbineInletTemperature",
                available(
                        w.in("turbineInletTemperature"),
                        w.in("turbineEfficiency"),
                        w.in("mechanicalEfficiency"),
                        w.in("airFuelRatio"),
                        w.in("bypassFraction"),
                        w.in("cp")),
                "What expansion to nothing would give the compressor, for each kilogram of air.");
    }
}

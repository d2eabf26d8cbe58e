// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

import hotside.physics.compressor.AirSlots;
import hotside.physics.compressor.ChargeCooler;
import hotside.physics.compressor.CompressorOutlet;
import hotside.physics.compressor.PressureRatio;
import hotside.physics.engine.EngineSlots;
import hotside.physics.engine.PowerToFlow;
import hotside.physics.engine.SpeedDensity;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * Lowest engine speed at which a turbo gives its target boost with the gate shut.
 *
 * <p>Source: the shaft balance of {@link TurboBalance} and the ellipse of {@link TurbineSwallow}
 * together; no table of a real turbo. The balance fixes the expansion ratio; the ratio and the
 * pressure behind fix the flow that the turbine swallows; the flow fixes the speed. Efficiencies
 * are those given, though at small flow they fall: a real threshold lies higher than this by some
 * hundred turns a minute or more. In steady running: a pull comes later still by the rotor's
 * inertia.
 */
public final class BoostThreshold {
    public static final Relation RELATION =
            Relation.named("boost-threshold", "Where boost begins", "Turbine and turbo")
                    .says(
                            "Below some engine speed all the exhaust together cannot drive the compressor to its target. Where"
                                    + " that lies goes with the area of the turbine and, just as straight, with the pressure behind"
                                    + " it.")
                    .tex(
                            "n = \\frac{2\\,\\dot m_a}{\\eta_v\\,\\rho_m\\,V_d},\\quad"
                                    + " \\dot m_a\\left(1 + \\tfrac1A\\right) = \\frac{A_t\\,\\Gamma\\,p_4}{\\sqrt{R\\,T_3}}\\sqrt{\\Pi_t^2 - 1}")
                    .input(EngineSlots.displacement())
                    .input(EngineSlots.volumetricEfficiency())
                    .input(
                            Slot.number(
                                            "targetBoost",
                                            "b",
                                            Quantity.GAUGE_PRESSURE,
                                            "boost in the manifold, counted from ambient")
                                    .above(0, 1e6)
                                    .usual(5e3, 300e3, "targets run from 5 to about 300 kPa")
                                    .typical(70e3))
                    .input(ExhaustSlots.effectiveArea().typical(0.6e-3))
                    .input(ExhaustSlots.outletPressure().typical(103e3))
                    .input(ExhaustSlots.inletTemperature("turbineInletTemperature").typical(1050))
                    .input(AirSlots.efficiency("compressorEfficiency").typical(0.68))
                    .input(ExhaustSlots.efficiency("turbineEfficiency").typical(0.62))
                    .input(EngineSlots.airFuelRatio())
                    .input(ExhaustSlots.mechanicalEfficiency())
                    .input(
                            Slot.number(
                                            "coolerEffectiveness",
                                            "\\varepsilon",
                                            Quantity.RATIO,
                                            "effectiveness of the charge cooler; 0 without one")
                                    .range(0, 1)
                                    .usual(0, 0.97, "coolers reach 0.5 to 0.9")
                                    .orElse(0.7))
                    .input(
                            Slot.number(
                                            "chargeLoss",
                                            "\\Delta p_c",
                                            Quantity.PRESSURE_DIFFERENCE,
                                            "drop from compressor to manifold, through the cooler")
                                    .range(0, 100e3)
                                    .usual(
                                            0,
                                            25e3,
                                            "a sound cooler and its pipes lose up to 15 kPa")
                                    .orElse(0))
                    .input(
                            Slot.number(
                                            "ambientPressure",
                                            "p_a",
                                            Quantity.PRESSURE,
                                            "pressure of the air around, and at the compressor's inlet")
                                    .range(30e3, 150e3)
                                    .usual(
                                            60e3,
                                            110e3,
                                            "the air around is between 60 kPa, on a high pass, and 110 kPa")
                                    .orElse(Units.STANDARD_ATMOSPHERE))
                    .input(AirSlots.inletTemperature("ambientTemperature", "T_a").orElse(298.15))
                    .input(ExhaustSlots.gamma())
                    .input(ExhaustSlots.cp())
                    .output(
                            "expansionRatio",
                            "\\Pi_t",
                            Quantity.RATIO,
                            "turbine inlet over outlet pressure there")
                    .output(
                            "turbineInletPressure",
                            "p_3",
                            Quantity.PRESSURE,
                            "pressure before the turbine there")
                    .output("exhaustFlow", "\\dot m_e", Quantity.MASS_FLOW, "exhaust flow there")
                    .output(
                            "speed",
                            "n",
                            Quantity.ROTATION,
                            "lowest speed of the crankshaft at the target boost")
                    .assumes(
                            "full throttle, steady, the gate shut: all exhaust goes through the turbine",
                            "the efficiencies are those at this flow, lower than the best ones",
                            "a four-stroke engine; its filling is taken as given, whatever the pressure before the turbine")
                    .source(
                            "shaft balance: first law; flow: Stodola's ellipse, from memory; together: our own, no source")
                    .by(BoostThreshold::work);

    private BoostThreshold() {}

    /**
     * Exhaust flow that holds an expansion ratio across a turbine.
     *
     * @param effectiveArea m²
     * @param expansionRatio at least 1
     * @param outletPressure absolute, Pa
     * @param turbineInletTemperature K
     * @param gamma ratio of specific heats, above 1
     * @param gasConstant J/(kg·K)
     * @return kg/s
     */
    public static double exhaustFlow(
            double effectiveArea,
            double expansionRatio,
            double outletPressure,
            double turbineInletTemperature,
            double gamma,
            double gasConstant) {
        return TurbineSwallow.massFlow(
                effectiveArea,
                expansionRatio * outletPressure,
                turbineInletTemperature,
                outletPressure,
                gamma,
                gasConstant);
    }

    private static void work(Working w) {
        double ratio = balanceSteps(w, compressorSteps(w));
        double gasConstant =
                w.step(
                        "gasConstant",
                        "R",
                        Quantity.SPECIFIC_HEAT,
                        "@cp \\cdot \\frac{@gamma - 1}{@gamma}",
                        ExhaustSlots.gasConstant(w.in("gamma"), w.in("cp")),
                        "The gas constant that belongs to the two.");
        double flow =
                w.out(
                        "exhaustFlow",
                        "@effectiveArea \\cdot \\frac{@turbineInletPressure}{\\sqrt{@gasConstant \\cdot @turbineInletTemperature}} \\cdot "
                                + "\\sqrt{@gamma}\\left(\\frac{2}{@gamma + 1}\\right)^{\\frac{@gamma + 1}{2(@gamma - 1)}}"
                                + "\\sqrt{1 - @expansionRatio^{-2}}",
                        exhaustFlow(
                                w.in("effectiveArea"),
                                ratio,
                                w.in("outletPressure"),
                                w.in("turbineInletTemperature"),
                                w.in("gamma"),
                                gasConstant),
                        "What the turbine swallows at that ratio.");
        engineSteps(w, flow);
        w.caution(
                w.in("outletPressure") < w.in("ambientPressure"),
                "outletPressure",
                () ->
                        "A pipe to the air around does not hold less than ambient pressure: check both.");
    }

    /** What the compressor takes for each kilogram, J/kg. */
    private static double compressorSteps(Working w) {
        double ratio =
                w.step(
                        "pressureRatio",
                        "\\Pi_c",
                        Quantity.RATIO,
                        "\\frac{@ambientPressure + @targetBoost + @chargeLoss}{@ambientPressure}",
                        compressorRatio(w),
                        "What the compressor has to do.");
        return w.step(
                "compressorWork",
                "w_c",
                Quantity.SPECIFIC_ENERGY,
                "1005 \\cdot \\frac{@ambientTemperature}{@compressorEfficiency}\\left(@pressureRatio^{0.4/1.4} - 1\\right)",
                CompressorOutlet.specificWork(
                        w.in("ambientTemperature"), ratio, w.in("compressorEfficiency")),
                "What it takes for each kilogram of air.");
    }

    private static double balanceSteps(Working w, double compressorWork) {
        double available =
                w.step(
                        "available",
                        "w_0",
                        Quantity.SPECIFIC_ENERGY,
                        "@mechanicalEfficiency \\cdot @turbineEfficiency\\left(1 + \\frac{1}{@airFuelRatio}\\right) \\cdot @cp \\cdot @turbineInletTemperature",
                        TurboBalance.available(
                                w.in("turbineInletTemperature"),
                                w.in("turbineEfficiency"),
                                w.in("mechanicalEfficiency"),
                                w.in("airFuelRatio"),
                                0,
                                w.in("cp")),
                        "What expansion to nothing would give the compressor, for each kilogram of air.");
        double ratio = TurboBalance.expansionRatio(compressorWork, available, w.in("gamma"));
        if (ratio == Double.POSITIVE_INFINITY) {
            throw TurboBalance.tooLittle("boost-threshold", compressorWork, available);
        }
        w.out(
                "expansionRatio",
                "\\left(1 - \\frac{@compressorWork}{@available}\\right)^{-@gamma/(@gamma - 1)}",
                ratio,
                "Expansion far enough to give just what is taken.");
        w.out(
                "turbineInletPressure",
                "@expansionRatio \\cdot @outletPressure",
                ratio * w.in("outletPressure"),
                "The pressure behind, multiplied.");
        return ratio;
    }

    private static void engineSteps(Working w, double exhaustFlow) {
        double air =
                w.step(
                        "airFlow",
                        "\\dot m_a",
                        Quantity.MASS_FLOW,
                        "\\frac{@exhaustFlow}{1 + 1/@airFuelRatio}",
                        PowerToFlow.airFlowOf(exhaustFlow, w.in("airFuelRatio")),
                        "The exhaust without its fuel.");
        double manifold = w.in("ambientPressure") + w.in("targetBoost");
        w.step(
                "manifoldPressure",
                "p_m",
                Quantity.PRESSURE,
                "@ambientPressure + @targetBoost",
                manifold,
                "Boost counts from ambient; density wants it absolute.");
        double temperature = chargeSteps(w);
        w.out(
                "speed",
                "\\frac{2 \\cdot @airFlow \\cdot 287.05 \\cdot @manifoldTemperature}{@volumetricEfficiency \\cdot @manifoldPressure \\cdot @displacement}",
                SpeedDensity.speed(
                        air,
                        w.in("displacement"),
                        w.in("volumetricEfficiency"),
                        manifold,
                        temperature),
                "The speed at which the engine takes in that much.");
    }

    private static double chargeSteps(Working w) {
        double ambient = w.in("ambientTemperature");
        double hot =
                w.step(
                        "compressed",
                        "T_2",
                        Quantity.TEMPERATURE,
                        "@ambientTemperature + \\frac{@compressorWork}{1005}",
                        CompressorOutlet.temperature(
                                ambient, compressorRatio(w), w.in("compressorEfficiency")),
                        "The work of the compressor heats the air.");
        return w.step(
                "manifoldTemperature",
                "T_m",
                Quantity.TEMPERATURE,
                "@compressed - @coolerEffectiveness\\,(@compressed - @ambientTemperature)",
                ChargeCooler.temperature(hot, ambient, w.in("coolerEffectiveness")),
                "The cooler takes its share of that.");
    }

    private static double compressorRatio(Working w) {
        return PressureRatio.of(
                w.in("targetBoost"), 0, w.in("chargeLoss"), w.in("ambientPressure"));
    }
}

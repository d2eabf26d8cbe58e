// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.physics.compressor.AirSlots;
import hotside.physics.compressor.CompressorOutlet;
import hotside.physics.compressor.PressureRatio;
import hotside.physics.compressor.WheelPower;
import hotside.physics.engine.EngineSlots;
import hotside.physics.engine.PowerToFlow;
import hotside.physics.turbine.ExhaustSlots;
import hotside.physics.turbine.TurbineExpansion;
import hotside.physics.turbine.TurbineSwallow;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Share of the exhaust that must go round the turbine to hold a boost.
 *
 * <p>Source: first law on a shaft at steady speed (Heywood 1988, section 6.8, from memory) with the
 * flow that the turbine swallows, {@link TurbineSwallow}. Both the flow through the turbine and the
 * work of each kilogram grow with the pressure before it, so exactly one pressure gives the
 * compressor's power; it is bracketed and found to 1e-12 of itself. What does not fit through the
 * turbine at that pressure must go round.
 */
public final class GateShare {
    private static final String ID = "gate-share";

    public static final Relation RELATION =
            Relation.named(ID, "Share that must go round the turbine", "Gate")
                    .says(
                            "A boost asks for a certain power, and a turbine of a certain size gives it at one pressure before it"
                                    + " and one flow. The engine sends more than that flow; the rest must go round the turbine,"
                                    + " through the gate, or boost rises.")
                    .tex(
                            "\\eta_m\\,\\dot m_t(p_3)\\,w_t(p_3) = \\dot m_a\\,w_c,\\quad y = 1 - \\frac{\\dot m_t}{\\dot m_a (1 + 1/A)}")
                    .input(airFlow())
                    .input(GateSlots.targetBoost())
                    .input(ExhaustSlots.effectiveArea().above(0, 0.01))
                    .input(ExhaustSlots.outletPressure().above(1e3, 500e3))
                    .input(ExhaustSlots.inletTemperature("turbineInletTemperature"))
                    .input(AirSlots.efficiency("compressorEfficiency"))
                    .input(ExhaustSlots.efficiency("turbineEfficiency"))
                    .input(EngineSlots.airFuelRatio())
                    .input(ExhaustSlots.mechanicalEfficiency())
                    .input(chargeLoss())
                    .input(GateSlots.ambientPressure())
                    .input(AirSlots.inletTemperature("ambientTemperature", "T_a").orElse(298.15))
                    .input(ExhaustSlots.gamma())
                    .input(ExhaustSlots.cp())
                    .output(
                            "turbineInletPressure",
                            "p_3",
                            Quantity.PRESSURE,
                            "pressure before turbine and gate")
                    .output(
                            "turbineFlow",
                            "\\dot m_t",
                            Quantity.MASS_FLOW,
                            "exhaust through the turbine")
                    .output(
                            "bypassFlow",
                            "\\dot m_y",
                            Quantity.MASS_FLOW,
                            "exhaust round the turbine")
                    .output(
                            "bypassFraction",
                            "y",
                            Quantity.PERCENTAGE,
                            "share of the exhaust that goes round the turbine")
                    .assumes(
                            "steady boost; efficiencies as given",
                            "the compressor breathes from ambient",
                            "the turbine follows one curve of flow against pressure",
                            "the pressure behind the turbine is the one with all its flow in the pipe")
                    .source(
                            "first law; Heywood, Internal Combustion Engine Fundamentals (1988), section 6.8, from memory",
                            "Stodola, Dampf- und Gasturbinen (1922), from memory")
                    .by(GateShare::work);

    private GateShare() {}

    /**
     * Pressure before a turbine at which it gives a shaft power with the flow it then swallows.
     *
     * @param shaftPower that must reach the compressor, W, at least 0
     * @param exhaustFlow all there is, kg/s, above 0
     * @param effectiveArea of the turbine, m², above 0
     * @param turbineInletTemperature K
     * @param turbineEfficiency isentropic, total to static
     * @param mechanicalEfficiency of the bearings
     * @param outletPressure absolute, Pa, above 0
     * @param gamma ratio of specific heats of the exhaust, above 1
     * @param cp of the exhaust, J/(kg·K)
     * @return absolute, Pa
     * @throws RelationException if all the exhaust together does not give that power
     */
    public static double turbineInletPressure(
            double shaftPower,
            double exhaustFlow,
            double effectiveArea,
            double turbineInletTemperature,
            double turbineEfficiency,
            double mechanicalEfficiency,
            double outletPressure,
            double gamma,
            double cp) {
        double gasConstant = ExhaustSlots.gasConstant(gamma, cp);
        UnivariateFunction toSpare =
                inlet ->
                        mechanicalEfficiency
                                        * TurbineSwallow.massFlow(
                                                effectiveArea,
                                                inlet,
                                                turbineInletTemperature,
                                                outletPressure,
                                                gamma,
                                                gasConstant)
                                        * TurbineExpansion.specificWork(
                                                turbineInletTemperature,
                                                inlet / outletPressure,
                                                turbineEfficiency,
                                                gamma,
                                                cp)
                                - shaftPower;
        double shut =
                TurbineSwallow.inletPressure(
                        exhaustFlow,
                        effectiveArea,
                        turbineInletTemperature,
                        outletPressure,
                        gamma,
                        gasConstant);
        double spare = toSpare.value(shut);
        if (spare < 0) {
            throw tooLittle(shaftPower, shaftPower + spare);
        }
        return spare == 0
                ? shut
                : new BrentSolver(1e-13, 1e-9, 0).solve(500, toSpare, outletPressure, shut);
    }

    private static RelationException tooLittle(double needed, double given) {
        return new RelationException(
                "targetBoost",
                ID
                        + ": with the gate shut the turbine gives "
                        + Numbers.significant(given / 1e3, 4)
                        + " kW, the compressor takes "
                        + Numbers.significant(needed / 1e3, 4)
                        + " kW, so the boost is out of reach; expected less boost, more flow, a smaller or better"
                        + " turbine, or hotter exhaust");
    }

    private static Slot airFlow() {
        return Slot.number("airFlow", "\\dot m_a", Quantity.MASS_FLOW, "air into the engine")
                .above(0, 10)
                .usual(
                        0.005,
                        2,
                        "engines on wheels breathe from some grams a second to about 2 kg/s")
                .typical(0.36);
    }

    private static Slot chargeLoss() {
        return Slot.number(
                        "chargeLoss",
                        "\\Delta p_c",
                        Quantity.PRESSURE_DIFFERENCE,
                        "drop from compressor to manifold, through the cooler")
                .range(0, 100e3)
                .usual(0, 25e3, "a sound cooler and its pipes lose up to 15 kPa")
                .orElse(0);
    }

    private static void work(Working w) {
        double power = compressorSteps(w);
        double exhaust =
                w.step(
                        "exhaustFlow",
                        "\\dot m_e",
                        Quantity.MASS_FLOW,
                        "@airFlow\\left(1 + \\frac{1}{@airFuelRatio}\\right)",
                        PowerToFlow.exhaustFlow(w.in("airFlow"), w.in("airFuelRatio")),
                        "The engine sends out its air and its fuel.");
        double flow = turbineSteps(w, power, exhaust);
        w.out(
                "bypassFlow",
                "@exhaustFlow - @turbineFlow",
                exhaust - flow,
                "What the turbine does not swallow at that pressure must go round.");
        double fraction =
                w.out(
                        "bypassFraction",
                        "\\frac{@bypassFlow}{@exhaustFlow}",
                        1 - flow / exhaust,
                        "As a share of all.");
        w.caution(
                fraction > 0.6,
                "bypassFraction",
                () ->
                        "Few gates pass more than half of the exhaust: see whether the gate is large enough.");
    }

    private static double compressorSteps(Working w) {
        double ratio =
                w.step(
                        "pressureRatio",
                        "\\Pi_c",
                        Quantity.RATIO,
                        "\\frac{@ambientPressure + @targetBoost + @chargeLoss}{@ambientPressure}",
                        PressureRatio.of(
                                w.in("targetBoost"),
                                0,
                                w.in("chargeLoss"),
                                w.in("ambientPressure")),
                        "What the compressor has to do, in absolute pressures.");
        double work =
                w.step(
                        "compressorWork",
                        "w_c",
                        Quantity.SPECIFIC_ENERGY,
                        "1005\\,\\frac{@ambientTemperature}{@compressorEfficiency}\\left(@pressureRatio^{0.4/1.4} - 1\\right)",
                        CompressorOutlet.specificWork(
                                w.in("ambientTemperature"), ratio, w.in("compressorEfficiency")),
                        "What it takes for each kilogram of air.");
        return w.step(
                "compressorPower",
                "P_c",
                Quantity.POWER,
                "@airFlow\\,@compressorWork",
                WheelPower.of(w.in("airFlow"), work),
                "The power that the turbine must give, no more and no less.");
    }

    /** Writes what the turbine does and gives its flow. */
    private static double turbineSteps(Working w, double power, double exhaust) {
        double area = w.in("effectiveArea");
        double temperature = w.in("turbineInletTemperature");
        double outlet = w.in("outletPressure");
        double gamma = w.in("gamma");
        double cp = w.in("cp");
        double inlet =
                w.out(
                        "turbineInletPressure",
                        "",
                        turbineInletPressure(
                                power,
                                exhaust,
                                area,
                                temperature,
                                w.in("turbineEfficiency"),
                                w.in("mechanicalEfficiency"),
                                outlet,
                                gamma,
                                cp),
                        "Found by trying: the pressure at which flow and work of the turbine together give that power.");
        w.step(
                "turbineWork",
                "w_t",
                Quantity.SPECIFIC_ENERGY,
                "@turbineEfficiency\\,@cp\\,@turbineInletTemperature\\left(1 - \\left(\\frac{@outletPressure}{@turbineInletPressure}\\right)^{(@gamma - 1)/@gamma}\\right)",
                TurbineExpansion.specificWork(
                        temperature, inlet / outlet, w.in("turbineEfficiency"), gamma, cp),
                "Then each kilogram gives this much.");
        return w.out(
                "turbineFlow",
                "\\frac{@compressorPower}{@mechanicalEfficiency\\,@turbineWork}",
                TurbineSwallow.massFlow(
                        area,
                        inlet,
                        temperature,
                        outlet,
                        gamma,
                        ExhaustSlots.gasConstant(gamma, cp)),
                "And so many kilograms go through the turbine, which is what it swallows at that pressure.");
    }
}

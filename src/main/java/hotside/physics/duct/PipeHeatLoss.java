// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * How much a pipe cools the gas.
 *
 * <p>Source: heat transfer units of a stream along a wall against surroundings of one temperature
 * (Kays and London; Incropera and DeWitt). The heat capacity is the mean between inlet and outlet,
 * so the heat is exactly the change of enthalpy. The coefficient is the overall one, on the bore:
 * inside film, wall, wrap, outside film and radiation together, and is seldom known within 30 %.
 */
public final class PipeHeatLoss {
    public static final Relation RELATION =
            Relation.named("pipe-heat-loss", "What the pipe lets out as heat", "Exhaust flow")
                    .says(
                            "A bare pipe cools the gas on its way. Cooler gas is denser and slower, so the pipe behind costs less"
                                    + " pressure; before the turbine the same heat is work lost.")
                    .tex(
                            "T_o = T_\\infty + (T_i - T_\\infty)\\,e^{-N},\\qquad N = \\frac{U\\,\\pi D L}{\\dot m\\,c_p}")
                    .input(DuctSlots.massFlow())
                    .input(
                            Slot.number(
                                            "inletTemperature",
                                            "T_i",
                                            Quantity.TEMPERATURE,
                                            "temperature of the gas at the inlet")
                                    .range(250, 2000)
                                    .usual(300, 1400, "exhaust runs from about 400 to 1300 K")
                                    .typical(1000))
                    .input(
                            Slot.number(
                                            "surroundings",
                                            "T_\\infty",
                                            Quantity.TEMPERATURE,
                                            "temperature of the air around the pipe")
                                    .range(220, 1000)
                                    .usual(
                                            250,
                                            420,
                                            "air around a pipe is between a cold road and a hot engine bay")
                                    .typical(310))
                    .input(DuctSlots.diameter())
                    .input(DuctSlots.length())
                    .input(
                            Slot.number(
                                            "heatTransferCoefficient",
                                            "U",
                                            Quantity.HEAT_TRANSFER,
                                            "overall coefficient from gas to surroundings, on the bore")
                                    .range(0, 2000)
                                    .usual(
                                            2,
                                            120,
                                            "a wrapped pipe has about 5 to 15, a bare one in still air 20 to 40, in the wind"
                                                    + " of a road up to 80 W/(m²·K)")
                                    .typical(30))
                    .input(DuctSlots.lambda())
                    .output(
                            "outletTemperature",
                            "T_o",
                            Quantity.TEMPERATURE,
                            "temperature of the gas at the outlet")
                    .output("heat", "\\dot Q", Quantity.POWER, "heat that the pipe lets out")
                    .assumes(
                            "one coefficient and one temperature around, all along the pipe",
                            "gas mixed over the bore; total temperature counts",
                            "burned petrol at the given lambda")
                    .source(
                            "Kays and London, Compact Heat Exchangers (1984); Incropera and DeWitt; from memory")
                    .by(PipeHeatLoss::work);

    private static final int MOST_ROUNDS = 30;

    /**
     * @param outletTemperature K
     * @param heat let out, W; negative if the surroundings are hotter
     * @param meanCp mean heat capacity between inlet and outlet, J/(kg·K)
     * @param units heat transfer units
     */
    public record State(double outletTemperature, double heat, double meanCp, double units) {}

    private PipeHeatLoss() {}

    /**
     * @param massFlow kg/s, above 0
     * @param inletTemperature K, 200 to 3000
     * @param surroundings K, 200 to 3000
     * @param diameter bore, m
     * @param length m
     * @param coefficient overall, on the bore, W/(m²·K)
     */
    public static State of(
            double massFlow,
            double inletTemperature,
            double surroundings,
            double diameter,
            double length,
            double coefficient,
            ExhaustGas gas) {
        double conductance = coefficient * Math.PI * diameter * length;
        double outlet = inletTemperature;
        double cp = gas.cp(inletTemperature);
        // the mean heat capacity hangs on the outlet by a few percent, so a few rounds settle both
        for (int i = 0; i < MOST_ROUNDS; i++) {
            double before = outlet;
            outlet =
                    surroundings
                            + (inletTemperature - surroundings)
                                    * Math.exp(-conductance / (massFlow * cp));
            cp = meanCp(inletTemperature, outlet, gas);
            if (Math.abs(outlet - before) < 1e-11 * outlet) {
                break;
            }
        }
        double heat = massFlow * cp * (inletTemperature - outlet);
        return new State(outlet, heat, cp, conductance / (massFlow * cp));
    }

    private static double meanCp(double from, double to, ExhaustGas gas) {
        return Math.abs(from - to) < 1e-3
                ? gas.cp((from + to) / 2)
                : (gas.enthalpy(from) - gas.enthalpy(to)) / (from - to);
    }

    private static void work(Working w) {
        double inlet = w.in("inletTemperature");
        double around = w.in("surroundings");
        double diameter = w.in("diameter");
        double length = w.in("length");
        double coefficient = w.in("heatTransferCoefficient");
        State s =
                of(
                        w.in("massFlow"),
                        inlet,
                        around,
                        diameter,
                        length,
                        coefficient,
                        ExhaustGas.at(w.in("lambda")));
        w.step(
                "wall",
                "A_w",
                Quantity.AREA,
                "\\pi\\,@diameter\\,@length",
                Math.PI * diameter * length,
                "The wall that the heat goes through.");
        w.step(
                "cp",
                "c_p",
                Quantity.SPECIFIC_HEAT,
                "",
                s.meanCp,
                "The heat capacity of burned petrol, the mean between inlet and outlet.");
        w.step(
                "units",
                "N",
                Quantity.RATIO,
                "\\frac{@heatTransferCoefficient\\,@wall}{@massFlow\\,@cp}",
                s.units,
                "Heat transfer units: the wall's power to cool against the heat that the stream carries.");
        w.out(
                "outletTemperature",
                "@surroundings + (@inletTemperature - @surroundings)\\,e^{-@units}",
                s.outletTemperature,
                "The difference to the surroundings dies away along the pipe.");
        w.out(
                "heat",
                "@massFlow\\,@cp\\,(@inletTemperature - @outletTemperature)",
                s.heat,
                "What the gas lost went through the wall.");
        w.caution(
                around > inlet,
                "surroundings",
                () -> "the surroundings are hotter than the gas: the pipe heats it instead");
    }
}

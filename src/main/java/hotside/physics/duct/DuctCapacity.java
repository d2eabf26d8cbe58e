// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The flow that a pipe carries for a given reading at its inlet tap, and the flow at which its exit
 * chokes.
 *
 * <p>Source: {@link DuctFlow} turned round by Brent's method to 1e-13. What holds there holds here.
 * The choking flow is the one that brings the exit to the speed of sound at the pressure outside;
 * more passes only by lifting the pressure in the whole pipe.
 */
public final class DuctCapacity {
    public static final Relation RELATION =
            Relation.named("duct-capacity", "How much a pipe carries", "Exhaust flow")
                    .says(
                            "Choose the pressure that you grant the pipe at its inlet tap, and this is the flow it carries. A bore"
                                    + " belongs to a flow, not to an engine.")
                    .tex("p_i(\\dot m) - p_a = \\Delta p")
                    .input(DuctFlow.totalTemperature())
                    .input(DuctFlow.exitPressure())
                    .input(DuctSlots.diameter())
                    .input(DuctSlots.length())
                    .input(DuctSlots.roughness())
                    .input(DuctSlots.lossSum())
                    .input(DuctSlots.lambda())
                    .input(
                            Slot.number(
                                            "dropAllowed",
                                            "\\Delta p",
                                            Quantity.PRESSURE_DIFFERENCE,
                                            "what the inlet tap may read above the pressure outside")
                                    .above(0, 1e6)
                                    .usual(
                                            500,
                                            100e3,
                                            "downpipes are laid out for a few kPa to some tens of kPa")
                                    .typical(7e3))
                    .output("massFlow", "\\dot m", Quantity.MASS_FLOW, "exhaust that it carries")
                    .output(
                            "chokingFlow",
                            "\\dot m^*",
                            Quantity.MASS_FLOW,
                            "exhaust at which the exit chokes at the pressure outside")
                    .assumes(
                            "all that duct-flow assumes: no heat through the wall, one bore, steady mean flow")
                    .source("duct-flow turned round: Fanno relations and Colebrook (1939)")
                    .by(DuctCapacity::work);

    private static final double ACCURACY = 1e-13;
    private static final int MOST_EVALUATIONS = 200;
    private static final int MOST_DOUBLINGS = 60;

    /**
     * @param massFlow what it carries, kg/s
     * @param chokingFlow what it carries when the exit just chokes, kg/s
     */
    public record State(double massFlow, double chokingFlow) {}

    private DuctCapacity() {}

    /**
     * @param totalTemperature K, 200 to 3000
     * @param exitPressure absolute static pressure outside the exit, Pa, above 0
     * @param dropAllowed static pressure at the inlet above {@code exitPressure}, Pa, above 0
     * @throws RelationException if the pipe has neither wall nor fittings, or if the drop falls in
     *     the gap between laminar and turbulent flow
     */
    public static State of(
            double totalTemperature,
            double exitPressure,
            Pipe pipe,
            ExhaustGas gas,
            double dropAllowed) {
        double choking = chokingFlow(totalTemperature, exitPressure, pipe, gas);
        if (pipe.length() == 0 && pipe.lossSum() == 0) {
            throw new RelationException(
                    "length",
                    "duct-capacity: a pipe without length and without losses has no drop below choking");
        }
        UnivariateFunction miss =
                flow ->
                        DuctFlow.of(flow, totalTemperature, exitPressure, pipe, gas).drop()
                                - dropAllowed;
        double high = choking;
        for (int i = 0; miss.value(high) < 0; i++) {
            if (i == MOST_DOUBLINGS) {
                throw new RelationException(
                        "exitPressure",
                        "duct-capacity: no flow is found that leaves against "
                                + Numbers.significant(exitPressure, 5)
                                + " Pa");
            }
            high *= 2;
        }
        double flow = new BrentSolver(ACCURACY, 0, 0).solve(MOST_EVALUATIONS, miss, 0, high);
        if (Math.abs(miss.value(flow)) > 1e-6 * dropAllowed) {
            throw new RelationException(
                    "dropAllowed",
                    "duct-capacity: no flow gives a drop of "
                            + Numbers.significant(dropAllowed, 5)
                            + " Pa: it lies in the jump from laminar to turbulent flow at "
                            + Numbers.significant(flow, 5)
                            + " kg/s");
        }
        return new State(flow, choking);
    }

    /** Flow at which the exit runs at the speed of sound with the pressure outside, kg/s. */
    public static double chokingFlow(
            double totalTemperature, double exitPressure, Pipe pipe, ExhaustGas gas) {
        double function = DuctFlow.fluxFunction(1, gas.gamma(totalTemperature));
        return exitPressure
                * function
                * pipe.area()
                / Math.sqrt(gas.gasConstant() * totalTemperature);
    }

    private static void work(Working w) {
        double temperature = w.in("totalTemperature");
        double outside = w.in("exitPressure");
        Pipe pipe = new Pipe(w.in("diameter"), w.in("length"), w.in("roughness"), w.in("lossSum"));
        ExhaustGas gas = ExhaustGas.at(w.in("lambda"));
        State s = of(temperature, outside, pipe, gas, w.in("dropAllowed"));
        DuctFlow.writeGas(w, temperature, gas);
        w.step(
                "area",
                "A",
                Quantity.AREA,
                "\\frac{\\pi}{4}\\,@diameter^2",
                pipe.area(),
                "The area of the bore.");
        w.out(
                "chokingFlow",
                "\\frac{@exitPressure\\,@area\\sqrt{@gamma(@gamma + 1)/2}}{\\sqrt{@gasConstant\\,@totalTemperature}}",
                s.chokingFlow,
                "The flow that leaves at the speed of sound at the pressure outside.");
        w.step(
                "inlet",
                "p_i",
                Quantity.PRESSURE,
                "@exitPressure + @dropAllowed",
                outside + w.in("dropAllowed"),
                "What the tap may read at most.");
        w.out(
                "massFlow",
                "",
                s.massFlow,
                "The flow is tried until the pipe, worked back from its exit, asks for just this pressure.");
        caution(w, s, DuctFlow.of(s.massFlow, temperature, outside, pipe, gas));
    }

    private static void caution(Working w, State s, DuctFlow.State pipe) {
        FrictionFactor.cautionTransition(w, pipe.reynolds(), "massFlow");
        w.caution(
                s.massFlow > s.chokingFlow,
                "massFlow",
                () ->
                        "this flow is beyond choking: the exit holds "
                                + Numbers.significant(pipe.exitStatic() / 1000, 4)
                                + " kPa inside, and each further kPa buys flow only in proportion");
    }
}

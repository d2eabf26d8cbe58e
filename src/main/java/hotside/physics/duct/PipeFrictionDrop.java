// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * Pressure drop of a pipe with its bends, the density taken as constant.
 *
 * <p>Source: Darcy and Weisbach; friction factor by {@link FrictionFactor}. The gas is taken as of
 * one density: with a drop of a tenth of the pressure that density is uncertain by 10 % from end to
 * end, so the drop by about 5 %, and the pressure that speeds the gas up along the pipe is left out
 * ({@link DuctFlow} has both).
 */
public final class PipeFrictionDrop {
    public static final Relation RELATION =
            Relation.named("pipe-friction-drop", "What a pipe costs in pressure", "Exhaust flow")
                    .says(
                            "Walls and bends take velocity heads. The pipe's share grows with its length over its bore, and the"
                                    + " head itself with the square of the flow and the fourth power of one over the bore.")
                    .tex(
                            "\\Delta p = \\left(f\\,\\frac{L}{D} + \\sum K\\right)\\frac{\\rho v^2}{2}")
                    .input(DuctSlots.massFlow())
                    .input(DuctSlots.pressure())
                    .input(DuctSlots.temperature())
                    .input(DuctSlots.diameter())
                    .input(DuctSlots.length())
                    .input(DuctSlots.roughness())
                    .input(DuctSlots.lossSum())
                    .input(DuctSlots.lambda())
                    .output("velocity", "v", Quantity.VELOCITY, "mean velocity over the bore")
                    .output("reynolds", "\\mathrm{Re}", Quantity.RATIO, "Reynolds number")
                    .output("frictionFactor", "f", Quantity.RATIO, "Darcy's friction factor")
                    .output(
                            "drop",
                            "\\Delta p",
                            Quantity.PRESSURE_DIFFERENCE,
                            "pressure lost to walls and fittings")
                    .assumes(
                            "constant density: below Mach 0.3 and a drop below a tenth of the pressure",
                            "steady mean flow in a round pipe of one bore",
                            "burned petrol at the given lambda")
                    .source(
                            "Darcy and Weisbach; any fluid mechanics text",
                            "friction factor: Colebrook (1939)")
                    .by(PipeFrictionDrop::work);

    /**
     * @param velocity m/s
     * @param reynolds Reynolds number
     * @param frictionFactor Darcy's
     * @param drop Pa
     */
    public record State(double velocity, double reynolds, double frictionFactor, double drop) {}

    private PipeFrictionDrop() {}

    /**
     * @param massFlow kg/s, above 0
     * @param pressure absolute static pressure that sets the density, Pa: the mean along the pipe
     * @param temperature static temperature, K
     */
    public static State of(
            double massFlow, double pressure, double temperature, Pipe pipe, ExhaustGas gas) {
        double density = gas.density(pressure, temperature);
        double velocity = massFlow / (density * pipe.area());
        double reynolds = ReynoldsNumber.of(massFlow, pipe.diameter(), gas.viscosity(temperature));
        double factor = FrictionFactor.of(reynolds, pipe.relativeRoughness());
        double drop = pipe.resistance(factor) * density * velocity * velocity / 2;
        return new State(velocity, reynolds, factor, drop);
    }

    private static void work(Working w) {
        double pressure = w.in("pressure");
        double temperature = w.in("temperature");
        Pipe pipe = new Pipe(w.in("diameter"), w.in("length"), w.in("roughness"), w.in("lossSum"));
        ExhaustGas gas = ExhaustGas.at(w.in("lambda"));
        State s = of(w.in("massFlow"), pressure, temperature, pipe, gas);
        w.step(
                "gasConstant",
                "R",
                Quantity.SPECIFIC_HEAT,
                "",
                gas.gasConstant(),
                "The gas constant of burned petrol at this lambda.");
        w.step(
                "density",
                "\\rho",
                Quantity.DENSITY,
                "\\frac{@pressure}{@gasConstant\\,@temperature}",
                gas.density(pressure, temperature),
                "Hot gas is thin.");
        w.step(
                "area",
                "A",
                Quantity.AREA,
                "\\frac{\\pi}{4}\\,@diameter^2",
                pipe.area(),
                "The area of the bore.");
        w.out(
                "velocity",
                "\\frac{@massFlow}{@density\\,@area}",
                s.velocity,
                "The volume that passes each second, over the area.");
        w.step(
                "viscosity",
                "\\mu",
                Quantity.VISCOSITY,
                "",
                gas.viscosity(temperature),
                "Sutherland's law for air, a little less for burned gas.");
        w.out(
                "reynolds",
                "\\frac{4\\,@massFlow}{\\pi\\,@diameter\\,@viscosity}",
                s.reynolds,
                "It decides how the wall rubs.");
        w.out(
                "frictionFactor",
                FrictionFactor.formula(s.reynolds),
                s.frictionFactor,
                FrictionFactor.reason(s.reynolds));
        w.step(
                "heads",
                "N",
                Quantity.RATIO,
                "@frictionFactor\\,\\frac{@length}{@diameter} + @lossSum",
                pipe.resistance(s.frictionFactor),
                "So many velocity heads are taken: by the wall and by the fittings.");
        w.out(
                "drop",
                "@heads\\cdot\\tfrac12\\,@density\\,@velocity^2",
                s.drop,
                "Heads times the velocity head.");
        caution(w, s, s.velocity / gas.speedOfSound(temperature), pressure);
    }

    private static void caution(Working w, State s, double mach, double pressure) {
        PipeVelocity.cautionFast(w, mach, "velocity");
        FrictionFactor.cautionTransition(w, s.reynolds, "reynolds");
        w.caution(
                s.drop > pressure,
                "drop",
                () ->
                        "the drop exceeds the pressure that there is: constant density makes no sense here,"
                                + " use duct-flow");
        w.caution(
                s.drop > 0.1 * pressure && s.drop <= pressure,
                "drop",
                () ->
                        "the drop is "
                                + Numbers.significant(100 * s.drop / pressure, 2)
                                + " % of the pressure: the density changes along the pipe by as much, and the drop is"
                                + " low by more than half of that; use duct-flow");
    }
}

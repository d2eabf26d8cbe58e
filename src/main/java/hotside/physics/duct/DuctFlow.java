// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * Exhaust in a pipe, marched back from the open end: friction, bends, the speed that the gas
 * gathers, and choking.
 *
 * <p>Source: adiabatic flow with friction, {@link FannoFlow}; friction factor by {@link
 * FrictionFactor}. Bends and fittings count as equivalent length, spread evenly along the pipe.
 * Gamma and viscosity are those at the total temperature, which the wall nearly has. Against a
 * march with a heat capacity that follows the gas, that changes the inlet pressure by less than 0.1
 * %. Heat through the wall is left out: a pipe that cools the gas by 100 K of 1000 K drops about 5
 * % less. Pulses are smoothed out, which makes the mean drop of a real engine larger.
 */
public final class DuctFlow {
    public static final Relation RELATION =
            Relation.named("duct-flow", "A pipe whose gas speeds up", "Exhaust flow")
                    .says(
                            "Gas that loses pressure to the wall swells and runs faster, and that costs pressure again. Worked"
                                    + " back from the open end this gives what a tap at the inlet reads, and the total behind it.")
                    .tex(
                            "F(M_i) = F(M_e) + f\\,\\frac{L + L_{eq}}{D},\\qquad F(M) = \\frac{1 - M^2}{\\gamma M^2} + \\frac{\\gamma + 1}{2\\gamma}\\ln\\frac{(\\gamma + 1)M^2}{2 + (\\gamma - 1)M^2}")
                    .input(DuctSlots.massFlow())
                    .input(totalTemperature())
                    .input(exitPressure())
                    .input(DuctSlots.diameter())
                    .input(DuctSlots.length())
                    .input(DuctSlots.roughness())
                    .input(DuctSlots.lossSum())
                    .input(DuctSlots.lambda())
                    .output(
                            "inletStatic",
                            "p_i",
                            Quantity.PRESSURE,
                            "static pressure at the inlet, what a wall tap reads")
                    .output(
                            "inletTotal",
                            "p_{0i}",
                            Quantity.PRESSURE,
                            "total pressure at the inlet")
                    .output("inletMach", "M_i", Quantity.RATIO, "Mach number at the inlet")
                    .output("exitMach", "M_e", Quantity.RATIO, "Mach number at the exit")
                    .output("choked", "c", Quantity.FLAG, "whether the exit is choked")
                    .output(
                            "exitStatic",
                            "p_e",
                            Quantity.PRESSURE,
                            "static pressure just inside the exit; above the outside if choked")
                    .output(
                            "drop",
                            "\\Delta p",
                            Quantity.PRESSURE_DIFFERENCE,
                            "inlet tap against the pressure outside")
                    .assumes(
                            "no heat through the wall",
                            "one bore; bends and fittings spread along it as equivalent length",
                            "gamma and viscosity at the total temperature, both constant",
                            "steady mean flow: pulses are smoothed out")
                    .source(
                            "Fanno relations; Farokhi, Aircraft Propulsion, 2nd ed. (2014), appendix E",
                            "friction factor: Colebrook (1939)",
                            "gas: Heywood (1988), chapter 4, and NASA/TP-2002-211556")
                    .by(DuctFlow::work);

    /**
     * @param inletStatic absolute static pressure at the inlet, Pa
     * @param inletTotal absolute total pressure at the inlet, Pa
     * @param inletMach at the inlet
     * @param exitStatic absolute static pressure just inside the exit, Pa; above the pressure
     *     outside if choked
     * @param exitMach at the exit, at most 1
     * @param choked true if the exit runs at the speed of sound with pressure to spare
     * @param drop inletStatic less the pressure outside, Pa
     * @param reynolds Reynolds number
     * @param frictionFactor Darcy's
     */
    public record State(
            double inletStatic,
            double inletTotal,
            double inletMach,
            double exitStatic,
            double exitMach,
            boolean choked,
            double drop,
            double reynolds,
            double frictionFactor) {}

    private DuctFlow() {}

    static Slot totalTemperature() {
        return Slot.number(
                        "totalTemperature",
                        "T_0",
                        Quantity.TEMPERATURE,
                        "total temperature of the gas, what a shielded probe reads")
                .range(200, 2000)
                .usual(
                        260,
                        1400,
                        "exhaust runs from about 400 K at a cool tail to 1300 K at the turbine")
                .typical(950);
    }

    static Slot exitPressure() {
        return Slot.number(
                        "exitPressure",
                        "p_a",
                        Quantity.PRESSURE,
                        "static pressure outside the exit, ambient for an open pipe")
                .above(1e3, 2e6)
                .usual(
                        60e3,
                        200e3,
                        "an open pipe ends in ambient air of 60 to 110 kPa; less is likely a gauge reading")
                .typical(Units.STANDARD_ATMOSPHERE);
    }

    /**
     * The state of a pipe that carries this flow into this pressure.
     *
     * @param massFlow kg/s, at least 0; with 0 the friction factor is not a number
     * @param totalTemperature K, 200 to 3000
     * @param exitPressure absolute static pressure outside the exit, Pa, above 0
     * @param gas see {@link ExhaustGas#at}; make it once and use it for many flows
     */
    public static State of(
            double massFlow,
            double totalTemperature,
            double exitPressure,
            Pipe pipe,
            ExhaustGas gas) {
        if (massFlow == 0) {
            return new State(
                    exitPressure, exitPressure, 0, exitPressure, 0, false, 0, 0, Double.NaN);
        }
        double gamma = gas.gamma(totalTemperature);
        double flux = flux(massFlow, totalTemperature, pipe, gas);
        double freeMach = exitMach(flux / exitPressure, gamma);
        boolean choked = freeMach > 1;
        double exitMach = choked ? 1 : freeMach;
        double exitStatic = choked ? flux / fluxFunction(1, gamma) : exitPressure;

        double reynolds =
                ReynoldsNumber.of(massFlow, pipe.diameter(), gas.viscosity(totalTemperature));
        double factor = FrictionFactor.of(reynolds, pipe.relativeRoughness());
        double inletMach = FannoFlow.upstreamMach(exitMach, pipe.resistance(factor), gamma);
        double inletStatic =
                exitStatic * fluxFunction(exitMach, gamma) / fluxFunction(inletMach, gamma);
        return new State(
                inletStatic,
                StaticTotal.total(inletStatic, inletMach, gamma),
                inletMach,
                exitStatic,
                exitMach,
                choked,
                inletStatic - exitPressure,
                reynolds,
                factor);
    }

    /** ṁ √(R T0) / A, Pa: over the static pressure it is a function of Mach number alone. */
    static double flux(double massFlow, double totalTemperature, Pipe pipe, ExhaustGas gas) {
        return massFlow * Math.sqrt(gas.gasConstant() * totalTemperature) / pipe.area();
    }

    /** √γ M √(1 + (γ−1)/2 M²): the flux over the static pressure. */
    static double fluxFunction(double mach, double gamma) {
        return mach * Math.sqrt(gamma * (1 + (gamma - 1) / 2 * mach * mach));
    }

    /** The Mach number of this flux over static pressure; the inverse of {@link #fluxFunction}. */
    static double exitMach(double ratio, double gamma) {
        double square = ratio * ratio / gamma;
        return Math.sqrt(2 * square / (1 + Math.sqrt(1 + 2 * (gamma - 1) * square)));
    }

    private static void work(Working w) {
        double massFlow = w.in("massFlow");
        double temperature = w.in("totalTemperature");
        double outside = w.in("exitPressure");
        Pipe pipe = new Pipe(w.in("diameter"), w.in("length"), w.in("roughness"), w.in("lossSum"));
        ExhaustGas gas = ExhaustGas.at(w.in("lambda"));
        State s = of(massFlow, temperature, outside, pipe, gas);
        writeGas(w, temperature, gas);
        writeExit(w, flux(massFlow, temperature, pipe, gas), s, pipe, gas.gamma(temperature));
        writeFriction(w, s, pipe, gas.viscosity(temperature));
        writeInlet(w, s);
        FrictionFactor.cautionTransition(w, s.reynolds, "massFlow");
        w.caution(
                s.choked,
                "exitMach",
                () ->
                        "the exit is choked: the pressure inside it has risen to "
                                + Numbers.significant(s.exitStatic / 1000, 4)
                                + " kPa to pass this flow, and lowering the pressure outside changes nothing");
    }

    static void writeGas(Working w, double temperature, ExhaustGas gas) {
        w.step(
                "gasConstant",
                "R",
                Quantity.SPECIFIC_HEAT,
                "",
                gas.gasConstant(),
                "The gas constant of burned petrol at this lambda.");
        w.step(
                "gamma",
                "\\gamma",
                Quantity.RATIO,
                "",
                gas.gamma(temperature),
                "The ratio of its heat capacities at the total temperature.");
    }

    private static void writeExit(Working w, double flux, State s, Pipe pipe, double gamma) {
        w.step(
                "area",
                "A",
                Quantity.AREA,
                "\\frac{\\pi}{4}\\,@diameter^2",
                pipe.area(),
                "The area of the bore.");
        w.step(
                "flux",
                "G",
                Quantity.PRESSURE,
                "\\frac{@massFlow\\sqrt{@gasConstant\\,@totalTemperature}}{@area}",
                flux,
                "The flow per area, in the measure that sets the Mach number once it is divided by pressure.");
        w.step(
                "freeMach",
                "M'",
                Quantity.RATIO,
                "\\sqrt{\\frac{\\sqrt{1 + 2(@gamma - 1)(@flux/@exitPressure)^2/@gamma} - 1}{@gamma - 1}}",
                exitMach(flux / w.in("exitPressure"), gamma),
                "The Mach number that the flow would need at the pressure outside.");
        w.out(
                "choked",
                "",
                s.choked ? 1 : 0,
                s.choked
                        ? "More than 1 cannot be: the exit chokes and lifts its own pressure."
                        : "Not above 1, so the exit takes the pressure outside.");
        w.out(
                "exitMach",
                s.choked ? "1" : "@freeMach",
                s.exitMach,
                "The flow leaves at this Mach number.");
        w.out(
                "exitStatic",
                s.choked ? "\\frac{@flux}{\\sqrt{@gamma(@gamma + 1)/2}}" : "@exitPressure",
                s.exitStatic,
                s.choked
                        ? "At the speed of sound the flow fixes the pressure."
                        : "A jet slower than sound leaves at the pressure outside.");
    }

    private static void writeFriction(Working w, State s, Pipe pipe, double viscosity) {
        w.step(
                "viscosity",
                "\\mu",
                Quantity.VISCOSITY,
                "",
                viscosity,
                "Sutherland's law for air, a little less for burned gas.");
        w.step(
                "reynolds",
                "\\mathrm{Re}",
                Quantity.RATIO,
                "\\frac{4\\,@massFlow}{\\pi\\,@diameter\\,@viscosity}",
                s.reynolds,
                "It decides how the wall rubs.");
        w.step(
                "frictionFactor",
                "f",
                Quantity.RATIO,
                FrictionFactor.formula(s.reynolds),
                s.frictionFactor,
                FrictionFactor.reason(s.reynolds));
        w.step(
                "equivalentLength",
                "L_{eq}",
                Quantity.LENGTH,
                "@lossSum\\,\\frac{@diameter}{@frictionFactor}",
                pipe.lossSum() * pipe.diameter() / s.frictionFactor,
                "Bends and fittings count as so much straight pipe.");
        w.step(
                "resistance",
                "X",
                Quantity.RATIO,
                "@frictionFactor\\,\\frac{@length + @equivalentLength}{@diameter}",
                pipe.resistance(s.frictionFactor),
                "So many velocity heads lie between inlet and exit.");
    }

    private static void writeInlet(Working w, State s) {
        w.out(
                "inletMach",
                "F^{-1}\\left(F(@exitMach) + @resistance\\right)",
                s.inletMach,
                "The Mach number from which so much resistance leads to that of the exit, found by trial.");
        w.out(
                "inletStatic",
                "@exitStatic\\,\\frac{@exitMach}{@inletMach}\\sqrt{\\frac{2 + (@gamma - 1)\\,@exitMach^2}{2 + (@gamma - 1)\\,@inletMach^2}}",
                s.inletStatic,
                "The same flow passes both ends, which ties the pressures to the Mach numbers.");
        w.out(
                "inletTotal",
                "@inletStatic\\left(1 + \\frac{@gamma - 1}{2}\\,@inletMach^2\\right)^{@gamma/(@gamma - 1)}",
                s.inletTotal,
                "Static pressure and the speed together: what the turbine really pushes against.");
        w.out(
                "drop",
                "@inletStatic - @exitPressure",
                s.drop,
                "What a gauge at the inlet tap shows.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * How fast exhaust runs in a pipe.
 *
 * <p>Source: continuity and the ideal gas law. The velocity is the mean over the bore: in turbulent
 * flow the middle runs about 20 % faster. The gas is burned petrol at the given lambda: at 0.8 it
 * is 5 % lighter, and so 5 % faster, than at 1.
 */
public final class PipeVelocity {
    public static final Relation RELATION =
            Relation.named("pipe-velocity", "How fast the gas runs", "Exhaust flow")
                    .says(
                            "The same kilograms need more room when they are hot. Divide that room by the area of the pipe and"
                                    + " the velocity is there; its square is what bends and walls charge for.")
                    .tex(
                            "v = \\frac{\\dot m}{\\rho A},\\qquad \\rho = \\frac{p}{R\\,T},\\qquad q = \\tfrac12\\rho v^2")
                    .input(DuctSlots.massFlow())
                    .input(DuctSlots.pressure())
                    .input(DuctSlots.temperature())
                    .input(DuctSlots.diameter())
                    .input(DuctSlots.lambda())
                    .output("density", "\\rho", Quantity.DENSITY, "density of the gas")
                    .output("velocity", "v", Quantity.VELOCITY, "mean velocity over the bore")
                    .output("mach", "M", Quantity.RATIO, "velocity over the local speed of sound")
                    .output(
                            "dynamicPressure",
                            "q",
                            Quantity.PRESSURE_DIFFERENCE,
                            "one velocity head, half of density times velocity squared")
                    .assumes(
                            "steady mean flow: pulses are smoothed out",
                            "one pressure and one temperature over the bore, both static",
                            "burned petrol at the given lambda")
                    .source("continuity and the ideal gas law; any fluid mechanics text")
                    .by(PipeVelocity::work);

    /**
     * @param density kg/m³
     * @param velocity mean over the bore, m/s
     * @param mach velocity over the local speed of sound; above 1 no such flow exists in a pipe
     * @param dynamicPressure half of density times velocity squared, Pa
     */
    public record State(double density, double velocity, double mach, double dynamicPressure) {}

    private PipeVelocity() {}

    /**
     * @param massFlow kg/s
     * @param pressure absolute static pressure, Pa, above 0
     * @param temperature static temperature, K, 200 to 3000
     * @param diameter bore, m, above 0
     */
    public static State of(
            double massFlow, double pressure, double temperature, double diameter, ExhaustGas gas) {
        double density = gas.density(pressure, temperature);
        double velocity = massFlow / (density * area(diameter));
        return new State(
                density,
                velocity,
                velocity / gas.speedOfSound(temperature),
                density * velocity * velocity / 2);
    }

    static double area(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }

    private static void work(Working w) {
        writeHead(w, w.in("diameter"), "diameter", true);
    }

    /**
     * Writes the steps from the mass flow to the velocity head in the pipe of this bore.
     *
     * @param slot the name of the bore's slot
     * @param results true where density, velocity, mach and dynamicPressure are outputs
     */
    static State writeHead(Working w, double diameter, String slot, boolean results) {
        ExhaustGas gas = ExhaustGas.at(w.in("lambda"));
        double temperature = w.in("temperature");
        State s = of(w.in("massFlow"), w.in("pressure"), temperature, diameter, gas);
        w.step(
                "gasConstant",
                "R",
                Quantity.SPECIFIC_HEAT,
                "",
                gas.gasConstant(),
                "The gas constant of burned petrol at this lambda.");
        line(
                w,
                results,
                "density",
                "\\rho",
                Quantity.DENSITY,
                "\\frac{@pressure}{@gasConstant\\,@temperature}",
                s.density,
                "Hot gas is thin.");
        w.step(
                "area",
                "A",
                Quantity.AREA,
                "\\frac{\\pi}{4}\\,@" + slot + "^2",
                area(diameter),
                "The area of the bore.");
        line(
                w,
                results,
                "velocity",
                "v",
                Quantity.VELOCITY,
                "\\frac{@massFlow}{@density\\,@area}",
                s.velocity,
                "The volume that passes each second, over the area.");
        w.step(
                "soundSpeed",
                "a",
                Quantity.VELOCITY,
                "\\sqrt{\\gamma\\,@gasConstant\\,@temperature}",
                gas.speedOfSound(temperature),
                "The speed of sound, with gamma of this gas at this temperature.");
        line(
                w,
                results,
                "mach",
                "M",
                Quantity.RATIO,
                "\\frac{@velocity}{@soundSpeed}",
                s.mach,
                "Compared with sound.");
        line(
                w,
                results,
                "dynamicPressure",
                "q",
                Quantity.PRESSURE_DIFFERENCE,
                "\\tfrac12\\,@density\\,@velocity^2",
                s.dynamicPressure,
                "One velocity head: what it costs to bring the gas to this speed.");
        cautionFast(w, s.mach, results ? "mach" : "massFlow");
        return s;
    }

    private static void line(
            Working w,
            boolean result,
            String name,
            String symbol,
            Quantity quantity,
            String formula,
            double value,
            String text) {
        if (result) {
            w.out(name, formula, value, text);
        } else {
            w.step(name, symbol, quantity, formula, value, text);
        }
    }

    /** Warns where the density can no longer be taken as constant. */
    static void cautionFast(Working w, double mach, String about) {
        w.caution(
                mach > 1,
                about,
                () ->
                        "faster than sound (Mach "
                                + Numbers.significant(mach, 3)
                                + "): no pipe carries this flow at this pressure; the pressure inside would rise"
                                + " until it fits, see duct-flow");
        w.caution(
                mach > 0.3 && mach <= 1,
                about,
                () ->
                        "above Mach 0.3 (here "
                                + Numbers.significant(mach, 2)
                                + ") the gas changes its density on the way: a result with constant density is off by"
                                + " about a quarter of Mach squared, or more in a long pipe");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

import hotside.physics.engine.Rotation;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import java.util.OptionalDouble;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Energy and time to bring a turbo's rotor up to speed.
 *
 * <p>Source: kinetic energy of rotation, ½ J (ω2² − ω1²); {@code J dω/dt = (ηm Pt − Pc)/ω}; any
 * mechanics text. Exact for constant powers. On a pull both powers grow with the boost: then {@link
 * #timeTo} integrates.
 */
public final class RotorSpinUp {
    public static final Relation RELATION =
            Relation.named("rotor-spin-up", "Time to spin the rotor up", "Turbine and turbo")
                    .says(
                            "A rotor stores energy with the square of its speed. Only what the turbine gives beyond what the"
                                    + " compressor takes goes into it: while boost builds, that is little, so it takes time.")
                    .tex(
                            "E = \\tfrac{1}{2}\\,J\\,(\\omega_2^2 - \\omega_1^2),\\quad t = \\frac{E}{\\eta_m P_t - P_c}")
                    .input(
                            Slot.number(
                                            "inertia",
                                            "J",
                                            Quantity.INERTIA,
                                            "moment of inertia of shaft and both wheels")
                                    .above(0, 1)
                                    .usual(
                                            1e-6,
                                            2e-3,
                                            "rotors of engines on wheels have about 10⁻⁶ to 2·10⁻³ kg·m²")
                                    .typical(5e-5))
                    .input(
                            power(
                                    "turbinePower",
                                    "P_t",
                                    "power from the exhaust on the wheel",
                                    12e3))
                    .input(
                            power(
                                    "compressorPower",
                                    "P_c",
                                    "power that the compressor takes",
                                    6.5e3))
                    .input(speed("startSpeed", "n_1", "speed of the rotor at the start", 1000))
                    .input(speed("endSpeed", "n_2", "speed of the rotor at the end", 2200))
                    .input(ExhaustSlots.mechanicalEfficiency())
                    .output(
                            "energy",
                            "E",
                            Quantity.ENERGY,
                            "energy that goes into the rotor; negative if it slows down")
                    .output("time", "t", Quantity.TIME, "time that it takes")
                    .assumes(
                            "both powers stay constant; take means over the time",
                            "the rotor is rigid and its bearings take a fixed share")
                    .source("kinetic energy of rotation; any mechanics text")
                    .by(RotorSpinUp::work);

    /** Below this the rotor counts as standing, turns per second. */
    private static final double STANDSTILL = 0.1;

    private static final double RELATIVE_TOLERANCE = 1e-10;

    private RotorSpinUp() {}

    /**
     * Power that is left for the rotor, W: mechanical efficiency times turbine, less compressor.
     */
    @FunctionalInterface
    public interface NetPower {
        /**
         * @param time since the start, s
         * @param speed of the rotor, turns per second
         * @return W; negative brakes
         */
        double at(double time, double speed);
    }

    /**
     * @param inertia kg·m²
     * @param startSpeed turns per second
     * @param endSpeed turns per second
     * @return energy into the rotor, J
     */
    public static double energy(double inertia, double startSpeed, double endSpeed) {
        double sum = Rotation.angular(startSpeed + endSpeed);
        double difference = Rotation.angular(endSpeed - startSpeed);
        return inertia / 2 * sum * difference;
    }

    /**
     * @param inertia kg·m², above 0
     * @param speed turns per second, above 0
     * @param netPower W
     * @return how fast the speed grows, turns per second each second
     */
    public static double acceleration(double inertia, double speed, double netPower) {
        return Rotation.turns(netPower / (inertia * Rotation.angular(speed)));
    }

    /**
     * Time until a rotor reaches a speed under a changing power, by integration.
     *
     * @param inertia kg·m², above 0
     * @param startSpeed turns per second, above 0
     * @param endSpeed turns per second; above or below {@code startSpeed}
     * @param longest time to wait, s
     * @param net power by time and speed
     * @return s, good to about 1e-9 of itself; empty if the speed is not reached by then
     */
    public static OptionalDouble timeTo(
            double inertia, double startSpeed, double endSpeed, double longest, NetPower net) {
        if (startSpeed == endSpeed) {
            return OptionalDouble.of(0);
        }
        double[] end = integrate(inertia, startSpeed, endSpeed, longest, net);
        boolean reached = Math.abs(end[1] - endSpeed) <= 1e-6 * endSpeed;
        return reached ? OptionalDouble.of(end[0]) : OptionalDouble.empty();
    }

    /**
     * Speed of a rotor after a time under a changing power, by integration.
     *
     * @param inertia kg·m², above 0
     * @param startSpeed turns per second, above 0
     * @param duration s, at least 0
     * @param net power by time and speed
     * @return turns per second; 0 if it came to stand
     */
    public static double speedAfter(
            double inertia, double startSpeed, double duration, NetPower net) {
        if (duration == 0) {
            return startSpeed;
        }
        double speed = integrate(inertia, startSpeed, Double.NaN, duration, net)[1];
        return speed <= STANDSTILL * (1 + 1e-6) ? 0 : speed;
    }

    /** Time and speed where it ends: at the goal, at a standstill, or when the time is up. */
    private static double[] integrate(
            double inertia, double startSpeed, double goal, double longest, NetPower net) {
        if (!(inertia > 0 && startSpeed > STANDSTILL && longest > 0)) {
            throw new IllegalArgumentException(
                    "inertia = "
                            + inertia
                            + ", startSpeed = "
                            + startSpeed
                            + ", time = "
                            + longest
                            + ": expected above 0, above "
                            + STANDSTILL
                            + " and above 0");
        }
        var integrator =
                new DormandPrince853Integrator(
                        1e-12 * longest,
                        longest,
                        RELATIVE_TOLERANCE * startSpeed,
                        RELATIVE_TOLERANCE);
        stopAt(integrator, STANDSTILL, longest);
        if (!Double.isNaN(goal)) {
            stopAt(integrator, goal, longest);
        }
        double[] speed = {startSpeed};
        double time =
                integrator.integrate(new Shaft(inertia, net), 0, speed.clone(), longest, speed);
        return new double[] {time, speed[0]};
    }

    private static void stopAt(
            DormandPrince853Integrator integrator, double speed, double longest) {
        integrator.addEventHandler(new Reached(speed), longest / 20, 1e-12 * longest, 200);
    }

    private record Shaft(double inertia, NetPower net) implements FirstOrderDifferentialEquations {
        @Override
        public int getDimension() {
            return 1;
        }

        @Override
        public void computeDerivatives(double time, double[] speed, double[] rate) {
            // A trial step may overshoot a standstill; hold it off, the event finds the crossing.
            double turning = Math.max(speed[0], STANDSTILL / 10);
            rate[0] = acceleration(inertia, turning, net.at(time, turning));
        }
    }

    private record Reached(double goal) implements EventHandler {
        @Override
        public void init(double start, double[] speed, double end) {}

        @Override
        public double g(double time, double[] speed) {
            return speed[0] - goal;
        }

        @Override
        public Action eventOccurred(double time, double[] speed, boolean increasing) {
            return Action.STOP;
        }

        @Override
        public void resetState(double time, double[] speed) {}
    }

    private static Slot power(String name, String symbol, String meaning, double typical) {
        return Slot.number(name, symbol, Quantity.POWER, meaning)
                .range(0, 2e6)
                .usual(0, 200e3, "wheels of engines on wheels give and take up to about 200 kW")
                .typical(typical);
    }

    private static Slot speed(String name, String symbol, String meaning, double typical) {
        return Slot.number(name, symbol, Quantity.ROTATION, meaning)
                .range(0, 10e3)
                .usual(
                        0,
                        5e3,
                        "turbo shafts turn at up to about 300 000 rev/min; the smallest fastest")
                .typical(typical);
    }

    private static void work(Working w) {
        double start = w.in("startSpeed");
        double end = w.in("endSpeed");
        double inertia = w.in("inertia");
        double energy =
                w.out(
                        "energy",
                        "\\frac{@inertia}{2}\\,(2\\pi)^2\\left(@endSpeed^2 - @startSpeed^2\\right)",
                        energy(inertia, start, end),
                        "Kinetic energy goes with the square of the speed in radians per second.");
        double net =
                w.step(
                        "netPower",
                        "P",
                        Quantity.POWER,
                        "@mechanicalEfficiency \\cdot @turbinePower - @compressorPower",
                        w.in("mechanicalEfficiency") * w.in("turbinePower")
                                - w.in("compressorPower"),
                        "What the turbine gives beyond what bearings and compressor take.");
        w.out(
                "time",
                "\\frac{@energy}{@netPower}",
                time(energy, net),
                "Energy over the power that is left for it.");
    }

    private static double time(double energy, double netPower) {
        if (energy == 0) {
            return 0;
        }
        if (energy / netPower <= 0 || netPower == 0) {
            throw new RelationException(
                    "turbinePower",
                    "rotor-spin-up: a net power of "
                            + Numbers.significant(netPower, 4)
                            + " W never brings the rotor to endSpeed; expected turbinePower times"
                            + " mechanicalEfficiency above compressorPower to speed up, below it to slow down");
        }
        return energy / netPower;
    }
}

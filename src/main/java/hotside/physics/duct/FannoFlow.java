// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.IsentropicFlow;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Adiabatic flow with friction in a pipe of one bore: every state against the one at which the flow
 * would choke.
 *
 * <p>Source: Fanno's relations as in Farokhi, Aircraft Propulsion, second edition, appendix E, or
 * any gas dynamics text. The resistance is in Darcy's terms, f L*\/D; with Fanning's factor it is 4
 * Cf L*\/D. Perfect gas of constant gamma, no heat through the wall.
 */
public final class FannoFlow {
    public static final Relation RELATION =
            Relation.named("fanno-flow", "How far a pipe is from choking", "Exhaust flow")
                    .says(
                            "Friction drives any flow in a pipe towards the speed of sound. The resistance is what may still lie"
                                    + " ahead, counted in velocity heads, before the flow chokes.")
                    .tex(
                            "\\frac{fL^*}{D} = \\frac{1 - M^2}{\\gamma M^2} + \\frac{\\gamma + 1}{2\\gamma}\\ln\\frac{(\\gamma + 1)M^2}{2 + (\\gamma - 1)M^2}")
                    .input(
                            Slot.number(
                                            "mach",
                                            "M",
                                            Quantity.RATIO,
                                            "speed over the local speed of sound")
                                    .above(0, 5)
                                    .usual(
                                            0.01,
                                            1,
                                            "a pipe without a throat carries no flow faster than sound")
                                    .typical(0.3))
                    .input(IsentropicFlow.gammaSlot())
                    .output(
                            "resistance",
                            "fL^*/D",
                            Quantity.RATIO,
                            "velocity heads from here to choking, by Darcy's factor")
                    .output(
                            "temperatureRatio",
                            "T/T^*",
                            Quantity.RATIO,
                            "temperature over that at choking")
                    .output(
                            "pressureRatio",
                            "p/p^*",
                            Quantity.RATIO,
                            "static pressure over that at choking")
                    .output(
                            "totalPressureRatio",
                            "p_0/p_0^*",
                            Quantity.RATIO,
                            "total pressure over that at choking")
                    .assumes(
                            "no heat through the wall, one bore",
                            "a perfect gas of constant gamma, flowing steadily")
                    .source(
                            "Fanno relations; Farokhi, Aircraft Propulsion, 2nd ed. (2014), appendix E")
                    .by(FannoFlow::work);

    private static final int MOST_STEPS = 100;

    private FannoFlow() {}

    /**
     * Velocity heads f L*\/D between this Mach number and the speed of sound.
     *
     * @param mach above 0
     * @param gamma above 1
     */
    public static double resistance(double mach, double gamma) {
        double excess = (1 - mach) * (1 + mach) / (mach * mach);
        return (excess - (gamma + 1) / 2 * Math.log1p(2 * excess / (gamma + 1))) / gamma;
    }

    /** T/T*; {@code mach} at least 0. */
    public static double temperatureRatio(double mach, double gamma) {
        return (gamma + 1) / 2 * IsentropicFlow.temperatureRatio(mach, gamma);
    }

    /** p/p*; {@code mach} above 0. */
    public static double pressureRatio(double mach, double gamma) {
        return Math.sqrt(temperatureRatio(mach, gamma)) / mach;
    }

    /** p0/p0*; {@code mach} above 0. */
    public static double totalPressureRatio(double mach, double gamma) {
        return IsentropicFlow.areaRatio(mach, gamma);
    }

    /**
     * The subsonic Mach number from which friction leads to {@code exitMach}.
     *
     * <p>With y = 1/M² and d the growth of y against the flow, the relation reads d − (γ+1)/2 ·
     * ln(1 + 2d/(2y+γ−1)) = γ · resistance. The left side grows with d and is convex, so Newton's
     * method comes down to the root from above and needs no bracket.
     *
     * @param exitMach above 0, at most 1
     * @param resistance velocity heads in between, at least 0
     * @param gamma above 1
     * @return above 0, at most {@code exitMach}
     */
    public static double upstreamMach(double exitMach, double resistance, double gamma) {
        double y = 1 / (exitMach * exitMach);
        double scale = 2 * y + gamma - 1;
        double target = gamma * resistance;
        double half = (gamma + 1) / 2;
        double d = target + half * Math.log1p(2 * target / scale);
        for (int i = 0; i < MOST_STEPS && d > 0; i++) {
            double miss = d - half * Math.log1p(2 * d / scale) - target;
            double step = miss / (1 - 2 * half / (scale + 2 * d));
            d -= step;
            if (Math.abs(step) <= 1e-14 * d) {
                break;
            }
        }
        return Math.min(exitMach, 1 / Math.sqrt(y + d));
    }

    /**
     * The Mach number to which friction leads from a subsonic one.
     *
     * @param inletMach above 0, at most 1
     * @param resistance velocity heads in between, at least 0
     * @param gamma above 1
     * @throws IllegalArgumentException if the flow would choke before the end; the message gives
     *     the resistance that is left
     */
    public static double downstreamMach(double inletMach, double resistance, double gamma) {
        double left = resistance(inletMach, gamma) - resistance;
        if (left < 0) {
            throw new IllegalArgumentException(
                    "a resistance of "
                            + resistance
                            + " chokes the flow: from Mach "
                            + inletMach
                            + " only "
                            + resistance(inletMach, gamma)
                            + " is left");
        }
        return upstreamMach(1, left, gamma);
    }

    private static void work(Working w) {
        double mach = w.in("mach");
        double gamma = w.in("gamma");
        w.out(
                "resistance",
                "\\frac{1 - @mach^2}{@gamma\\,@mach^2} + \\frac{@gamma + 1}{2\\,@gamma}\\ln\\frac{(@gamma + 1)\\,@mach^2}{2 + (@gamma - 1)\\,@mach^2}",
                resistance(mach, gamma),
                "So many velocity heads of wall and bends bring the flow to the speed of sound.");
        w.out(
                "temperatureRatio",
                "\\frac{@gamma + 1}{2 + (@gamma - 1)\\,@mach^2}",
                temperatureRatio(mach, gamma),
                "The total temperature stays, so the static one falls as the gas speeds up.");
        w.out(
                "pressureRatio",
                "\\frac{\\sqrt{@temperatureRatio}}{@mach}",
                pressureRatio(mach, gamma),
                "The mass flow is the same everywhere, which ties pressure to speed and temperature.");
        w.out(
                "totalPressureRatio",
                "\\frac{1}{@mach}\\left(\\frac{1}{@temperatureRatio}\\right)^{(@gamma + 1)/(2(@gamma - 1))}",
                totalPressureRatio(mach, gamma),
                "What friction takes from the total pressure on the way to choking.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Darcy's friction factor of a round pipe. Fanning's, which some tables call by the same name, is a
 * quarter of it.
 *
 * <p>Source: Colebrook (1939) with White, solved to 1e-10; 64/Re (Hagen and Poiseuille) below a
 * Reynolds number of 2040. The measurements behind Colebrook's curve scatter by 5 %, commercial
 * pipes by 10 %. Between 2040 and 4000 a pipe may do either. Pulsating flow is left out: the factor
 * is that of the same flow without pulses.
 */
public final class FrictionFactor {
    /** Reynolds number below which disturbances die out (Avila and others, Science 2011). */
    public static final double LAMINAR_BELOW = 2040;

    /** Reynolds number from which Colebrook's equation is meant. */
    public static final double TURBULENT_FROM = 4000;

    public static final Relation RELATION =
            Relation.named("friction-factor", "How much a wall rubs", "Exhaust flow")
                    .says(
                            "Darcy's friction factor says how many velocity heads a pipe takes for each diameter of its length."
                                    + " Fanning's factor is a quarter of it, so ask which one a table gives.")
                    .tex(
                            "\\frac{1}{\\sqrt f} = -2\\log_{10}\\left(\\frac{\\varepsilon/D}{3.7} + \\frac{2.51}{\\mathrm{Re}\\sqrt f}\\right)")
                    .input(
                            Slot.number(
                                            "reynolds",
                                            "\\mathrm{Re}",
                                            Quantity.RATIO,
                                            "Reynolds number")
                                    .above(0, 1e9)
                                    .usual(
                                            500,
                                            3e6,
                                            "exhaust pipes run from about 5000 to 1 000 000; look whether the number was"
                                                    + " worked out in SI units")
                                    .typical(60_000))
                    .input(
                            Slot.number(
                                            "relativeRoughness",
                                            "\\varepsilon/D",
                                            Quantity.RATIO,
                                            "roughness over bore")
                                    .range(0, 0.1)
                                    .usual(
                                            0,
                                            0.05,
                                            "the equation was drawn from pipes of up to 0.05; beyond, the bore itself is"
                                                    + " uncertain")
                                    .typical(45e-6 / 0.073))
                    .output("frictionFactor", "f", Quantity.RATIO, "Darcy's friction factor")
                    .assumes(
                            "a straight round pipe, far from its entrance",
                            "steady flow, the wall evenly rough")
                    .source(
                            "Colebrook, J. Institution of Civil Engineers 11 (1939) 133",
                            "64/Re: Hagen and Poiseuille; limit 2040: Avila and others, Science 333 (2011) 192")
                    .by(FrictionFactor::work);

    private static final double START = 7;
    private static final int MOST_STEPS = 20;
    private static final double TWO_OVER_LN_10 = 2 / Math.log(10);

    private FrictionFactor() {}

    /**
     * @param reynolds above 0
     * @param relativeRoughness roughness over bore, 0 to 0.1
     * @return Darcy's factor, which jumps up by about half at 2040
     */
    public static double of(double reynolds, double relativeRoughness) {
        return reynolds < LAMINAR_BELOW ? 64 / reynolds : colebrook(reynolds, relativeRoughness);
    }

    /**
     * Halley's method for x = 1/√f on x + 2 log10(a + b x) = 0. The left side is so nearly straight
     * that a start at f = 0.02 lands after two or three steps; each cubes what is wrong.
     */
    private static double colebrook(double reynolds, double relativeRoughness) {
        double a = relativeRoughness / 3.7;
        double b = 2.51 / reynolds;
        double x = START;
        for (int i = 0; i < MOST_STEPS; i++) {
            double inner = a + b * x;
            double bend = b / inner;
            double slope = 1 + TWO_OVER_LN_10 * bend;
            double newton = (x + TWO_OVER_LN_10 * Math.log(inner)) / slope;
            double step = newton / (1 + newton * TWO_OVER_LN_10 * bend * bend / (2 * slope));
            x -= step;
            if (Math.abs(step) < 1e-4 * x) { // what is left is below 1e-12 of x
                break;
            }
        }
        return 1 / (x * x);
    }

    private static void work(Working w) {
        double reynolds = w.in("reynolds");
        w.out(
                "frictionFactor",
                formula(reynolds),
                of(reynolds, w.in("relativeRoughness")),
                reason(reynolds));
        cautionTransition(w, reynolds, "reynolds");
    }

    /** The formula for a step that finds the factor; a step called reynolds must come before. */
    static String formula(double reynolds) {
        return reynolds < LAMINAR_BELOW ? "\\frac{64}{@reynolds}" : "";
    }

    /** The sentence for a step that finds the factor. */
    static String reason(double reynolds) {
        return reynolds < LAMINAR_BELOW
                ? "Below a Reynolds number of 2040 the flow is laminar and roughness does not count."
                : "Colebrook's equation has the factor on both sides; it is found by trial until it fits.";
    }

    /** Warns where a pipe may run laminar or turbulent. */
    static void cautionTransition(Working w, double reynolds, String about) {
        w.caution(
                reynolds >= LAMINAR_BELOW && reynolds < TURBULENT_FROM,
                about,
                () ->
                        "between Reynolds numbers of 2040 and 4000 the flow switches between laminar and"
                                + " turbulent: the factor may be half of this");
    }
}

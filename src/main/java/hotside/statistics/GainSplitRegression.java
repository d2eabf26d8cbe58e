// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Splits a gain by letting the pulls themselves say what boost is worth: power is fitted by part
 * and boost at once, over pulls of both parts at several boosts.
 *
 * <p>Source: least squares on {@code P = a + g·part + w·boost}, NIST/SEMATECH e-Handbook of
 * Statistical Methods, section 4.1.4.1. One worth serves both parts. Error in the boost reading
 * itself pulls the worth towards zero and is not allowed for.
 */
public final class GainSplitRegression {
    private static final String ID = "gain-split-regression";

    /** Beyond this correlation the intervals are more than three times those of a good design. */
    private static final double NEARLY_TOGETHER = 0.95;

    public static final Relation RELATION =
            Relation.named(ID, "Gain at equal boost out of many pulls", "Test design")
                    .says(
                            "Pull both parts at several boosts, and the readings themselves say what boost is worth and"
                                    + " what the part brings at equal boost. Where boost moved only when the part did,"
                                    + " no arithmetic can tell them apart.")
                    .tex("P = a + g\\,B + w\\,(p - \\bar p)")
                    .input(
                            Slot.numbers("power", "P", Quantity.POWER, "power of each pull")
                                    .range(-1e8, 1e8)
                                    .typical(
                                            List.of(
                                                    318.9e3, 325.4e3, 331.3e3, 331.2e3, 336.6e3,
                                                    343.7e3)))
                    .input(
                            Slot.numbers(
                                            "boost",
                                            "p",
                                            Quantity.GAUGE_PRESSURE,
                                            "boost of each pull, in the same order")
                                    .range(-1e6, 1e7)
                                    .typical(List.of(62e3, 64e3, 66e3, 63e3, 65e3, 67e3)))
                    .input(
                            Slot.text(
                                            "parts",
                                            "the part of each pull, one letter each: A before, B after")
                                    .typical("AAABBB"))
                    .input(Confidence.slot())
                    .output("gain", "g", Quantity.POWER, "gain of the part at equal boost")
                    .output("gainStandardError", "u_g", Quantity.POWER, "its standard error")
                    .output("gainHalfWidth", "h_g", Quantity.POWER, "half its interval")
                    .output("gainLow", "g_l", Quantity.POWER, "its lower end")
                    .output("gainHigh", "g_u", Quantity.POWER, "its upper end")
                    .output(
                            "p",
                            "p_g",
                            Quantity.RATIO,
                            "chance of a gain at least so far from zero if the part did nothing")
                    .output("worth", "w", Quantity.POWER_PER_PRESSURE, "power per unit of boost")
                    .output(
                            "worthStandardError",
                            "u_w",
                            Quantity.POWER_PER_PRESSURE,
                            "its standard error")
                    .output(
                            "worthHalfWidth",
                            "h_w",
                            Quantity.POWER_PER_PRESSURE,
                            "half its interval")
                    .output("worthLow", "w_l", Quantity.POWER_PER_PRESSURE, "its lower end")
                    .output("worthHigh", "w_u", Quantity.POWER_PER_PRESSURE, "its upper end")
                    .output(
                            "correlation",
                            "r",
                            Quantity.RATIO,
                            "correlation of gain and worth, fixed by how the pulls were laid out")
                    .output("rawGain", "\\Delta P", Quantity.POWER, "difference of the mean powers")
                    .output(
                            "boostChange",
                            "\\Delta p",
                            Quantity.PRESSURE_DIFFERENCE,
                            "difference of the mean boosts")
                    .output(
                            "boostPart",
                            "\\Delta P_b",
                            Quantity.POWER,
                            "what of the raw gain belongs to boost")
                    .output("spread", "s", Quantity.POWER, "spread of a pull about the fit")
                    .assumes(
                            "boost is worth the same with both parts",
                            "pulls are independent and about normal",
                            "boost is read much more closely than it is moved")
                    .source(
                            "least squares; NIST/SEMATECH e-Handbook of Statistical Methods, section 4.1.4.1")
                    .by(GainSplitRegression::work);

    private GainSplitRegression() {}

    /**
     * What the pulls give.
     *
     * @param fit coefficients: power of the first part at mean boost, gain at equal boost (W),
     *     worth of boost (W/Pa); with their covariance
     * @param rawGain difference of the mean powers, W
     * @param boostChange difference of the mean boosts, Pa
     */
    public record Result(LeastSquares.Fit fit, double rawGain, double boostChange) {
        /** Gain of the part at equal boost, W. */
        public Estimate gain() {
            return fit.coefficient(1);
        }

        /** Power per boost, W/Pa. */
        public Estimate worth() {
            return fit.coefficient(2);
        }

        /**
         * What of the raw gain belongs to the change of boost, W; with {@link #gain} it adds up.
         */
        public double boostPart() {
            return worth().value() * boostChange;
        }
    }

    /**
     * Fits power by part and boost.
     *
     * @param power of each pull, W; not changed
     * @param boost of each pull, Pa, gauge or absolute alike; not changed
     * @param changed of each pull, whether the part was on; not changed
     * @throws IllegalArgumentException if there are fewer than four pulls, one part only, or if
     *     boost does not vary within either part, so that part and boost cannot be told apart
     */
    public static Result of(double[] power, double[] boost, boolean[] changed) {
        int n = power.length;
        if (n < 4) {
            throw new IllegalArgumentException("four pulls at least show a spread, not " + n);
        }
        double middle = Samples.mean(boost);
        double[] level = new double[n];
        Arrays.fill(level, 1);
        double[] part = IntStream.range(0, n).mapToDouble(i -> changed[i] ? 1 : 0).toArray();
        double[] moved = Arrays.stream(boost).map(p -> p - middle).toArray();
        return new Result(
                LeastSquares.fit(power, level, part, moved),
                step(power, changed),
                step(boost, changed));
    }

    /** Mean with the part less mean without. */
    private static double step(double[] x, boolean[] changed) {
        double[] mean = new double[2];
        for (int state = 0; state < 2; state++) {
            boolean with = state == 1;
            mean[state] =
                    Samples.mean(
                            IntStream.range(0, x.length)
                                    .filter(i -> changed[i] == with)
                                    .mapToDouble(i -> x[i])
                                    .toArray());
        }
        return mean[1] - mean[0];
    }

    private static void work(Working w) {
        double[] power = w.readings("power");
        double[] boost = w.readings("boost");
        Samples.sameLength(ID, "boost", boost, "power", power);
        String parts = RunOrder.letters(ID, "parts", w.word("parts"), 'B');
        check(power, parts);
        boolean[] changed = new boolean[power.length];
        for (int i = 0; i < changed.length; i++) {
            changed[i] = parts.charAt(i) == 'B';
        }
        Result result = fitted(power, boost, changed);
        write(w, result);
    }

    private static void check(double[] power, String parts) {
        RunOrder.oneLetterEach(ID, "parts", parts, "pulls", power);
        if (parts.indexOf('A') < 0 || parts.indexOf('B') < 0) {
            throw Samples.refuse(
                    ID, "parts", "must hold both A and B; with one of them there is no comparison");
        }
        if (power.length < 4) {
            throw Samples.refuse(
                    ID,
                    "power",
                    "holds "
                            + power.length
                            + " pulls; level, gain and worth use up three, so four at least show a spread");
        }
    }

    private static Result fitted(double[] power, double[] boost, boolean[] changed) {
        try {
            return of(power, boost, changed);
        } catch (IllegalArgumentException e) {
            throw Samples.refuse(
                    ID,
                    "boost",
                    "moved only when the part did, so nothing tells the one from the other; pull at least one"
                            + " part at two boosts, or take the worth of boost from elsewhere and use gain-split");
        }
    }

    private static void write(Working w, Result result) {
        Estimate worth = result.worth();
        Estimate gain = result.gain();
        w.out(
                "spread",
                "",
                result.fit.residualSd(),
                "What the fit leaves over, with "
                        + result.fit.degreesOfFreedom()
                        + " degrees of freedom.");
        double t = Bounds.factor(w, gain.degreesOfFreedom());
        w.out("worth", "", worth.value(), "The slope over boost within each part.");
        ends(w, "worth", worth, t);
        raw(w, result);
        w.out(
                "gain",
                "@rawGain - @boostPart",
                gain.value(),
                "What is left at equal boost is the part's.");
        ends(w, "gain", gain, t);
        w.out("p", "", gain.p(), "How easily luck alone gives as much.");
        double r =
                w.out(
                        "correlation",
                        "",
                        result.fit.correlation(1, 2),
                        "Near 1 or −1, part and boost moved almost together, and an error of the worth is an"
                                + " error of the gain.");
        cautions(w, result, worth.value() - t * worth.standardError(), r);
    }

    private static void raw(Working w, Result result) {
        w.out(
                "rawGain",
                "\\bar P_B - \\bar P_A",
                result.rawGain,
                "As a plain comparison shows it.");
        w.out(
                "boostChange",
                "\\bar p_B - \\bar p_A",
                result.boostChange,
                "What moved along with the part.");
        w.out(
                "boostPart",
                "@worth \\cdot @boostChange",
                result.boostPart(),
                "What that change of boost is worth.");
    }

    private static void ends(Working w, String of, Estimate e, double t) {
        w.out(of + "StandardError", "", e.standardError(), "From the covariance of the fit.");
        double half =
                w.out(
                        of + "HalfWidth",
                        "@t \\cdot @" + of + "StandardError",
                        t * e.standardError(),
                        "So far to either side.");
        w.out(of + "Low", "@" + of + " - @" + of + "HalfWidth", e.value() - half, "Lower end.");
        w.out(of + "High", "@" + of + " + @" + of + "HalfWidth", e.value() + half, "Upper end.");
    }

    private static void cautions(Working w, Result result, double worthLow, double r) {
        w.caution(
                Math.abs(r) > NEARLY_TOGETHER,
                "boost",
                () ->
                        "part and boost moved nearly together, so the intervals are more than three times as wide as"
                                + " they need be; overlap the boosts of the two parts");
        w.caution(
                worthLow <= 0,
                "worth",
                () -> "these pulls do not show that boost is worth anything; vary boost more");
        w.caution(
                result.fit.residualSd() == 0,
                "power",
                () -> "the fit leaves nothing over at all, so the intervals have no width");
    }
}

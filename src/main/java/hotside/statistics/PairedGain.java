// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Gain from runs made in pairs: each run with the part is set against the run before it without the
 * part, so that whatever both share falls out.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 7.3.1 (paired observations):
 * Student's t of the differences. Pairs must be fixed before the readings are seen.
 */
public final class PairedGain {
    private static final String ID = "paired-gain";

    public static final Relation RELATION =
            Relation.named(ID, "Gain from runs in pairs", "Test design")
                    .says(
                            "Set each run with the part against its own run without it. What the two of a pair share,"
                                    + " such as the heat of the hour, falls out of their difference; only the spread of"
                                    + " the differences counts.")
                    .tex("\\bar d \\pm t\\,\\frac{s_d}{\\sqrt n}, \\quad d_i = b_i - a_i")
                    .input(
                            Samples.slot(
                                    "before",
                                    "a",
                                    "readings without the part, in the order of the pairs",
                                    248.1,
                                    247.2,
                                    249.0,
                                    248.4))
                    .input(
                            Samples.slot(
                                    "after",
                                    "b",
                                    "readings with the part, in the order of the pairs",
                                    254.0,
                                    252.6,
                                    254.9,
                                    254.6))
                    .input(Confidence.slot())
                    .output("gain", "\\bar d", Quantity.AS_MEASURED, "mean difference of a pair")
                    .output("sd", "s_d", Quantity.AS_MEASURED, "standard deviation of a difference")
                    .output(
                            "standardError",
                            "u",
                            Quantity.AS_MEASURED,
                            "standard deviation of the gain")
                    .output("degreesOfFreedom", "\\nu", Quantity.RATIO, "pairs less one")
                    .output(
                            "halfWidth",
                            "h",
                            Quantity.AS_MEASURED,
                            "half the width of the interval")
                    .output("low", "g_l", Quantity.AS_MEASURED, "lower end of the interval")
                    .output("high", "g_u", Quantity.AS_MEASURED, "upper end of the interval")
                    .output(
                            "p",
                            "p",
                            Quantity.RATIO,
                            "chance of a gain at least so far from zero if the part did nothing")
                    .assumes(
                            "the pairs were fixed before the readings were seen",
                            "the differences are independent and about normal")
                    .source(
                            "NIST/SEMATECH e-Handbook of Statistical Methods, section 7.3.1",
                            "Student (1908)")
                    .by(PairedGain::work);

    private PairedGain() {}

    /**
     * Gain with its standard error.
     *
     * @param before readings without the part, two at least, any unit; not changed
     * @param after readings with it, same number and unit, in the same order; not changed
     */
    public static Estimate of(double[] before, double[] after) {
        return MeanSpread.of(differences(before, after)).estimate();
    }

    private static double[] differences(double[] before, double[] after) {
        double[] d = new double[before.length];
        for (int i = 0; i < d.length; i++) {
            d[i] = after[i] - before[i];
        }
        return d;
    }

    private static void work(Working w) {
        double[] before = Samples.two(w, ID, "before");
        double[] after = w.readings("after");
        Samples.sameLength(ID, "after", after, "before", before);
        double[] d = differences(before, after);
        Samples.cautionIfAlike(w, "after", d);
        MeanSpread.Summary sum = MeanSpread.of(d);
        Estimate gain = sum.estimate();
        w.step("n", "n", Quantity.COUNT, "", sum.n(), "Count the pairs.");
        w.out("gain", "\\frac{1}{n}\\sum (b_i - a_i)", sum.mean(), "The mean of the differences.");
        w.out(
                "sd",
                "\\sqrt{\\frac{\\sum (d_i - @gain)^2}{n - 1}}",
                sum.sd(),
                "The spread of the differences, not of the readings.");
        w.out(
                "standardError",
                "\\frac{@sd}{\\sqrt{@n}}",
                gain.standardError(),
                "A mean difference scatters less than a difference.");
        w.out(
                "degreesOfFreedom",
                "@n - 1",
                gain.degreesOfFreedom(),
                "The mean took one from the pairs.");
        Bounds.write(w, gain, "gain");
        w.out("p", "", gain.p(), "How easily luck alone gives as much.");
    }
}

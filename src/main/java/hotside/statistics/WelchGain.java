// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.statistics.MeanSpread.Summary;
import hotside.unit.Quantity;

/**
 * Gain between two independent rows of runs, each with a spread of its own or with one in common.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.3 (two-sample t test);
 * degrees of freedom for unequal spreads by Welch (1947) and Satterthwaite (1946).
 */
public final class WelchGain {
    private static final String ID = "welch-gain";
    private static final String OWN = "own";
    private static final String COMMON = "common";

    public static final Relation RELATION =
            Relation.named(ID, "Gain between two rows of runs", "Test design")
                    .says(
                            "Two rows of runs, one without and one with the part, each scatter. Their means differ by"
                                    + " the gain, which is known only within an interval that both spreads widen.")
                    .tex(
                            "\\bar b - \\bar a \\pm t\\,\\sqrt{\\frac{s_a^2}{n_a} + \\frac{s_b^2}{n_b}}")
                    .input(
                            Samples.slot(
                                    "partA",
                                    "a",
                                    "readings with the first part, two at least",
                                    248.1,
                                    247.2,
                                    249.0,
                                    248.4))
                    .input(
                            Samples.slot(
                                    "partB",
                                    "b",
                                    "readings with the second part, two at least",
                                    254.0,
                                    252.6,
                                    254.9,
                                    254.6))
                    .input(
                            Slot.choice(
                                            "spread",
                                            "whether each part has a spread of its own or both share one",
                                            OWN,
                                            COMMON)
                                    .orElse(OWN))
                    .input(Confidence.slot())
                    .output(
                            "gain",
                            "\\Delta",
                            Quantity.AS_MEASURED,
                            "mean with the second part less mean with the first")
                    .output(
                            "standardError",
                            "u",
                            Quantity.AS_MEASURED,
                            "standard deviation of the gain")
                    .output(
                            "degreesOfFreedom",
                            "\\nu",
                            Quantity.RATIO,
                            "how well the standard error is known; need not be whole")
                    .output(
                            "halfWidth",
                            "h",
                            Quantity.AS_MEASURED,
                            "half the width of the interval")
                    .output("low", "\\Delta_l", Quantity.AS_MEASURED, "lower end of the interval")
                    .output("high", "\\Delta_u", Quantity.AS_MEASURED, "upper end of the interval")
                    .output(
                            "p",
                            "p",
                            Quantity.RATIO,
                            "chance of a gain at least so far from zero if the parts were alike")
                    .assumes(
                            "all runs are independent and about normal",
                            "nothing drifted between the two rows: runs were mixed in time")
                    .source(
                            "NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.3",
                            "Welch (1947), Satterthwaite (1946)")
                    .by(WelchGain::work);

    private WelchGain() {}

    /**
     * Gain from b over a, each with a spread of its own.
     *
     * @return with degrees of freedom between the smaller n − 1 and n_a + n_b − 2
     */
    public static Estimate of(Summary a, Summary b) {
        double va = a.standardError() * a.standardError();
        double vb = b.standardError() * b.standardError();
        double dof =
                va + vb == 0
                        ? a.n() + b.n() - 2
                        : freedom(va / (va + vb), a.n() - 1, vb / (va + vb), b.n() - 1);
        return new Estimate(
                b.mean() - a.mean(), Math.hypot(a.standardError(), b.standardError()), dof);
    }

    /**
     * Gain from b over a if both have one spread in common, with n_a + n_b − 2 degrees of freedom.
     */
    public static Estimate pooled(Summary a, Summary b) {
        double error = pooledSd(a, b) * Math.sqrt(1.0 / a.n() + 1.0 / b.n());
        return new Estimate(b.mean() - a.mean(), error, a.n() + b.n() - 2);
    }

    /** The spread that two samples have in common. */
    public static double pooledSd(Summary a, Summary b) {
        double dof = a.n() + b.n() - 2;
        return Math.hypot(
                a.sd() * Math.sqrt((a.n() - 1) / dof), b.sd() * Math.sqrt((b.n() - 1) / dof));
    }

    private static double freedom(double shareA, double dofA, double shareB, double dofB) {
        return 1 / (shareA * shareA / dofA + shareB * shareB / dofB);
    }

    private static void work(Working w) {
        double[] xa = Samples.two(w, ID, "partA");
        double[] xb = Samples.two(w, ID, "partB");
        Samples.cautionIfAlike(w, "partA", xa);
        Samples.cautionIfAlike(w, "partB", xb);
        Summary a = MeanSpread.of(xa);
        Summary b = MeanSpread.of(xb);
        sumUp(w, "A", "a", a);
        sumUp(w, "B", "b", b);
        boolean own = w.word("spread").equals(OWN);
        Estimate gain = own ? of(a, b) : pooled(a, b);
        w.out("gain", "@meanB - @meanA", gain.value(), "The difference of the means.");
        if (own) {
            ownSpread(w, gain);
        } else {
            commonSpread(w, a, b, gain);
        }
        Bounds.write(w, gain, "gain");
        w.out("p", "", gain.p(), "How easily luck alone gives as much.");
    }

    private static void sumUp(Working w, String part, String symbol, Summary s) {
        w.step(
                "n" + part,
                "n_" + symbol,
                Quantity.COUNT,
                "",
                s.n(),
                "Runs with part " + part + ".");
        w.step("mean" + part, "\\bar " + symbol, Quantity.AS_MEASURED, "", s.mean(), "Their mean.");
        w.step("sd" + part, "s_" + symbol, Quantity.AS_MEASURED, "", s.sd(), "Their spread.");
    }

    private static void ownSpread(Working w, Estimate gain) {
        w.out(
                "standardError",
                "\\sqrt{\\frac{@sdA^2}{@nA} + \\frac{@sdB^2}{@nB}}",
                gain.standardError(),
                "Both means are uncertain, and their variances add.");
        w.out(
                "degreesOfFreedom",
                "\\frac{@standardError^4}{\\frac{(@sdA^2/@nA)^2}{@nA - 1}"
                        + " + \\frac{(@sdB^2/@nB)^2}{@nB - 1}}",
                gain.degreesOfFreedom(),
                "Welch's count: the part that scatters more has more say.");
    }

    private static void commonSpread(Working w, Summary a, Summary b, Estimate gain) {
        w.step(
                "pooled",
                "s_p",
                Quantity.AS_MEASURED,
                "\\sqrt{\\frac{(@nA - 1) \\cdot @sdA^2 + (@nB - 1) \\cdot @sdB^2}{@nA + @nB - 2}}",
                pooledSd(a, b),
                "One spread from both rows.");
        w.out(
                "standardError",
                "@pooled \\cdot \\sqrt{\\frac{1}{@nA} + \\frac{1}{@nB}}",
                gain.standardError(),
                "Both means are uncertain.");
        w.out(
                "degreesOfFreedom",
                "@nA + @nB - 2",
                gain.degreesOfFreedom(),
                "Each mean took one from the runs.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Uncertainty of a result from those of what it was computed from.
 *
 * <p>Source: JCGM 100:2008 (GUM), equation (10) for independent terms, (G.2b) Welch–Satterthwaite,
 * and G.4.1: effective degrees of freedom are cut down to a whole number before the factor is
 * looked up. First order only.
 */
public final class CombinedUncertainty {
    private static final String ID = "combined-uncertainty";

    public static final Relation RELATION =
            Relation.named(ID, "Uncertainty of a computed result", "Test design")
                    .says(
                            "Each term of a result brings its own uncertainty, times how strongly the result follows"
                                    + " it. Independent terms add by squares, so the largest rules; terms known from"
                                    + " few readings widen the factor.")
                    .tex(
                            "u = \\sqrt{\\sum (c_i u_i)^2}, \\quad"
                                    + " \\nu = \\frac{u^4}{\\sum (c_i u_i)^4/\\nu_i}, \\quad U = t\\,u")
                    .input(
                            Slot.numbers(
                                            "uncertainties",
                                            "u_i",
                                            Quantity.AS_MEASURED,
                                            "standard uncertainty of each term")
                                    .range(0, 1e12)
                                    .typical(List.of(1.2, 8.0, 0.9)))
                    .input(
                            Slot.numbers(
                                            "sensitivities",
                                            "c_i",
                                            Quantity.AS_MEASURED,
                                            "change of the result for one unit of each term")
                                    .range(-1e12, 1e12)
                                    .typical(List.of(0.63, 0.042, -0.5)))
                    .input(
                            Slot.numbers(
                                            "degreesOfFreedom",
                                            "\\nu_i",
                                            Quantity.RATIO,
                                            "degrees of freedom of each term; 1e9 if as good as known")
                                    .range(1, 1e9)
                                    .typical(List.of(5.0, 50.0, 12.0)))
                    .input(Confidence.slot())
                    .output(
                            "combined",
                            "u",
                            Quantity.AS_MEASURED,
                            "standard uncertainty of the result")
                    .output(
                            "effectiveFreedom",
                            "\\nu",
                            Quantity.RATIO,
                            "effective degrees of freedom, before they are cut to a whole number")
                    .output("factor", "t", Quantity.RATIO, "coverage factor")
                    .output(
                            "expanded",
                            "U",
                            Quantity.AS_MEASURED,
                            "half the interval with this confidence")
                    .assumes(
                            "the terms are independent",
                            "the result follows each term in a straight line over its uncertainty")
                    .source("JCGM 100:2008 (GUM), equations (10) and (G.2b), G.4.1")
                    .by(CombinedUncertainty::work);

    private CombinedUncertainty() {}

    /**
     * One term of a result.
     *
     * @param uncertainty standard uncertainty of the term, at least 0
     * @param sensitivity change of the result per unit of the term
     * @param degreesOfFreedom of the uncertainty, at least 1, may be infinite
     */
    public record Term(double uncertainty, double sensitivity, double degreesOfFreedom) {
        double contribution() {
            return Math.abs(sensitivity * uncertainty);
        }
    }

    /** A standard uncertainty and how well it is known. */
    public record Combined(double uncertainty, double degreesOfFreedom) {
        /** Coverage factor for the degrees of freedom cut down to a whole number. */
        public double factor(double confidence) {
            return Confidence.student(confidence, whole(degreesOfFreedom));
        }

        /** Half the width of the interval with this confidence. */
        public double expanded(double confidence) {
            return factor(confidence) * uncertainty;
        }
    }

    /**
     * Combines independent terms.
     *
     * @return with infinite degrees of freedom if every term that matters is known
     */
    public static Combined of(List<Term> terms) {
        double largest = terms.stream().mapToDouble(Term::contribution).max().orElse(0);
        if (largest == 0) {
            return new Combined(0, Double.POSITIVE_INFINITY);
        }
        double squares = 0;
        double fourths = 0;
        for (Term term : terms) {
            double part = term.contribution() / largest;
            squares += part * part;
            fourths += part * part * part * part / term.degreesOfFreedom;
        }
        return new Combined(largest * Math.sqrt(squares), squares * squares / fourths);
    }

    private static double whole(double degreesOfFreedom) {
        return Math.floor(degreesOfFreedom * (1 + 1e-12));
    }

    private static void work(Working w) {
        double[] u = w.readings("uncertainties");
        double[] c = w.readings("sensitivities");
        double[] dof = w.readings("degreesOfFreedom");
        Samples.sameLength(ID, "sensitivities", c, "uncertainties", u);
        Samples.sameLength(ID, "degreesOfFreedom", dof, "uncertainties", u);
        List<Term> terms =
                IntStream.range(0, u.length).mapToObj(i -> new Term(u[i], c[i], dof[i])).toList();
        for (int i = 0; i < u.length; i++) {
            w.step(
                    "term" + (i + 1),
                    "|c_{" + (i + 1) + "}|\\,u_{" + (i + 1) + "}",
                    Quantity.AS_MEASURED,
                    "",
                    terms.get(i).contribution(),
                    "What term " + (i + 1) + " brings to the result.");
        }
        write(w, of(terms));
    }

    private static void write(Working w, Combined sum) {
        w.out("combined", "\\sqrt{\\sum (c_i u_i)^2}", sum.uncertainty, "Add by squares.");
        double freedom = Math.min(sum.degreesOfFreedom, 1e9);
        w.out(
                "effectiveFreedom",
                "\\frac{@combined^4}{\\sum (c_i u_i)^4/\\nu_i}",
                freedom,
                "A large term from few readings pulls this down; 1e9 stands for as good as known.");
        w.step(
                "whole",
                "\\lfloor \\nu \\rfloor",
                Quantity.COUNT,
                "\\lfloor @effectiveFreedom \\rfloor",
                whole(freedom),
                "Cut down to a whole number, on the safe side.");
        double confidence = w.in("confidence");
        w.out(
                "factor",
                "",
                sum.factor(confidence),
                "From the table of Student's t for that number.");
        w.out(
                "expanded",
                "@factor \\cdot @combined",
                sum.expanded(confidence),
                "The interval reaches so far to either side.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.special.Beta;

/**
 * Three or more parts at once: do they differ at all, and which pairs do?
 *
 * <p>Source: one-way analysis of variance, NIST/SEMATECH e-Handbook of Statistical Methods, section
 * 7.4.3; Tukey's intervals for all pairs, section 7.4.7.1, for unequal numbers of runs by Kramer
 * (1956), which are then slightly too wide.
 */
public final class OneWayParts {
    private static final String ID = "one-way-parts";
    private static final String EXTREMES = "extremes";

    public static final Relation RELATION =
            Relation.named(ID, "Several parts at once", "Test design")
                    .says(
                            "With many parts some pair always looks different. The F ratio asks whether the parts"
                                    + " differ at all; Tukey's intervals are wide enough for all pairs together, so that"
                                    + " the luckiest pair is not taken for the best part.")
                    .tex(
                            "F = \\frac{\\mathrm{SS}_b/(k-1)}{\\mathrm{SS}_w/(N-k)}, \\quad"
                                    + " \\bar x_j - \\bar x_i \\pm \\frac{q}{\\sqrt 2}\\,s\\,"
                                    + "\\sqrt{\\frac{1}{n_i} + \\frac{1}{n_j}}")
                    .input(
                            Samples.slot(
                                    "readings",
                                    "x",
                                    "all readings, in the order in which they were taken",
                                    248.1,
                                    250.2,
                                    252.9,
                                    253.3,
                                    249.8,
                                    247.4,
                                    248.6,
                                    250.9,
                                    254.0))
                    .input(
                            Slot.text("parts", "the part of each reading, one letter each")
                                    .typical("ABCCBAABC"))
                    .input(
                            Slot.text(
                                            "pair",
                                            "two letters for the pair to report, or extremes for the lowest and the"
                                                    + " highest mean")
                                    .orElse(EXTREMES))
                    .input(Confidence.slot())
                    .output(
                            "betweenSquares",
                            "\\mathrm{SS}_b",
                            Quantity.RATIO,
                            "squares between the parts' means")
                    .output(
                            "withinSquares",
                            "\\mathrm{SS}_w",
                            Quantity.RATIO,
                            "squares of readings about their own part's mean")
                    .output("sd", "s", Quantity.AS_MEASURED, "spread of one reading within a part")
                    .output(
                            "fRatio",
                            "F",
                            Quantity.RATIO,
                            "spread between parts over spread within")
                    .output(
                            "p",
                            "p",
                            Quantity.RATIO,
                            "chance of an F at least so large if all parts were alike")
                    .output("range", "q", Quantity.RATIO, "studentised range for this confidence")
                    .output(
                            "difference",
                            "\\Delta",
                            Quantity.AS_MEASURED,
                            "second part of the pair less first")
                    .output("halfWidth", "h", Quantity.AS_MEASURED, "half its interval by Tukey")
                    .output("low", "\\Delta_l", Quantity.AS_MEASURED, "lower end of the interval")
                    .output("high", "\\Delta_u", Quantity.AS_MEASURED, "upper end of the interval")
                    .output(
                            "pairP",
                            "p_\\Delta",
                            Quantity.RATIO,
                            "chance that luck alone puts any pair so far apart")
                    .assumes(
                            "all readings are independent and about normal",
                            "the spread is the same with every part",
                            "runs of the parts were mixed in time")
                    .source(
                            "NIST/SEMATECH e-Handbook of Statistical Methods, sections 7.4.3 and 7.4.7.1",
                            "Tukey (1953), Kramer (1956)")
                    .by(OneWayParts::work);

    private OneWayParts() {}

    /**
     * What the parts give together.
     *
     * @param sizes readings of each part
     * @param means mean of each part
     * @param betweenSquares weighted squares of the means about the grand mean
     * @param withinSquares squares of the readings about their own means
     */
    public record Table(int[] sizes, double[] means, double betweenSquares, double withinSquares) {
        public int parts() {
            return sizes.length;
        }

        public int degreesOfFreedom() {
            return Arrays.stream(sizes).sum() - parts();
        }

        /** Spread of one reading within a part. */
        public double sd() {
            return Math.sqrt(withinSquares / degreesOfFreedom());
        }

        /** Infinite if nothing scatters within the parts. */
        public double fRatio() {
            return betweenSquares / (parts() - 1) / (withinSquares / degreesOfFreedom());
        }

        /** Chance of an F at least so large if all parts were alike. */
        public double p() {
            double within = degreesOfFreedom();
            double between = parts() - 1;
            return Beta.regularizedBeta(
                    within / (within + between * fRatio()), within / 2, between / 2);
        }

        /** Tukey's comparison of part j with part i. */
        public Pair pair(int i, int j) {
            double error = sd() * Math.sqrt((1.0 / sizes[i] + 1.0 / sizes[j]) / 2);
            return new Pair(i, j, means[j] - means[i], error, parts(), degreesOfFreedom());
        }

        /** All pairs, i before j. */
        public List<Pair> pairs() {
            List<Pair> pairs = new ArrayList<>();
            for (int i = 0; i < parts(); i++) {
                for (int j = i + 1; j < parts(); j++) {
                    pairs.add(pair(i, j));
                }
            }
            return pairs;
        }

        private Pair extremes() {
            int lowest = 0;
            int highest = 0;
            for (int i = 1; i < parts(); i++) {
                lowest = means[i] < means[lowest] ? i : lowest;
                highest = means[i] >= means[highest] ? i : highest;
            }
            return pair(lowest, highest);
        }
    }

    /**
     * Two parts set against each other among all.
     *
     * @param first index of one part
     * @param second index of the other
     * @param difference mean of the second less mean of the first
     * @param error standard deviation of a mean, averaged over the two parts
     * @param parts how many parts there are in all
     * @param degreesOfFreedom of the spread
     */
    public record Pair(
            int first,
            int second,
            double difference,
            double error,
            int parts,
            int degreesOfFreedom) {
        /** Half the interval; all pairs' intervals hold together with this confidence. */
        public double halfWidth(double confidence) {
            return StudentizedRange.quantile(confidence, parts, degreesOfFreedom) * error;
        }

        /** Chance that luck alone puts any pair so far apart. */
        public double p() {
            return StudentizedRange.upperTail(
                    Math.abs(difference) / error, parts, degreesOfFreedom);
        }
    }

    /**
     * Analyses parts.
     *
     * @param groups readings of each part: two parts at least, one reading each, more than one in
     *     some part; not changed
     */
    public static Table of(double[]... groups) {
        double[] all = Arrays.stream(groups).flatMapToDouble(Arrays::stream).toArray();
        double grand = Samples.mean(all);
        double between = 0;
        double within = 0;
        double[] means = new double[groups.length];
        for (int i = 0; i < groups.length; i++) {
            means[i] = Samples.mean(groups[i]);
            between += groups[i].length * (means[i] - grand) * (means[i] - grand);
            for (double x : groups[i]) {
                within += (x - means[i]) * (x - means[i]);
            }
        }
        int[] sizes = Arrays.stream(groups).mapToInt(g -> g.length).toArray();
        return new Table(sizes, means, between, within);
    }

    private static void work(Working w) {
        double[] readings = w.readings("readings");
        String parts = RunOrder.letters(ID, "parts", w.word("parts"), 'Z');
        String names = RunOrder.different(parts);
        check(readings, parts, names);
        Table table = of(grouped(readings, parts, names));
        if (table.withinSquares == 0) {
            throw Samples.refuse(
                    ID,
                    "readings",
                    "do not scatter within any part; a finer display is needed to show the spread");
        }
        write(w, table, names);
        writePair(w, table, names);
        w.caution(
                names.length() == 2,
                "parts",
                () ->
                        "there are two parts only; a comparison of two needs no more than Student's t");
    }

    private static void check(double[] readings, String parts, String names) {
        RunOrder.oneLetterEach(ID, "parts", parts, "readings", readings);
        if (names.length() < 2) {
            throw Samples.refuse(ID, "parts", "names one part only; two at least can be compared");
        }
        if (names.length() == parts.length()) {
            throw Samples.refuse(
                    ID,
                    "parts",
                    "has one reading of each part; repeat one at least to show the spread");
        }
    }

    private static double[][] grouped(double[] readings, String parts, String names) {
        double[][] groups = new double[names.length()][];
        for (int g = 0; g < groups.length; g++) {
            char name = names.charAt(g);
            groups[g] =
                    IntStream.range(0, readings.length)
                            .filter(i -> parts.charAt(i) == name)
                            .mapToDouble(i -> readings[i])
                            .toArray();
        }
        return groups;
    }

    private static void write(Working w, Table table, String names) {
        for (int i = 0; i < table.parts(); i++) {
            w.step(
                    "mean" + names.charAt(i),
                    "\\bar x_" + names.charAt(i),
                    Quantity.AS_MEASURED,
                    "",
                    table.means[i],
                    "Mean of " + table.sizes[i] + " with part " + names.charAt(i) + ".");
        }
        w.step("k", "k", Quantity.COUNT, "", table.parts(), "Count the parts.");
        w.step(
                "dof",
                "\\nu",
                Quantity.COUNT,
                "N - @k",
                table.degreesOfFreedom(),
                "Each mean took one from the readings.");
        w.out(
                "betweenSquares",
                "\\sum n_i (\\bar x_i - \\bar x)^2",
                table.betweenSquares,
                "How far the means lie from the mean of all.");
        w.out(
                "withinSquares",
                "\\sum (x_{ij} - \\bar x_i)^2",
                table.withinSquares,
                "How far readings lie from the mean of their own part.");
        w.out("sd", "\\sqrt{@withinSquares / @dof}", table.sd(), "One spread for all parts.");
        w.out(
                "fRatio",
                "\\frac{@betweenSquares / (@k - 1)}{@sd^2}",
                table.fRatio(),
                "About 1 if the parts are alike.");
        w.out("p", "", table.p(), "How easily luck alone gives as much.");
    }

    private static void writePair(Working w, Table table, String names) {
        Pair pair = pair(w, table, names);
        String a = "mean" + names.charAt(pair.first);
        String b = "mean" + names.charAt(pair.second);
        w.out(
                "difference",
                "@" + b + " - @" + a,
                pair.difference,
                "Part " + names.charAt(pair.second) + " against " + names.charAt(pair.first) + ".");
        w.step("nA", "n_i", Quantity.COUNT, "", table.sizes[pair.first], "Readings of the one.");
        w.step("nB", "n_j", Quantity.COUNT, "", table.sizes[pair.second], "And of the other.");
        double q =
                w.out(
                        "range",
                        "",
                        StudentizedRange.quantile(
                                w.in("confidence"), table.parts(), table.degreesOfFreedom()),
                        "From the table of the studentised range for so many parts.");
        double half =
                w.out(
                        "halfWidth",
                        "\\frac{@range}{\\sqrt 2} \\cdot @sd \\cdot \\sqrt{\\frac{1}{@nA} + \\frac{1}{@nB}}",
                        q * pair.error,
                        "Wide enough for every pair at once.");
        w.out("low", "@difference - @halfWidth", pair.difference - half, "Lower end.");
        w.out("high", "@difference + @halfWidth", pair.difference + half, "Upper end.");
        w.out("pairP", "", pair.p(), "How easily the luckiest of all pairs gets as far apart.");
    }

    private static Pair pair(Working w, Table table, String names) {
        String text = w.word("pair");
        if (text.strip().equalsIgnoreCase(EXTREMES)) {
            return table.extremes();
        }
        String letters = RunOrder.letters(ID, "pair", text, 'Z');
        if (letters.length() != 2
                || letters.charAt(0) == letters.charAt(1)
                || letters.chars().anyMatch(c -> names.indexOf(c) < 0)) {
            throw Samples.refuse(
                    ID,
                    "pair",
                    "\""
                            + text
                            + "\" must be two different parts out of "
                            + names
                            + ", or extremes");
        }
        return table.pair(names.indexOf(letters.charAt(0)), names.indexOf(letters.charAt(1)));
    }
}

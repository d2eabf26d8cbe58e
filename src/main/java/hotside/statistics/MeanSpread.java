// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Mean, standard deviation and standard error of repeated readings.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, sections 1.3.5.1 and 1.3.5.6. The
 * deviation is found in a second pass over the readings, so that a small spread on a large mean
 * keeps its digits.
 */
public final class MeanSpread {
    private static final String ID = "mean-spread";

    public static final Relation RELATION =
            Relation.named(ID, "Mean and spread of readings", "Test design")
                    .says(
                            "The mean says where readings lie, the standard deviation how far one of them strays,"
                                    + " and the standard error how far their mean strays.")
                    .tex("s = \\sqrt{\\frac{\\sum (x_i - \\bar x)^2}{n - 1}}")
                    .input(
                            Samples.slot(
                                    "sample",
                                    "x",
                                    "the readings, two at least",
                                    248.1,
                                    247.2,
                                    249.0,
                                    248.4))
                    .output("mean", "\\bar x", Quantity.AS_MEASURED, "mean of the readings")
                    .output("sd", "s", Quantity.AS_MEASURED, "standard deviation of one reading")
                    .output(
                            "standardError",
                            "u",
                            Quantity.AS_MEASURED,
                            "standard deviation of the mean")
                    .assumes("the readings are independent")
                    .source(
                            "NIST/SEMATECH e-Handbook of Statistical Methods, sections 1.3.5.1 and 1.3.5.6")
                    .by(w -> write(w, ID));

    private MeanSpread() {}

    /**
     * What is kept of a sample.
     *
     * @param n how many readings, two at least
     * @param mean of the readings
     * @param sd standard deviation of one reading
     */
    public record Summary(int n, double mean, double sd) {
        /** Standard deviation of the mean. */
        public double standardError() {
            return sd / Math.sqrt(n);
        }

        /** The mean as an estimate with n − 1 degrees of freedom. */
        public Estimate estimate() {
            return new Estimate(mean, standardError(), n - 1);
        }
    }

    /**
     * Sums up a sample.
     *
     * @param sample two readings at least, any unit; not changed
     */
    public static Summary of(double[] sample) {
        return new Summary(sample.length, Samples.mean(sample), Samples.sd(sample));
    }

    /** Writes mean, sd and standardError of the slot {@code sample}. */
    static Summary write(Working w, String relation) {
        double[] x = Samples.two(w, relation, "sample");
        Samples.cautionIfAlike(w, "sample", x);
        Summary sum = of(x);
        w.out("mean", "\\frac{1}{n}\\sum x_i", sum.mean, "The mean of " + x.length + " readings.");
        w.out(
                "sd",
                "\\sqrt{\\frac{\\sum (x_i - @mean)^2}{n - 1}}",
                sum.sd,
                "The spread of single readings; n − 1 because the mean came from the same readings.");
        w.step("n", "n", Quantity.COUNT, "", x.length, "Count the readings.");
        w.out(
                "standardError",
                "\\frac{@sd}{\\sqrt{@n}}",
                sum.standardError(),
                "A mean scatters less than a reading.");
        return sum;
    }
}

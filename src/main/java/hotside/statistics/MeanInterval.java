// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Interval for the mean of repeated readings by Student's t.
 *
 * <p>Source: Student (1908); NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.2.
 * Assumes independent readings from one normal population: pulls from one warm-up are not
 * independent.
 */
public final class MeanInterval {
    public static final Relation RELATION =
            Relation.named("mean-interval", "A mean and how far it can be trusted", "Test design")
                    .says(
                            "Repeated readings scatter. Their mean is known only within an interval, which narrows"
                                    + " with the square root of their number and is wide when there are few.")
                    .tex("\\bar x \\pm t\\,\\frac{s}{\\sqrt n}")
                    .input(
                            Slot.numbers(
                                            "sample",
                                            "x",
                                            Quantity.AS_MEASURED,
                                            "the readings, two at least")
                                    .typical(List.of(248.1, 247.2, 249.0, 248.4)))
                    .input(Confidence.slot())
                    .output("mean", "\\bar x", Quantity.AS_MEASURED, "mean of the readings")
                    .output("sd", "s", Quantity.AS_MEASURED, "standard deviation of one reading")
                    .output(
                            "standardError",
                            "u",
                            Quantity.AS_MEASURED,
                            "standard deviation of the mean")
                    .output(
                            "halfWidth",
                            "h",
                            Quantity.AS_MEASURED,
                            "half the width of the interval")
                    .output("low", "x_l", Quantity.AS_MEASURED, "lower end of the interval")
                    .output("high", "x_u", Quantity.AS_MEASURED, "upper end of the interval")
                    .assumes("the readings are independent", "their scatter is about normal")
                    .source(
                            "NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.2",
                            "Student (1908)")
                    .by(MeanInterval::work);

    private MeanInterval() {}

    private static void work(Working w) {
        double[] x = w.readings("sample");
        if (x.length < 2) {
            throw new hotside.relation.RelationException(
                    "sample",
                    "mean-interval: sample holds "
                            + x.length
                            + " reading; two at least show a spread");
        }
        double confidence = w.in("confidence");
        double mean =
                w.out(
                        "mean",
                        "\\frac{1}{n}\\sum x_i",
                        StatUtils.mean(x),
                        "The mean of " + x.length + " readings.");
        double sd =
                w.out(
                        "sd",
                        "\\sqrt{\\frac{\\sum (x_i - @mean)^2}{n - 1}}",
                        Math.sqrt(StatUtils.variance(x)),
                        "The spread of single readings; n − 1 because the mean came from the same readings.");
        w.step("n", "n", Quantity.COUNT, "", x.length, "Count the readings.");
        double error =
                w.out(
                        "standardError",
                        "\\frac{@sd}{\\sqrt{@n}}",
                        sd / Math.sqrt(x.length),
                        "A mean scatters less than a reading.");
        double t =
                w.step(
                        "t",
                        "t",
                        Quantity.RATIO,
                        "",
                        Confidence.student(confidence, x.length - 1),
                        "From the table of Student's t for n − 1 degrees of freedom.");
        double half =
                w.out("halfWidth", "@t\\,@standardError", t * error, "So far to either side.");
        w.out("low", "@mean - @halfWidth", mean - half, "Lower end.");
        w.out("high", "@mean + @halfWidth", mean + half, "Upper end.");
    }
}

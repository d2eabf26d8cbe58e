// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Interval for the mean of repeated readings by Student's t.
 *
 * <p>Source: Student (1908); NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.2.
 * Assumes independent readings from one normal population: pulls from one warm-up are not
 * independent.
 */
public final class MeanInterval {
    private static final String ID = "mean-interval";

    public static final Relation RELATION =
            Relation.named(ID, "A mean and how far it can be trusted", "Test design")
                    .says(
                            "Repeated readings scatter. Their mean is known only within an interval, which narrows"
                                    + " with the square root of their number and is wide when there are few.")
                    .tex("\\bar x \\pm t\\,\\frac{s}{\\sqrt n}")
                    .input(
                            Samples.slot(
                                    "sample",
                                    "x",
                                    "the readings, two at least",
                                    248.1,
                                    247.2,
                                    249.0,
                                    248.4))
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
        MeanSpread.Summary sum = MeanSpread.write(w, ID);
        Bounds.write(w, sum.estimate(), "mean");
    }
}

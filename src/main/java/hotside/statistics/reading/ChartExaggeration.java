// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * How much larger a chart makes a change look than it is.
 *
 * <p>Source: Tufte, The Visual Display of Quantitative Information (1983), the lie factor, from
 * memory: relative change shown over relative change in the data. What is shown is the height above
 * the lower end of the axis.
 */
public final class ChartExaggeration {
    private static final String ID = "chart-exaggeration";

    public static final Relation RELATION =
            Relation.named(ID, "How much a chart exaggerates", "Reading curves")
                    .says(
                            "The eye compares heights above the bottom of the chart. Where the axis does not begin at"
                                    + " zero, a small change looks like a large one, by the same factor for every"
                                    + " change from that value.")
                    .tex(
                            "E = \\frac{(y_2 - y_0)/(y_1 - y_0) - 1}{y_2/y_1 - 1} ="
                                    + " \\frac{y_1}{y_1 - y_0}")
                    .input(
                            axis("axisLow", "y_0", "lower end of the axis")
                                    .usual(
                                            0,
                                            2000,
                                            "axes of power or torque begin between 0 and 2000")
                                    .typical(240))
                    .input(
                            axis("axisHigh", "y_t", "upper end of the axis")
                                    .usual(1, 3000, "axes of power or torque end below 3000")
                                    .typical(260))
                    .input(value("first", "y_1", "value before the change").typical(248))
                    .input(value("second", "y_2", "value after the change").typical(254))
                    .output(
                            "seenRatio",
                            "R_s",
                            Quantity.RATIO,
                            "height of the second over height of the first")
                    .output("trueRatio", "R_t", Quantity.RATIO, "second value over first")
                    .output(
                            "exaggeration",
                            "E",
                            Quantity.RATIO,
                            "relative change that is seen over that which is there")
                    .output(
                            "heightShare",
                            "H",
                            Quantity.PERCENTAGE,
                            "share of the chart's height that the change fills")
                    .assumes("the scale is even", "the reader compares heights above the bottom")
                    .source(
                            "Tufte, The Visual Display of Quantitative Information (1983); from memory")
                    .by(ChartExaggeration::work);

    private ChartExaggeration() {}

    private static Slot axis(String name, String symbol, String meaning) {
        return Slot.number(name, symbol, Quantity.AS_MEASURED, meaning).range(-1e9, 1e9);
    }

    private static Slot value(String name, String symbol, String meaning) {
        return Slot.number(name, symbol, Quantity.AS_MEASURED, meaning)
                .above(0, 1e9)
                .usual(1, 3000, "readings of power or torque lie between 1 and 3000");
    }

    /**
     * Relative change seen over relative change in the data, for any change from a value.
     *
     * @param axisLow lower end of the axis
     * @param first value before the change, above {@code axisLow}, same unit
     * @return 1 for an axis from zero; above 1 if it begins higher
     */
    public static double of(double axisLow, double first) {
        return first / (first - axisLow);
    }

    private static void work(Working w) {
        double low = w.in("axisLow");
        double high = w.in("axisHigh");
        double first = w.in("first");
        double second = w.in("second");
        check(low, high, first);
        w.caution(
                Math.max(first, second) > high || second < low,
                "axisHigh",
                () -> "a value lies outside the axis and would be cut off");
        w.step(
                "seenFirst",
                "h_1",
                Quantity.AS_MEASURED,
                "@first - @axisLow",
                first - low,
                "Height at which the first value stands.");
        w.step(
                "seenSecond",
                "h_2",
                Quantity.AS_MEASURED,
                "@second - @axisLow",
                second - low,
                "Height of the second.");
        w.out(
                "seenRatio",
                "\\frac{@seenSecond}{@seenFirst}",
                (second - low) / (first - low),
                "What the eye compares.");
        w.out("trueRatio", "\\frac{@second}{@first}", second / first, "What the numbers say.");
        w.out(
                "heightShare",
                "\\frac{@second - @first}{@axisHigh - @axisLow}",
                (second - first) / (high - low),
                "The change on the page.");
        w.out(
                "exaggeration",
                "\\frac{@first}{@seenFirst}",
                of(low, first),
                "Change seen over change in the data; the change itself cancels.");
    }

    private static void check(double low, double high, double first) {
        if (high <= low) {
            throw new RelationException(
                    "axisHigh", ID + ": axisHigh = " + high + " must lie above axisLow = " + low);
        }
        if (first <= low) {
            throw new RelationException(
                    "first",
                    ID
                            + ": first = "
                            + first
                            + " must lie above axisLow = "
                            + low
                            + "; otherwise it has no height to compare with");
        }
    }
}

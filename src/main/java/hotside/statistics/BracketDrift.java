// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Gain from runs in brackets A-B-A, with the straight part of the bench's drift taken out.
 *
 * <p>Source: least squares on {@code y = a + g·changed + d·time}, NIST/SEMATECH e-Handbook of
 * Statistical Methods, section 4.1.4.1. With one run a stage three unknowns use up three readings:
 * then the spread of a reading must be known from elsewhere. A bent drift is not taken out.
 */
public final class BracketDrift {
    private static final String ID = "bracket-drift";

    public static final Relation RELATION =
            Relation.named(ID, "Gain out of a bracket, drift taken out", "Test design")
                    .says(
                            "First without the part, then with it, then without again: the two ends show how far the"
                                    + " bench drifted, and the straight part of that drift is taken out of the gain.")
                    .tex("y = a + g\\,B + d\\,(t - \\bar t)")
                    .input(Samples.slot("first", "y_1", "readings before the change", 248.1, 247.9))
                    .input(times("firstTimes", "t_1", "when they were taken", 0.0, 300.0))
                    .input(Samples.slot("changed", "y_2", "readings with the part", 252.6, 252.0))
                    .input(times("changedTimes", "t_2", "when they were taken", 1800.0, 2100.0))
                    .input(
                            Samples.slot(
                                    "last", "y_3", "readings after changing back", 246.8, 246.9))
                    .input(times("lastTimes", "t_3", "when they were taken", 3600.0, 3900.0))
                    .input(
                            Slot.number(
                                            "knownSpread",
                                            "s_k",
                                            Quantity.AS_MEASURED,
                                            "spread of one reading if known from elsewhere; 0 to estimate it here")
                                    .range(0, 1e9)
                                    .usual(
                                            0,
                                            100,
                                            "in kW, hp or N·m a reading scatters by less than 100; check the unit")
                                    .orElse(0))
                    .input(Confidence.slot())
                    .output(
                            "gain",
                            "g",
                            Quantity.AS_MEASURED,
                            "what the part brought, drift taken out")
                    .output(
                            "drift",
                            "d",
                            Quantity.AS_MEASURED,
                            "drift of the bench in one second, in the unit of the readings")
                    .output(
                            "gainAgainstFirst",
                            "g_1",
                            Quantity.AS_MEASURED,
                            "changed less first, with the drift still in it")
                    .output(
                            "spread",
                            "s",
                            Quantity.AS_MEASURED,
                            "spread of one reading that the interval stands on")
                    .output(
                            "standardError",
                            "u",
                            Quantity.AS_MEASURED,
                            "standard deviation of the gain")
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
                            "the bench drifts in a straight line",
                            "readings are independent and about normal",
                            "changing back brings back the first state")
                    .source(
                            "least squares; NIST/SEMATECH e-Handbook of Statistical Methods, section 4.1.4.1")
                    .by(BracketDrift::work);

    private BracketDrift() {}

    private static Slot times(String name, String symbol, String meaning, Double... typical) {
        return Slot.numbers(name, symbol, Quantity.TIME, meaning)
                .range(-1e9, 1e9)
                .shown("min", "min")
                .typical(List.of(typical));
    }

    /**
     * Readings of one state.
     *
     * @param readings any unit; not changed
     * @param times when each was taken, s; not changed
     */
    public record Stage(double[] readings, double[] times) {}

    /**
     * What a bracket gives.
     *
     * @param fit coefficients: level in the middle of the test, gain, drift per second
     */
    public record Result(LeastSquares.Fit fit) {
        /** The gain with the spread found in the test itself. */
        public Estimate gain() {
            return fit.coefficient(1);
        }

        /** The gain with a spread known from elsewhere. */
        public Estimate gain(double knownSpread) {
            return fit.coefficient(1, knownSpread);
        }

        /** Drift in a second. */
        public double drift() {
            return fit.coefficients()[2];
        }
    }

    /**
     * Fits level, gain and drift.
     *
     * @throws IllegalArgumentException if the times do not let drift be told from the part
     */
    public static Result of(Stage first, Stage changed, Stage last) {
        double[] y = joined(first.readings, changed.readings, last.readings);
        double[] t = joined(first.times, changed.times, last.times);
        double middle = Samples.mean(t);
        double[] part = new double[y.length];
        Arrays.fill(
                part, first.readings.length, first.readings.length + changed.readings.length, 1);
        double[] level = new double[y.length];
        Arrays.fill(level, 1);
        return new Result(
                LeastSquares.fit(y, level, part, Arrays.stream(t).map(v -> v - middle).toArray()));
    }

    private static double[] joined(double[]... rows) {
        return Arrays.stream(rows).flatMapToDouble(DoubleStream::of).toArray();
    }

    private static Stage stage(Working w, String readings, String times) {
        Stage stage = new Stage(w.readings(readings), w.readings(times));
        Samples.sameLength(ID, times, stage.times, readings, stage.readings);
        return stage;
    }

    private static void work(Working w) {
        Stage first = stage(w, "first", "firstTimes");
        Stage changed = stage(w, "changed", "changedTimes");
        Stage last = stage(w, "last", "lastTimes");
        Result result = fitted(first, changed, last);
        double known = w.in("knownSpread");
        int dof = result.fit.degreesOfFreedom();
        if (known == 0 && dof == 0) {
            throw Samples.refuse(
                    ID,
                    "knownSpread",
                    "is needed: three readings fix level, gain and drift and leave nothing to show the spread;"
                            + " give it, or repeat a run");
        }
        Estimate gain = known > 0 ? result.gain(known) : result.gain();
        outside(w, first, changed, last);
        write(w, result, gain, known);
        w.out(
                "gainAgainstFirst",
                "\\bar y_2 - \\bar y_1",
                Samples.mean(changed.readings) - Samples.mean(first.readings),
                "What an A-B test without the way back would have said.");
        Bounds.write(w, gain, "gain");
        w.out("p", "", gain.p(), "How easily luck alone gives as much.");
    }

    private static Result fitted(Stage first, Stage changed, Stage last) {
        try {
            return of(first, changed, last);
        } catch (IllegalArgumentException e) {
            throw Samples.refuse(
                    ID,
                    "lastTimes",
                    "must differ from firstTimes: drift shows only between runs of the same state at different"
                            + " times");
        }
    }

    private static void write(Working w, Result result, Estimate gain, double known) {
        w.out(
                "drift",
                "",
                result.drift(),
                "The slope in time that fits all runs best, with the part allowed its step.");
        w.out(
                "gain",
                "",
                gain.value(),
                "The step that fits best beside that slope; in an even bracket the changed mean less the mean"
                        + " of its two ends.");
        w.out(
                "spread",
                "",
                known > 0 ? known : result.fit.residualSd(),
                known > 0
                        ? "The spread of a reading, as given."
                        : "What the fit leaves over, with "
                                + result.fit.degreesOfFreedom()
                                + " degrees of freedom.");
        w.step(
                "root",
                "r",
                Quantity.RATIO,
                "",
                Math.sqrt(result.fit.unscaled()[1][1]),
                "How the times and numbers of runs turn a reading's spread into the gain's.");
        w.out(
                "standardError",
                "@root \\cdot @spread",
                gain.standardError(),
                "The spread of the gain.");
        w.caution(
                known == 0 && gain.standardError() == 0,
                "gain",
                () ->
                        "the fit leaves nothing over at all, so the interval has no width; more digits are needed");
    }

    private static void outside(Working w, Stage first, Stage changed, Stage last) {
        double middle = Samples.mean(changed.times);
        double one = Samples.mean(first.times);
        double other = Samples.mean(last.times);
        w.caution(
                middle < Math.min(one, other) || middle > Math.max(one, other),
                "changedTimes",
                () ->
                        "the changed runs do not lie between the others in time, so drift is carried on beyond where"
                                + " it was seen");
    }
}

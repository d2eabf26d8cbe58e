// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import hotside.statistics.MeanSpread.Summary;
import hotside.statistics.PairedGainTest.SleepData;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.stat.inference.TTest;
import org.junit.jupiter.api.Test;

class WelchGainTest {
    private static Values gain(List<Double> a, List<Double> b) {
        return WelchGain.RELATION.solve(Values.of("partA", a, "partB", b));
    }

    @Test
    void agreesWithStudentsSleepData() {
        // R 4.2.2, dataset sleep (Student 1908): group 1 less group 2
        Values out = gain(SleepData.list(SleepData.SECOND), SleepData.list(SleepData.FIRST));
        var gain = WelchGain.of(MeanSpread.of(SleepData.SECOND), MeanSpread.of(SleepData.FIRST));
        assertEquals(-1.860813467, gain.t(), 1e-8);
        assertEquals(17.77647352, out.number("degreesOfFreedom"), 1e-8);
        assertEquals(0.0793941402, out.number("p"), 1e-10);
        assertEquals(-3.365483231, out.number("low"), 1e-8);
        assertEquals(0.205483231, out.number("high"), 1e-8);
    }

    @Test
    void sharesOneSpreadWhenTold() {
        // R 4.2.2, dataset sleep, var.equal = TRUE: p = 0.0791867142
        Values out =
                WelchGain.RELATION.solve(
                        Values.of(
                                "partA", SleepData.list(SleepData.FIRST),
                                "partB", SleepData.list(SleepData.SECOND),
                                "spread", "common"));
        assertEquals(0.0791867142, out.number("p"), 1e-10);
        assertEquals(18, out.number("degreesOfFreedom"), 0.0);
    }

    @Test
    void agreesWithTheCarsOfTheHandbook() {
        // NIST/SEMATECH e-Handbook 1.3.5.3, AUTO83B (summary from memory): miles per gallon of 249
        // and 79 cars; pooled s = 6.342601, t = -12.62059; unequal spreads t = -12.94627 with
        // 136.8750 degrees of freedom
        Summary us = new Summary(249, 20.14458, 6.414700);
        Summary japan = new Summary(79, 30.48101, 6.107710);
        assertEquals(6.342601, WelchGain.pooledSd(us, japan), 1e-5);
        assertEquals(-12.62059, WelchGain.pooled(japan, us).t(), 1e-5);
        assertEquals(326, WelchGain.pooled(japan, us).degreesOfFreedom(), 0.0);
        assertEquals(-12.94627, WelchGain.of(japan, us).t(), 1e-5);
        assertEquals(136.8750, WelchGain.of(japan, us).degreesOfFreedom(), 1e-4);
        // the handbook's critical value for 326 degrees of freedom
        assertEquals(1.9673, Confidence.student(0.95, 326), 5e-5);
    }

    @Test
    void agreesWithAPrintedExampleOfVeryDifferentSpreads() {
        // example of the NAG library's g07ca: n 4, mean 25, sd 0.8185; n 8, mean 21, sd 4.2083
        Summary x = new Summary(4, 25, 0.8185);
        Summary y = new Summary(8, 21, 4.2083);
        var pooled = WelchGain.pooled(y, x);
        assertEquals(1.8403, pooled.t(), 1e-4);
        assertEquals(0.0955, pooled.p(), 1e-4);
        assertEquals(-0.8429, pooled.value() - pooled.halfWidth(0.95), 1e-4);
        var welch = WelchGain.of(y, x);
        assertEquals(2.5922, welch.t(), 1e-4);
        assertEquals(7.9925, welch.degreesOfFreedom(), 1e-4);
        assertEquals(0.0320, welch.p(), 1e-4);
        assertEquals(0.4410, welch.value() - welch.halfWidth(0.95), 1e-4);
        assertEquals(7.5590, welch.value() + welch.halfWidth(0.95), 1e-4);
    }

    @Test
    void ofThreePullsEachWithASpreadOfHalfAPercentNeedsAboutFivePointSevenKilowatts() {
        // sd 2.5 kW estimated from three and three pulls: t(4) = 2.776445, 2.5 sqrt(2/3) = 2.041241
        List<Double> a = List.of(497.5, 500.0, 502.5);
        List<Double> b = List.of(503.5, 506.0, 508.5);
        Values out = gain(a, b);
        assertEquals(4, out.number("degreesOfFreedom"), 1e-12);
        assertEquals(2.776445 * 2.041241, out.number("halfWidth"), 1e-5);
        assertEquals(5.7, out.number("halfWidth"), 0.05);
    }

    @Test
    void stillCountsWhenOnePartShowsNoSpread() {
        var worked =
                WelchGain.RELATION.work(
                        Values.of("partA", List.of(5.0, 5.0, 5.0), "partB", List.of(6.0, 8.0)));
        // only the second part scatters: one degree of freedom, standard error 1
        assertEquals(1, worked.out().number("degreesOfFreedom"), 1e-12);
        assertEquals(12.706204736, worked.out().number("halfWidth"), 1e-8);
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("partA")));
    }

    @Test
    void hasNoWidthWhenNeitherPartShowsASpread() {
        Values out = gain(List.of(5.0, 5.0), List.of(6.0, 6.0));
        assertEquals(0, out.number("halfWidth"), 0.0);
        assertEquals(0, out.number("p"), 0.0);
    }

    @Test
    void refusesOneReading() {
        var e = assertThrows(RelationException.class, () -> gain(List.of(5.0, 6.0), List.of(7.0)));
        assertEquals("partB", e.slot());
    }

    @Property(seed = "20261125")
    void agreesWithAnotherLibrary(
            @ForAll @Size(5) List<@DoubleRange(min = 200, max = 260) Double> aList,
            @ForAll @Size(4) List<@DoubleRange(min = 200, max = 260) Double> bList) {
        double[] a = array(aList);
        double[] b = array(bList);
        var gain = WelchGain.of(MeanSpread.of(a), MeanSpread.of(b));
        if (gain.standardError() > 1e-6) {
            assertEquals(new TTest().tTest(a, b), gain.p(), 1e-9);
            assertEquals(new TTest().t(b, a), gain.t(), 1e-9 * (1 + Math.abs(gain.t())));
        }
    }

    @Property(seed = "20261125")
    void degreesOfFreedomLieBetweenTheSmallerRowAndBothTogether(
            @ForAll @IntRange(min = 2, max = 30) int na,
            @ForAll @IntRange(min = 2, max = 30) int nb,
            @ForAll @DoubleRange(min = 0.1, max = 20) double sa,
            @ForAll @DoubleRange(min = 0.1, max = 20) double sb) {
        double dof =
                WelchGain.of(new Summary(na, 0, sa), new Summary(nb, 0, sb)).degreesOfFreedom();
        assertTrue(dof >= Math.min(na, nb) - 1 - 1e-9 && dof <= na + nb - 2 + 1e-9, "" + dof);
    }

    @Property(seed = "20261125")
    void swappingThePartsTurnsTheSign(
            @ForAll @Size(4) List<@DoubleRange(min = 1, max = 500) Double> a,
            @ForAll @Size(3) List<@DoubleRange(min = 1, max = 500) Double> b) {
        Values one = gain(a, b);
        Values other = gain(b, a);
        assertEquals(one.number("gain"), -other.number("gain"), 0.0);
        assertEquals(one.number("low"), -other.number("high"), 1e-9);
        assertEquals(one.number("p"), other.number("p"), 1e-12);
    }

    @Property(seed = "20261125")
    void scalingAllReadingsScalesTheIntervalAndKeepsP(
            @ForAll @Size(4) List<@DoubleRange(min = 200, max = 260) Double> aList,
            @ForAll @DoubleRange(min = 0.1, max = 20) double factor) {
        double[] a = array(aList);
        double[] b = {231.0, 244.0, 236.0};
        var one = WelchGain.of(MeanSpread.of(a), MeanSpread.of(b));
        var scaled = WelchGain.of(MeanSpread.of(times(a, factor)), MeanSpread.of(times(b, factor)));
        assertEquals(factor * one.halfWidth(0.95), scaled.halfWidth(0.95), 1e-8 * factor);
        assertEquals(one.p(), scaled.p(), 1e-8);
    }

    private static double[] times(double[] x, double factor) {
        return java.util.Arrays.stream(x).map(v -> v * factor).toArray();
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}

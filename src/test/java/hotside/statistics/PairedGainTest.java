// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.stat.inference.TTest;
import org.junit.jupiter.api.Test;

class PairedGainTest {
    private static Values gain(List<Double> before, List<Double> after) {
        return PairedGain.RELATION.solve(Values.of("before", before, "after", after));
    }

    @Test
    void agreesWithStudentsSleepData() {
        // Student (1908); R 4.2.2, dataset sleep, paired: t = 4.062127683, p = 0.0028328902, 9
        // degrees of freedom
        var gain = PairedGain.of(SleepData.FIRST, SleepData.SECOND);
        assertEquals(1.58, gain.value(), 1e-12);
        assertEquals(4.062127683, gain.t(), 1e-8);
        assertEquals(0.0028328902, gain.p(), 1e-10);
        assertEquals(9, gain.degreesOfFreedom(), 0.0);
    }

    @Test
    void agreesWithAnotherLibrary() {
        Values out = gain(SleepData.list(SleepData.FIRST), SleepData.list(SleepData.SECOND));
        assertEquals(
                new TTest().pairedTTest(SleepData.SECOND, SleepData.FIRST), out.number("p"), 1e-10);
    }

    @Test
    void hasNoWidthWhenEveryPairDiffersAlike() {
        var worked =
                PairedGain.RELATION.work(
                        Values.of("before", List.of(1.0, 2.0), "after", List.of(3.0, 4.0)));
        assertEquals(2, worked.out().number("gain"), 0.0);
        assertEquals(0, worked.out().number("halfWidth"), 0.0);
        assertEquals(0, worked.out().number("p"), 0.0);
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("after")));
    }

    @Test
    void seesNothingWhenNothingChanged() {
        assertEquals(1, gain(List.of(1.0, 2.0), List.of(1.0, 2.0)).number("p"), 0.0);
    }

    @Test
    void refusesRowsOfDifferentLength() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> gain(List.of(1.0, 2.0, 3.0), List.of(1.0, 2.0)));
        assertEquals(
                "paired-gain: after holds 2 and before 3; both need one for each run",
                e.getMessage());
    }

    @Property(seed = "20261125")
    void isTheMeanIntervalOfTheDifferences(
            @ForAll @Size(6) List<@DoubleRange(min = 1, max = 500) Double> before,
            @ForAll @Size(6) List<@DoubleRange(min = 1, max = 500) Double> after) {
        List<Double> differences =
                IntStream.range(0, 6)
                        .mapToObj(i -> after.get(i) - before.get(i))
                        .collect(Collectors.toList());
        Values pairs = gain(before, after);
        Values one = MeanInterval.RELATION.solve(Values.of("sample", differences));
        assertEquals(one.number("mean"), pairs.number("gain"), 0.0);
        assertEquals(one.number("halfWidth"), pairs.number("halfWidth"), 0.0);
    }

    @Property(seed = "20261125")
    void doesNotSeeWhatBothRunsOfAPairShare(
            @ForAll @Size(5) List<@DoubleRange(min = -50, max = 50) Double> sharedList) {
        double[] shared = array(sharedList);
        double[] before = {248.1, 247.2, 249.0, 248.4, 247.7};
        double[] after = {254.0, 252.6, 254.9, 254.6, 252.9};
        var plain = PairedGain.of(before, after);
        var drifted = PairedGain.of(plus(before, shared), plus(after, shared));
        assertEquals(plain.value(), drifted.value(), 1e-9);
        assertEquals(plain.standardError(), drifted.standardError(), 1e-9);
    }

    private static double[] plus(double[] a, double[] b) {
        return IntStream.range(0, a.length).mapToDouble(i -> a[i] + b[i]).toArray();
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Student (1908): hours of sleep gained by ten patients with two drugs; from memory. */
    static final class SleepData {
        static final double[] FIRST = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
        static final double[] SECOND = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};

        private SleepData() {}

        static List<Double> list(double[] x) {
            return Arrays.stream(x).boxed().toList();
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MeanIntervalTest {
    private static final double RELATIVE = 1e-9;

    private static Values interval(List<Double> sample) {
        return MeanInterval.RELATION.solve(Values.of("sample", sample));
    }

    @Test
    void keepsASmallSpreadOnALargeMean() {
        // NIST StRD NumAcc4: 1001 readings, mean 10000000.2 and standard deviation 0.1 exactly
        List<Double> sample = new ArrayList<>(List.of(10000000.2));
        for (int i = 0; i < 500; i++) {
            sample.add(10000000.1);
            sample.add(10000000.3);
        }
        Values out = MeanSpread.RELATION.solve(Values.of("sample", sample));
        assertEquals(10000000.2, out.number("mean"), 1e-8);
        // the readings themselves are rounded to 1e-9 in a double
        assertEquals(0.1, out.number("sd"), 1e-9);
        assertEquals(0.1 / Math.sqrt(1001), out.number("standardError"), 1e-10);
    }

    @Test
    void isVeryWideForTwoReadings() {
        // sd = sqrt 2, standard error 1, t = 12.706204736 (any table, one degree of freedom)
        Values out = interval(List.of(1.0, 3.0));
        assertEquals(2, out.number("mean"), 0.0);
        assertEquals(Math.sqrt(2), out.number("sd"), 1e-15);
        assertEquals(12.706204736, out.number("halfWidth"), 1e-8);
        assertEquals(2 - 12.706204736, out.number("low"), 1e-8);
        assertEquals(2 + 12.706204736, out.number("high"), 1e-8);
    }

    @Test
    void hasNoWidthAndACautionWhenReadingsAreAllAlike() {
        var worked = MeanInterval.RELATION.work(Values.of("sample", List.of(0.1, 0.1, 0.1)));
        assertEquals(0.1, worked.out().number("mean"), 0.0);
        assertEquals(0, worked.out().number("halfWidth"), 0.0);
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("sample")));
    }

    @Test
    void refusesOneReading() {
        var e = assertThrows(RelationException.class, () -> interval(List.of(248.1)));
        assertEquals(
                "mean-interval: sample holds one reading; two at least show a spread",
                e.getMessage());
        assertEquals("sample", e.slot());
    }

    @Test
    void staysFiniteForAConfidenceNextToOne() {
        Values out =
                MeanInterval.RELATION.solve(
                        Values.of(
                                "sample",
                                List.of(1.0, 2.0, 3.0, 4.0, 5.0),
                                "confidence",
                                Math.nextDown(1.0)));
        // standard error sqrt(0.5); SciPy 1.17.1: t.isf(2^-54, 4) = 15247.0299022
        assertEquals(15247.0299022 * Math.sqrt(0.5), out.number("halfWidth"), 1e-5);
    }

    @Property(seed = "20261125")
    void scalingTheReadingsScalesTheInterval(
            @ForAll @Size(min = 2, max = 12) List<@DoubleRange(min = 1, max = 500) Double> sample,
            @ForAll @DoubleRange(min = 0.1, max = 50) double factor) {
        Values out = interval(sample);
        Values scaled = interval(sample.stream().map(x -> x * factor).collect(Collectors.toList()));
        double close = RELATIVE * 500 * factor * 30;
        assertEquals(factor * out.number("halfWidth"), scaled.number("halfWidth"), close);
        assertEquals(factor * out.number("low"), scaled.number("low"), close);
    }

    @Property(seed = "20261125")
    void shiftingTheReadingsShiftsTheIntervalAndKeepsItsWidth(
            @ForAll @Size(min = 2, max = 12) List<@DoubleRange(min = 1, max = 500) Double> sample,
            @ForAll @DoubleRange(min = -300, max = 300) double shift) {
        Values out = interval(sample);
        Values shifted = interval(sample.stream().map(x -> x + shift).collect(Collectors.toList()));
        assertEquals(out.number("mean") + shift, shifted.number("mean"), 1e-9);
        assertEquals(out.number("halfWidth"), shifted.number("halfWidth"), 1e-8);
    }

    @Property(seed = "20261125")
    void moreConfidenceIsWider(
            @ForAll @Size(value = 5) List<@DoubleRange(min = 1, max = 500) Double> sample,
            @ForAll @DoubleRange(min = 0.5, max = 0.98) double confidence) {
        Values in = Values.of("sample", sample, "confidence", confidence);
        double width = MeanInterval.RELATION.value("halfWidth", in);
        double wider =
                MeanInterval.RELATION.value("halfWidth", in.with("confidence", confidence + 0.01));
        assertTrue(wider >= width);
    }
}

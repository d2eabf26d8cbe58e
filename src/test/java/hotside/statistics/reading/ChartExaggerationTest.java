// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ChartExaggerationTest {
    private static Values chart(double low, double high, double first, double second) {
        return Values.of("axisLow", low, "axisHigh", high, "first", first, "second", second);
    }

    @Test
    void dividesTheChangeShownByTheChangeInTheData() {
        // by hand: axis 240 to 260, 248 to 254: heights 8 and 14, so 75 % shown for 2.419 %
        Values out = ChartExaggeration.RELATION.solve(chart(240, 260, 248, 254));
        assertEquals(1.75, out.number("seenRatio"), 1e-12);
        assertEquals(254.0 / 248, out.number("trueRatio"), 1e-12);
        assertEquals(0.75 / (6.0 / 248), out.number("exaggeration"), 1e-9);
        assertEquals(0.3, out.number("heightShare"), 1e-12);
    }

    @Test
    void agreesWithTheFuelEconomyRoadOfTheBook() {
        // Tufte (1983), from memory: a line of 0.6 in for 18 miles per gallon, of 5.3 in for 27.5:
        // 783 % shown for 53 %, lie factor 14.8. The same picture as an axis: 0.6 k = 18 - low and
        // 5.3 k = 27.5 - low give low = 16.7872
        double low = 18 - 0.6 * (27.5 - 18) / (5.3 - 0.6);
        Values out = ChartExaggeration.RELATION.solve(chart(low, 30, 18, 27.5));
        assertEquals(8.83, out.number("seenRatio"), 5e-3);
        assertEquals(14.8, out.number("exaggeration"), 0.05);
    }

    @Test
    void makesATinyChangeFillATenthOfAnAxisOfTwoUnits() {
        Values out = ChartExaggeration.RELATION.solve(chart(247, 249, 248, 248.2));
        assertEquals(0.1, out.number("heightShare"), 1e-12);
        assertEquals(248, out.number("exaggeration"), 1e-9);
    }

    @Property(seed = "20261125")
    void isFairOnAnAxisFromZero(
            @ForAll @DoubleRange(min = 1, max = 400) double first,
            @ForAll @DoubleRange(min = 1, max = 400) double second) {
        Values out = ChartExaggeration.RELATION.solve(chart(0, 500, first, second));
        assertEquals(1, out.number("exaggeration"), 0.0);
        assertEquals(out.number("trueRatio"), out.number("seenRatio"), 0.0);
    }

    @Test
    void refusesAValueWithoutHeightAndAnAxisUpsideDown() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> ChartExaggeration.RELATION.solve(chart(250, 260, 248, 254)));
        assertEquals(
                "chart-exaggeration: first = 248.0 must lie above axisLow = 250.0; otherwise it has no"
                        + " height to compare with",
                e.getMessage());
        assertThrows(
                RelationException.class,
                () -> ChartExaggeration.RELATION.solve(chart(240, 230, 248, 254)));
    }

    @Test
    void cautionsWhenAValueIsCutOff() {
        var worked = ChartExaggeration.RELATION.work(chart(240, 250, 248, 254));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("axisHigh")));
    }
}

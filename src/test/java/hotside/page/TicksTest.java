// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {
    /** The 1-2-5 series, as on every ruled scale; worked by hand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    0     | 250     | true  | 5 | 0 50 100 150 200 250
                    83    | 224     | true  | 5 | 0 50 100 150 200 250
                    115.1 | 121     | false | 4 | 114 116 118 120 122
                    -2    | 2.2     | false | 6 | −2 −1 0 1 2 3
                    -7    | -3      | true  | 4 | −8 −6 −4 −2 0
                    0     | 0.3     | true  | 3 | 0.0 0.1 0.2 0.3
                    0     | 4.5e7   | true  | 3 | 0 2×10⁷ 4×10⁷ 6×10⁷
                    0     | 1.2e-7  | true  | 3 | 0 0.5×10⁻⁷ 1.0×10⁻⁷ 1.5×10⁻⁷
                    0     | 0       | true  | 2 | 0.0 0.5 1.0
                    """)
    void marksAreRoundNumbers(double min, double max, boolean fromZero, int about, String marks) {
        assertEquals(List.of(marks.split(" ")), Ticks.covering(min, max, fromZero, about).labels());
    }

    @Test
    void anAxisWithoutZeroIsBroken() {
        assertTrue(Ticks.covering(180, 250, false, 5).isBroken());
        assertTrue(Ticks.covering(-250, -180, false, 5).isBroken());
        assertFalse(Ticks.covering(180, 250, true, 5).isBroken());
        assertFalse(Ticks.covering(-1, 1, false, 5).isBroken());
    }

    @Property(seed = "20261125")
    void marksReachFromBelowTheSmallestToAboveTheLargest(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double from,
            @ForAll @DoubleRange(min = 0.01, max = 1e6) double span,
            @ForAll boolean fromZero,
            @ForAll @IntRange(min = 1, max = 10) int about) {
        Ticks ticks = Ticks.covering(from, from + span, fromZero, about);
        double slack = ticks.step().doubleValue() * 1e-6;
        assertTrue(ticks.low() <= from + slack, ticks + " from " + from);
        assertTrue(ticks.high() >= from + span - slack, ticks + " to " + (from + span));
        assertTrue(ticks.values().size() <= 2 * about + 3, ticks.toString());
        assertFalse(fromZero && ticks.isBroken());
        assertEquals(
                ticks.labels().size(),
                new HashSet<>(ticks.labels()).size(),
                () -> "labels differ: " + ticks.labels());
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "248, 248",
        "-3, -3",
        "1e-7, 1e-7",
        "1e300, 1e300",
        "-1e300, 1e300",
        "1e8, 100000000.1",
        "-1e-310, 1e-310",
        "5, 5.0000000001",
        "1e-12, 2e-12",
        "0, 1e-299"
    })
    void everyPairOfNumbersHasMarksWithRoomBetween(double min, double max) {
        for (boolean fromZero : new boolean[] {true, false}) {
            Ticks ticks = Ticks.covering(min, max, fromZero, 4);
            assertTrue(ticks.low() < ticks.high());
            assertTrue(ticks.low() <= min && ticks.high() >= max, ticks.toString());
            assertTrue(Double.isFinite(ticks.high() - ticks.low()));
            assertEquals(ticks.labels().size(), new HashSet<>(ticks.labels()).size());
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.unit.DecimalHabit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellNumberTest {
    private static double of(String text, DecimalHabit habit) {
        return CellNumber.of(text.toCharArray(), 0, text.length(), habit);
    }

    @ParameterizedTest(name = "{0} with {1} -> {2}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            12.5 | POINT | 12.5
            -12.5 | POINT | -12.5
            +7 | POINT | 7
            .5 | POINT | 0.5
            5. | POINT | 5
            1,234.5 | POINT | 1234.5
            1'234.5 | POINT | 1234.5
            12,5 | POINT | NaN
            12,5 | COMMA | 12.5
            1.234,5 | COMMA | 1234.5
            1.234 | COMMA | 1234
            12.5 | COMMA | NaN
            1,5e2 | COMMA | 150
            1e999 | POINT | NaN
            −3 | POINT | -3
            1.2.3 | POINT | NaN
            0x10 | POINT | NaN
            1d | POINT | NaN
            - | POINT | NaN
            . | POINT | NaN
            """)
    void readsACell(String text, DecimalHabit habit, double expected) {
        assertEquals(expected, of(text, habit));
    }

    /** The nearest double, as the Java library reads it. */
    @Property(seed = "20261125")
    void readsWhatTheLibraryReads(
            @ForAll @LongRange(min = -9_999_999_999_999_999L, max = 9_999_999_999_999_999L)
                    long digits,
            @ForAll @IntRange(max = 15) int decimals) {
        String text = java.math.BigDecimal.valueOf(digits, decimals).toPlainString();
        assertEquals(Double.parseDouble(text), of(text, DecimalHabit.POINT));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {
    // Rounded by hand.
    @ParameterizedTest
    @CsvSource({
        "66, 3, 66.0",
        "0.99996, 4, 1.000",
        "9.9999e6, 4, 1.000×10⁷",
        "9999999, 7, 9999999",
        "10000000, 3, 1.00×10⁷",
        "123456, 3, 123000",
        "1234567, 2, 1200000",
        "-85.25, 3, −85.3",
        "-0.0001, 2, −0.00010",
        "0.000099999, 2, 0.00010",
        "0.00001234, 3, 1.23×10⁻⁵",
        "-1.5e-12, 1, −2×10⁻¹²",
        "5, 1, 5",
        "100, 1, 100",
        "0, 4, 0",
        "4.9e-324, 2, 4.9×10⁻³²⁴",
        "1.7976931348623157e308, 3, 1.80×10³⁰⁸"
    })
    void roundsToSignificantDigitsAndKeepsTheirZeros(double value, int digits, String text) {
        assertEquals(text, Numbers.significant(value, digits));
    }

    @ParameterizedTest
    @CsvSource({
        "85, 85",
        "3.50, 3.5",
        "-2, −2",
        "0, 0",
        "1234567890, 1234567890",
        "12345678901, 1.23456789×10¹⁰",
        "0.30000000000000004, 0.3",
        "0.000001, 0.000001",
        "0.0000001, 1×10⁻⁷",
        "1e15, 1×10¹⁵"
    })
    void writesANumberWithNoMoreDigitsThanItHas(double value, String text) {
        assertEquals(text, Numbers.plain(value));
    }

    @Test
    void saysInWordsWhatIsNoNumber() {
        assertEquals("not a number", Numbers.significant(Double.NaN, 3));
        assertEquals("infinite", Numbers.plain(Double.POSITIVE_INFINITY));
        assertEquals("−infinite", Numbers.significant(Double.NEGATIVE_INFINITY, 3));
        assertEquals("0", Numbers.significant(-0.0, 3));
    }

    @Property(seed = "20261125")
    void roundedNumberIsTheOneThatIsWritten(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double value,
            @ForAll @IntRange(min = 1, max = 15) int digits) {
        String text = Numbers.significant(value, digits);
        if (text.indexOf('×') < 0) {
            assertEquals(
                    Numbers.rounded(value, digits),
                    new BigDecimal(text.replace('−', '-')).doubleValue());
        }
    }

    @Property(seed = "20261125")
    void roundingMovesByHalfALastDigitAtMost(
            @ForAll @DoubleRange(min = 1, max = 9.99) double mantissa,
            @ForAll @IntRange(min = -9, max = 9) int exponent,
            @ForAll @IntRange(min = 1, max = 12) int digits) {
        double value = mantissa * Math.pow(10, exponent);
        double lastDigit = Math.pow(10, exponent - digits + 1);
        assertEquals(value, Numbers.rounded(value, digits), 0.5000001 * lastDigit);
    }

    @Test
    void infinityAndZeroStayAsTheyAre() {
        assertEquals(Double.POSITIVE_INFINITY, Numbers.rounded(Double.POSITIVE_INFINITY, 3));
        assertEquals(Double.NaN, Numbers.rounded(Double.NaN, 3));
        assertEquals(0.0, Numbers.rounded(0, 3));
    }
}

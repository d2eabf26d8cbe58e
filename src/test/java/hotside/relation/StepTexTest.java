// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.unit.Quantity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepTexTest {
    /** Written by hand: a product must show its sign once numbers stand in it. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = '|',
            textBlock =
                    """
                    @t\\,@u                      | @t\\times @u
                    @t @u                        | @t\\times @u
                    2\\,@m\\,@v^2                | 2\\times @m\\times @v^2
                    \\frac{1}{2}\\,@m            | \\frac{1}{2}\\times @m
                    @r^{\\gamma}\\,@p            | @r^{\\gamma}\\times @p
                    @p\\,\\frac{a}{b}            | @p\\times \\frac{a}{b}
                    @area\\,(@up - @down)        | @area\\,(@up - @down)
                    \\frac{@a}{@b}               | \\frac{@a}{@b}
                    \\sum_{i=1}^{n} @x           | \\sum_{i=1}^{n} @x
                    \\log_{10} @x                | \\log_{10} @x
                    \\ln @x                      | \\ln @x
                    \\operatorname{round}\\,@x   | \\operatorname{round}\\,@x
                    @a + @b                      | @a + @b
                    """)
    void numbersSideBySideAreMultiplied(String formula, String multiplied) {
        assertEquals(multiplied, StepTex.multiplied(formula));
    }

    @ParameterizedTest
    @CsvSource({"4, COUNT, 4", "1, FLAG, 1", "4, RATIO, 4", "0.046, LENGTH, '0.046\\,\\mathrm{m}'"})
    void aNumberHasNoMoreDigitsThanItNeeds(double value, Quantity quantity, String tex) {
        assertEquals(tex, StepTex.quantity(value, quantity));
    }
}

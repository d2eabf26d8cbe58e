// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StudentizedRangeTest {
    @ParameterizedTest(name = "{0}, {1} parts, {2} degrees of freedom")
    @CsvSource(
            textBlock =
                    """
                    # R 4.2.2, qtukey
                    0.95, 3, 5, 4.601725446
                    0.95, 3, 10, 3.876776749
                    0.95, 3, 20, 3.577934582
                    0.95, 3, 60, 3.398661241
                    0.95, 4, 20, 3.958293461
                    0.99, 5, 15, 5.555773383
                    """)
    void agreesWithQuantilesFromAnotherProgram(
            double confidence, int parts, double dof, double expected) {
        assertEquals(expected, StudentizedRange.quantile(confidence, parts, dof), 1e-6);
    }

    @ParameterizedTest(name = "{0}, {1} parts, {2} degrees of freedom")
    @CsvSource(
            textBlock =
                    """
                    # SciPy 1.17.1, studentized_range.ppf: few degrees of freedom, many parts
                    0.95, 3, 10, 3.876776750
                    0.99, 5, 15, 5.555773342
                    0.95, 10, 1, 49.071022424
                    0.95, 20, 120, 5.125942775
                    """)
    void agreesWithAnotherIntegrationToEightDigits(
            double confidence, int parts, double dof, double expected) {
        assertEquals(expected, StudentizedRange.quantile(confidence, parts, dof), 1e-8 * expected);
    }

    @Test
    void keepsTheDigitsOfASmallTail() {
        // SciPy 1.17.1, studentized_range.sf(8, 3, 10)
        assertEquals(0.00055885879, StudentizedRange.upperTail(8, 3, 10), 1e-11);
    }

    @Property(tries = 60, seed = "20261125")
    void ofTwoPartsIsStudentsTTimesRootTwo(
            @ForAll @IntRange(min = 1, max = 200) int dof,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 0.999) double confidence) {
        double t = Confidence.student(confidence, dof);
        assertEquals(Math.sqrt(2) * t, StudentizedRange.quantile(confidence, 2, dof), 2e-8 * t);
    }

    @Property(tries = 60, seed = "20261125")
    void growsWithTheNumberOfParts(
            @ForAll @IntRange(min = 2, max = 25) int parts,
            @ForAll @IntRange(min = 1, max = 60) int dof) {
        assertTrue(
                StudentizedRange.upperTail(4, parts + 1, dof)
                        > StudentizedRange.upperTail(4, parts, dof));
    }

    @Test
    void tendsToTheRangeOfNormalValuesForManyDegreesOfFreedom() {
        // known spread, three values, 95 %: 3.314 (any table of the range, infinite degrees of
        // freedom)
        assertEquals(3.314, StudentizedRange.quantile(0.95, 3, Double.POSITIVE_INFINITY), 5e-4);
        assertEquals(
                StudentizedRange.quantile(0.95, 3, Double.POSITIVE_INFINITY),
                StudentizedRange.quantile(0.95, 3, 1e7),
                1e-5);
    }

    @Test
    void isCertainForNoRangeAtAll() {
        assertEquals(1, StudentizedRange.upperTail(0, 4, 12), 0.0);
    }
}

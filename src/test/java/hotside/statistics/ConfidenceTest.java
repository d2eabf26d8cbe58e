// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConfidenceTest {
    @ParameterizedTest(name = "{0} with {1} degrees of freedom")
    @CsvSource(
            textBlock =
                    """
                    # R 4.2.2, qt at .95 .975 .99 .995
                    0.90, 1, 6.313751515
                    0.95, 1, 12.706204736
                    0.98, 1, 31.820515954
                    0.99, 1, 63.656741163
                    0.90, 5, 2.015048373
                    0.95, 5, 2.570581836
                    0.98, 5, 3.364929999
                    0.99, 5, 4.032142984
                    # SciPy 1.17.1, t.ppf: broken and very many degrees of freedom
                    0.95, 3.7, 2.867520707
                    0.95, 1e6, 1.959966357
                    """)
    void agreesWithPrintedQuantiles(double confidence, double dof, double expected) {
        assertEquals(expected, Confidence.student(confidence, dof), 1e-8);
    }

    @Test
    void keepsItsDigitsNextToCertainty() {
        // SciPy 1.17.1: t.isf(2^-54, 4); 1 - c is then 2^-53 exactly
        assertEquals(15247.0299022, Confidence.student(Math.nextDown(1.0), 4), 1e-6);
    }

    @Test
    void isTheNormalFactorForAKnownSpread() {
        // 97.5 % point of the normal distribution, any table
        assertEquals(1.959963985, Confidence.normal(0.95), 1e-9);
        assertEquals(1.959963985, Confidence.student(0.95, Double.POSITIVE_INFINITY), 1e-9);
    }

    @Test
    void passesFromStudentToNormalWithoutAStep() {
        double below = Confidence.student(0.99, Confidence.AS_GOOD_AS_KNOWN);
        double above = Confidence.student(0.99, 2 * Confidence.AS_GOOD_AS_KNOWN);
        assertEquals(above, below, 1e-7);
        assertTrue(below >= above);
    }

    @Property(seed = "20261125")
    void agreesWithAnotherLibrary(
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 0.9999) double confidence,
            @ForAll @DoubleRange(min = 1, max = 500) double dof) {
        double expected = new TDistribution(dof).inverseCumulativeProbability((1 + confidence) / 2);
        assertEquals(expected, Confidence.student(confidence, dof), 1e-7 * expected);
    }

    @Property(seed = "20261125")
    void tailsAndQuantileUndoEachOther(
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.999999) double confidence,
            @ForAll @DoubleRange(min = 0.7, max = 1e5) double dof) {
        double t = Confidence.student(confidence, dof);
        assertEquals(1 - confidence, Confidence.bothTails(t, dof), 1e-10);
    }
}

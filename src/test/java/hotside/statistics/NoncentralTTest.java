// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoncentralTTest {
    @ParameterizedTest(name = "P(T > {0}), {1} degrees of freedom, shift {2}")
    @CsvSource(
            textBlock =
                    """
                    # SciPy 1.17.1, nct.sf
                    2.5, 3, 1.0, 0.1758162407995
                    12.7062047, 1, 3.0, 0.1861080747632
                    2.0, 38, 0.5, 0.0735687687167
                    -2.0, 38, 0.5, 0.9923536536771
                    2.776, 4, 4.0, 0.8433838301047
                    1.96, 1000, 2.8, 0.7994572587058
                    """)
    void agreesWithAnotherProgram(double t, double dof, double shift, double expected) {
        assertEquals(expected, NoncentralT.upperTail(t, dof, shift), 2e-11);
    }

    @Property(seed = "20261125")
    void isStudentsTWithoutAShift(
            @ForAll @DoubleRange(min = -20, max = 20) double t,
            @ForAll @DoubleRange(min = 1, max = 300) double dof) {
        // cross-check: Hipparchus
        double expected = new TDistribution(dof).cumulativeProbability(-t);
        assertEquals(expected, NoncentralT.upperTail(t, dof, 0), 2e-11);
    }

    @Property(seed = "20261125")
    void tailsAddUpToOne(
            @ForAll @DoubleRange(min = -30, max = 30) double t,
            @ForAll @DoubleRange(min = 1, max = 100) double dof,
            @ForAll @DoubleRange(min = -10, max = 10) double shift) {
        double sum = NoncentralT.upperTail(t, dof, shift) + NoncentralT.lowerTail(t, dof, shift);
        assertEquals(1, sum, 1e-12);
    }

    @Test
    void atZeroItIsTheNormalTailOfTheShift() {
        // P(Z + 1 > 0) = 0.8413447460685 whatever the spread (normal table)
        assertEquals(0.8413447460685, NoncentralT.upperTail(0, 1.5, 1), 1e-12);
    }

    @Test
    void staysExactForAHugeCriticalValue() {
        // one degree of freedom is Cauchy: P(T > t) = atan(1/t)/pi
        assertEquals(Math.atan(1e-6) / Math.PI, NoncentralT.upperTail(1e6, 1, 0), 1e-15);
    }
}

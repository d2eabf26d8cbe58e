// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class LeastSquaresTest {
    /** NIST StRD, Norris.dat: y, x, y, x … */
    private static final double[] NORRIS = {
        0.1, 0.2, 338.8, 337.4, 118.1, 118.2, 888.0, 884.6, 9.2, 10.1, 228.1, 226.5, 668.5, 666.3,
        998.5, 996.3, 449.1, 448.6, 778.9, 777.0, 559.2, 558.2, 0.3, 0.4, 0.1, 0.6, 778.1, 775.5,
        668.8, 666.9, 339.3, 338.0, 448.9, 447.5, 10.8, 11.6, 557.7, 556.0, 228.3, 228.1, 998.0,
        995.8, 888.8, 887.6, 119.6, 120.2, 0.3, 0.3, 0.6, 0.3, 557.6, 556.8, 339.3, 339.1, 888.0,
        887.2, 998.5, 999.0, 778.9, 779.0, 10.2, 11.1, 117.6, 118.3, 228.9, 229.2, 668.4, 669.1,
        449.2, 448.9, 0.2, 0.5
    };

    private static double[] ones(int n) {
        double[] one = new double[n];
        Arrays.fill(one, 1);
        return one;
    }

    private static void assertNineDigits(double certified, double value) {
        assertEquals(certified, value, 1e-9 * Math.abs(certified));
    }

    @Test
    void agreesWithTheCertifiedFitOfNorris() {
        int n = NORRIS.length / 2;
        double[] y = new double[n];
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            y[i] = NORRIS[2 * i];
            x[i] = NORRIS[2 * i + 1];
        }
        var fit = LeastSquares.fit(y, ones(n), x);
        // certified values, NIST Statistical Reference Datasets, Norris
        assertNineDigits(-0.262323073774029, fit.coefficient(0).value());
        assertNineDigits(1.00211681802045, fit.coefficient(1).value());
        assertNineDigits(0.232818234301152, fit.coefficient(0).standardError());
        assertNineDigits(0.429796848199937e-3, fit.coefficient(1).standardError());
        assertNineDigits(0.884796396144373, fit.residualSd());
        assertNineDigits(0.999993745883712, fit.rSquared());
        assertEquals(34, fit.degreesOfFreedom());
        double f = fit.rSquared() / (1 - fit.rSquared()) * fit.degreesOfFreedom();
        assertNineDigits(5436385.54079785, f);
    }

    @Test
    void agreesWithTheThermometerOfTheGuide() {
        // JCGM 100:2008 (GUM), H.3, data of Table H.6, corrections against temperature from 20 °C;
        // digits beyond the guide's from R 4.2.2
        double[] t = {
            21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
        };
        double[] b = {
            -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
        };
        var fit = LeastSquares.fit(b, ones(11), Arrays.stream(t).map(v -> v - 20).toArray());
        assertEquals(-0.171203790, fit.coefficient(0).value(), 1e-8);
        assertEquals(0.002877598, fit.coefficient(0).standardError(), 1e-8);
        assertEquals(0.002182698, fit.coefficient(1).value(), 1e-8);
        assertEquals(0.000667939, fit.coefficient(1).standardError(), 1e-8);
        assertEquals(-0.930429603, fit.correlation(0, 1), 1e-8);
        assertEquals(0.003497564, fit.residualSd(), 1e-8);
        assertEquals(-0.149376813, fit.at(1, 10).value(), 1e-8);
        assertEquals(0.004138596, fit.at(1, 10).standardError(), 1e-8);
        assertEquals(9, fit.at(1, 10).degreesOfFreedom(), 0.0);
    }

    @Property(seed = "20261125")
    void agreesWithAnotherLibrary(
            @ForAll @Size(8) List<@DoubleRange(min = -9, max = 9) Double> yList,
            @ForAll @DoubleRange(min = 0.5, max = 3) double bend) {
        double[] y = array(yList);
        double[] x = {1, 2, 3, 5, 8, 13, 21, 34};
        double[] z = Arrays.stream(x).map(v -> Math.pow(v, 0.3 * bend) * (v % 3 + 1)).toArray();
        var fit = LeastSquares.fit(y, ones(8), x, z);
        double[][] rows = new double[8][];
        for (int i = 0; i < 8; i++) {
            rows[i] = new double[] {x[i], z[i]};
        }
        var other = new OLSMultipleLinearRegression();
        other.newSampleData(y, rows);
        assertArrayEquals(other.estimateRegressionParameters(), fit.coefficients(), 1e-8);
        double[] errors = other.estimateRegressionParametersStandardErrors();
        double[][] variance = other.estimateRegressionParametersVariance();
        for (int i = 0; i < 3; i++) {
            assertEquals(errors[i], fit.coefficient(i).standardError(), 1e-8);
            assertArrayEquals(variance[i], fit.unscaled()[i], 1e-9);
        }
        assertEquals(errors[0] * errors[0], fit.covariance(0, 0), 1e-7);
    }

    @Test
    void fitsExactlyWhenNothingIsLeftOver() {
        var fit = LeastSquares.fit(new double[] {1, 3}, ones(2), new double[] {0, 1});
        assertArrayEquals(new double[] {1, 2}, fit.coefficients(), 1e-15);
        assertEquals(0, fit.residualSd(), 0.0);
        assertEquals(0, fit.degreesOfFreedom());
    }

    @Test
    void refusesAColumnThatIsAMixtureOfOthers() {
        double[] part = {0, 0, 1, 1};
        double[] boost = {66e3, 66e3, 67.3e3, 67.3e3};
        var e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> LeastSquares.fit(new double[] {1, 2, 3, 4}, ones(4), part, boost));
        assertEquals("column 2 is a mixture of the columns before it", e.getMessage());
    }

    @Test
    void refusesFewerReadingsThanCoefficients() {
        assertThrows(
                IllegalArgumentException.class,
                () -> LeastSquares.fit(new double[] {1}, ones(1), ones(1)));
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}

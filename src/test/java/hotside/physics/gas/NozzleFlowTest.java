// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NozzleFlowTest {
    // p*/p0 = (2/(g+1))^(g/(g-1)) and sqrt(g) (2/(g+1))^((g+1)/(2(g-1))), evaluated independently;
    // for gamma 1.4 also NACA Report 1135, table at M = 1.
    @ParameterizedTest(name = "gamma {0}")
    @CsvSource(
            textBlock =
                    """
                    1.4,     0.5282818, 0.6847315
                    1.33333333333, 0.5397751, 0.6732178
                    1.33,    0.5403640, 0.6726284
                    """)
    void agreesWithTheClosedFormsOfChoking(double gamma, double ratio, double function) {
        assertEquals(ratio, NozzleFlow.criticalRatio(gamma), 0.6e-7);
        assertEquals(function, NozzleFlow.massFlow(1, 1, 1, 0.1, gamma, 1), 0.6e-7);
    }

    @Test
    void agreesWithTheStandardAtmosphereThroughOneSquareMetre() {
        // R = 287.05287 J/(kg K), US Standard Atmosphere at sea level: 241.2385 kg/s
        assertEquals(241.2385, NozzleFlow.massFlow(1, 101_325, 288.15, 0, 1.4, 287.05287), 241e-6);
    }

    @Test
    void agreesWithTheTextbookConvergingNozzle() {
        // 1 MPa, 360 K, 500 mm² into less than 0.528 MPa, R = 287: 1.065119 kg/s
        assertEquals(1.065119, NozzleFlow.massFlow(500e-6, 1e6, 360, 5e5, 1.4, 287), 1e-6);
    }

    @Test
    void agreesWithAChokedWastegateWorkedByHand() {
        // 22 mm, 220 kPa, 1123.15 K into 101.325 kPa, gamma 1.33, R 287: 0.09907710 kg/s
        double area = Math.PI / 4 * 0.022 * 0.022;
        assertEquals(
                0.09907710, NozzleFlow.massFlow(area, 220e3, 1123.15, 101_325, 1.33, 287), 1e-7);
    }

    @Test
    void agreesWithBernoulliForASmallDrop() {
        double density = 1e5 / (287 * 300.0);
        double bernoulli = 1e-3 * Math.sqrt(2 * density * 0.01);
        assertEquals(
                bernoulli,
                NozzleFlow.massFlow(1e-3, 1e5, 300, 1e5 - 0.01, 1.4, 287),
                1e-6 * bernoulli);
    }

    @Test
    void passesNothingWithoutADropAndNothingBackwards() {
        assertEquals(0, NozzleFlow.massFlow(1e-3, 1e5, 300, 1e5, 1.4, 287), 0.0);
        assertEquals(0, NozzleFlow.massFlow(1e-3, 1e5, 300, 2e5, 1.4, 287), 0.0);
    }

    @Property(seed = "20261125")
    void isContinuousAndLevelWhereItChokes(
            @ForAll @Scale(7) @DoubleRange(min = 1.1, max = 1.66) double gamma) {
        double critical = NozzleFlow.criticalRatio(gamma);
        double choked = NozzleFlow.massFlow(1, 1, 1, critical * (1 - 1e-9), gamma, 1);
        assertEquals(choked, NozzleFlow.massFlow(1, 1, 1, critical * (1 + 1e-9), gamma, 1), 1e-12);
        double slope =
                (NozzleFlow.massFlow(1, 1, 1, critical * (1 + 1e-4), gamma, 1) - choked) / 1e-4;
        assertEquals(0, slope, 1e-3);
    }

    @Property(seed = "20261125")
    void passesMoreWithALowerPressureBehind(
            @ForAll @Scale(7) @DoubleRange(min = 0.6, max = 0.99) double ratio) {
        assertTrue(flow(1e-3, 2e5, 900, ratio * 2e5) > flow(1e-3, 2e5, 900, 1.001 * ratio * 2e5));
    }

    @Property(seed = "20261125")
    void scalesWithAreaPressureAndRootOfTemperature(
            @ForAll @Scale(7) @DoubleRange(min = 0.1, max = 10) double k,
            @ForAll @Scale(7) @DoubleRange(min = 0, max = 1) double ratio) {
        double one = flow(1e-3, 2e5, 900, ratio * 2e5);
        assertEquals(k * one, flow(k * 1e-3, 2e5, 900, ratio * 2e5), 1e-12 * k);
        assertEquals(k * one, flow(1e-3, k * 2e5, 900, ratio * k * 2e5), 1e-12 * k);
        assertEquals(one / k, flow(1e-3, 2e5, k * k * 900, ratio * 2e5), 1e-12 / k);
    }

    private static double flow(double area, double up, double temperature, double down) {
        return NozzleFlow.massFlow(area, up, temperature, down, 1.33, 287);
    }
}

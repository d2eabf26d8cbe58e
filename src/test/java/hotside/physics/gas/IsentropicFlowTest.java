// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IsentropicFlowTest {
    // NACA Report 1135 as printed in textbook tables (k = 1.4), read in public copies; last digit
    @ParameterizedTest(name = "M {0}")
    @CsvSource(
            textBlock =
                    """
                    0.05, 0.9983, 0.9995, 0.9988, 11.5914
                    0.1, 0.9930, 0.9980, 0.9950, 5.8218
                    0.5, 0.8430, 0.9524, 0.8852, 1.3398
                    0.6, 0.7840, 0.9328, 0.8405, 1.1882
                    0.9, 0.5913, 0.8606, 0.6870, 1.0089
                    0.95, 0.5595, 0.8471, 0.6604, 1.0021
                    1.0, 0.5283, 0.8333, 0.6339, 1.0000
                    """)
    void agreesWithThePrintedTable(double mach, double p, double t, double rho, double area) {
        assertRatios(mach, 1.4, p, t, rho, area, 0.51e-4);
    }

    // the same closed forms evaluated independently
    @ParameterizedTest(name = "M {0}, gamma {1}")
    @CsvSource(
            textBlock =
                    """
                    0.05, 1.4, 0.9982520, 0.9995002, 0.9987511, 11.5914439
                    0.1, 1.4, 0.9930314, 0.9980040, 0.9950174, 5.8218288
                    0.2, 1.4, 0.972497, 0.992063, 0.980277, 2.963520
                    0.8, 1.4, 0.656022, 0.886525, 0.739992, 1.038230
                    1.5, 1.4, 0.272403, 0.689655, 0.394984, 1.176167
                    2.0, 1.4, 0.127805, 0.555556, 0.230048, 1.687500
                    0.5, 1.33, 0.849665, 0.960384, 0.884714, 1.345408
                    0.8, 1.33, 0.667247, 0.904486, 0.737708, 1.039139
                    0.5, 1.3, 0.852547, 0.963855, 0.884517, 1.347853
                    0.8, 1.3, 0.672183, 0.912409, 0.736713, 1.039542
                    """)
    void agreesWithTheClosedFormsForAnyGamma(
            double mach, double gamma, double p, double t, double rho, double area) {
        assertRatios(mach, gamma, p, t, rho, area, 1e-6);
    }

    @Test
    void pressureAtTheSpeedOfSoundIsTheCriticalRatio() {
        assertEquals(NozzleFlow.criticalRatio(1.33), IsentropicFlow.pressureRatio(1, 1.33), 1e-15);
    }

    @Property(seed = "20261125")
    void densityIsPressureOverTemperature(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 5) double mach,
            @ForAll @Scale(7) @DoubleRange(min = 1.05, max = 1.66) double gamma) {
        IsentropicFlow.Ratios r = IsentropicFlow.of(mach, gamma);
        assertEquals(r.density(), r.pressure() / r.temperature(), 1e-12 * r.density());
    }

    @Property(seed = "20261125")
    void fasterGasHasLessPressureLeft(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 4.9) double mach) {
        assertTrue(
                IsentropicFlow.pressureRatio(mach + 0.01, 1.33)
                        < IsentropicFlow.pressureRatio(mach, 1.33));
    }

    @Property(seed = "20261125")
    void noAreaIsSmallerThanThatOfTheThroat(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 5) double mach) {
        assertTrue(IsentropicFlow.areaRatio(mach, 1.3) >= 1 - 1e-15);
    }

    @Test
    void findsTheMachNumberOfAPressureRatio() {
        double mach =
                Solver.solveFor(
                        IsentropicFlow.RELATION,
                        "mach",
                        "pressureRatio",
                        0.849665,
                        Values.of("gamma", 1.33));
        assertEquals(0.5, mach, 2e-6); // the row M = 0.5, gamma = 1.33 turned round
    }

    @Test
    void saysThatAnAreaHasASlowAndAFastFlow() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                Solver.solveFor(
                                        IsentropicFlow.RELATION,
                                        "mach",
                                        "areaRatio",
                                        1.6875,
                                        Values.of("gamma", 1.4)));
        assertTrue(e.getMessage().contains("more than one mach"), e.getMessage());
        assertTrue(e.getMessage().contains("2.0000"), e.getMessage()); // NACA 1135, M = 2
    }

    @Test
    void refusesStillnessAndAGammaOfOne() {
        assertThrows(
                RelationException.class,
                () -> IsentropicFlow.RELATION.work(Values.of("mach", 0.0, "gamma", 1.4)));
        assertThrows(
                RelationException.class,
                () -> IsentropicFlow.RELATION.work(Values.of("mach", 0.5, "gamma", 1.0)));
    }

    private static void assertRatios(
            double mach,
            double gamma,
            double p,
            double t,
            double rho,
            double area,
            double tolerance) {
        IsentropicFlow.Ratios r = IsentropicFlow.of(mach, gamma);
        assertEquals(p, r.pressure(), tolerance);
        assertEquals(t, r.temperature(), tolerance);
        assertEquals(rho, r.density(), tolerance);
        assertEquals(area, r.area(), tolerance);
    }
}

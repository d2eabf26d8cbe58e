// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SensorLagTest {
    @ParameterizedTest(name = "after {0} time constants")
    @CsvSource(
            textBlock =
                    """
                    # 1 - exp(-t/tau), computed independently
                    0.5, 0.3934693403
                    1, 0.6321205588
                    2, 0.8646647168
                    3, 0.9502129316
                    5, 0.9932620531
                    """)
    void closesAStepAsAFirstOrderLagDoes(double constants, double expected) {
        assertEquals(expected, SensorLag.reached(0.4 * constants, 0.4), 1e-10);
    }

    @Property(seed = "20261125")
    void agreesWithStepwiseIntegration(
            @ForAll @DoubleRange(min = -50, max = 50) double step,
            @ForAll @DoubleRange(min = -50, max = 50) double rate,
            @ForAll @DoubleRange(min = 0.1, max = 3) double elapsed) {
        double tau = 0.7;
        int steps = 2000;
        double h = elapsed / steps;
        double reading = 0;
        for (int i = 0; i < steps; i++) { // midpoint rule for tau r' = truth - r
            double k = (step + rate * i * h - reading) / tau;
            double middle = (step + rate * (i + 0.5) * h - (reading + h / 2 * k)) / tau;
            reading += h * middle;
        }
        double error = reading - (step + rate * elapsed);
        assertEquals(error, SensorLag.error(step, rate, elapsed, tau), 1e-4);
    }

    @Test
    void trailsALongRampByRateTimesTimeConstant() {
        assertEquals(-25 * 0.4, SensorLag.error(0, 25, 60, 0.4), 1e-12);
    }

    @Test
    void startsAtTheWholeStep() {
        assertEquals(-20, SensorLag.error(20, 25, 0, 0.4), 0.0);
    }

    @Test
    void tellsHowLongToWait() {
        double wait =
                Solver.solveFor(
                        SensorLag.RELATION,
                        "elapsed",
                        "reached",
                        0.99,
                        Values.of("timeConstant", 2.0));
        // ln 100 = 4.605170186
        assertEquals(2 * 4.605170186, wait, 1e-7);
        assertEquals(
                2 * 4.605170186,
                SensorLag.RELATION.value(
                        "settlingTime", Values.of("timeConstant", 2.0, "elapsed", 1.0)),
                1e-8);
    }

    @Test
    void refusesATimeConstantOfZero() {
        assertThrows(
                RelationException.class,
                () -> SensorLag.RELATION.solve(Values.of("timeConstant", 0.0, "elapsed", 1.0)));
    }
}

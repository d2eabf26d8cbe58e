// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PumpingLossTest {
    @Test
    void isExhaustLessIntakePressure() {
        // Heywood 1988, section 5.4, from memory: pmep = pe − pi
        assertEquals(30e3, PumpingLoss.pressure(180e3, 150e3), 0.0);
        assertEquals(65e3, PumpingLoss.pressure(105e3, 40e3), 0.0);
    }

    @Test
    void helpsWhereBoostExceedsBackPressure() {
        assertEquals(
                -PumpingLoss.power(180e3, 150e3, 2e-3, 100),
                PumpingLoss.power(150e3, 180e3, 2e-3, 100),
                0.0);
    }

    @Test
    void costsPressureTimesSweptVolume() {
        // 30 kPa on 2 L, 50 times a second: 30e3 × 0.002 × 50 = 3000 W by hand
        assertEquals(3000, PumpingLoss.power(180e3, 150e3, 2e-3, 100), 1e-9);
    }

    @Test
    void findsTheBackPressureThatCostsAPower() {
        Values in = Values.of("manifoldPressure", 170e3, "displacement", 4e-3, "speed", 100.0);
        double p3 =
                Solver.solveFor(PumpingLoss.RELATION, "turbineInletPressure", "power", 5000, in);
        assertEquals(170e3 + 5000 / (4e-3 * 50), p3, 1e-5);
    }

    @Test
    void refusesANegativePressure() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                PumpingLoss.RELATION.solve(
                                        PumpingLoss.RELATION
                                                .typical()
                                                .with("turbineInletPressure", -20e3)));
        assertEquals("turbineInletPressure", e.slot());
    }

    @Property(seed = "20261125")
    void goesWithSpeedAndSize(@ForAll @DoubleRange(min = 10, max = 200) double speed) {
        double one = PumpingLoss.power(200e3, 150e3, 2e-3, speed);
        assertEquals(4 * one, PumpingLoss.power(200e3, 150e3, 4e-3, 2 * speed), 1e-12 * one);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ValveForceTest {
    @Test
    void agreesWithPressureTimesArea() {
        // d = 30 mm, 220 kPa against 120 kPa: F = dp A = 70.68583 N, computed independently
        assertEquals(70.68583, ValveForce.of(0.030, 220e3, 120e3), 5e-6);
    }

    @Test
    void isZeroWithoutAPressureDifference() {
        assertEquals(0, ValveForce.of(0.046, 150e3, 150e3), 0.0);
    }

    @Test
    void changesSignWhenTheSidesAreSwapped() {
        assertEquals(
                -ValveForce.of(0.046, 180e3, 100e3), ValveForce.of(0.046, 100e3, 180e3), 1e-12);
    }

    @Test
    void findsTheSeatThatTakesAForce() {
        Values sides = Values.of("upstream", 181_325.0, "downstream", 101_325.0);
        double seat = Solver.solveFor(ValveForce.RELATION, "seatDiameter", "force", 132.952, sides);
        assertEquals(132.952, ValveForce.of(seat, 181_325, 101_325), 1e-8);
    }

    @Property(seed = "20261125")
    void growsWithTheSquareOfTheSeat(@ForAll @DoubleRange(min = 10, max = 90) double mm) {
        double one = ValveForce.of(mm / 1e3, 180e3, 100e3);
        assertEquals(4 * one, ValveForce.of(2 * mm / 1e3, 180e3, 100e3), 1e-12 * one);
    }

    @Property(seed = "20261125")
    void growsWithUpstreamPressure(@ForAll @DoubleRange(min = 1e5, max = 5e5) double p) {
        assertTrue(ValveForce.of(0.04, p + 1e3, 1e5) > ValveForce.of(0.04, p, 1e5));
    }
}

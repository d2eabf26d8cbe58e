// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DiaphragmForceTest {
    @Test
    void agreesWithPressureTimesArea() {
        // by hand: pi/4 * 0.060^2 = 2.827433e-3 m2; times 150 kPa = 424.115 N
        assertEquals(424.115, DiaphragmForce.of(150e3, 0.060), 5e-4);
    }

    @Test
    void fortySquareCentimetresUnderOneBarPushFourHundredNewtons() {
        double diameter = Math.sqrt(4 * 40e-4 / Math.PI); // 71.4 mm
        assertEquals(400, DiaphragmForce.of(1e5, diameter), 1e-9);
    }

    @Test
    void vacuumPullsTheValveShut() {
        assertTrue(DiaphragmForce.of(-30e3, 0.07) < 0);
    }

    @Test
    void withoutSignalThereIsNoPush() {
        assertEquals(0, DiaphragmForce.of(0, 0.07), 0.0);
    }

    @Test
    void findsTheSignalThatHoldsASpring() {
        Values can = Values.of("diaphragmDiameter", 0.06);
        double signal =
                Solver.solveFor(DiaphragmForce.RELATION, "signalPressure", "force", 424.115, can);
        assertEquals(150e3, signal, 0.2); // half a unit of the last digit of 424.115 is 0.18 Pa
    }

    @Test
    void saysWhereADiameterOutsideItsRangeIsWrong() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                DiaphragmForce.RELATION.solve(
                                        Values.of(
                                                "signalPressure", 5e4, "diaphragmDiameter", 0.0)));
        assertEquals(
                "diaphragm-force: diaphragmDiameter = 0.0 is outside (0.0, 0.3] m", e.getMessage());
    }

    @Test
    void warnsOfVacuum() {
        var worked =
                DiaphragmForce.RELATION.work(
                        Values.of("signalPressure", -2e4, "diaphragmDiameter", 0.07));
        assertEquals("signalPressure", worked.cautions().get(0).about());
    }

    @Property(seed = "20261125")
    void growsWithTheSquareOfTheDiameter(@ForAll @DoubleRange(min = 20, max = 150) double mm) {
        double one = DiaphragmForce.of(8e4, mm / 1e3);
        assertEquals(4 * one, DiaphragmForce.of(8e4, 2 * mm / 1e3), 1e-12 * one);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SpringForceTest {
    @Test
    void addsRateTimesLiftToThePreload() {
        // by hand: 260 N + 7 N/mm * 8 mm = 316 N
        assertEquals(316, SpringForce.of(260, 7000, 0.008), 1e-9);
    }

    @Test
    void isThePreloadWithTheValveShut() {
        assertEquals(260, SpringForce.of(260, 7000, 0), 0.0);
    }

    @Test
    void findsTheLiftThatTakesAForce() {
        Values spring = Values.of("preload", 260, "rate", 7000);
        assertEquals(
                0.008, Solver.solveFor(SpringForce.RELATION, "lift", "force", 316, spring), 1e-12);
    }

    @Test
    void aValveCannotLiftIntoItsSeat() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                SpringForce.RELATION.solve(
                                        Values.of("preload", 260, "rate", 7000, "lift", -0.001)));
        assertEquals("spring-force: lift = -0.001 is outside [0.0, 0.1] m", e.getMessage());
    }

    @Property(seed = "20261125")
    void equalStepsOfLiftAddEqualForces(@ForAll @DoubleRange(min = 0, max = 20) double mm) {
        double step =
                SpringForce.of(260, 7000, (mm + 1) / 1e3) - SpringForce.of(260, 7000, mm / 1e3);
        assertEquals(7, step, 1e-9);
    }
}

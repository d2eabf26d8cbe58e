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

class CreepMarginTest {
    /** An open 22 mm seat that passes 0.09907710 kg/s: closed form of choked flow (NACA 1135). */
    private static final Values GATE =
            Values.of(
                    "bypassFlow",
                    0.0495386,
                    "seatDiameter",
                    0.022,
                    "maxLift",
                    0.010,
                    "dischargeCoefficient",
                    1.0,
                    "upstream",
                    220e3,
                    "temperature",
                    1123.15,
                    "downstream",
                    101_325,
                    "gamma",
                    1.33,
                    "cp",
                    1156.697);

    @Test
    void agreesWithTheChokedFlowOfAnOpenSeat() {
        var out = CreepMargin.RELATION.solve(GATE);
        assertEquals(0.0990771, out.number("capacity"), 2e-7);
        assertEquals(1.0, out.number("margin"), 1e-5); // twice the need
        assertEquals(0, out.number("creeps"), 0.0);
        assertEquals(0.022 / Math.sqrt(2), out.number("seatNeeded"), 1e-7); // half the area
    }

    @Test
    void creepsWhenTheNeedIsMoreThanTheOpenGatePasses() {
        // 0.11 kg/s: short by 1 - 0.0990771/0.11 = 9.93 %
        var out = CreepMargin.RELATION.solve(GATE.with("bypassFlow", 0.11));
        assertEquals(-0.0993, out.number("margin"), 5e-5);
        assertEquals(1, out.number("creeps"), 0.0);
    }

    @Test
    void aShortLiftMakesALargeSeatSmall() {
        // 2.2 mm of 22 mm: curtain is 4 * 2.2 / 22 = 0.4 of the seat
        var out = CreepMargin.RELATION.solve(GATE.with("maxLift", 0.0022));
        assertEquals(0.4 * 0.0990771, out.number("capacity"), 2e-7);
    }

    @Test
    void theSeatItAsksForHasNoMarginLeft() {
        double seat = CreepMargin.RELATION.value("seatNeeded", GATE);
        var out = CreepMargin.RELATION.solve(GATE.with("seatDiameter", seat).with("maxLift", seat));
        assertEquals(0, out.number("margin"), 1e-12);
    }

    @Test
    void warnsOfASmallMargin() {
        var worked = CreepMargin.RELATION.work(GATE.with("bypassFlow", 0.095));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("margin")));
    }

    @Test
    void findsTheFlowThatLeavesAMargin() {
        double need = Solver.solveFor(CreepMargin.RELATION, "bypassFlow", "margin", 0.25, GATE);
        assertEquals(0.0990771 / 1.25, need, 2e-7);
    }

    @Test
    void refusesPressuresTheWrongWayRound() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> CreepMargin.RELATION.solve(GATE.with("downstream", 230e3)));
        assertTrue(e.getMessage().startsWith("creep-margin: downstream"), e.getMessage());
    }

    @Property(seed = "20261125")
    void theSeatNeededGoesWithTheRootOfTheFlow(
            @ForAll @DoubleRange(min = 10, max = 200) double grams) {
        double one = CreepMargin.RELATION.value("seatNeeded", GATE.with("bypassFlow", grams / 1e3));
        double four =
                CreepMargin.RELATION.value("seatNeeded", GATE.with("bypassFlow", 4 * grams / 1e3));
        assertEquals(2 * one, four, 1e-12);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Solver;
import hotside.relation.Values;
import hotside.relation.Worked;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RegulatedShareTest {
    /** Diameter of 40 cm². */
    private static final double FORTY = Math.sqrt(4 * 40e-4 / Math.PI);

    private static final Values GATE =
            Values.of(
                    "targetBoost",
                    66e3,
                    "leastShare",
                    0.3,
                    "preload",
                    260,
                    "rate",
                    7000,
                    "lift",
                    0.009,
                    "diaphragmDiameter",
                    FORTY,
                    "seatDiameter",
                    0.046,
                    "turbineInletAtZeroBoost",
                    108_500,
                    "turbineInletSlope",
                    1.0,
                    "downstream",
                    98_500);

    @Test
    void agreesWithAForceBalanceByHand() {
        // spring 260 + 63 = 323 N; exhaust (10 + 66) kPa * 1.661903e-3 m2 = 126.3046 N
        // diaphragm must do 196.6954 N; over 40e-4 m2 * 66 kPa = 264 N: 0.745058
        var out = RegulatedShare.RELATION.solve(GATE);
        assertEquals(0.745058, out.number("shareNeeded"), 1e-6);
        assertEquals(0.745058, out.number("share"), 1e-6);
        assertEquals(66e3, out.number("boost"), 0.0);
        assertEquals(0, out.number("outOfAuthority"), 0.0);
    }

    @Test
    void makesUpForAHarderExhaustPushWithLessSignal() {
        // p3 5 kPa higher: 5 kPa * 1.661903e-3 m2 = 8.3095 N less to do, 0.031475 of 264 N
        var out = RegulatedShare.RELATION.solve(GATE.with("turbineInletAtZeroBoost", 113_500.0));
        assertEquals(0.745058 - 0.031475, out.number("share"), 2e-6);
        assertEquals(66e3, out.number("boost"), 0.0);
    }

    @Test
    void fallsShortOfTheTargetWhenItCanBleedNoFurther() {
        Values pushed = GATE.with("leastShare", 0.75);
        Worked worked = RegulatedShare.RELATION.work(pushed);
        assertEquals(0.75, worked.out().number("share"), 0.0);
        assertEquals(1, worked.out().number("outOfAuthority"), 0.0);
        // by hand: (323 - 16.61903) / (0.75 * 40e-4 + 1.661903e-3) = 306.38097 / 4.661903e-3 =
        // 65720.2
        assertEquals(65_720.2, worked.out().number("boost"), 0.2);
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("boost")));
    }

    @Test
    void theSpringSetsTheLeastBoostNotTheMost() {
        // all of the boost on the diaphragm: 306.38097 / (40e-4 + 1.661903e-3) = 54112.7 Pa
        var out = RegulatedShare.RELATION.solve(GATE.with("targetBoost", 40e3));
        assertTrue(out.number("shareNeeded") > 1);
        assertEquals(1, out.number("share"), 0.0);
        assertEquals(54_112.7, out.number("boost"), 0.2);
    }

    @Test
    void withTheNeededShareAPlainBleedHoldsTheSameBoost() {
        var out = RegulatedShare.RELATION.solve(GATE);
        assertEquals(
                66e3,
                HeldBoost.of(323, FORTY, 0.046, 108_500, 1.0, 98_500, out.number("share")),
                1e-6);
    }

    @Test
    void findsTheTargetThatTakesAShare() {
        double target =
                Solver.solveFor(
                        RegulatedShare.RELATION, "targetBoost", "shareNeeded", 0.745058, GATE);
        assertEquals(66e3, target, 0.1);
    }

    @Property(seed = "20261125")
    void staysWithinItsReach(@ForAll @DoubleRange(min = 10e3, max = 300e3) double target) {
        var out = RegulatedShare.RELATION.solve(GATE.with("targetBoost", target));
        assertTrue(out.number("share") >= 0.3 && out.number("share") <= 1);
        if (out.number("shareNeeded") > 1) {
            assertTrue(out.number("boost") > target);
        } else if (out.number("shareNeeded") < 0.3) {
            assertTrue(out.number("boost") < target);
        } else {
            assertEquals(target, out.number("boost"), 0.0);
        }
    }
}

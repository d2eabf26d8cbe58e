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

class HeldBoostTest {
    /** Diameter of 40 cm². */
    private static final double FORTY = Math.sqrt(4 * 40e-4 / Math.PI);

    private static final Values GATE =
            Values.of(
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
                    98_500,
                    "signalShare",
                    0.70);

    @Test
    void agreesWithAForceBalanceByHand() {
        // spring 260 + 63 = 323 N; exhaust at zero boost 10 kPa * 1.661903e-3 m2 = 16.619 N
        // (323 - 16.619) / (0.70 * 40e-4 + 1.661903e-3) = 306.381 / 4.461903e-3 = 68666.0 Pa
        var out = HeldBoost.RELATION.solve(GATE);
        assertEquals(68_666.0, out.number("boost"), 0.2);
        // the spring's part: 63 / 4.461903e-3 = 14119.5 Pa
        assertEquals(14_119.5, out.number("rise"), 0.1);
        assertEquals(108_500 + 68_666.0, out.number("upstream"), 0.2);
    }

    @Test
    void isTheCrackingBoostAtZeroLift() {
        var out = HeldBoost.RELATION.solve(GATE.with("lift", 0.0));
        assertEquals(
                CrackPressure.of(260, FORTY, 0.046, 108_500, 1.0, 98_500, 0.70),
                out.number("boost"),
                0.0);
        assertEquals(0, out.number("rise"), 0.0);
    }

    @Test
    void theGateStandsAtThatLiftAtThatBoost() {
        var out = HeldBoost.RELATION.solve(GATE);
        double surplus =
                GateLift.surplus(
                        0.70 * out.number("boost"),
                        FORTY,
                        out.number("upstream"),
                        98_500,
                        0.046,
                        260);
        assertEquals(0.009, GateLift.of(surplus, 7000, 0.0115), 1e-14);
    }

    @Test
    void findsTheShareForAWantedBoost() {
        double share = Solver.solveFor(HeldBoost.RELATION, "signalShare", "boost", 80e3, GATE);
        // by hand: (306.381 / 80000 - 1.661903e-3) / 40e-4 = 0.541965
        assertEquals(0.541965, share, 2e-6);
    }

    @Test
    void namesItselfWhenTheExhaustHoldsTheValveOpen() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                HeldBoost.RELATION.solve(
                                        GATE.with("preload", 0.0).with("lift", 0.0)));
        assertTrue(
                e.getMessage().startsWith("held-boost: the valve is open before"), e.getMessage());
    }

    @Property(seed = "20261125")
    void boostRisesStraightWithLift(@ForAll @DoubleRange(min = 0, max = 10) double mm) {
        double here = HeldBoost.RELATION.value("boost", GATE.with("lift", mm / 1e3));
        double there = HeldBoost.RELATION.value("boost", GATE.with("lift", (mm + 1) / 1e3));
        assertEquals(7 / 4.461903e-3, there - here, 1e-3); // 7 N over the area, as by hand above
    }
}

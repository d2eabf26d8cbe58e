// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

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

class HeldBoostCorrectionTest {
    private static final Values DAY = Values.of("ambientPressure", 90e3, "boost", 90e3);

    @Test
    void correctsNothingWhereAbsolutePressureIsHeld() {
        // the rule itself: same manifold pressure, same power; 99/90 − 1 = 10 % is all too much
        Values out = HeldBoostCorrection.RELATION.solve(DAY.with("held", "absolute"));
        assertEquals(1, out.number("fairFactor"), 0.0);
        assertEquals(0.10, out.number("overCorrection"), 1e-12);
    }

    @Test
    void correctsTheAmbientPartWhereGaugeBoostIsHeld() {
        // (99 + 90)/(90 + 90) = 1.05 by hand
        Values out = HeldBoostCorrection.RELATION.solve(DAY.with("held", "gauge"));
        assertEquals(1.05, out.number("fairFactor"), 1e-12);
        assertEquals(1.10 / 1.05 - 1, out.number("overCorrection"), 1e-12);
    }

    @Test
    void correctsTheWholeWhereNothingIsHeldOrThereIsNoBoost() {
        assertEquals(
                0,
                HeldBoostCorrection.RELATION.value("overCorrection", DAY.with("held", "none")),
                1e-15);
        assertEquals(
                0,
                HeldBoostCorrection.RELATION.value(
                        "overCorrection", DAY.with("held", "gauge").with("boost", 0.0)),
                1e-15);
    }

    @Test
    void findsTheBoostThatAShareOfCorrectionFits() {
        Values in = Values.of("ambientPressure", 90e3, "held", "gauge");
        double boost =
                Solver.solveFor(HeldBoostCorrection.RELATION, "boost", "fairFactor", 1.05, in);
        assertEquals(90e3, boost, 1e-3);
    }

    @Test
    void namesTheChoicesItKnows() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> HeldBoostCorrection.RELATION.solve(DAY.with("held", "spring")));
        assertTrue(e.getMessage().contains("gauge, absolute, none"), e.getMessage());
    }

    @Property(seed = "20261125")
    void overdoesItMoreTheMoreBoostIsHeld(@ForAll @DoubleRange(min = 0, max = 3e5) double boost) {
        double less = HeldBoostCorrection.fair(90e3, boost, "gauge", 99e3);
        double more = HeldBoostCorrection.fair(90e3, boost + 1e3, "gauge", 99e3);
        assertTrue(more < less && more > 1);
    }
}

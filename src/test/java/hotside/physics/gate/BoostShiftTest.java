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

class BoostShiftTest {
    /** Diameter of 40 cm². */
    private static final double FORTY = Math.sqrt(4 * 40e-4 / Math.PI);

    private static final Values VENTED =
            Values.of(
                    "turbineInletChange",
                    5e3,
                    "ventChange",
                    0.0,
                    "diaphragmDiameter",
                    FORTY,
                    "seatDiameter",
                    0.046,
                    "signalShare",
                    0.70,
                    "rate",
                    7000);

    @Test
    void agreesWithAForceBalanceByHand() {
        // 5 kPa * 1.661903e-3 m2 = 8.309513 N; over 0.70 * 40e-4 m2 = 2967.68 Pa, downwards
        assertEquals(-2967.68, BoostShift.RELATION.value("boostChange", VENTED), 0.01);
    }

    @Test
    void onAVentedGateMoreTurbineInletPressureMeansLessBoost() {
        assertTrue(BoostShift.RELATION.value("boostChange", VENTED) < 0);
    }

    @Test
    void onAReturnedGateThePushThatRisesOnBothSidesMovesNothing() {
        assertEquals(
                0, BoostShift.RELATION.value("boostChange", VENTED.with("ventChange", 5e3)), 0.0);
    }

    @Test
    void signAndSizeAreThoseOfAnEngineWithASmallAndALargePipe() {
        // p3 falls by 5.1 kPa and boost rises by 5.3 kPa from the smallest to the largest of four
        // pipes
        // (a separate calculation of the whole engine; good for sign and size).
        // at the same lift: 5.1 kPa * 1.661903e-3 / 2.8e-3 = 3.027 kPa, more than half of it
        Values larger = VENTED.with("turbineInletChange", -5.1e3);
        assertEquals(3027, BoostShift.RELATION.value("boostChange", larger), 1);
        // the rest is lift: (2.8e-3 * 5300 - 1.661903e-3 * 5100) / 7000 = 0.909 mm further open
        assertEquals(
                5300,
                BoostShift.RELATION.value("boostChange", larger.with("liftChange", 0.90918e-3)),
                0.1);
    }

    @Test
    void isTheDifferenceOfTwoBalances() {
        double before = CrackPressure.of(260, FORTY, 0.046, 110e3, 1.1, 1e5, 0.7);
        double after = CrackPressure.of(260, FORTY, 0.046, 114e3, 1.1, 1.005e5, 0.7);
        assertEquals(
                after - before, BoostShift.of(4e3, 500, FORTY, 0.046, 0.7, 7000, 0, 1.1), 1e-8);
    }

    @Test
    void aTurbineInletThatFollowsBoostTakesPartOfTheShiftBack() {
        var out = BoostShift.RELATION.solve(VENTED.with("turbineInletSlope", 1.0));
        // 8.309513 / (2.8e-3 + 1.661903e-3) = 1862.32 Pa
        assertEquals(-1862.32, out.number("boostChange"), 0.01);
        assertEquals(5000 - 1862.32, out.number("turbineInletTotalChange"), 0.01);
    }

    @Test
    void theWholeChangeWithoutSlopeAndTheFirstChangeWithSlopeAreTheSameStory() {
        var out = BoostShift.RELATION.solve(VENTED.with("turbineInletSlope", 1.0));
        double whole = out.number("turbineInletTotalChange");
        assertEquals(
                out.number("boostChange"),
                BoostShift.RELATION.value("boostChange", VENTED.with("turbineInletChange", whole)),
                1e-9);
    }

    @Test
    void saysSoWhenBoostHasNoHoldOnTheValve() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> BoostShift.RELATION.solve(VENTED.with("signalShare", 0.0)));
        assertTrue(
                e.getMessage().startsWith("boost-shift: boost has no hold on the valve"),
                e.getMessage());
    }

    @Test
    void findsTheChangeOfTurbineInletFromAShift() {
        assertEquals(
                5e3,
                Solver.solveFor(
                        BoostShift.RELATION, "turbineInletChange", "boostChange", -2967.68, VENTED),
                0.02);
    }

    @Property(seed = "20261125")
    void turnsRoundWithTheChange(@ForAll @DoubleRange(min = -30e3, max = 30e3) double change) {
        double up = shift("turbineInletChange", change);
        double down = shift("turbineInletChange", -change);
        assertEquals(-up, down, 1e-9);
    }

    @Property(seed = "20261125")
    void aBiggerSeatShiftsMoreByItsSquare(@ForAll @DoubleRange(min = 20, max = 60) double mm) {
        assertEquals(
                4 * shift("seatDiameter", mm / 1e3), shift("seatDiameter", 2 * mm / 1e3), 1e-8);
    }

    @Property(seed = "20261125")
    void theMoreSignalTheSmallerTheShift(@ForAll @DoubleRange(min = 0.1, max = 0.9) double share) {
        assertTrue(
                Math.abs(shift("signalShare", share + 0.05))
                        < Math.abs(shift("signalShare", share)));
    }

    private static double shift(String slot, double value) {
        return BoostShift.RELATION.value("boostChange", VENTED.with(slot, value));
    }
}

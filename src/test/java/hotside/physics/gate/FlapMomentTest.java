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

class FlapMomentTest {
    private static final Values FLAP =
            Values.of(
                    "seatDiameter",
                    0.030,
                    "upstream",
                    220e3,
                    "downstream",
                    120e3,
                    "flapArm",
                    0.025,
                    "crankArm",
                    0.040);

    @Test
    void agreesWithMomentsByHand() {
        // 70.68583 N on the flap (30 mm, 100 kPa); times 25 mm = 1.767146 N m; over 40 mm =
        // 44.17865 N
        var out = FlapMoment.RELATION.solve(FLAP);
        assertEquals(1.767146, out.number("moment"), 5e-7);
        assertEquals(44.17865, out.number("rodForce"), 5e-6);
    }

    @Test
    void aRodAtThirtyDegreesToTheCrankHoldsTwiceAsHard() {
        // sin 30° = 1/2
        var out = FlapMoment.RELATION.solve(FLAP.with("crankAngle", Math.PI / 6));
        assertEquals(2 * 44.17865, out.number("rodForce"), 1e-5);
    }

    @Test
    void theAngleCountsAlikeToEitherSideOfTheRightOne() {
        double before = FlapMoment.rodForce(2, 0.04, Math.PI / 2 - 0.4);
        double after = FlapMoment.rodForce(2, 0.04, Math.PI / 2 + 0.4);
        assertEquals(before, after, 1e-12);
    }

    @Test
    void equalArmsPassTheForceAsItIs() {
        double moment = FlapMoment.moment(0.03, 220e3, 120e3, 0.03);
        assertEquals(
                ValveForce.of(0.03, 220e3, 120e3),
                FlapMoment.rodForce(moment, 0.03, Math.PI / 2),
                1e-12);
    }

    @Test
    void theEquivalentSeatPushesAsHardWithoutALever() {
        var out = FlapMoment.RELATION.solve(FLAP);
        assertEquals(
                out.number("rodForce"),
                ValveForce.of(out.number("equivalentSeatDiameter"), 220e3, 120e3),
                1e-12 * 44);
    }

    @Test
    void findsTheCrankForARodForce() {
        double crank = Solver.solveFor(FlapMoment.RELATION, "crankArm", "rodForce", 44.17865, FLAP);
        assertEquals(0.040, crank, 5e-9);
    }

    @Test
    void twoAnglesGiveOneForceAndItSaysSo() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                Solver.solveFor(
                                        FlapMoment.RELATION, "crankAngle", "rodForce", 60, FLAP));
        assertTrue(
                e.getMessage().startsWith("flap-moment: more than one crankAngle"), e.getMessage());
    }

    @Test
    void aRodAlongTheCrankCannotHold() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> FlapMoment.RELATION.solve(FLAP.with("crankAngle", 0.0)));
        assertEquals("crankAngle", e.slot());
    }

    @Property(seed = "20261125")
    void aLongerCrankNeedsLessForce(@ForAll @DoubleRange(min = 10, max = 100) double mm) {
        assertTrue(
                FlapMoment.rodForce(2, (mm + 1) / 1e3, 1.4)
                        < FlapMoment.rodForce(2, mm / 1e3, 1.4));
    }

    /** Moment goes with length cubed, force with length squared. */
    @Property(seed = "20261125")
    void scalesWithItsSize(@ForAll @DoubleRange(min = 0.3, max = 3) double k) {
        double one = FlapMoment.moment(0.03, 2e5, 1e5, 0.025);
        double other = FlapMoment.moment(0.03 * k, 2e5, 1e5, 0.025 * k);
        assertEquals(k * k * k * one, other, 1e-12 * other);
        assertEquals(
                k * k * FlapMoment.rodForce(one, 0.04, 1.2),
                FlapMoment.rodForce(other, 0.04 * k, 1.2),
                1e-10);
    }
}

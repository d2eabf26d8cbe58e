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

class TorquePowerTest {
    private static final double FOOT_POUND = 1.3558179483314004; // NIST SP 811, B.8
    private static final double HORSEPOWER = 745.6998715822702; // 550 ft·lbf/s, NIST SP 811, B.8

    @Test
    void crossesAt9549TurnsAMinuteInNewtonMetresAndKilowatts() {
        // 60000/2π = 9549.296586, from exact definitions
        assertEquals(1000, TorquePower.of(1, 9549.296586 / 60), 1e-6);
    }

    @Test
    void crossesAt5252TurnsAMinuteInPoundFeetAndHorsepower() {
        // 33000/2π = 5252.113122, from exact definitions
        assertEquals(HORSEPOWER, TorquePower.of(FOOT_POUND, 5252.113122 / 60), 1e-6);
    }

    @Test
    void isZeroForAShaftThatStandsStill() {
        assertEquals(0, TorquePower.of(500, 0), 0.0);
    }

    @Test
    void isNegativeForADrivenShaft() {
        assertEquals(-TorquePower.of(80, 50), TorquePower.of(-80, 50), 0.0);
    }

    @Test
    void findsTheTorqueOfAPower() {
        double torque =
                Solver.solveFor(
                        TorquePower.RELATION,
                        "torque",
                        "power",
                        250e3,
                        Values.of("speed", 6000 / 60.0));
        assertEquals(TorquePower.torque(250e3, 100), torque, 1e-8);
        assertEquals(250e3, TorquePower.of(torque, 100), 1e-5);
    }

    @Test
    void refusesToTurnBackwards() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> TorquePower.RELATION.solve(Values.of("torque", 1.0, "speed", -1.0)));
        assertEquals("torque-power: speed = -1.0 is outside [0.0, 5000.0] 1/s", e.getMessage());
    }

    @Test
    void worksAtTheEndsOfItsRange() {
        assertEquals(
                2 * Math.PI * 5000 * 20e3,
                TorquePower.RELATION.value("power", Values.of("torque", 20e3, "speed", 5000.0)),
                1e-3);
    }

    @Property(seed = "20261125")
    void goesWithTorqueAndWithSpeed(
            @ForAll @DoubleRange(min = 1, max = 2000) double torque,
            @ForAll @DoubleRange(min = 1, max = 200) double speed) {
        double one = TorquePower.of(torque, speed);
        assertEquals(6 * one, TorquePower.of(2 * torque, 3 * speed), 1e-12 * one);
        assertTrue(TorquePower.of(torque, speed + 1) > one);
    }
}

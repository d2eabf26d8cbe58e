// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

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

class RotorSpinUpTest {
    private static final double FROM = 80_000 / 60.0;
    private static final double TO = 160_000 / 60.0;
    private static final Values RIG =
            Values.of(
                    "inertia", 5e-5,
                    "turbinePower", 12e3,
                    "compressorPower", 7e3,
                    "startSpeed", FROM,
                    "endSpeed", TO,
                    "mechanicalEfficiency", 1.0);

    @Test
    void takesTheEnergyOfTheSquaresOfTheSpeeds() {
        // ½ J (ω2² − ω1²): 5e-5 kg·m², 80 000 → 160 000 rev/min = 5263.789014 J, and
        // 1.052757803 s at 5 kW, worked out by another script
        Values out = RotorSpinUp.RELATION.solve(RIG);
        assertEquals(5263.789014, out.number("energy"), 1e-6);
        assertEquals(1.052757803, out.number("time"), 1e-9);
    }

    @Test
    void integratesToTheClosedFormAtConstantPower() {
        assertEquals(
                1.052757803,
                RotorSpinUp.timeTo(5e-5, FROM, TO, 10, (t, n) -> 5e3).orElseThrow(),
                1e-8);
        assertEquals(TO, RotorSpinUp.speedAfter(5e-5, FROM, 1.052757803, (t, n) -> 5e3), 1e-5);
    }

    @Test
    void integratesToTheExponentialWhereTorqueFallsWithSpeed() {
        // net power P = a ω (Ω − ω) gives J dω/dt = a (Ω − ω): an approach with time constant J/a
        double limit = 3000;
        double a = 1e-4;
        double twoPi = 2 * Math.PI;
        RotorSpinUp.NetPower net = (t, n) -> a * twoPi * n * twoPi * (limit - n);
        double expected = limit - (limit - 1000) * Math.exp(-0.7 * a / 5e-5);
        assertEquals(expected, RotorSpinUp.speedAfter(5e-5, 1000, 0.7, net), 1e-5);
    }

    @Test
    void integratesAPowerThatGrowsWithTime() {
        // P = 4000 t: ½ J (ω2² − ω1²) = 2000 t², so t = √(E/2000)
        double seconds = Math.sqrt(5263.789014 / 2000);
        assertEquals(
                seconds,
                RotorSpinUp.timeTo(5e-5, FROM, TO, 10, (t, n) -> 4000 * t).orElseThrow(),
                1e-8);
    }

    @Test
    void slowsDownUnderABrake() {
        assertEquals(
                1.052757803,
                RotorSpinUp.timeTo(5e-5, TO, FROM, 10, (t, n) -> -5e3).orElseThrow(),
                1e-8);
        assertEquals(0, RotorSpinUp.speedAfter(5e-5, FROM, 10, (t, n) -> -5e3), 0.0);
    }

    @Test
    void saysThatASpeedIsNotReachedInTime() {
        assertTrue(RotorSpinUp.timeTo(5e-5, FROM, TO, 0.5, (t, n) -> 5e3).isEmpty());
        assertTrue(RotorSpinUp.timeTo(5e-5, FROM, TO, 5, (t, n) -> -5e3).isEmpty());
    }

    @Test
    void takesNoTimeToStayWhereItIs() {
        assertEquals(0, RotorSpinUp.RELATION.value("time", RIG.with("endSpeed", FROM)), 0.0);
        assertEquals(0, RotorSpinUp.timeTo(5e-5, FROM, FROM, 1, (t, n) -> 5e3).orElseThrow(), 0.0);
    }

    @Test
    void findsTheInertiaOfATime() {
        double inertia =
                Solver.solveFor(
                        RotorSpinUp.RELATION,
                        "inertia",
                        "time",
                        1.052757803,
                        RIG.without("inertia"));
        assertEquals(5e-5, inertia, 1e-12);
    }

    @Test
    void refusesASpinUpWithoutPowerForIt() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> RotorSpinUp.RELATION.solve(RIG.with("turbinePower", 6e3)));
        assertEquals(
                "rotor-spin-up: a net power of −1000 W never brings the rotor to endSpeed; expected"
                        + " turbinePower times mechanicalEfficiency above compressorPower to speed up,"
                        + " below it to slow down",
                e.getMessage());
        assertThrows(
                RelationException.class,
                () -> RotorSpinUp.RELATION.solve(RIG.with("turbinePower", 7e3)));
    }

    @Test
    void refusesToIntegrateFromAStandstill() {
        assertThrows(
                IllegalArgumentException.class,
                () -> RotorSpinUp.timeTo(5e-5, 0, TO, 1, (t, n) -> 5e3));
    }

    @Property(seed = "20261125", tries = 100)
    void agreesWithItsIntegralAnywhere(
            @ForAll @DoubleRange(min = 300, max = 2000) double from,
            @ForAll @DoubleRange(min = 100, max = 1500) double rise,
            @ForAll @DoubleRange(min = 200, max = 20e3) double net) {
        double closed = RotorSpinUp.energy(3e-5, from, from + rise) / net;
        double integral =
                RotorSpinUp.timeTo(3e-5, from, from + rise, 2 * closed, (t, n) -> net)
                        .orElseThrow();
        assertEquals(closed, integral, 1e-7 * closed);
    }

    @Property(seed = "20261125")
    void storesMoreTheMoreInertia(@ForAll @DoubleRange(min = 1, max = 1000) double millionths) {
        double inertia = millionths * 1e-6;
        double one = RotorSpinUp.energy(inertia, 1000, 2000);
        assertEquals(3 * one, RotorSpinUp.energy(3 * inertia, 1000, 2000), 1e-12 * one);
        assertEquals(-one, RotorSpinUp.energy(inertia, 2000, 1000), 0.0);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class GateFlowTest {
    private static final Values GATE =
            Values.of(
                    "seatDiameter",
                    0.046,
                    "lift",
                    0.006,
                    "dischargeCoefficient",
                    0.75,
                    "upstream",
                    180e3,
                    "temperature",
                    1150,
                    "downstream",
                    101_325);

    @Test
    void agreesWithTheChokedFlowOfAnOpenSeat() {
        // 22 mm, Cd 1, 220 kPa, 1123.15 K, gamma 1.33, R 287: 0.09907710 kg/s from the closed form
        // of choked flow (NACA 1135), computed independently
        double area = GateFlow.area(0.022, 0.010);
        assertTrue(GateFlow.choked(220e3, 101_325, 1.33));
        assertEquals(
                0.09907710,
                GateFlow.massFlow(area, 1, 220e3, 1123.15, 101_325, 1.33, 287),
                1e-6 * 0.0991);
    }

    @Test
    void theRelationGivesTheSameFlowFromSpecificHeat() {
        // R = cp (gamma - 1)/gamma = 287 for cp = 287 * 1.33 / 0.33 = 1156.697
        var out =
                GateFlow.RELATION.solve(
                        Values.of(
                                "seatDiameter",
                                0.022,
                                "lift",
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
                                1156.697));
        assertEquals(0.09907710, out.number("massFlow"), 1e-6 * 0.0991);
        assertEquals(1, out.number("choked"), 0.0);
    }

    @Test
    void theCurtainMeetsTheSeatAtAQuarterOfTheBore() {
        // 46 mm: pi * 46 * 6 = 867.08 mm2; pi/4 * 46^2 = 1661.90 mm2; equal at 11.5 mm
        assertEquals(867.08e-6, GateFlow.area(0.046, 0.006), 5e-9);
        assertEquals(1661.90e-6, GateFlow.area(0.046, 0.0115), 5e-9);
        assertEquals(1661.90e-6, GateFlow.area(0.046, 0.020), 5e-9);
        assertEquals(GateFlow.area(0.046, 0.0115), GateFlow.area(0.046, 0.0115 - 1e-12), 1e-12);
    }

    @Test
    void aShutValveAndEqualPressuresPassNothing() {
        assertEquals(0, GateFlow.RELATION.value("massFlow", GATE.with("lift", 0.0)), 0.0);
        assertEquals(0, GateFlow.RELATION.value("massFlow", GATE.with("downstream", 180e3)), 0.0);
    }

    @Test
    void aChokedGapDoesNotFeelThePressureBehindIt() {
        // critical ratio 0.540364 at gamma 1.33 (closed form, NACA 1135): chokes below 97.27 kPa of
        // 180
        assertFalse(GateFlow.choked(180e3, 97_300, 1.33));
        assertTrue(GateFlow.choked(180e3, 97_200, 1.33));
        assertEquals(flow("downstream", 97e3), flow("downstream", 60e3), 0.0);
    }

    @Test
    void fortySixForThirtyEightMillimetresIsFortySevenPercentMore() {
        // (46/38)^2 = 1.46537, of force and of flow alike
        double flow = open(0.046) / open(0.038);
        double force = ValveForce.of(0.046, 180e3, 1e5) / ValveForce.of(0.038, 180e3, 1e5);
        assertEquals(1.46537, flow, 5e-6);
        assertEquals(1.46537, force, 5e-6);
    }

    @Test
    void saysWhatIsWrongWhenGasWouldRunBackwards() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> GateFlow.RELATION.solve(GATE.with("upstream", 80e3)));
        assertEquals("downstream", e.slot());
        assertEquals(
                "gate-flow: downstream = 101325 Pa is above upstream = 80000 Pa, gas would run backwards"
                        + " through the gate; expected both absolute, and the higher one under the valve",
                e.getMessage());
    }

    @Test
    void findsTheLiftForAFlow() {
        double flow = GateFlow.RELATION.value("massFlow", GATE);
        assertEquals(
                0.006, Solver.solveFor(GateFlow.RELATION, "lift", "massFlow", flow, GATE), 1e-11);
    }

    @Test
    void noLiftGivesMoreThanTheOpenSeatPasses() {
        double most = GateFlow.RELATION.value("massFlow", GATE.with("lift", 0.0115));
        assertThrows(
                RelationException.class,
                () -> Solver.solveFor(GateFlow.RELATION, "lift", "massFlow", 1.01 * most, GATE));
    }

    @Property(seed = "20261125")
    void growsWithTheSquareOfItsSize(@ForAll @DoubleRange(min = 0.4, max = 2) double k) {
        double one = GateFlow.RELATION.value("massFlow", GATE);
        double other =
                GateFlow.RELATION.value(
                        "massFlow", GATE.with("seatDiameter", 0.046 * k).with("lift", 0.006 * k));
        assertEquals(k * k * one, other, 1e-12);
    }

    @Property(seed = "20261125")
    void hotterGasPassesLessByTheRootOfTemperature(
            @ForAll @DoubleRange(min = 300, max = 500) double temperature) {
        assertEquals(
                flow("temperature", temperature) / 2, flow("temperature", 4 * temperature), 1e-12);
    }

    @Property(seed = "20261125")
    void moreLiftNeverPassesLess(@ForAll @DoubleRange(min = 0, max = 20) double mm) {
        assertTrue(flow("lift", (mm + 0.1) / 1e3) >= flow("lift", mm / 1e3));
    }

    @Property(seed = "20261125")
    void morePressureBeforeItPassesMore(
            @ForAll @DoubleRange(min = 101_325, max = 500e3) double upstream) {
        assertTrue(flow("upstream", upstream + 100) > flow("upstream", upstream));
    }

    private static double flow(String slot, double value) {
        return GateFlow.RELATION.value("massFlow", GATE.with(slot, value));
    }

    private static double open(double seat) {
        return GateFlow.RELATION.value(
                "massFlow", GATE.with("seatDiameter", seat).with("lift", 0.02));
    }
}

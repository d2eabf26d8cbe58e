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

class TurbineSwallowTest {
    private static final Values RIG =
            Values.of(
                    "effectiveArea", 1e-3,
                    "inletPressure", 200e3,
                    "inletTemperature", 1100.0,
                    "outletPressure", 110e3);

    @Test
    void passesWhatAChokedNozzleDoesWithNothingBehind() {
        // NACA Report 1135: dry air, γ 1.4, R 287.05287, 101 325 Pa, 288.15 K, 1 m²: 241.2385 kg/s
        assertEquals(
                241.2385, TurbineSwallow.massFlow(1, 101_325, 288.15, 0, 1.4, 287.05287), 2.5e-4);
    }

    @Test
    void agreesWithTheChokedMassFlowFunctionOfExhaust() {
        // ṁ √(R T0)/(A p0) at γ 1.33 is 0.6726284, NACA Report 1135, worked out by another script
        double flow = TurbineSwallow.massFlow(1e-3, 200e3, 1000, 0, 1.33, 285);
        assertEquals(0.6726284, flow * Math.sqrt(285 * 1000) / (1e-3 * 200e3), 1e-7);
    }

    @Test
    void followsTheEllipse() {
        // Stodola's law: (flow/choked)² + (p4/p3)² = 1
        for (double back = 0; back <= 200e3; back += 20e3) {
            double x =
                    TurbineSwallow.massFlow(1e-3, 200e3, 1100, back, 1.33, 285)
                            / TurbineSwallow.massFlow(1e-3, 200e3, 1100, 0, 1.33, 285);
            assertEquals(1, x * x + Math.pow(back / 200e3, 2), 1e-12);
        }
    }

    @Test
    void standsStillWithEqualPressures() {
        assertEquals(
                0,
                TurbineSwallow.RELATION.value("massFlow", RIG.with("outletPressure", 200e3)),
                0.0);
    }

    @Test
    void findsThePressureThatDrivesAFlow() {
        double p3 =
                Solver.solveFor(
                        TurbineSwallow.RELATION,
                        "inletPressure",
                        "massFlow",
                        0.25,
                        RIG.without("inletPressure"));
        double gasConstant = ExhaustSlots.gasConstant(1.33, 1150);
        assertEquals(
                TurbineSwallow.inletPressure(0.25, 1e-3, 1100, 110e3, 1.33, gasConstant), p3, 1e-6);
    }

    @Test
    void refusesToFlowBackwards() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> TurbineSwallow.RELATION.solve(RIG.with("outletPressure", 210e3)));
        assertEquals(
                "turbine-swallow: outletPressure = 210000 Pa is above inletPressure = 200000 Pa;"
                        + " expected both absolute, and the higher one before the turbine",
                e.getMessage());
    }

    @Property(seed = "20261125")
    void comesBackThroughItsInverse(
            @ForAll @DoubleRange(min = 0, max = 1) double flow,
            @ForAll @DoubleRange(min = 90e3, max = 150e3) double back) {
        double p3 = TurbineSwallow.inletPressure(flow, 1.3e-3, 1100, back, 1.33, 285);
        assertEquals(flow, TurbineSwallow.massFlow(1.3e-3, p3, 1100, back, 1.33, 285), 1e-7);
        double p4 = TurbineSwallow.outletPressure(flow, 1.3e-3, p3, 1100, 1.33, 285);
        assertEquals(back, p4, 1e-8 * back);
    }

    @Test
    void noPressureBehindDrawsMoreThanTheChokedFlow() {
        double choked = TurbineSwallow.massFlow(1.3e-3, 200e3, 1100, 0, 1.33, 285);
        double p4 = TurbineSwallow.outletPressure(1.001 * choked, 1.3e-3, 200e3, 1100, 1.33, 285);
        assertTrue(Double.isNaN(p4));
    }

    @Property(seed = "20261125")
    void scalesWithAreaAndWithBothPressures(
            @ForAll @DoubleRange(min = 120e3, max = 500e3) double p3,
            @ForAll @DoubleRange(min = 0.5, max = 3) double k) {
        double one = TurbineSwallow.massFlow(1e-3, p3, 1100, 110e3, 1.33, 285);
        assertEquals(
                k * one,
                TurbineSwallow.massFlow(1e-3, k * p3, 1100, k * 110e3, 1.33, 285),
                1e-10 * one);
        assertEquals(
                k * one,
                TurbineSwallow.massFlow(k * 1e-3, p3, 1100, 110e3, 1.33, 285),
                1e-10 * one);
        assertTrue(TurbineSwallow.massFlow(1e-3, p3, 1150, 110e3, 1.33, 285) < one);
        assertTrue(TurbineSwallow.massFlow(1e-3, p3, 1100, 111e3, 1.33, 285) < one);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.physics.gas.IsentropicFlow;
import hotside.relation.Solver;
import hotside.relation.Values;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FannoFlowTest {
    // Farokhi, Aircraft Propulsion, 2nd ed., appendix E (its 4 Cf L*/D is f L*/D by Darcy), read in
    // a public copy; half a unit of the last printed digit
    @ParameterizedTest(name = "M {0}")
    @CsvSource({"0.1, 66.922, 1.1976, 10.944, 5.8218", "0.12, 45.408, 1.1966, 9.1156, 4.8643"})
    void agreesWithThePrintedTable(
            double mach, String resistance, String t, String p, String total) {
        assertPrinted(resistance, FannoFlow.resistance(mach, 1.4));
        assertPrinted(t, FannoFlow.temperatureRatio(mach, 1.4));
        assertPrinted(p, FannoFlow.pressureRatio(mach, 1.4));
        assertPrinted(total, FannoFlow.totalPressureRatio(mach, 1.4));
    }

    private static void assertPrinted(String printed, double value) {
        BigDecimal number = new BigDecimal(printed);
        assertEquals(number.doubleValue(), value, 0.501 * number.ulp().doubleValue());
    }

    // the same relations evaluated independently, six decimals
    @ParameterizedTest(name = "M {1}, gamma {0}")
    @CsvSource(
            textBlock =
                    """
                    1.4, 0.1, 66.921560, 1.197605, 10.943513, 5.821829
                    1.4, 0.2, 14.533266, 1.190476, 5.455447, 2.963520
                    1.4, 0.5, 1.069060, 1.142857, 2.138090, 1.339844
                    1.4, 0.6, 0.490822, 1.119403, 1.763364, 1.188200
                    1.4, 2.0, 0.304997, 0.666667, 0.408248, 1.687500
                    1.33, 0.2, 15.353583, 1.157361, 5.379037, 2.984731
                    1.33, 0.5, 1.139696, 1.118848, 2.115512, 1.345408
                    1.33, 0.6, 0.525000, 1.099679, 1.747760, 1.191701
                    1.33, 2.0, 0.340233, 0.701807, 0.418870, 1.745290
                    1.3, 0.2, 15.732415, 1.143141, 5.345889, 2.994014
                    1.3, 0.5, 1.172424, 1.108434, 2.105644, 1.347853
                    1.3, 0.6, 0.540864, 1.091082, 1.740914, 1.193244
                    1.3, 2.0, 0.357277, 0.718750, 0.423896, 1.773188
                    """)
    void agreesWithTheRelationsEvaluatedElsewhere(
            double gamma, double mach, double resistance, double t, double p, double total) {
        assertEquals(resistance, FannoFlow.resistance(mach, gamma), 0.6e-6);
        assertEquals(t, FannoFlow.temperatureRatio(mach, gamma), 0.6e-6);
        assertEquals(p, FannoFlow.pressureRatio(mach, gamma), 0.6e-6);
        assertEquals(total, FannoFlow.totalPressureRatio(mach, gamma), 0.6e-6);
    }

    @Test
    void solvesThePublishedDuct() {
        // air, gamma 1.4, D = 30 mm, L = 0.45 m, f = 0.02 by Darcy, Mach 0.6, 150 kPa, 300 K in:
        // Mach 0.709257, 125.2332 kPa, 292.2018 K out, total pressure ratio 0.915509
        double out = FannoFlow.downstreamMach(0.6, 0.02 * 0.45 / 0.03, 1.4);
        assertEquals(0.709257, out, 1e-6);
        assertEquals(
                125.2332,
                150 * FannoFlow.pressureRatio(out, 1.4) / FannoFlow.pressureRatio(0.6, 1.4),
                1e-4);
        assertEquals(
                292.2018,
                300 * FannoFlow.temperatureRatio(out, 1.4) / FannoFlow.temperatureRatio(0.6, 1.4),
                1e-4);
        assertEquals(
                0.915509,
                FannoFlow.totalPressureRatio(out, 1.4) / FannoFlow.totalPressureRatio(0.6, 1.4),
                1e-6);
    }

    @Test
    void refusesTheSameDuctWhenTheFactorWasFannings() {
        // 4 · 0.02 · 0.45 / 0.03 = 1.2, but only 0.490822 is left at Mach 0.6
        var e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> FannoFlow.downstreamMach(0.6, 4 * 0.02 * 0.45 / 0.03, 1.4));
        assertTrue(e.getMessage().contains("chokes the flow"), e.getMessage());
        assertTrue(e.getMessage().contains("only 0.4908"), e.getMessage());
    }

    @Property(seed = "20261125")
    void upstreamAndDownstreamUndoEachOther(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 1) double exit,
            @ForAll @Scale(7) @DoubleRange(min = 0, max = 50) double resistance,
            @ForAll @Scale(7) @DoubleRange(min = 1.1, max = 1.66) double gamma) {
        double inlet = FannoFlow.upstreamMach(exit, resistance, gamma);
        double apart =
                FannoFlow.resistance(inlet, gamma) - FannoFlow.resistance(exit, gamma) - resistance;
        assertEquals(0, apart, 1e-11 * (1 + FannoFlow.resistance(inlet, gamma)));
        assertTrue(inlet <= exit);
    }

    @Test
    void keepsTheMachNumberWithoutResistance() {
        assertEquals(0.4, FannoFlow.upstreamMach(0.4, 0, 1.33), 1e-15);
        assertEquals(1, FannoFlow.upstreamMach(1, 0, 1.33), 0.0);
        assertEquals(1, FannoFlow.downstreamMach(0.5, FannoFlow.resistance(0.5, 1.33), 1.33), 1e-7);
    }

    @Test
    void losesTotalPressureLikeTheAreaRatioOfANozzle() {
        assertEquals(
                IsentropicFlow.areaRatio(0.3, 1.33),
                FannoFlow.totalPressureRatio(0.3, 1.33),
                1e-15);
    }

    @Test
    void findsTheMachNumberOfASubsonicResistance() {
        double found =
                Solver.solveFor(
                        FannoFlow.RELATION,
                        "mach",
                        "resistance",
                        15.353583, // gamma 1.33, M = 0.2; a supersonic flow never has so much left
                        Values.of("gamma", 1.33));
        assertEquals(0.2, found, 1e-8);
    }
}

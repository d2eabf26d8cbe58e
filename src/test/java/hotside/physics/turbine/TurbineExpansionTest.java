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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurbineExpansionTest {
    private static final Values RIG =
            Values.of(
                    "inletPressure", 200e3,
                    "outletPressure", 100e3,
                    "inletTemperature", 1123.15,
                    "efficiency", 0.7,
                    "gamma", 1.333);

    /** T4 = T3 (1 − η (1 − PR^−((γ−1)/γ))), γ 1.333, cp 1150, worked out by another script. */
    @ParameterizedTest(name = "{0} K, ratio {1}, efficiency {2}")
    @CsvSource({"1123.15, 2, 0.7, 998.147915, 143752.397", "1100, 4, 0.87, 819.877152, 322141.276"})
    void agreesWithTheTextbookFormula(
            double inlet, double ratio, double efficiency, double outlet, double work) {
        assertEquals(outlet, TurbineExpansion.temperature(inlet, ratio, efficiency, 1.333), 1e-6);
        assertEquals(
                work, TurbineExpansion.specificWork(inlet, ratio, efficiency, 1.333, 1150), 1e-3);
    }

    @Test
    void worksTheSameAsACard() {
        Values out = TurbineExpansion.RELATION.solve(RIG);
        assertEquals(2, out.number("expansionRatio"), 1e-15);
        assertEquals(998.147915, out.number("outletTemperature"), 1e-6);
        assertEquals(143_752.397, out.number("specificWork"), 1e-3);
    }

    @Test
    void doesNothingWithoutAnExpansion() {
        assertEquals(1000, TurbineExpansion.temperature(1000, 1, 0.7, 1.33), 0.0);
        assertEquals(
                0,
                TurbineExpansion.RELATION.value("specificWork", RIG.with("outletPressure", 200e3)),
                0.0);
    }

    @Test
    void tendsToTheWholeHeatOfAPerfectExpansionToNothing() {
        // the rest of the heat is 1 / 1e30^0.25, a part in 3e7
        assertEquals(
                1150 * 1000, TurbineExpansion.specificWork(1000, 1e30, 1, 4 / 3.0, 1150), 0.04);
    }

    @Test
    void findsTheOutletPressureOfAWork() {
        double outlet =
                Solver.solveFor(
                        TurbineExpansion.RELATION,
                        "outletPressure",
                        "specificWork",
                        143_752.397,
                        RIG.without("outletPressure"));
        assertEquals(100e3, outlet, 1e-2);
    }

    @Test
    void refusesToExpandUphill() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> TurbineExpansion.RELATION.solve(RIG.with("outletPressure", 201e3)));
        assertEquals(
                "turbine-expansion: outletPressure = 201000 Pa; expected above 0 and not above"
                        + " inletPressure = 200000 Pa, both absolute",
                e.getMessage());
    }

    @Property(seed = "20261125")
    void givesMoreTheLessPressureIsBehindAndTheHotterTheGas(
            @ForAll @DoubleRange(min = 1.05, max = 5) double ratio,
            @ForAll @DoubleRange(min = 600, max = 1300) double t) {
        double one = TurbineExpansion.specificWork(t, ratio, 0.7, 1.33, 1150);
        assertTrue(TurbineExpansion.specificWork(t, ratio * 1.01, 0.7, 1.33, 1150) > one);
        assertEquals(
                2 * one, TurbineExpansion.specificWork(2 * t, ratio, 0.7, 1.33, 1150), 1e-12 * one);
    }
}

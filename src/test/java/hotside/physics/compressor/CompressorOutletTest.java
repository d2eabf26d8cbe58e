// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

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

class CompressorOutletTest {
    /** T2 = T1 + T1 (PR^((γ−1)/γ) − 1)/η with γ 1.4, cp 1005, worked out by another script. */
    @ParameterizedTest(name = "{0} K, ratio {1}, efficiency {2}")
    @CsvSource({"298.15, 2, 0.72, 388.842946, 91146.411", "300, 2.5, 0.78, 415.101239, 115676.746"})
    void agreesWithTheTextbookFormula(
            double inlet, double ratio, double efficiency, double outlet, double work) {
        assertEquals(outlet, CompressorOutlet.temperature(inlet, ratio, efficiency), 1e-6);
        assertEquals(work, CompressorOutlet.specificWork(inlet, ratio, efficiency), 1e-3);
    }

    @Test
    void agreesWithAnotherLibrary() {
        // documentation of the Python package fluids 1.0, isentropic_T_rise_compression:
        // 286.8 K, 54 050 → 432 400 Pa, k 1.4, efficiency 1 and 0.78
        assertEquals(519.5230938, CompressorOutlet.temperature(286.8, 8, 1), 1e-6);
        assertEquals(585.1629408, CompressorOutlet.temperature(286.8, 8, 0.78), 1e-6);
    }

    @Test
    void agreesWithMolarWorkOfAnotherLibrary() {
        // documentation of fluids 1.0, isentropic_work_compression: 300 K, 1 → 10 bar, k 1.4,
        // efficiency 0.78: 10 416.877 J/mol = 3.5 R ΔT
        double rise = CompressorOutlet.temperature(300, 10, 0.78) - 300;
        assertEquals(10_416.876986, 3.5 * 8.314462618 * rise, 0.1);
    }

    @Test
    void doesNothingAtARatioOfOne() {
        assertEquals(300, CompressorOutlet.temperature(300, 1, 0.7), 0.0);
        assertEquals(0, CompressorOutlet.specificWork(300, 1, 0.7), 0.0);
    }

    @Test
    void findsTheEfficiencyOfAnOutletTemperature() {
        Values in =
                Values.of("inletPressure", 98e3, "inletTemperature", 295.0, "pressureRatio", 2.0);
        double efficiency =
                Solver.solveFor(
                        CompressorOutlet.RELATION, "efficiency", "outletTemperature", 385.0, in);
        assertEquals(385, CompressorOutlet.temperature(295, 2, efficiency), 1e-9);
        assertEquals(efficiency, CompressorOutlet.efficiency(2, 295, 385), 1e-12);
    }

    @Test
    void refusesAPercentageForAnEfficiency() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                CompressorOutlet.RELATION.solve(
                                        CompressorOutlet.RELATION
                                                .typical()
                                                .with("efficiency", 74.0)));
        assertEquals("compressor-outlet: efficiency = 74.0 is outside (0.0, 1.0]", e.getMessage());
    }

    @Property(seed = "20261125")
    void heatsMoreTheWorseTheCompressorAndTheHigherTheRatio(
            @ForAll @DoubleRange(min = 1.05, max = 4) double ratio,
            @ForAll @DoubleRange(min = 0.4, max = 0.9) double efficiency) {
        double one = CompressorOutlet.temperature(300, ratio, efficiency);
        assertTrue(CompressorOutlet.temperature(300, ratio + 0.01, efficiency) > one);
        assertTrue(CompressorOutlet.temperature(300, ratio, efficiency + 0.01) < one);
        assertEquals(2 * one, CompressorOutlet.temperature(600, ratio, efficiency), 1e-10);
    }
}

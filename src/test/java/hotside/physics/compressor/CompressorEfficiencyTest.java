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

class CompressorEfficiencyTest {
    private static final Values READINGS =
            Values.of(
                    "inletPressure", 100e3,
                    "outletPressure", 200e3,
                    "inletTemperature", 298.15,
                    "outletTemperature", 388.842946);

    @Test
    void recoversTheEfficiencyOfATextbookOutletTemperature() {
        // 298.15 K, ratio 2, efficiency 0.72 → 388.842946 K, worked out by another script
        Values out = CompressorEfficiency.RELATION.solve(READINGS);
        assertEquals(0.72, out.number("efficiency"), 1e-7);
        assertEquals(2, out.number("pressureRatio"), 1e-15);
    }

    @Test
    void isOneForThePerfectHeating() {
        double perfect = 298.15 * Math.pow(2, 0.4 / 1.4);
        assertEquals(
                1,
                CompressorEfficiency.RELATION.value(
                        "efficiency", READINGS.with("outletTemperature", perfect)),
                1e-12);
    }

    @Test
    void findsTheTemperatureOfAnEfficiency() {
        double outlet =
                Solver.solveFor(
                        CompressorEfficiency.RELATION,
                        "outletTemperature",
                        "efficiency",
                        0.65,
                        READINGS.without("outletTemperature"));
        assertEquals(CompressorOutlet.temperature(298.15, 2, 0.65), outlet, 1e-6);
    }

    @Test
    void asksForTheSensorsWhereTheAirCools() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                CompressorEfficiency.RELATION.solve(
                                        READINGS.with("outletTemperature", 290.0)));
        assertEquals(
                "compressor-efficiency: outletTemperature = 290 K is not above inletTemperature ="
                        + " 298.15 K; a compressor heats the air, so look at the sensors",
                e.getMessage());
    }

    @Test
    void warnsOfAnEfficiencyThatNoTurboHas() {
        var worked = CompressorEfficiency.RELATION.work(READINGS.with("outletTemperature", 365.0));
        assertEquals("efficiency", worked.cautions().get(0).about());
    }

    @Property(seed = "20261125")
    void fallsWithTheHeatingSeen(@ForAll @DoubleRange(min = 310, max = 500) double outlet) {
        assertTrue(
                CompressorOutlet.efficiency(2, 298, outlet + 1)
                        < CompressorOutlet.efficiency(2, 298, outlet));
    }
}

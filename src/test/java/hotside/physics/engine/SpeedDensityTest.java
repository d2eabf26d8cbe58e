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

class SpeedDensityTest {
    @Test
    void fillsTheDisplacementOnceInTwoTurnsWithStandardAir() {
        // density of air at 101.325 kPa and 15 °C is 1.2250 kg/m³ (US Standard Atmosphere 1976);
        // 2 L at 6000 rev/min sweep 0.1 m³/s
        assertEquals(0.12250, SpeedDensity.airFlow(2e-3, 100, 1, 101_325, 288.15), 1e-6);
    }

    @Test
    void isZeroForAnEngineThatStandsStill() {
        assertEquals(0, SpeedDensity.airFlow(2e-3, 0, 1, 101_325, 288.15), 0.0);
    }

    @Test
    void findsTheVolumetricEfficiencyOfAMeasuredFlow() {
        Values rig =
                Values.of(
                        "displacement", 2.3e-3,
                        "speed", 95.0,
                        "manifoldPressure", 170e3,
                        "manifoldTemperature", 315.0);
        double filling =
                Solver.solveFor(
                        SpeedDensity.RELATION, "volumetricEfficiency", "airFlow", 0.19, rig);
        assertEquals(0.19, SpeedDensity.airFlow(2.3e-3, 95, filling, 170e3, 315), 1e-12);
        assertEquals(95, SpeedDensity.speed(0.19, 2.3e-3, filling, 170e3, 315), 1e-10);
    }

    @Test
    void refusesCelsius() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                SpeedDensity.RELATION.solve(
                                        SpeedDensity.RELATION
                                                .typical()
                                                .with("manifoldTemperature", 45.0)));
        assertEquals(
                "speed-density: manifoldTemperature = 45.0 is outside [150.0, 700.0] K",
                e.getMessage());
    }

    @Test
    void warnsOfAPressureThatLooksLikeGauge() {
        var worked =
                SpeedDensity.RELATION.work(
                        SpeedDensity.RELATION.typical().with("manifoldPressure", 15e3));
        assertTrue(worked.cautions().get(0).text().contains("absolute"));
    }

    @Property(seed = "20261125")
    void goesWithPressureOverTemperature(
            @ForAll @DoubleRange(min = 50e3, max = 400e3) double pressure,
            @ForAll @DoubleRange(min = 250, max = 400) double temperature) {
        double one = SpeedDensity.airFlow(2e-3, 80, 0.9, pressure, temperature);
        assertEquals(
                one,
                SpeedDensity.airFlow(2e-3, 80, 0.9, 1.5 * pressure, 1.5 * temperature),
                1e-12 * one);
        assertTrue(SpeedDensity.airFlow(2e-3, 80, 0.9, pressure, temperature + 1) < one);
    }
}

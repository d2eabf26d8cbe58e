// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HumidAirTest {
    // °C; Pa by Buck 1996, by IAPWS SR1-86(1992) eq. (1), by CIPM-2007 eq. (A1.1): evaluated
    // independently, the constants of the last read in a public copy
    @ParameterizedTest(name = "{0} °C")
    @CsvSource(
            textBlock =
                    """
                    0, 611.210, 611.213, 611.213
                    20, 2338.340, 2339.194, 2339.163
                    25, 3168.531, 3169.824, 3169.757
                    30, 4245.126, 4246.920, 4246.799
                    """)
    void saturationAgreesWithThreeFormulas(double t, double buck, double iapws, double cipm) {
        double pressure = HumidAir.saturationPressure(t + 273.15);
        assertEquals(buck, pressure, 1e-6 * buck);
        assertEquals(iapws, pressure, 1e-3 * iapws);
        assertEquals(cipm, pressure, 1e-3 * cipm);
    }

    // CIPM-2007 (Picard and others, Metrologia 45, 2008, 149), 400 ppm of CO2, evaluated
    // independently; 5e-4 is what an ideal mixture may differ from it
    @ParameterizedTest(name = "{0} °C, {1} Pa, humidity {2}")
    @CsvSource(
            textBlock =
                    """
                    20, 101325, 0.5, 1.1993139
                    20, 101325, 0, 1.2045573
                    25, 99000, 0, 1.1571176
                    25, 100000, 0.6, 1.1604300
                    """)
    void densityAgreesWithTheMetrologists(double t, double p, double humidity, double density) {
        assertEquals(density, HumidAir.of(p, t + 273.15, humidity).density(), 5e-4 * density);
    }

    @Test
    void dryAndVapourPressureMakeUpThePressure() {
        HumidAir.State state = HumidAir.of(99e3, 298.15, 0.4);
        assertEquals(99e3, state.dryPressure() + state.vapourPressure(), 1e-9);
        assertEquals(0.4 * 3168.531, state.vapourPressure(), 2e-3);
    }

    @Test
    void findsTheHumidityOfADensity() {
        double density = HumidAir.of(99e3, 303.15, 0.63).density();
        double found =
                Solver.solveFor(
                        HumidAir.RELATION,
                        "relativeHumidity",
                        "density",
                        density,
                        Values.of("pressure", 99e3, "temperature", 303.15));
        assertEquals(0.63, found, 1e-9);
    }

    @Property(seed = "20261125")
    void damperWarmerAndThinnerAirIsLighter(
            @ForAll @Scale(7) @DoubleRange(min = 60e3, max = 110e3) double p,
            @ForAll @Scale(7) @DoubleRange(min = 270, max = 315) double t,
            @ForAll @Scale(7) @DoubleRange(min = 0, max = 0.9) double humidity) {
        double here = HumidAir.of(p, t, humidity).density();
        assertTrue(HumidAir.of(p, t, humidity + 0.05).density() < here);
        assertTrue(HumidAir.of(p, t + 1, humidity).density() < here);
        assertTrue(HumidAir.of(p - 100, t, humidity).density() < here);
    }

    @Test
    void refusesMoreVapourThanPressure() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                HumidAir.RELATION.work(
                                        Values.of(
                                                "pressure", 2e3,
                                                "temperature", 330.0,
                                                "relativeHumidity", 1.0)));
        assertEquals("pressure", e.slot());
        assertTrue(e.getMessage().endsWith("water boils there"), e.getMessage());
    }

    @Test
    void allVapourIsTheEdge() {
        double saturation = HumidAir.saturationPressure(300);
        HumidAir.State steam = HumidAir.of(saturation, 300, 1);
        assertEquals(0, steam.dryPressure(), 0.0);
        // water vapour: 461.52 J/(kg K), IAPWS
        assertEquals(saturation / (461.52 * 300), steam.density(), 1e-5 * steam.density());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandardAtmosphereTest {
    // US Standard Atmosphere 1976 as printed in Mechanical Engineers' Handbook, vol. 4, read in a
    // public copy: K, bar, kg/m³ over geometric height; half a unit of the last digit
    @ParameterizedTest(name = "{0} m")
    @CsvSource({
        "0, 288.15, 1.01325, 1.2250",
        "1000, 281.65, 0.8988, 1.1117",
        "3000, 268.66, 0.7012, 0.9093"
    })
    void agreesWithThePrintedTable(
            double altitude, double temperature, double bar, double density) {
        StandardAtmosphere.State s = StandardAtmosphere.at(altitude);
        assertEquals(temperature, s.temperature(), 0.0051);
        assertEquals(bar, s.pressure() / 1e5, 0.51e-4);
        assertEquals(density, s.density(), 0.51e-4);
    }

    @Property(seed = "20261125")
    void pressureFallsByTheWeightOfTheAir(
            @ForAll @DoubleRange(min = -900, max = 10_900) double altitude) {
        // dp/dZ = -rho g(Z), gravity less by the square of the distance
        double slope =
                (StandardAtmosphere.at(altitude + 1).pressure()
                                - StandardAtmosphere.at(altitude - 1).pressure())
                        / 2;
        double gravity = 9.80665 * Math.pow(6_356_766 / (6_356_766 + altitude), 2);
        double weight = StandardAtmosphere.at(altitude).density() * gravity;
        assertEquals(-weight, slope, 1e-5 * weight);
        assertTrue(slope < 0);
    }

    @Test
    void findsTheHeightOfABarometer() {
        double altitude =
                Solver.solveFor(
                        StandardAtmosphere.RELATION,
                        "altitude",
                        "pressure",
                        StandardAtmosphere.at(1234).pressure(),
                        Values.NONE);
        assertEquals(1234, altitude, 1e-6);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SutherlandViscosityTest {
    // US Standard Atmosphere 1976, eq. (51), evaluated independently; 288.15 K is its table III
    @ParameterizedTest(name = "{0} K")
    @CsvSource(
            textBlock =
                    """
                    273.15, 1.716079e-05
                    288.15, 1.789380e-05
                    300, 1.846002e-05
                    500, 2.670533e-05
                    800, 3.623767e-05
                    1000, 4.152198e-05
                    """)
    void agreesWithTheStandardAtmosphere(double temperature, double expected) {
        assertEquals(expected, SutherlandViscosity.ofAir(temperature), 1e-6 * expected);
    }

    // engineering table of air at 1 atm (neutrium.net, read in a public copy), good to 1.5 %
    @ParameterizedTest(name = "{0} K")
    @CsvSource({"300, 1.850e-5", "500, 2.680e-5", "600, 3.030e-5"})
    void isCloseToAnEngineeringTable(double temperature, double table) {
        assertEquals(table, SutherlandViscosity.ofAir(temperature), 0.015 * table);
    }

    // Lemmon and Jacobsen, Int. J. Thermophysics 25 (2004) 21, dilute gas, from memory, Pa s. The
    // old law falls behind as the gas gets hot: who asks for 1 % at 1000 K asks too much of it.
    @ParameterizedTest(name = "{0} K: {2} %")
    @CsvSource(
            textBlock =
                    """
                    300, 18.5230e-6, -0.34
                    600, 30.7603e-6, -1.94
                    1000, 43.2746e-6, -4.05
                    """)
    void readsLowAgainstTheReferenceEquationWhenHot(
            double temperature, double reference, double percent) {
        double off = 100 * (SutherlandViscosity.ofAir(temperature) / reference - 1);
        assertEquals(percent, off, 0.05);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The pure gases, against the tables that their polynomials were fitted to. */
class SpeciesTest {
    @ParameterizedTest(name = "{0} at {1} K")
    @CsvSource(
            textBlock =
                    """
                    # J/(mol K), NIST-JANAF Thermochemical Tables, 4th ed., table N-023, read in a public copy
                    N2, 300, 29.125, 0.01
                    N2, 1000, 32.697, 0.01
                    N2, 1500, 34.843, 0.01
                    # the same tables from memory, hence 0.2 %
                    N2, 600, 30.110, 0.060
                    O2, 600, 32.090, 0.064
                    CO2, 300, 37.221, 0.074
                    CO2, 1000, 54.308, 0.109
                    CO2, 1200, 56.342, 0.113
                    H2O, 300, 33.596, 0.067
                    H2O, 600, 36.325, 0.073
                    H2O, 1000, 41.268, 0.083
                    """)
    void heatCapacityAgreesWithJanaf(
            Species species, double temperature, double table, double tolerance) {
        assertEquals(table, molarCp(species, temperature), tolerance);
    }

    // cp in J/(mol K), enthalpy above 298.15 K in J/mol, gamma: NASA/TP-2002-211556, its
    // coefficients evaluated independently with its R = 8.314510 (5.7 ppm more than ours)
    @ParameterizedTest(name = "{0} at {1} K")
    @CsvSource(
            textBlock =
                    """
                    N2, 300, 29.1252, 53.9, 1.39953
                    N2, 1000, 32.6964, 21462.3, 1.34101
                    N2, 1200, 33.7242, 28108.6, 1.32722
                    O2, 300, 29.3875, 54.4, 1.39456
                    O2, 600, 32.0901, 9245.0, 1.34971
                    O2, 1000, 34.8825, 22707.2, 1.31295
                    CO2, 300, 37.2201, 68.8, 1.28764
                    CO2, 1000, 54.3087, 33399.8, 1.18077
                    CO2, 1200, 56.3472, 44477.7, 1.17310
                    H2O, 300, 33.5959, 62.1, 1.32888
                    H2O, 600, 36.3239, 10501.4, 1.29685
                    H2O, 1000, 41.2910, 26003.3, 1.25213
                    AR, 300, 20.7863, 38.5, 1.66667
                    AR, 600, 20.7863, 6274.3, 1.66667
                    AR, 1000, 20.7863, 14588.8, 1.66667
                    AR, 1200, 20.7863, 18746.1, 1.66667
                    CO, 300, 29.1428, 53.9, 1.39919
                    CO, 1000, 33.1788, 21687.4, 1.33440
                    CO, 1200, 34.1703, 28427.0, 1.32157
                    H2, 300, 28.8491, 53.4, 1.40490
                    H2, 600, 29.3181, 8810.7, 1.39586
                    H2, 1000, 30.2063, 20679.0, 1.37980
                    """)
    void agreesWithNasasCoefficientsEvaluatedElsewhere(
            Species species, double temperature, double cp, double enthalpy, double gamma) {
        GasMix gas = pure(species);
        double above = gas.enthalpy(temperature) - gas.enthalpy(298.15);
        assertEquals(cp, molarCp(species, temperature), 1e-5 * cp);
        assertEquals(enthalpy, above * species.molarMass(), 0.06 + 1e-5 * enthalpy);
        assertEquals(gamma, gas.gamma(temperature), 0.6e-5);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            textBlock =
                    """
                    # J/mol, headers of NASA/TP-2002-211556; scaled by our R / 8.314510
                    CO2, -393510.00
                    H2O, -241826.00
                    CO, -110535.20
                    N2, 0
                    O2, 0
                    H2, 0
                    AR, 0
                    """)
    void enthalpyAt298IsThatOfFormation(Species species, double formation) {
        double scale = GasMix.MOLAR_GAS_CONSTANT / 8.314510;
        assertEquals(formation * scale, pure(species).enthalpy(298.15) * species.molarMass(), 0.05);
    }

    @ParameterizedTest
    @EnumSource(Species.class)
    void theTwoRangesMeetAtTheSeam(Species species) {
        double below = molarCp(species, Math.nextDown(Species.SEAM));
        double above = molarCp(species, Species.SEAM);
        assertEquals(below, above, 1e-7 * GasMix.MOLAR_GAS_CONSTANT);
    }

    @ParameterizedTest
    @EnumSource(Species.class)
    void heatCapacityIsTheSlopeOfEnthalpy(Species species) {
        GasMix gas = pure(species);
        for (double t : new double[] {250, 500, 999.9, 1000.1, 1700}) {
            double slope = (gas.enthalpy(t + 0.01) - gas.enthalpy(t - 0.01)) / 0.02;
            assertEquals(gas.cp(t), slope, 1e-6 * gas.cp(t));
        }
    }

    @Test
    void formulaWeightsFollowFromTheAtoms() {
        // 2 H2 + O2 = 2 H2O and 2 CO + O2 = 2 CO2 keep their mass; atomic weights of IUPAC
        assertEquals(
                2 * Species.H2O.molarMass(),
                2 * Species.H2.molarMass() + Species.O2.molarMass(),
                1e-7);
        assertEquals(
                2 * Species.CO2.molarMass(),
                2 * Species.CO.molarMass() + Species.O2.molarMass(),
                1e-7);
    }

    private static GasMix pure(Species species) {
        return GasMix.of(Map.of(species, 1.0));
    }

    private static double molarCp(Species species, double temperature) {
        return pure(species).cp(temperature) * species.molarMass();
    }
}

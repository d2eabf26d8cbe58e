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

class ExhaustGasTest {
    // Burned CH1.87 in dry air of N2/O2 = 3.773 by the method of Heywood (1988), section 4.6,
    // worked
    // independently with the NASA coefficients; mole fractions, g/mol, cp and gamma at 1100 K
    @ParameterizedTest(name = "lambda {0}")
    @CsvSource(
            textBlock =
                    """
                    0.8, 0.09045, 0.12135, 0.06667, 0.02556, 0,       0.69597, 27.5823, 1317.63, 1.29664
                    1.0, 0.13384, 0.12514, 0,       0,       0,       0.74103, 28.9031, 1293.21, 1.28608
                    1.1, 0.12236, 0.11441, 0,       0,       0.01796, 0.74527, 28.8984, 1282.45, 1.28923
                    """)
    void agreesWithTheMethodWorkedElsewhere(
            double lambda,
            double co2,
            double h2o,
            double co,
            double h2,
            double o2,
            double n2,
            double molarMass,
            double cp,
            double gamma) {
        ExhaustGas gas = ExhaustGas.at(lambda, 1.87);
        assertEquals(co2, gas.mix().share(Species.CO2), 2e-4);
        assertEquals(h2o, gas.mix().share(Species.H2O), 2e-4);
        assertEquals(co, gas.mix().share(Species.CO), 2e-4);
        assertEquals(h2, gas.mix().share(Species.H2), 2e-4);
        assertEquals(o2, gas.mix().share(Species.O2), 2e-4);
        assertEquals(n2, gas.mix().share(Species.N2), 2e-4);
        assertEquals(molarMass * 1e-3, gas.molarMass(), 1e-4 * 29e-3);
        assertEquals(cp, gas.cp(1100), 5e-4 * cp);
        assertEquals(gamma, gas.gamma(1100), 2e-4);
    }

    // Heywood 1988, eq. (3.6), from memory, evaluated independently
    @ParameterizedTest(name = "CH{0}")
    @CsvSource({"1.87, 14.599", "2.25, 15.127"})
    void stoichiometricAirFuelRatioAgreesWithHeywood(double y, double ratio) {
        assertEquals(ratio, ExhaustGas.stoichiometricAirFuelRatio(y), 0.001);
    }

    @Property(seed = "20261125")
    void keepsEveryAtom(
            @ForAll @Scale(7) @DoubleRange(min = 0.7, max = 1.5) double lambda,
            @ForAll @Scale(7) @DoubleRange(min = 0.5, max = 4) double y) {
        GasMix gas = ExhaustGas.at(lambda, y).mix();
        double carbon = gas.share(Species.CO2) + gas.share(Species.CO);
        double hydrogen = 2 * gas.share(Species.H2O) + 2 * gas.share(Species.H2);
        double oxygen =
                2 * gas.share(Species.CO2)
                        + gas.share(Species.CO)
                        + gas.share(Species.H2O)
                        + 2 * gas.share(Species.O2);
        assertEquals(y, hydrogen / carbon, 1e-12 * y);
        assertEquals(2 * lambda * (1 + y / 4), oxygen / carbon, 1e-12 * oxygen / carbon);
        assertEquals(3.773 * lambda * (1 + y / 4), gas.share(Species.N2) / carbon, 1e-11 / carbon);
    }

    @Property(seed = "20261125")
    void richGasIsInWaterGasBalance(
            @ForAll @Scale(7) @DoubleRange(min = 0.7, max = 0.98) double lambda) {
        GasMix gas = ExhaustGas.at(lambda, 1.87).mix();
        double k =
                gas.share(Species.H2O)
                        * gas.share(Species.CO)
                        / (gas.share(Species.CO2) * gas.share(Species.H2));
        assertEquals(3.5, k, 1e-9);
    }

    @Test
    void gammaIsLowestAtStoichiometry() {
        double atOne = ExhaustGas.at(1).gamma(1100);
        assertTrue(ExhaustGas.at(0.95).gamma(1100) > atOne);
        assertTrue(ExhaustGas.at(1.05).gamma(1100) > atOne);
    }

    @Property(seed = "20261125")
    void aRicherMixtureIsLighter(
            @ForAll @Scale(7) @DoubleRange(min = 0.6, max = 0.99) double lambda) {
        assertTrue(ExhaustGas.at(lambda).molarMass() < ExhaustGas.at(lambda + 0.01).molarMass());
    }

    @Test
    void isTheSameFromBothSidesOfStoichiometry() {
        assertEquals(ExhaustGas.at(1 + 1e-12).cp(1000), ExhaustGas.at(1 - 1e-12).cp(1000), 1e-6);
    }

    @Test
    void tendsToAirWithMuchAir() {
        // argon is counted as nitrogen: 0.4 % of molar mass
        assertEquals(GasMix.DRY_AIR.molarMass(), ExhaustGas.at(1e9).molarMass(), 0.005 * 0.029);
        assertEquals(SutherlandViscosity.ofAir(800), ExhaustGas.at(1e9).viscosity(800), 1e-12);
    }

    @Test
    void countingArgonAsNitrogenCostsWhatTheCardSays() {
        // 0.00934 Ar beside 0.78084 N2, US Standard Atmosphere 1976
        GasMix without = ExhaustGas.at(1).mix();
        double argon = without.share(Species.N2) * 0.00934 / (0.00934 + 0.78084);
        GasMix with =
                GasMix.of(
                        java.util.Map.of(
                                Species.N2,
                                without.share(Species.N2) - argon,
                                Species.AR,
                                argon,
                                Species.CO2,
                                without.share(Species.CO2),
                                Species.H2O,
                                without.share(Species.H2O)));
        assertEquals(0.0065, without.cp(1100) / with.cp(1100) - 1, 0.0002);
        assertEquals(0.0036, without.gasConstant() / with.gasConstant() - 1, 0.0002);
        assertEquals(0.001, with.gamma(1100) - without.gamma(1100), 0.0002);
    }

    @Test
    void viscosityIsThatOfAirLessHeywoodsShare() {
        // Heywood 1988 chapter 4, from memory: air's / (1 + 0.027 / lambda); air 4.152198e-5 at
        // 1000 K
        assertEquals(4.152198e-5 / 1.027, ExhaustGas.at(1).viscosity(1000), 1e-10);
        assertEquals(4.152198e-5 / 1.03375, ExhaustGas.at(0.8).viscosity(1000), 1e-10);
    }

    @Test
    void findsTheTemperatureOfAHeatCapacity() {
        double found =
                Solver.solveFor(
                        ExhaustGas.RELATION,
                        "temperature",
                        "cp",
                        ExhaustGas.at(0.9).cp(987),
                        Values.of("lambda", 0.9));
        assertEquals(987, found, 1e-6);
    }

    @Test
    void refusesAMixtureThatCannotBurn() {
        var e = assertThrows(IllegalArgumentException.class, () -> ExhaustGas.at(0.3, 1.87));
        assertEquals("too little air to burn: lambda = 0.3", e.getMessage());
        assertThrows(
                RelationException.class,
                () -> ExhaustGas.RELATION.work(Values.of("lambda", 0.5, "temperature", 900.0)));
    }

    @Test
    void worksAtTheEdgesOfItsRange() {
        for (double lambda : new double[] {Math.nextUp(0.5), 20}) {
            for (double temperature : new double[] {200, 3000}) {
                for (double y : new double[] {0, 4}) {
                    double gamma =
                            ExhaustGas.RELATION.value(
                                    "gamma",
                                    Values.of(
                                            "lambda", lambda,
                                            "temperature", temperature,
                                            "hydrogenCarbonRatio", y));
                    assertTrue(gamma > 1.15 && gamma < 1.42, "gamma " + gamma);
                }
            }
        }
    }
}

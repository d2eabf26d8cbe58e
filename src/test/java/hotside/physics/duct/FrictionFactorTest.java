// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrictionFactorTest {
    // Colebrook (1939), and Churchill (1977) and Swamee and Jain (1976) as bystanders: all three
    // computed with the open-source library fluids 1.0.22, Darcy's factors
    @ParameterizedTest(name = "Re {0}, roughness {1}")
    @CsvSource(
            textBlock =
                    """
                    4000, 0, 0.039907014, 0.040589733, 0.040551413
                    4000, 0.001, 0.040910390, 0.041728028, 0.041695360
                    10000, 0, 0.030882950, 0.031002131, 0.030972044
                    10000, 0.0001, 0.031037212, 0.031178157, 0.031148649
                    10000, 0.01, 0.043126585, 0.044043623, 0.044041764
                    10000, 0.05, 0.073801276, 0.075009426, 0.075044205
                    100000, 0.0001, 0.018513866, 0.018462625, 0.018452424
                    100000, 0.001, 0.022174536, 0.022343236, 0.022342399
                    100000, 0.05, 0.071780929, 0.071949767, 0.071996359
                    1e6, 0, 0.011645041, 0.011612413, 0.011606464
                    1e6, 0.001, 0.019943466, 0.020021956, 0.020029239
                    1e6, 0.01, 0.037964742, 0.037991500, 0.038011874
                    1e7, 0.0001, 0.012166081, 0.012209738, 0.012213562
                    1e7, 0.001, 0.019667052, 0.019677462, 0.019686172
                    """)
    void agreesWithColebrookSolvedElsewhere(
            double reynolds, double roughness, double colebrook, double churchill, double swamee) {
        double f = FrictionFactor.of(reynolds, roughness);
        assertEquals(colebrook, f, 1e-7 * colebrook);
        assertEquals(churchill, f, 0.03 * churchill);
        assertEquals(swamee, f, 0.03 * swamee);
    }

    @ParameterizedTest(name = "Re {0}")
    @CsvSource({"1000, 0.064", "2000, 0.032"})
    void isHagenAndPoiseuillesWhenLaminar(double reynolds, double f) {
        assertEquals(f, FrictionFactor.of(reynolds, 0), 1e-12);
        assertEquals(f, FrictionFactor.of(reynolds, 0.05), 1e-12);
    }

    @Test
    void isNotTheTurbulentFormulaBelowTheLimit() {
        // Haaland's explicit formula gives 0.0660822 at Re = 1000, where 64/Re is right
        assertTrue(Math.abs(FrictionFactor.of(1000, 0) - 0.0660822) > 1e-3);
    }

    @Test
    void isDarcysAndNotFannings() {
        // smooth pipe, Re = 1e5: Moody's chart shows 0.018; Fanning's charts show 0.0045
        assertEquals(0.018, FrictionFactor.of(1e5, 0), 0.0005);
    }

    @Property(seed = "20261125", tries = 5000)
    void satisfiesColebrooksEquationToTenDigits(
            @ForAll @Scale(7) @DoubleRange(min = 3.31, max = 9) double logReynolds,
            @ForAll @Scale(7) @DoubleRange(min = 0, max = 0.1) double roughness) {
        double reynolds = Math.pow(10, logReynolds);
        double x = 1 / Math.sqrt(FrictionFactor.of(reynolds, roughness));
        double right = -2 * Math.log10(roughness / 3.7 + 2.51 * x / reynolds);
        assertEquals(right, x, 1e-11 * x);
    }

    @Property(seed = "20261125")
    void fallsWithReynoldsAndRisesWithRoughness(
            @ForAll @Scale(7) @DoubleRange(min = 3.7, max = 7) double logReynolds,
            @ForAll @Scale(7) @DoubleRange(min = 1e-5, max = 0.05) double roughness) {
        double reynolds = Math.pow(10, logReynolds);
        double here = FrictionFactor.of(reynolds, roughness);
        assertTrue(FrictionFactor.of(1.1 * reynolds, roughness) < here);
        assertTrue(FrictionFactor.of(reynolds, 1.1 * roughness) > here);
    }

    @Test
    void tendsToTheFullyRoughPipe() {
        // von Karman (1930): 1/sqrt(f) = -2 log10(roughness / 3.7)
        double rough = Math.pow(-2 * Math.log10(0.01 / 3.7), -2);
        assertEquals(rough, FrictionFactor.of(1e9, 0.01), 1e-5 * rough);
    }

    @Test
    void findsTheRoughnessOfAFactor() {
        double found =
                Solver.solveFor(
                        FrictionFactor.RELATION,
                        "relativeRoughness",
                        "frictionFactor",
                        0.019943466, // the row Re = 1e6, roughness 0.001
                        Values.of("reynolds", 1e6));
        assertEquals(0.001, found, 1e-9);
    }

    @Test
    void warnsWhereTheFlowMaySwitch() {
        assertEquals("reynolds", cautionAt(2040));
        assertEquals("reynolds", cautionAt(3999));
        assertEquals("", cautionAt(2039));
        assertEquals("", cautionAt(4000));
    }

    private static String cautionAt(double reynolds) {
        return FrictionFactor.RELATION
                .work(Values.of("reynolds", reynolds, "relativeRoughness", 0.001))
                .cautions()
                .stream()
                .map(c -> c.about())
                .findFirst()
                .orElse("");
    }
}

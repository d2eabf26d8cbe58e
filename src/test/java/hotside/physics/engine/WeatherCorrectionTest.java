// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.Caution;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import hotside.unit.Units;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The four weather corrections beside each other. */
class WeatherCorrectionTest {
    static Stream<Relation> standards() {
        return Stream.of(SaeJ1349.RELATION, Iso1585.RELATION, Din70020.RELATION, SaeJ607.RELATION);
    }

    /**
     * Formulas of the standards from memory (no standard's text was read), values worked out by an
     * independent script; 1e-5 is one unit more than their last digit.
     */
    @ParameterizedTest(name = "{0} kPa, {1} °C")
    @CsvSource(
            textBlock =
                    """
                    # kPa, °C, ISO 1585, SAE J1349, SAE J607, DIN 70020
                    99,    25, 1.000000, 1.000000, 1.040083, 1.031926
                    96,    30, 1.048027, 1.047041, 1.081542, 1.073064
                    100.5, 18, 0.968209, 0.968655, 1.012460, 1.004514
                    101.3, 15, 0.953096, 0.953694, 0.999276, 0.991431
                    """)
    void agreesWithTheFormulasFromMemory(
            double kilopascal, double celsius, double iso, double j1349, double j607, double din) {
        double p = kilopascal * 1e3;
        double t = celsius + Units.ZERO_CELSIUS;
        assertEquals(iso, Iso1585.factor(p, t), 1e-5);
        assertEquals(j1349, SaeJ1349.factor(p, t), 1e-5);
        assertEquals(j607, SaeJ607.factor(p, t), 1e-5);
        assertEquals(din, Din70020.factor(p, t), 1e-5);
    }

    @Test
    void isOneAtEachStandardsOwnReference() {
        double at25 = Units.ZERO_CELSIUS + 25;
        assertEquals(1, SaeJ1349.factor(99e3, at25), 1e-12);
        assertEquals(1, Iso1585.factor(99e3, at25), 1e-12);
        assertEquals(1, Din70020.factor(101.3e3, Units.ZERO_CELSIUS + 20), 1e-12);
        // 60 °F is 288.7056 K, the formula's own figure is rounded
        assertEquals(1, SaeJ607.factor(101_325, Units.ZERO_CELSIUS + (60 - 32) / 1.8), 1e-5);
    }

    @ParameterizedTest
    @MethodSource("standards")
    void saysOfABoostedEngineThatTheFactorIsEasilyMisused(Relation standard) {
        Values day = Values.of("drypressure", 96e3, "temperature", 295.15);
        assertFalse(about(standard, day, "boosted"));
        Caution caution =
                standard.work(day.with("boosted", "yes")).cautions().stream()
                        .filter(c -> c.about().equals("boosted"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(caution.text().contains("holds absolute pressure"), caution.text());
        assertTrue(caution.text().contains("too high"), caution.text());
        assertTrue(caution.text().contains("from memory"), caution.text());
    }

    @ParameterizedTest
    @MethodSource("standards")
    void leavesTheFactorAloneWhenBoosted(Relation standard) {
        Values day = Values.of("drypressure", 97e3, "temperature", 300.0);
        assertEquals(
                standard.value("factor", day),
                standard.value("factor", day.with("boosted", "yes")),
                0.0);
    }

    @Test
    void saysTooLowWhereTheFactorTakesAway() {
        var worked =
                Iso1585.RELATION.work(
                        Values.of("drypressure", 102e3, "temperature", 293.15, "boosted", "yes"));
        assertTrue(worked.cautions().get(0).text().contains("too low"));
    }

    @ParameterizedTest
    @MethodSource("standards")
    void warnsOutsideSevenPercent(Relation standard) {
        Values thin = Values.of("drypressure", 91e3, "temperature", 306.0);
        assertTrue(about(standard, thin, "factor"));
        assertFalse(
                about(standard, Values.of("drypressure", 98e3, "temperature", 297.0), "factor"));
    }

    @ParameterizedTest
    @MethodSource("standards")
    void saysInEachSourceThatTheStandardWasNotRead(Relation standard) {
        assertTrue(standard.sources().get(0).contains("from memory"));
        assertTrue(standard.sources().get(0).contains("not read"));
    }

    @ParameterizedTest
    @MethodSource("standards")
    void findsThePressureOfAFactor(Relation standard) {
        Values temperature = Values.of("temperature", 300.0);
        double p = Solver.solveFor(standard, "drypressure", "factor", 1.02, temperature);
        assertEquals(1.02, standard.value("factor", temperature.with("drypressure", p)), 1e-9);
    }

    @ParameterizedTest
    @MethodSource("standards")
    void refusesGaugePressureAndCelsius(Relation standard) {
        var gauge =
                assertThrows(
                        RelationException.class,
                        () -> standard.solve(Values.of("drypressure", 0.0, "temperature", 298.0)));
        assertEquals("drypressure", gauge.slot());
        var celsius =
                assertThrows(
                        RelationException.class,
                        () -> standard.solve(Values.of("drypressure", 99e3, "temperature", 25.0)));
        assertEquals("temperature", celsius.slot());
    }

    @Test
    void ranksTheOldStandardsAsTheMostFlattering() {
        for (double t : new double[] {285, 293, 301}) {
            assertTrue(SaeJ607.factor(98e3, t) > Din70020.factor(98e3, t));
            assertTrue(Din70020.factor(98e3, t) > SaeJ1349.factor(98e3, t));
        }
    }

    @Property(seed = "20261125")
    void asksForMoreInThinnerAndInWarmerAir(
            @ForAll @DoubleRange(min = 80e3, max = 105e3) double p,
            @ForAll @DoubleRange(min = 275, max = 315) double t) {
        for (var f :
                List.<java.util.function.DoubleBinaryOperator>of(
                        SaeJ1349::factor, Iso1585::factor, Din70020::factor, SaeJ607::factor)) {
            assertTrue(f.applyAsDouble(p, t) > f.applyAsDouble(p + 100, t));
            assertTrue(f.applyAsDouble(p, t + 1) > f.applyAsDouble(p, t));
        }
    }

    private static boolean about(Relation relation, Values in, String slot) {
        return relation.work(in).cautions().stream().anyMatch(c -> c.about().equals(slot));
    }
}

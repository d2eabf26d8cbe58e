// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

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

class StaticTotalTest {
    // p/p0 of NACA Report 1135 at gamma 1.4, and its closed form at 1.33
    @ParameterizedTest(name = "M {0}, gamma {1}")
    @CsvSource({
        "0.05, 1.4, 0.9982520",
        "0.1, 1.4, 0.9930314",
        "0.5, 1.4, 0.8430192",
        "0.5, 1.33, 0.849665",
        "1.0, 1.4, 0.5282818"
    })
    void totalIsStaticOverThePrintedRatio(double mach, double gamma, double ratio) {
        assertEquals(100 / ratio, StaticTotal.total(100, mach, gamma), 1e-4);
    }

    @Test
    void missesNothingWhereNothingMoves() {
        assertEquals(0, StaticTotal.dynamic(1e5, 0, 1.33), 0.0);
        assertEquals(1e5, StaticTotal.total(1e5, 0, 1.33), 0.0);
    }

    // dynamic / (gamma p M²/2) = 1 + M²/4 + (2 - gamma) M⁴/24 + ..., any gas dynamics text
    @Property(seed = "20261125")
    void exceedsTheVelocityHeadByAQuarterOfMachSquared(
            @ForAll @Scale(7) @DoubleRange(min = 1e-4, max = 0.3) double mach) {
        double head = 1.33 * 1e5 * mach * mach / 2;
        double series = 1 + mach * mach / 4 + (2 - 1.33) * Math.pow(mach, 4) / 24;
        assertEquals(series, StaticTotal.dynamic(1e5, mach, 1.33) / head, 1e-5);
    }

    @Test
    void costsWhatTheCardSays() {
        assertEquals(0.02, StaticTotal.dynamic(1, 0.3, 1.33) / (1.33 * 0.09 / 2) - 1, 0.005);
        assertEquals(0.09, StaticTotal.dynamic(1, 0.6, 1.33) / (1.33 * 0.36 / 2) - 1, 0.005);
    }

    @Property(seed = "20261125")
    void scalesWithTheStaticPressure(@ForAll @Scale(7) @DoubleRange(min = 1, max = 1e6) double p) {
        assertEquals(
                p * StaticTotal.total(1, 0.4, 1.33), StaticTotal.total(p, 0.4, 1.33), 1e-9 * p);
    }

    @Test
    void findsTheMachNumberFromTapAndProbe() {
        double found =
                Solver.solveFor(
                        StaticTotal.RELATION,
                        "mach",
                        "total",
                        100e3 / 0.849665,
                        Values.of("static", 100e3, "gamma", 1.33));
        assertEquals(0.5, found, 2e-6);
    }

    @Test
    void refusesAVacuumAndAMachNumberBelowZero() {
        assertThrows(
                RelationException.class,
                () ->
                        StaticTotal.RELATION.work(
                                Values.of("static", 0.0, "mach", 0.2, "gamma", 1.33)));
        assertThrows(
                RelationException.class,
                () ->
                        StaticTotal.RELATION.work(
                                Values.of("static", 1e5, "mach", -0.1, "gamma", 1.33)));
    }
}

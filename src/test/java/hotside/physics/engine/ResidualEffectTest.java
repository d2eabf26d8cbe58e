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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResidualEffectTest {
    /** Heywood 1988, equation (6.2), formula from memory, values worked out by another script. */
    @ParameterizedTest(name = "rc {0}, gamma {1}, pe/pi {2}")
    @CsvSource({
        "10, 1.4, 1.0, 1.000000000",
        "10, 1.4, 1.5, 0.960317460",
        "10, 1.3, 2.0, 0.914529915"
    })
    void agreesWithTheIdealCycle(double rc, double gamma, double ratio, double factor) {
        assertEquals(factor, ResidualEffect.of(ratio, rc, gamma), 1e-9);
    }

    @Property(seed = "20261125")
    void isTheEquationAsTheBookWritesIt(
            @ForAll @DoubleRange(min = 0.5, max = 3) double x,
            @ForAll @DoubleRange(min = 6, max = 22) double rc,
            @ForAll @DoubleRange(min = 1.2, max = 1.4) double g) {
        double book = rc / (rc - 1) - (x + (g - 1)) / (g * (rc - 1));
        assertEquals(book, ResidualEffect.of(x, rc, g), 1e-14);
    }

    @Test
    void isOneWithEqualPressures() {
        Values in =
                Values.of(
                        "turbineInletPressure", 150e3,
                        "manifoldPressure", 150e3,
                        "compressionRatio", 9.0);
        assertEquals(1, ResidualEffect.RELATION.value("breathingFactor", in), 0.0);
    }

    @Test
    void findsTheExhaustPressureOfALoss() {
        Values in = Values.of("manifoldPressure", 170e3, "compressionRatio", 9.5);
        double p3 =
                Solver.solveFor(
                        ResidualEffect.RELATION,
                        "turbineInletPressure",
                        "breathingFactor",
                        0.97,
                        in);
        // 1 + 0.03 × 1.35 × 8.5 by hand
        assertEquals(170e3 * 1.34425, p3, 1e-3);
    }

    @Test
    void refusesPressuresThatLeaveNoRoom() {
        Values in =
                Values.of(
                        "turbineInletPressure", 400e3,
                        "manifoldPressure", 20e3,
                        "compressionRatio", 9.5);
        var e = assertThrows(RelationException.class, () -> ResidualEffect.RELATION.solve(in));
        assertEquals(
                "residual-effect: with turbineInletPressure 20.00 times manifoldPressure the residual gas"
                        + " fills the whole cylinder; expected two absolute pressures of like size",
                e.getMessage());
    }

    @Property(seed = "20261125")
    void fallsWithExhaustPressure(@ForAll @DoubleRange(min = 0.5, max = 4) double ratio) {
        assertTrue(
                ResidualEffect.of(ratio + 0.01, 9.5, 1.35) < ResidualEffect.of(ratio, 9.5, 1.35));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CorrectedFlowTest {
    @Test
    void agreesWithTheSimilarityFormulaAtTwoReferences() {
        // 0.15 kg/s at 320 K and 95 kPa, worked out by another script; references 298 K and 100 kPa
        // (SAE J1826, from memory), 288.15 K and 101.325 kPa
        assertEquals(0.16361929, CorrectedFlow.of(0.15, 95e3, 320, 100e3, 298), 1e-8);
        assertEquals(0.16859704, CorrectedFlow.of(0.15, 95e3, 320, 101_325, 288.15), 1e-8);
    }

    @Test
    void correctsSpeedByTheRootOfTemperatureAlone() {
        // 100 000 rev/min at 320 K to 298 K, worked out by another script
        assertEquals(96_501.295, CorrectedSpeed.of(100_000, 320, 298), 1e-3);
    }

    @Test
    void takesSaeJ1826WhenNoReferenceIsGiven() {
        Values in = Values.of("massFlow", 0.15, "inletPressure", 95e3, "inletTemperature", 320.0);
        assertEquals(0.16361929, CorrectedFlow.RELATION.value("correctedFlow", in), 1e-8);
        assertEquals(
                96_501.295 / 60,
                CorrectedSpeed.RELATION.value(
                        "correctedSpeed",
                        Values.of("speed", 100_000 / 60.0, "inletTemperature", 320.0)),
                1e-4);
    }

    @Test
    void changesNothingAtTheReference() {
        assertEquals(0.2, CorrectedFlow.of(0.2, 100e3, 298, 100e3, 298), 1e-16);
        assertEquals(1500, CorrectedSpeed.of(1500, 298, 298), 0.0);
    }

    @Test
    void findsTheTrueFlowOfAPointOnTheMap() {
        Values in = Values.of("inletPressure", 95e3, "inletTemperature", 320.0);
        double flow =
                Solver.solveFor(
                        CorrectedFlow.RELATION, "massFlow", "correctedFlow", 0.16361929, in);
        assertEquals(0.15, flow, 1e-8);
    }

    @Test
    void refusesAnInletWithoutAir() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                CorrectedFlow.RELATION.solve(
                                        Values.of(
                                                "massFlow",
                                                0.1,
                                                "inletPressure",
                                                0.0,
                                                "inletTemperature",
                                                300.0)));
        assertEquals("inletPressure", e.slot());
    }

    @Property(seed = "20261125")
    void comesBackWhenInletAndReferenceAreExchanged(
            @ForAll @DoubleRange(min = 60e3, max = 110e3) double p,
            @ForAll @DoubleRange(min = 250, max = 340) double t) {
        double there = CorrectedFlow.of(0.3, p, t, 100e3, 298);
        assertEquals(0.3, CorrectedFlow.of(there, 100e3, 298, p, t), 1e-14);
    }
}

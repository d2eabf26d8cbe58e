// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

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

class PressureRatioTest {
    private static final double PSI = 6894.757293168361;

    @Test
    void agreesWithASumInShopUnits() {
        // 10 psi of boost at 14.7 psi, 1 psi lost before the compressor: 24.7/13.7 by hand
        assertEquals(24.7 / 13.7, PressureRatio.of(10 * PSI, PSI, 0, 14.7 * PSI), 1e-12);
    }

    @Test
    void isOneWithoutBoostAndLosses() {
        assertEquals(
                1, PressureRatio.RELATION.value("pressureRatio", Values.of("boost", 0.0)), 1e-15);
    }

    @Test
    void isTwoAtOneAtmosphereOfBoost() {
        assertEquals(
                2,
                PressureRatio.RELATION.value("pressureRatio", Values.of("boost", 101_325.0)),
                1e-15);
    }

    @Test
    void findsTheBoostOfARatio() {
        Values in = Values.of("inletDepression", 3e3, "chargeLoss", 8e3, "ambientPressure", 95e3);
        double boost = Solver.solveFor(PressureRatio.RELATION, "boost", "pressureRatio", 2.1, in);
        assertEquals(2.1 * 92e3 - 95e3 - 8e3, boost, 1e-4);
    }

    @Test
    void refusesADepressionThatLeavesNoAir() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                PressureRatio.RELATION.solve(
                                        Values.of(
                                                "boost", 50e3,
                                                "inletDepression", 50e3,
                                                "ambientPressure", 40e3)));
        assertEquals(
                "compressor-pressure-ratio: inletDepression = 50000 Pa leaves no air of 40000 Pa;"
                        + " expected a drop of a few kPa",
                e.getMessage());
    }

    @Property(seed = "20261125")
    void growsWithEachLossAndInThinnerAir(
            @ForAll @DoubleRange(min = 10e3, max = 200e3) double boost,
            @ForAll @DoubleRange(min = 0, max = 10e3) double loss) {
        double one = PressureRatio.of(boost, loss, loss, 100e3);
        assertTrue(PressureRatio.of(boost, loss + 100, loss, 100e3) > one);
        assertTrue(PressureRatio.of(boost, loss, loss + 100, 100e3) > one);
        assertTrue(PressureRatio.of(boost, loss, loss, 95e3) > one);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import hotside.unit.Units;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BoostWorthTest {
    @Test
    void doublesThePowerAtOneAmbientPressureOfBoost() {
        // the rule itself: at a boost of one ambient pressure the manifold holds twice as much
        double ambient = Units.STANDARD_ATMOSPHERE;
        double worth = BoostWorth.of(200e3, ambient);
        assertEquals(400e3, 200e3 + worth * ambient, 1e-6);
    }

    @Test
    void agreesWithASumInShopUnits() {
        // 294 hp without boost at 14.7 psi: 20 hp for each psi; mental arithmetic in US units
        double psi = 6894.757293168361;
        double hp = 745.6998715822702;
        assertEquals(20, BoostWorth.of(294 * hp, 14.7 * psi) * psi / hp, 1e-12);
    }

    @Test
    void takesTheStandardAtmosphereWhenNothingIsSaid() {
        assertEquals(
                BoostWorth.of(150e3, 101_325),
                BoostWorth.RELATION.value(
                        "powerPerPressure", Values.of("naturallyAspiratedPower", 150e3)),
                0.0);
    }

    @Test
    void findsThePowerWithoutBoost() {
        double power =
                Solver.solveFor(
                        BoostWorth.RELATION,
                        "naturallyAspiratedPower",
                        "powerPerPressure",
                        2.5,
                        Values.NONE);
        assertEquals(2.5 * 101_325, power, 1e-6);
    }

    @Test
    void refusesAVacuumAround() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                BoostWorth.RELATION.solve(
                                        Values.of(
                                                "naturallyAspiratedPower",
                                                2e5,
                                                "ambientPressure",
                                                0.0)));
        assertEquals("ambientPressure", e.slot());
    }

    @Property(seed = "20261125")
    void isWorthMoreInThinnerAirForTheSamePower(
            @ForAll @DoubleRange(min = 60e3, max = 110e3) double ambient) {
        assertTrue(BoostWorth.of(2e5, ambient) > BoostWorth.of(2e5, ambient + 500));
    }
}

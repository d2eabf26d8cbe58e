// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PowerToFlowTest {
    private static final double POUND_A_MINUTE = 0.45359237 / 60;
    private static final double HORSEPOWER = 745.6998715822702;

    @Test
    void agreesWithASumInShopUnits() {
        // 400 hp at 0.55 lb/(hp·h) and 12 : 1 : 400 × 0.55/60 = 3.6667 lb/min fuel, 44.0 lb/min
        // air;
        // worked by hand in US units, so that the conversion is checked as well
        double bsfc = 0.55 * 0.45359237 / (HORSEPOWER * 3600);
        double fuel = PowerToFlow.fuelFlow(400 * HORSEPOWER, bsfc);
        assertEquals(400 * 0.55 / 60, fuel / POUND_A_MINUTE, 1e-9);
        assertEquals(44.0, PowerToFlow.airFlow(fuel, 12) / POUND_A_MINUTE, 1e-9);
    }

    @Test
    void keepsTheMassThatWentIn() {
        Values out =
                PowerToFlow.RELATION.solve(
                        Values.of("power", 300e3, "bsfc", 9e-8, "airFuelRatio", 12.5));
        assertEquals(0.027, out.number("fuelFlow"), 1e-15);
        assertEquals(
                out.number("fuelFlow") + out.number("airFlow"), out.number("exhaustFlow"), 1e-15);
    }

    @Test
    void tendsToTheAirAloneAsTheMixtureThins() {
        assertEquals(1, PowerToFlow.exhaustFlow(1, 1e12), 1e-11);
    }

    @Test
    void findsThePowerThatAnExhaustFlowBelongsTo() {
        Values others = Values.of("bsfc", 9.2e-8, "airFuelRatio", 12.0);
        double power = Solver.solveFor(PowerToFlow.RELATION, "power", "exhaustFlow", 0.35, others);
        assertEquals(
                0.35,
                PowerToFlow.RELATION.value("exhaustFlow", others.with("power", power)),
                1e-12);
    }

    @Test
    void takesALambdaForWhatItIs() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                PowerToFlow.RELATION.solve(
                                        Values.of(
                                                "power", 3e5, "bsfc", 9e-8, "airFuelRatio", 0.85)));
        assertEquals("power-to-flow: airFuelRatio = 0.85 is outside [2.0, 200.0]", e.getMessage());
    }

    @Property(seed = "20261125")
    void flowsGoWithPower(@ForAll @DoubleRange(min = 1e3, max = 1e6) double power) {
        Values in = Values.of("power", power, "bsfc", 9e-8, "airFuelRatio", 13.0);
        Values twice = in.with("power", 2 * power);
        for (String flow : new String[] {"fuelFlow", "airFlow", "exhaustFlow"}) {
            double one = PowerToFlow.RELATION.value(flow, in);
            assertEquals(2 * one, PowerToFlow.RELATION.value(flow, twice), 1e-12 * one);
        }
    }
}

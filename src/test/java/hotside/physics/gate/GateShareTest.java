// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

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

class GateShareTest {
    /** Numbers that come out round by hand: see the first test. */
    private static final Values ROUND =
            Values.of(
                    "airFlow",
                    0.353881,
                    "targetBoost",
                    89_292.9,
                    "effectiveArea",
                    1e-3,
                    "outletPressure",
                    100e3,
                    "turbineInletTemperature",
                    1000,
                    "compressorEfficiency",
                    0.75,
                    "turbineEfficiency",
                    0.70,
                    "airFuelRatio",
                    12,
                    "mechanicalEfficiency",
                    1.0,
                    "ambientPressure",
                    100e3,
                    "ambientTemperature",
                    300,
                    "gamma",
                    4.0 / 3,
                    "cp",
                    1200);

    @Test
    void agreesWithAPowerBalanceByHand() {
        // turbine at an expansion ratio of 2, gamma 4/3, R = 1200/4 = 300:
        //   work 0.70 * 1200 * 1000 * (1 - 2^-0.25) = 840000 * 0.1591036 = 133647 J/kg
        //   flow 1e-3 * 2e5 / sqrt(300 * 1000) * 0.6732178 * sqrt(1 - 1/4) = 0.212890 kg/s
        //   (0.6732178: choked flow function of gamma 4/3, closed form, NACA 1135)
        //   power 28452.1 W
        // compressor at 1.892929 = 1.2^3.5: 1005 * 300 / 0.75 * (1.2 - 1) = 80400 J/kg; 0.353881
        // kg/s
        // exhaust 0.353881 * 13/12 = 0.383371 kg/s; share 1 - 0.212890 / 0.383371 = 0.44469
        var out = GateShare.RELATION.solve(ROUND);
        assertEquals(200e3, out.number("turbineInletPressure"), 2);
        assertEquals(0.212890, out.number("turbineFlow"), 2e-6);
        assertEquals(0.383371 - 0.212890, out.number("bypassFlow"), 2e-6);
        assertEquals(0.44469, out.number("bypassFraction"), 1e-5);
    }

    /**
     * An engine of 4.6 L at 6300 rev/min and 98.5 kPa, by hand about 0.36 to 0.40 kg/s of air, on
     * four pipes: boost and p4 gauge, and the p3 gauge of a separate calculation of the whole
     * engine (good for size and order, not for digits).
     */
    @ParameterizedTest(name = "boost {0}, p4 {1} kPa gauge")
    @CsvSource({
        "63.1, 10.3, 85.0, 0.37",
        "66.6, 4.1, 81.6, 0.38",
        "67.9, 1.9, 80.4, 0.385",
        "68.4, 1.0, 79.9, 0.385"
    })
    void asksForAQuarterToHalfOfTheExhaustOnAnEngineOfKnownSize(
            double boost, double behind, double before, double air) {
        var out =
                GateShare.RELATION.solve(
                        Values.of(
                                "airFlow",
                                air,
                                "targetBoost",
                                boost * 1e3,
                                "effectiveArea",
                                1.30e-3,
                                "outletPressure",
                                98.5e3 + behind * 1e3,
                                "turbineInletTemperature",
                                1150,
                                "compressorEfficiency",
                                0.74,
                                "turbineEfficiency",
                                0.70,
                                "airFuelRatio",
                                12.5,
                                "ambientPressure",
                                98.5e3));
        double gauge = out.number("turbineInletPressure") - 98.5e3;
        assertEquals(before * 1e3, gauge, 8e3);
        assertTrue(out.number("bypassFraction") > 0.25 && out.number("bypassFraction") < 0.5);
    }

    @Test
    void theShaftBalancesAtTheAnswer() {
        var worked = GateShare.RELATION.work(ROUND);
        double power = step(worked, "compressorPower");
        double work = step(worked, "turbineWork");
        assertEquals(power, worked.out().number("turbineFlow") * work, 1e-7);
    }

    @Test
    void nothingIsToSpareWhereBoostIsOutOfReach() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> GateShare.RELATION.solve(ROUND.with("airFlow", 0.05)));
        assertEquals("targetBoost", e.slot());
        assertTrue(
                e.getMessage().startsWith("gate-share: with the gate shut the turbine gives"),
                e.getMessage());
    }

    @Test
    void theShareVanishesWhereAllTheExhaustJustDoes() {
        // as by hand above, all of 0.212890 kg/s from 0.196514 kg/s of air: 28452.1 / 0.196514 =
        // 144784 J/kg, which is a pressure ratio of (1 + 144784 * 0.75 / (1005 * 300))^3.5
        double boost = (Math.pow(1 + 144_784 * 0.75 / (1005 * 300), 3.5) - 1) * 100e3;
        Values all = ROUND.with("airFlow", 0.196514);
        double share =
                GateShare.RELATION.value("bypassFraction", all.with("targetBoost", 0.9999 * boost));
        assertEquals(0, share, 1e-3);
        assertThrows(
                RelationException.class,
                () -> GateShare.RELATION.solve(all.with("targetBoost", 1.0001 * boost)));
    }

    @Test
    void findsTheTurbineForAShare() {
        double area =
                Solver.solveFor(
                        GateShare.RELATION, "effectiveArea", "bypassFraction", 0.44469, ROUND);
        assertEquals(1e-3, area, 1e-7);
    }

    @Property(seed = "20261125")
    void aSmallerTurbineSendsMoreRound(
            @ForAll @DoubleRange(min = 500, max = 1500) double squareMillimetres) {
        assertTrue(
                fraction("effectiveArea", squareMillimetres * 1e-6)
                        > fraction("effectiveArea", 1.01 * squareMillimetres * 1e-6));
    }

    @Property(seed = "20261125")
    void backPressureLeavesLessToSpareAndRaisesTheInletByMoreThanItself(
            @ForAll @DoubleRange(min = 90e3, max = 120e3) double outlet) {
        Values more = ROUND.with("outletPressure", outlet + 1e3);
        assertTrue(fraction("outletPressure", outlet) > fraction("outletPressure", outlet + 1e3));
        double rise =
                GateShare.RELATION.value("turbineInletPressure", more)
                        - GateShare.RELATION.value(
                                "turbineInletPressure", ROUND.with("outletPressure", outlet));
        assertTrue(rise > 0);
    }

    /** Flow and area together: pressures and shares do not notice the size of the engine. */
    @Property(seed = "20261125")
    void isTheSameForAnEngineOfAnotherSize(@ForAll @DoubleRange(min = 0.1, max = 5) double k) {
        var out =
                GateShare.RELATION.solve(
                        ROUND.with("airFlow", 0.353881 * k).with("effectiveArea", 1e-3 * k));
        assertEquals(0.44469, out.number("bypassFraction"), 1e-5);
    }

    private static double fraction(String slot, double value) {
        return GateShare.RELATION.value("bypassFraction", ROUND.with(slot, value));
    }

    private static double step(hotside.relation.Worked worked, String name) {
        return worked.steps().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.turbine;

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

class TurboBalanceTest {
    /**
     * A compressor at 298.15 K, ratio 2, efficiency 0.72 takes 91 146.411 J/kg; a turbine at
     * 1123.15 K, ratio 2, efficiency 0.7, γ 1.333, cp 1150 gives 143 752.397 J/kg (both from the
     * textbook formulas, worked out by another script). With bearings of 0.96 and 1.08 kg of
     * exhaust for each of air they balance if this share goes round.
     */
    private static final double SHARE = 1 - 91_146.411 / (143_752.397 * 0.96 * 1.08);

    private static final Values RIG =
            Values.of(
                    "pressureRatio", 2.0,
                    "compressorInletTemperature", 298.15,
                    "compressorEfficiency", 0.72,
                    "turbineInletTemperature", 1123.15,
                    "turbineEfficiency", 0.7,
                    "mechanicalEfficiency", 0.96,
                    "airFuelRatio", 12.5,
                    "outletPressure", 110e3,
                    "bypassFraction", SHARE,
                    "gamma", 1.333);

    @Test
    void findsTheRatioAtWhichTwoTextbookMachinesBalance() {
        Values out = TurboBalance.RELATION.solve(RIG);
        assertEquals(2, out.number("expansionRatio"), 1e-7);
        assertEquals(220e3, out.number("inletPressure"), 0.02);
    }

    @Test
    void bringsARiseBehindTheTurbineBackMultiplied() {
        double before = TurboBalance.RELATION.value("inletPressure", RIG);
        Values rig = RIG.with("outletPressure", 118e3);
        double after = TurboBalance.RELATION.value("inletPressure", rig);
        Values out = TurboBalance.RELATION.solve(RIG.with("outletPressureRise", 8e3));
        assertEquals(after - before, out.number("inletPressureRise"), 1e-6);
        assertEquals((after - before) / 8e3, out.number("multiplication"), 1e-10);
        assertEquals(out.number("expansionRatio"), out.number("multiplication"), 0.0);
    }

    @Test
    void needsNoExpansionWhereTheCompressorDoesNothing() {
        Values out = TurboBalance.RELATION.solve(RIG.with("pressureRatio", 1.0));
        assertEquals(1, out.number("expansionRatio"), 0.0);
        assertEquals(110e3, out.number("inletPressure"), 0.0);
    }

    @Test
    void findsTheShareThatTheGateHasToTake() {
        double share =
                Solver.solveFor(
                        TurboBalance.RELATION,
                        "bypassFraction",
                        "inletPressure",
                        220e3,
                        RIG.without("bypassFraction"));
        assertEquals(SHARE, share, 1e-6);
    }

    @Test
    void saysWhatIsMissingWhereTheExhaustCannotDoIt() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> TurboBalance.RELATION.solve(RIG.with("bypassFraction", 0.95)));
        assertTrue(
                e.getMessage()
                        .startsWith(
                                "turbo-balance: the compressor takes 91.15 kJ for each kg of air, and even"
                                        + " full expansion of the exhaust gives 46.8"),
                e.getMessage());
        assertEquals(Double.POSITIVE_INFINITY, TurboBalance.expansionRatio(91e3, 47e3, 1.333), 0.0);
    }

    @Test
    void takesBearingsOfNinetySixPercentAndAShutGateWhenNothingIsSaid() {
        assertEquals(
                TurboBalance.RELATION.value("expansionRatio", RIG.with("bypassFraction", 0.0)),
                TurboBalance.RELATION.value(
                        "expansionRatio",
                        RIG.without("bypassFraction").without("mechanicalEfficiency")),
                0.0);
    }

    @Property(seed = "20261125")
    void givesBackTheWorkThatItWasAskedFor(
            @ForAll @DoubleRange(min = 1, max = 200e3) double work,
            @ForAll @DoubleRange(min = 900, max = 1300) double temperature) {
        double available = TurboBalance.available(temperature, 0.7, 0.96, 12.5, 0, 1150);
        double ratio = TurboBalance.expansionRatio(work, available, 1.33);
        double given =
                TurbineExpansion.specificWork(temperature, ratio, 0.7, 1.33, 1150) * 0.96 * 1.08;
        assertEquals(work, given, 1e-9 * available);
        assertTrue(TurboBalance.expansionRatio(work * 1.01, available, 1.33) > ratio);
    }
}

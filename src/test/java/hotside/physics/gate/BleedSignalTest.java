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

class BleedSignalTest {
    private static final double AMBIENT = 100_000;

    /**
     * p/p0 and A/A* at gamma 1.4: M 0.1, 0.5 and 1 of NACA Report 1135 with the digits of its
     * closed forms. Through each hole the flow is proportional to A p0 / (A/A*), so the ratio of
     * areas that joins two such flows follows by hand.
     */
    @ParameterizedTest(name = "restrictor {0}, bleed {2}")
    @CsvSource(
            textBlock =
                    """
                    # restrictor p/p0, A/A*; bleed p/p0, A/A*
                    0.9930314, 5.8218288, 0.8430192, 1.3398438
                    0.8430192, 1.3398438, 0.8430192, 1.3398438
                    0.8430192, 1.3398438, 0.5282818, 1.0
                    0.9930314, 5.8218288, 0.5282818, 1.0
                    """)
    void joinsTwoFlowsOfThePrintedTable(double rRatio, double rArea, double bRatio, double bArea) {
        double hose = AMBIENT / bRatio;
        double source = hose / rRatio;
        double areas = (source / rArea) / (hose / bArea);
        double signal = BleedSignal.of(source - AMBIENT, 0.002, 0.002 * Math.sqrt(areas), AMBIENT);
        assertEquals(hose - AMBIENT, signal, 1e-6 * hose);
    }

    @Test
    void aChokedBleedPassesFlowInProportionToThePressureBeforeIt() {
        // hose at 2.5 times ambient: choked; flow 1.0 * A * p0; restrictor at M = 0.5 of the table
        double hose = 2.5 * AMBIENT;
        double source = hose / 0.8430192;
        double areas = (source / 1.3398438) / hose;
        double signal = BleedSignal.of(source - AMBIENT, 0.002, 0.002 * Math.sqrt(areas), AMBIENT);
        assertEquals(1.5 * AMBIENT, signal, 1e-6 * hose);
    }

    @Test
    void tendsToTheSquaresOfTheAreasAtLowBoost() {
        // Bernoulli at each hole: A_r^2 (b - p) = A_b^2 p; equal holes leave half
        assertEquals(0.5, BleedSignal.of(1, 0.0015, 0.0015, AMBIENT), 1e-5);
        assertEquals(0.5, BleedSignal.shareAtLowBoost(0.0015, 0.0015), 0.0);
        // bores 2 : 1, areas 4 : 1, squares 16 : 1, share 16/17
        assertEquals(16.0 / 17, BleedSignal.of(1, 0.002, 0.001, AMBIENT), 1e-5);
    }

    @Test
    void aSmallVacuumIsSharedLikeASmallBoost() {
        assertEquals(-16.0 / 17, BleedSignal.of(-1, 0.002, 0.001, AMBIENT), 1e-5);
    }

    @Test
    void passesOnAllWhenTheBleedIsShut() {
        var out =
                BleedSignal.RELATION.solve(
                        Values.of(
                                "boost", 66e3, "restrictorDiameter", 0.0015, "bleedDiameter", 0.0));
        assertEquals(66e3, out.number("signalPressure"), 0.0);
        assertEquals(1, out.number("share"), 0.0);
        assertEquals(1, out.number("shareOfChange"), 1e-9);
    }

    @Test
    void findsTheBleedForAWantedShare() {
        Values hose = Values.of("boost", 66e3, "restrictorDiameter", 0.0015);
        double bleed = Solver.solveFor(BleedSignal.RELATION, "bleedDiameter", "share", 0.7, hose);
        assertEquals(0.7 * 66e3, BleedSignal.of(66e3, 0.0015, bleed, 101_325), 1e-3);
        assertTrue(bleed > 0.001 && bleed < 0.0015);
    }

    @Test
    void refusesARestrictorWithoutABore() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                BleedSignal.RELATION.solve(
                                        Values.of(
                                                "boost",
                                                66e3,
                                                "restrictorDiameter",
                                                0.0,
                                                "bleedDiameter",
                                                0.001)));
        assertEquals(
                "bleed-signal: restrictorDiameter = 0.0 is outside (0.0, 0.02] m", e.getMessage());
    }

    @Test
    void ofAChangeOfBoostMoreArrivesThanOfBoost() {
        var out = BleedSignal.RELATION.solve(BleedSignal.RELATION.typical());
        assertTrue(out.number("shareOfChange") > out.number("share"));
        assertTrue(out.number("shareOfChange") < 1);
    }

    @Test
    void onceTheBleedIsChokedTheHoseKeepsAFixedShareOfTheAbsolutePressure() {
        // choked flow goes with the pressure before it, so both absolute pressures grow in step
        double low = (AMBIENT + signal(250e3, 0.0013)) / (AMBIENT + 250e3);
        double high = (AMBIENT + signal(400e3, 0.0013)) / (AMBIENT + 400e3);
        assertEquals(low, high, 1e-9);
        assertEquals(low, BleedSignal.shareOfChange(300e3, 0.0015, 0.0013, AMBIENT), 1e-6);
    }

    @Property(seed = "20261125")
    void aWiderBleedLeavesLess(@ForAll @DoubleRange(min = 0.2, max = 6) double mm) {
        assertTrue(signal(66e3, (mm + 0.01) / 1e3) < signal(66e3, mm / 1e3));
    }

    @Property(seed = "20261125")
    void moreBoostBringsMoreSignalAndALargerShare(
            @ForAll @DoubleRange(min = 500, max = 400e3) double boost) {
        assertTrue(signal(1.01 * boost, 0.0013) > 1.01 * signal(boost, 0.0013));
    }

    @Property(seed = "20261125")
    void staysBetweenAmbientAndTheSource(
            @ForAll @DoubleRange(min = -90e3, max = 400e3) double boost,
            @ForAll @DoubleRange(min = 0.3, max = 6) double mm) {
        double signal = signal(boost, mm / 1e3);
        assertTrue(Math.min(0, boost) <= signal && signal <= Math.max(0, boost));
    }

    /** Only the ratio of the areas counts, and only ratios of absolute pressures. */
    @Property(seed = "20261125")
    void dependsOnRatiosAlone(
            @ForAll @DoubleRange(min = 0.3, max = 3) double bores,
            @ForAll @DoubleRange(min = 0.5, max = 2) double pressures) {
        double one = BleedSignal.of(66e3, 0.0015, 0.0013, AMBIENT);
        double other =
                BleedSignal.of(
                        66e3 * pressures, 0.0015 * bores, 0.0013 * bores, AMBIENT * pressures);
        assertEquals(one * pressures, other, 1e-5);
    }

    private static double signal(double boost, double bleed) {
        return BleedSignal.of(boost, 0.0015, bleed, AMBIENT);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class GainSplitRegressionTest {
    private static final double[] BOOST = {62e3, 64e3, 66e3, 63e3, 65e3, 67e3, 68e3};
    private static final String PARTS = "AAABBBB";

    private static Values pulls(double[] power, double[] boost, String parts) {
        return Values.of(
                "power", Arrays.stream(power).boxed().toList(),
                "boost", Arrays.stream(boost).boxed().toList(),
                "parts", parts);
    }

    private static double[] power(double gain, double worth, double[] noise) {
        double[] power = new double[BOOST.length];
        for (int i = 0; i < power.length; i++) {
            power[i] =
                    320e3
                            + (PARTS.charAt(i) == 'B' ? gain : 0)
                            + worth * (BOOST[i] - 64e3)
                            + noise[i];
        }
        return power;
    }

    @Property(seed = "20261125")
    void findsWhatThePullsWereMadeOf(
            @ForAll @DoubleRange(min = -30e3, max = 30e3) double gain,
            @ForAll @DoubleRange(min = 0, max = 8) double worth) {
        var result =
                GainSplitRegression.of(
                        power(gain, worth, new double[7]),
                        BOOST,
                        new boolean[] {false, false, false, true, true, true, true});
        assertEquals(gain, result.gain().value(), 1e-6);
        assertEquals(worth, result.worth().value(), 1e-9);
        assertEquals(result.rawGain(), result.gain().value() + result.boostPart(), 1e-6);
    }

    @Property(seed = "20261125")
    void agreesWithARegressionOfAnotherLibrary(
            @ForAll @Size(7) List<@DoubleRange(min = -2000, max = 2000) Double> noiseList) {
        double[] noise = array(noiseList);
        double[] power = power(5e3, 3, noise);
        double[][] rows = new double[7][];
        boolean[] changed = new boolean[7];
        for (int i = 0; i < 7; i++) {
            changed[i] = PARTS.charAt(i) == 'B';
            rows[i] = new double[] {changed[i] ? 1 : 0, (BOOST[i] - 65e3) / 1e3};
        }
        var other = new OLSMultipleLinearRegression();
        other.newSampleData(power, rows);
        var result = GainSplitRegression.of(power, BOOST, changed);
        double[] errors = other.estimateRegressionParametersStandardErrors();
        assertEquals(other.estimateRegressionParameters()[1], result.gain().value(), 1e-5);
        assertEquals(errors[1], result.gain().standardError(), 1e-5);
        assertEquals(other.estimateRegressionParameters()[2] / 1e3, result.worth().value(), 1e-8);
        assertEquals(errors[2] / 1e3, result.worth().standardError(), 1e-8);
        double[][] variance = other.estimateRegressionParametersVariance();
        assertEquals(
                variance[1][2] / Math.sqrt(variance[1][1] * variance[2][2]),
                result.fit().correlation(1, 2),
                1e-9);
    }

    @Test
    void givesIntervalsAboutGainAndWorth() {
        Values out =
                GainSplitRegression.RELATION.solve(
                        pulls(
                                power(5e3, 3, new double[] {900, -400, -500, 300, 700, -800, -200}),
                                BOOST,
                                PARTS));
        // four degrees of freedom: t = 2.776445105 (any table)
        double t = 2.776445105;
        assertEquals(t * out.number("gainStandardError"), out.number("gainHalfWidth"), 1e-5);
        assertEquals(
                out.number("worth") + t * out.number("worthStandardError"),
                out.number("worthHigh"),
                1e-8);
        assertEquals(out.number("rawGain"), out.number("gain") + out.number("boostPart"), 1e-6);
    }

    @Test
    void refusesToSplitWhatMovedTogether() {
        double[] boost = {66e3, 66e3, 67.3e3, 67.3e3};
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                GainSplitRegression.RELATION.solve(
                                        pulls(
                                                new double[] {320e3, 321e3, 330e3, 329e3},
                                                boost,
                                                "AABB")));
        assertEquals("boost", e.slot());
        assertEquals(
                "gain-split-regression: boost moved only when the part did, so nothing tells the one from"
                        + " the other; pull at least one part at two boosts, or take the worth of"
                        + " boost from elsewhere and use gain-split",
                e.getMessage());
    }

    @Test
    void refusesThreePullsAndASinglePart() {
        double[] three = {320e3, 325e3, 331e3};
        double[] boost = {62e3, 64e3, 66e3};
        assertSlot("power", pulls(three, boost, "AAB"));
        assertSlot("parts", pulls(three, boost, "AAA"));
        assertSlot("parts", pulls(three, boost, "AB"));
        assertSlot("boost", pulls(three, new double[] {62e3, 64e3}, "AAB"));
    }

    private static void assertSlot(String slot, Values in) {
        var e = assertThrows(RelationException.class, () -> GainSplitRegression.RELATION.solve(in));
        assertEquals(slot, e.slot());
    }

    @Test
    void cautionsWhenPartAndBoostMovedNearlyTogether() {
        var worked =
                GainSplitRegression.RELATION.work(
                        pulls(
                                new double[] {320e3, 320.4e3, 319.7e3, 331e3, 330.2e3, 330.9e3},
                                new double[] {62e3, 62.1e3, 61.9e3, 66e3, 66.1e3, 65.9e3},
                                "AAABBB"));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("boost")));
    }

    @Test
    void cautionsWhenBoostIsNotShownToBeWorthAnything() {
        var worked =
                GainSplitRegression.RELATION.work(
                        pulls(
                                power(5e3, 0, new double[] {900, -400, -500, 300, 700, -800, -200}),
                                BOOST,
                                PARTS));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("worth")));
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}

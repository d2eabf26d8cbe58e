// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import hotside.statistics.BracketDrift.Stage;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class BracketDriftTest {
    private static Values single(double first, double changed, double last, double changedTime) {
        return Values.of(
                "first", List.of(first),
                "firstTimes", List.of(0.0),
                "changed", List.of(changed),
                "changedTimes", List.of(changedTime),
                "last", List.of(last),
                "lastTimes", List.of(3600.0));
    }

    @Test
    void takesTheMeanOfBothEndsInAnEvenBracket() {
        // by hand: 254 - (250 + 246)/2 = 6; against the first alone only 4; drift -4 in an hour;
        // u = 1.5 sqrt(1 + 1/4 + 1/4)
        Values out =
                BracketDrift.RELATION.solve(single(250, 254, 246, 1800).with("knownSpread", 1.5));
        assertEquals(6, out.number("gain"), 1e-12);
        assertEquals(4, out.number("gainAgainstFirst"), 0.0);
        assertEquals(-4.0 / 3600, out.number("drift"), 1e-15);
        assertEquals(1.5 * Math.sqrt(1.5), out.number("standardError"), 1e-12);
        assertEquals(1.959963985 * 1.5 * Math.sqrt(1.5), out.number("halfWidth"), 1e-8);
    }

    @Test
    void weighsTheNearerEndMoreInAnUnevenBracket() {
        // by hand: a quarter of the way the drift has brought 250 to 249, so 254 is a gain of 5
        Values out =
                BracketDrift.RELATION.solve(single(250, 254, 246, 900).with("knownSpread", 1.0));
        assertEquals(5, out.number("gain"), 1e-12);
        assertEquals(Math.sqrt(1 + 0.75 * 0.75 + 0.25 * 0.25), out.number("standardError"), 1e-12);
    }

    @Test
    void cannotShowASpreadWithOneRunAStage() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> BracketDrift.RELATION.solve(single(250, 254, 246, 1800)));
        assertEquals("knownSpread", e.slot());
        assertTrue(e.getMessage().contains("three readings fix level, gain and drift"));
    }

    @Test
    void refusesABracketWithoutTimeBetweenItsEnds() {
        Values in =
                single(250, 254, 246, 1800)
                        .with("lastTimes", List.of(0.0))
                        .with("knownSpread", 1.0);
        var e = assertThrows(RelationException.class, () -> BracketDrift.RELATION.solve(in));
        assertEquals("lastTimes", e.slot());
    }

    @Test
    void refusesTimesThatDoNotMatchReadings() {
        Values in = single(250, 254, 246, 1800).with("changedTimes", List.of(1.0, 2.0));
        var e = assertThrows(RelationException.class, () -> BracketDrift.RELATION.solve(in));
        assertEquals(
                "bracket-drift: changedTimes holds 2 and changed 1; both need one for each run",
                e.getMessage());
    }

    @Test
    void cautionsWhenTheChangedRunsLieOutsideTheBracket() {
        var worked =
                BracketDrift.RELATION.work(single(250, 254, 246, 5000).with("knownSpread", 1.0));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("changedTimes")));
    }

    @Test
    void agreesWithARegressionOfAnotherLibrary() {
        double[] y = {248.1, 247.9, 252.6, 252.0, 252.3, 246.8, 246.9};
        double[] t = {0, 300, 1500, 1800, 2300, 3600, 4000};
        double[] part = {0, 0, 1, 1, 1, 0, 0};
        double[][] rows = new double[7][];
        for (int i = 0; i < 7; i++) {
            rows[i] = new double[] {part[i], t[i]};
        }
        var other = new OLSMultipleLinearRegression();
        other.newSampleData(y, rows);
        var result =
                BracketDrift.of(
                        new Stage(new double[] {y[0], y[1]}, new double[] {t[0], t[1]}),
                        new Stage(new double[] {y[2], y[3], y[4]}, new double[] {t[2], t[3], t[4]}),
                        new Stage(new double[] {y[5], y[6]}, new double[] {t[5], t[6]}));
        assertEquals(other.estimateRegressionParameters()[1], result.gain().value(), 1e-10);
        assertEquals(
                other.estimateRegressionParametersStandardErrors()[1],
                result.gain().standardError(),
                1e-10);
        assertEquals(other.estimateRegressionParameters()[2], result.drift(), 1e-13);
        assertEquals(4, result.gain().degreesOfFreedom(), 0.0);
    }

    @Property(seed = "20261125")
    void doesNotSeeAStraightDrift(
            @ForAll @DoubleRange(min = -0.01, max = 0.01) double drift,
            @ForAll @DoubleRange(min = 100, max = 3500) double when) {
        Values calm = single(250, 256, 250.5, when).with("knownSpread", 1.0);
        Values drifting =
                single(250, 256 + drift * when, 250.5 + drift * 3600, when)
                        .with("knownSpread", 1.0);
        Values out = BracketDrift.RELATION.solve(calm);
        Values moved = BracketDrift.RELATION.solve(drifting);
        assertEquals(out.number("gain"), moved.number("gain"), 1e-9);
        assertEquals(out.number("drift") + drift, moved.number("drift"), 1e-12);
        assertEquals(out.number("standardError"), moved.number("standardError"), 1e-12);
    }
}

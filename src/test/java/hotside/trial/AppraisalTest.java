// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.cell.Channel;
import hotside.cell.Rig;
import hotside.cell.Stock;
import hotside.statistics.Confidence;
import hotside.trial.Remark.Kind;
import hotside.unit.UnitSystem;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AppraisalTest {
    private static final UnitSystem SI = UnitSystem.SI_SHOP;
    private static final Rig BLED = Stock.shipped().rig("eight-vented-bleed").orElseThrow();

    private static Appraisal of(Plan plan) {
        return Appraisal.of(plan, 1, SI);
    }

    private static Remark about(List<Remark> remarks, String topic) {
        return remarks.stream().filter(r -> r.topic().equals(topic)).findFirst().orElseThrow();
    }

    @Test
    void allWithThenAllWithoutLetsTheDayIntoTheGainAndTurningRoundKeepsItOut() {
        Appraisal blocks = of(TrialTest.plan("AAAABBBB", OptionalDouble.of(60e3)));
        Appraisal turned = of(TrialTest.plan("ABBAABBA", OptionalDouble.of(60e3)));
        assertTrue(blocks.bias() < -500, "a warming cell costs B power: " + blocks.bias());
        assertTrue(Math.abs(turned.bias()) < 0.25 * Math.abs(blocks.bias()));
        assertEquals(Kind.MEND, about(blocks.remarks(), "order").kind());
        assertEquals(Kind.GOOD, about(turned.remarks(), "order").kind());
        assertTrue(
                about(blocks.remarks(), "order").text().contains("4 units into the gain"),
                about(blocks.remarks(), "order").text());
    }

    /**
     * The false gain against what the pulls themselves show on average over many seeds: the truth
     * of the day is the same, luck averages out.
     */
    @Test
    void theFalseGainIsTheOneThatTrialsShowOnAverage() {
        Plan plan = TrialTest.plan("AABB", OptionalDouble.of(60e3));
        double sum = 0;
        int trials = 30;
        for (long seed = 1; seed <= trials; seed++) {
            Trial trial = Trial.run(plan, seed);
            sum +=
                    (trial.trueMean(2, Channel.POWER)
                                    + trial.trueMean(3, Channel.POWER)
                                    - trial.trueMean(0, Channel.POWER)
                                    - trial.trueMean(1, Channel.POWER))
                            / 2;
        }
        Appraisal appraisal = of(plan);
        double shown = sum / trials - appraisal.truth().gain();
        // Standard error of that mean: 0.3 % of 300 kW in each pull, over the root of thirty.
        assertEquals(
                shown, appraisal.bias(), 3 * 0.003 * appraisal.truth().power() / Math.sqrt(30));
    }

    @Test
    void singlePullsShowNothing() {
        Appraisal single = of(TrialTest.plan("AB", OptionalDouble.empty()));
        assertEquals(Double.POSITIVE_INFINITY, single.resolution());
        assertEquals(Kind.MEND, about(single.remarks(), "repeats").kind());
    }

    /**
     * Sixteen runs a part find a difference of one standard deviation at 80 % and 95 %, both sides:
     * 16.71 by the noncentral t, so seventeen suffice (tables of sample size for the two-sample t
     * test, from memory).
     */
    @Test
    void resolutionAgreesWithTablesOfSampleSize() {
        assertTrue(Resolution.of(1, 17, 17) < 1);
        assertTrue(Resolution.of(1, 16, 16) > 1);
    }

    /**
     * Drawn by chance, from the definition: of rows of pulls so far apart, the usual Welch interval
     * (95 %) lies clear of zero in four out of five. Standard error of the share: 0.4 %.
     */
    @ParameterizedTest
    @CsvSource({"2, 2", "3, 3", "2, 5", "6, 4"})
    void resolutionIsThatOfTheIntervalThatAComparisonStates(int before, int after) {
        double apart = Resolution.of(1, before, after);
        Random random = new Random(20_261_126);
        int draws = 10_000;
        int clear = 0;
        for (int i = 0; i < draws; i++) {
            double[] a = random.doubles(before, 0, 1).map(u -> random.nextGaussian()).toArray();
            double[] b = random.doubles(after, 0, 1).map(u -> random.nextGaussian()).toArray();
            double first = StatUtils.variance(a) / before;
            double second = StatUtils.variance(b) / after;
            double both = first + second;
            double freedom =
                    both * both / (first * first / (before - 1) + second * second / (after - 1));
            double half = Confidence.student(0.95, freedom) * Math.sqrt(both);
            clear += Math.abs(apart + StatUtils.mean(b) - StatUtils.mean(a)) > half ? 1 : 0;
        }
        assertEquals(0.8, clear / (double) draws, 0.016);
    }

    @Test
    void boostThatMovesIsNamedHeldOrNot() {
        Remark free = about(of(TrialTest.plan("ABBA", OptionalDouble.empty())).remarks(), "boost");
        assertEquals(Kind.MEND, free.kind());
        assertTrue(free.text().contains("so it can be split"), free.text());
        Plan blind =
                TrialTest.plan(
                        BLED, "pipe-76", "pipe-102", "ABBA", OptionalDouble.empty(), Set.of());
        assertTrue(about(of(blind).remarks(), "boost").text().contains("nobody can tell"));
        Remark held = about(of(TrialTest.plan("ABBA", OptionalDouble.of(60e3))).remarks(), "boost");
        assertEquals(Kind.GOOD, held.kind());
    }

    @Test
    void twoChangesAtOnceAreNamed() {
        Plan two =
                TrialTest.plan(
                        BLED,
                        "as-it-is",
                        "pipe-102 + spring-firm",
                        "ABBA",
                        OptionalDouble.empty(),
                        EnumSet.allOf(Channel.class));
        Remark remark = about(of(two).remarks(), "one change");
        assertEquals(Kind.MEND, remark.kind());
        assertTrue(remark.text().contains("gate, exhaust"), remark.text());
    }

    @Test
    void predictionsAreJudgedByDirectionAndRoughSize() {
        Truth truth = new Truth(9e3, OptionalDouble.of(2e3), 3.4e3, -3.5e3, -100, 300e3);
        List<Remark> remarks =
                PlanText.prediction(
                                "power rises 30 kW, boost falls, turbine-inlet falls 4 kPa, turbine-outlet stays",
                                SI)
                        .against(truth, SI);
        assertEquals(
                List.of(Kind.MEND, Kind.MEND, Kind.GOOD, Kind.GOOD),
                remarks.stream().map(Remark::kind).toList());
        assertTrue(remarks.get(0).text().contains("The direction is right, the size is not"));
        assertTrue(
                remarks.get(3).text().contains("a tap in the wall reads the static pressure"),
                "the log shows another change than this truth");
        assertFalse(remarks.get(2).text().contains("a tap in the wall"));
    }

    @Test
    void conclusionsAreJudgedByTheTruthAndByWhatThePullsCanShow() {
        Appraisal appraisal = of(TrialTest.plan("ABBAABBA", OptionalDouble.empty()));
        double gain = appraisal.truth().gain();
        double part = appraisal.truth().atEqualBoost().orElseThrow();
        double sees = appraisal.resolution();
        assertEquals(Kind.GOOD, judged(appraisal, gain, sees, "gain"));
        assertEquals(Kind.MEND, judged(appraisal, gain + 2 * sees, sees, "gain"));
        assertEquals(Kind.NOTE, judged(appraisal, gain, 5 * sees, "gain"));
        assertEquals(Kind.NOTE, judged(appraisal, gain, 0.1 * sees, "gain"));
        Conclusion wrong =
                new Conclusion(Optional.empty(), Optional.empty(), Conclusion.Claim.DOES_NOT);
        assertTrue(part > 0);
        assertEquals(Kind.MEND, about(wrong.against(appraisal, SI), "claim").kind());
        assertEquals(Kind.MEND, about(wrong.against(appraisal, SI), "gain").kind());
    }

    private static Kind judged(Appraisal appraisal, double middle, double width, String topic) {
        Conclusion.Interval interval =
                new Conclusion.Interval(middle - width / 2, middle + width / 2);
        return about(
                        new Conclusion(
                                        Optional.of(interval),
                                        Optional.empty(),
                                        Conclusion.Claim.PAYS)
                                .against(appraisal, SI),
                        topic)
                .kind();
    }
}

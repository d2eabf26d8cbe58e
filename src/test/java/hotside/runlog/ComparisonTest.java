// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.runlog.Comparison.Gain;
import hotside.runlog.Comparison.Settings;
import hotside.runlog.RegressionSplit.Trouble;
import hotside.statistics.GainSplitRegression;
import hotside.unit.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pulls with a known truth, all invented; expected numbers by hand where no source is named. */
class ComparisonTest {
    // exact factors: NIST SP 811, appendix B
    private static final double HP = 745.6999;
    private static final double PSI = 6894.757;

    private static Part part(String label, Run... runs) {
        return new Part(label, List.of(runs));
    }

    private static Part powers(String label, double... kilowatts) {
        return new Part(
                label, Arrays.stream(kilowatts).mapToObj(p -> Logs.flat(p * 1e3, 180e3)).toList());
    }

    private static Gain gain(Settings settings, Part before, Part after) {
        return new Comparison(List.of(before, after), settings).gains().get(0);
    }

    private static List<String> says(Settings settings, Part before, Part after) {
        Comparison comparison = new Comparison(List.of(before, after), settings);
        return new ComparisonWords(comparison, UnitSystem.US_SHOP).of(comparison.gains().get(0));
    }

    /** Means 101 and 106, spreads 1, u = √(1/3 + 1/3), ν = 4, t = 2.776 from Student's table. */
    @Test
    void setsBandAveragesOfRepeatsAgainstEachOther() {
        Gain gain = gain(Settings.PLAIN, powers("A", 100, 101, 102), powers("B", 105, 106, 107));
        Difference power = gain.band().get(Channel.POWER);
        assertEquals(5e3, power.value(), 1e-6);
        assertEquals(2.776 * Math.sqrt(2 / 3.0) * 1e3, power.halfWidth(0.95), 0.5);
        Difference at4000 = gain.speeds().get(4).differences().get(Channel.POWER);
        assertEquals(4000 / 60.0, gain.speeds().get(4).speed(), 1e-9);
        assertEquals(power.halfWidth(0.95), at4000.halfWidth(0.95), 1e-6);
    }

    @Test
    void hasNoIntervalForSinglePulls() {
        Difference power =
                gain(Settings.PLAIN, powers("A", 100), powers("B", 105)).band().get(Channel.POWER);
        assertTrue(power.estimate().isEmpty());
        assertTrue(Double.isNaN(power.halfWidth(0.95)));
    }

    /** By the meaning of confidence: of many intervals, 95 in 100 hold the truth. */
    @Test
    void holdsTheTruthAsOftenAsItClaims() {
        Random random = new Random(20261125);
        int held = 0;
        int trials = 600;
        for (int i = 0; i < trials; i++) {
            Part a = noisy("A", 500, random);
            Part b = noisy("B", 504, random);
            Difference d = gain(Settings.PLAIN, a, b).band().get(Channel.POWER);
            held += Math.abs(d.value() - 4e3) <= d.halfWidth(0.95) ? 1 : 0;
        }
        // Welch's interval is near 0.955 for three and three; ± 3 standard errors of the count
        assertEquals(0.955, held / (double) trials, 0.027);
    }

    private static Part noisy(String label, double kilowatts, Random random) {
        double[] powers = new double[3];
        Arrays.setAll(powers, i -> kilowatts + 2.5 * random.nextGaussian());
        return powers(label, powers);
    }

    /**
     * Common practice, no source: of 62 hp that came with 0.8 psi more boost, at about 30 hp a psi
     * for an engine of 440 hp without boost, about 24 to 26 hp belong to boost, 35 to 40 do not.
     */
    @Test
    void splitsAGainThatCameWithBoostAsTheTradeDoes() {
        Settings settings = Settings.PLAIN.withWorth(Worth.byRule(440 * HP, 101_325));
        WorthSplit split =
                gain(
                                settings,
                                part("stock", Logs.flat(600 * HP, 200e3)),
                                part("new", Logs.flat(662 * HP, 200e3 + 0.8 * PSI)))
                        .byWorth()
                        .orElseThrow();
        assertEquals(30, split.worth().value() / HP * PSI, 0.5);
        assertEquals(25, split.boost().value() / HP, 1.1);
        assertEquals(37.5, split.exhaust() / HP, 2.5);
        assertEquals(62, (split.boost().value() + split.exhaust()) / HP, 1e-9);
        assertFalse(split.scatterKnown());
    }

    /**
     * The same test as a person reads it. By hand, four-stroke: 2 psi (13.79 kPa) less before the
     * turbine saves 13.79 kPa · 6 L · 75 / 2 turns a second = 3.10 kW = 4.16 hp.
     */
    @Test
    void saysThatPressureExplainsLittleAndThatRepeatsAreNeeded() {
        Settings settings =
                Settings.PLAIN.withWorth(Worth.byRule(440 * HP, 101_325)).withDisplacement(6e-3);
        List<String> says =
                says(
                        settings,
                        part("stock", Logs.flat(600 * HP, 200e3, 300e3)),
                        part("new", Logs.flat(662 * HP, 200e3 + 0.8 * PSI, 300e3 - 2 * PSI)));
        assertEquals(
                "“new” gives 62.0 hp more than “stock” on average over 3000 to 6000 rev/min.",
                says.get(0));
        assertTrue(says.get(1).contains("Repeats are needed: three pulls with each part at least"));
        String all = String.join("\n", says);
        assertTrue(
                all.contains(
                        "The pressure before the turbine fell by 2.00 psi; that saves 4.16 hp of pumping, so the measured"
                                + " pressure change explains only a small part (11 %) of what does not belong to boost. 33.9 hp"
                                + " stays unexplained"),
                all);
        assertTrue(all.contains("It holds where power is in proportion to absolute manifold"), all);
    }

    /** First order by hand: u² = 5² · 0² + 1² · 0.5², and boost part 5 kW/kPa · 1 kPa. */
    @Test
    void carriesTheDoubtAboutAStatedWorth() {
        Settings settings = Settings.PLAIN.withWorth(Worth.stated(5, 0.5));
        WorthSplit split =
                gain(
                                settings,
                                part("A", Logs.flat(300e3, 180e3)),
                                part("B", Logs.flat(309e3, 181e3)))
                        .byWorth()
                        .orElseThrow();
        assertEquals(5e3, split.boost().value(), 1e-6);
        assertEquals(4e3, split.exhaust(), 1e-6);
        assertEquals(1.960 * 500, split.exhaustError().expanded(0.95), 0.5);
    }

    /**
     * By hand: 2 kPa at 5 kW/kPa would have brought 10 kW, and 7 came. 3 kW are 4.02 hp; 1.96 · 2
     * kPa · 0.5 kW/kPa are 2.63 hp.
     */
    @Test
    void aLossIsSaidWithoutASecondMinus() {
        String all =
                String.join(
                        "\n",
                        says(
                                Settings.PLAIN.withWorth(Worth.stated(5, 0.5)),
                                part("A", Logs.flat(300e3, 180e3)),
                                part("B", Logs.flat(307e3, 182e3))));
        assertTrue(all.contains(" 4.02 hp ± 2.63 hp was lost elsewhere."), all);
    }

    /** Truth: 4 kW for the part, 5 kW/kPa for boost, and a scatter too small to matter. */
    @Test
    void findsPartAndBoostFromPullsAtSeveralBoosts() {
        RegressionSplit split =
                gain(
                                Settings.PLAIN,
                                part("A", crossed(0, 180), crossed(0, 182), crossed(0.01, 184)),
                                part("B", crossed(4, 181), crossed(4.01, 183), crossed(4, 185)))
                        .byRegression()
                        .orElseThrow();
        GainSplitRegression.Result result = split.result().orElseThrow();
        assertEquals(Trouble.NONE, split.trouble());
        assertEquals(4e3, result.gain().value(), 20);
        assertEquals(5, result.worth().value(), 0.02);
        assertEquals(5e3, result.boostPart(), 20);
        assertEquals(9e3, result.rawGain(), 20);
    }

    private static Run crossed(double gain, double manifold) {
        return Logs.flat((300 + gain + 5 * (manifold - 180)) * 1e3, manifold * 1e3);
    }

    @Test
    void saysThatOnePullEachSeparatesNothingAndWhichPullsWould() {
        List<String> says =
                says(Settings.PLAIN, part("A", crossed(0, 180)), part("B", crossed(4, 190)));
        assertEquals(
                "Split by regression over the pulls: it cannot be done. With so few pulls boost moved only when the part"
                        + " did, and no arithmetic separates what moved together; four pulls at least, two with each part,"
                        + " are needed. Pulls that would: “A” again with manifold pressure at 27.6 psi abs, and “B” at 26.1"
                        + " psi abs, two of each, if the engine's limits allow it.",
                says.get(says.size() - 1));
    }

    @Test
    void cannotSeparateWhatOnlyMovedTogether() {
        RegressionSplit split =
                gain(
                                Settings.PLAIN,
                                part("A", crossed(0, 180), crossed(1, 180)),
                                part("B", crossed(4, 190), crossed(5, 190)))
                        .byRegression()
                        .orElseThrow();
        assertTrue(split.result().isEmpty());
        assertEquals(Trouble.BOOST_NOT_MOVED, split.trouble());
    }

    @Test
    void warnsWherePartAndBoostMovedNearlyTogether() {
        Part a = part("A", crossed(0, 180), crossed(0.1, 180.5), crossed(0, 181));
        Part b = part("B", crossed(4, 190), crossed(4.1, 190.5), crossed(4, 191));
        assertEquals(
                Trouble.MOVED_TOGETHER,
                gain(Settings.PLAIN, a, b).byRegression().orElseThrow().trouble());
        List<String> says = says(Settings.PLAIN, a, b);
        assertTrue(
                says.get(says.size() - 1)
                        .contains(
                                "part and boost moved nearly together, so these pulls can hardly"));
    }

    /** A pascal of 300 kPa is no change that anybody saw; two kilopascals are. */
    @Test
    void whatNoGaugeCouldShowIsNoChange() {
        String says =
                says(
                                Settings.PLAIN,
                                part("A", Logs.flat(300e3, 170e3, 300e3)),
                                part("B", Logs.flat(305e3, 172e3, 300_001)))
                        .get(2);
        assertEquals(
                "What else changed, on average over the band: manifold pressure up 0.290 psi;"
                        + " pressure before the turbine as before.",
                says);
    }

    /** Means 170.0 and 170.03 kPa with a half width of some kilopascals. */
    @Test
    void whatDrownsInItsDoubtIsNoChange() {
        List<String> says =
                says(
                        Settings.PLAIN,
                        part("A", Logs.flat(300e3, 169e3), Logs.flat(301e3, 171e3)),
                        part("B", Logs.flat(304e3, 169.03e3), Logs.flat(305e3, 171.03e3)));
        assertTrue(says.get(2).contains("manifold pressure as before ± "), says.get(2));
    }

    /** Boost climbs 100 kPa over 3000 rev/min: 10 kPa more comes 300 rev/min earlier. */
    @Test
    void timesTheResponse() {
        Settings settings = Settings.PLAIN.withResponseTo(150e3);
        Difference response =
                gain(settings, part("A", climbing(100e3)), part("B", climbing(110e3)))
                        .response()
                        .orElseThrow();
        assertEquals(4500 / 60.0, response.before(), 1e-9);
        assertEquals(-300 / 60.0, response.value(), 1e-9);
    }

    private static Run climbing(double from) {
        RunLog log =
                RunLog.of(
                        "invented",
                        List.of(
                                Column.of(Channel.SPEED),
                                Column.of(Channel.POWER),
                                Column.of(Channel.MANIFOLD_PRESSURE)),
                        Logs.rpm(3000, 6000),
                        new double[] {1, 1},
                        new double[] {from, from + 100e3});
        return new Run(log.pulls().get(0), 1);
    }

    @Test
    void measuresEveryPartByTheFirst() {
        Comparison comparison =
                new Comparison(
                        List.of(powers("A", 100), powers("B", 105), powers("C", 103)),
                        Settings.PLAIN);
        assertEquals(
                List.of("A-B", "A-C"),
                comparison.gains().stream()
                        .map(g -> g.before().label() + "-" + g.after().label())
                        .toList());
    }

    @Test
    void leavesOutAPullThatDoesNotCoverTheBand() {
        Comparison comparison =
                new Comparison(
                        List.of(powers("A", 100), part("B", Logs.flat(105e3, 180e3), aborted())),
                        Settings.PLAIN.withBand(Band.rpm(3000, 6000)));
        assertEquals(
                List.of(
                        "Left out: pull 1 of aborted does not cover 3000 to 6000 rev/min without a gap; its longest"
                                + " stretch without one is 3000 to 3500 rev/min."),
                comparison.leftOut());
        assertEquals(1, comparison.parts().get(1).runs().size());
    }

    private static Run aborted() {
        RunLog log =
                RunLog.of(
                        "aborted",
                        List.of(Column.of(Channel.SPEED), Column.of(Channel.POWER)),
                        Logs.rpm(3000, 3500),
                        new double[] {1, 1});
        return new Run(log.pulls().get(0), 1);
    }

    @Test
    void saysWhyPartsCannotBeCompared() {
        assertEquals(
                "Two to six parts can be compared, not 1.",
                refusal(Settings.PLAIN, powers("A", 100)));
        assertEquals(
                "No pull of B covers 3000 to 6000 rev/min without a gap. Left out: pull 1 of aborted does not cover 3000"
                        + " to 6000 rev/min without a gap; its longest stretch without one is 3000 to 3500"
                        + " rev/min. State the band 3000 to 3500 rev/min, which every part covers (on the command line:"
                        + " --band 3000..3500).",
                refusal(
                        Settings.PLAIN.withBand(Band.rpm(3000, 6000)),
                        powers("A", 100),
                        part("B", aborted())));
        Part[] unnamed = {
            powers("1", 1),
            powers("2", 1),
            powers("3", 1),
            powers("4", 1),
            powers("5", 1),
            powers("6", 1),
            powers("7", 1)
        };
        assertTrue(
                refusal(Settings.PLAIN, unnamed)
                        .startsWith(
                                "Two to six parts can be compared, not 7. A file without a name"));
        assertEquals("There is no pull in B.", refusal(Settings.PLAIN, powers("A", 1), part("B")));
    }

    @Test
    void theBandThatARefusalNamesCanBeCompared() {
        Part gap = part("A", ofPower(2000.4, 2500, 3000, 3500.3, 4700, 5200));
        Part whole = part("B", ofPower(2000, 2500, 3000, 3500, 4000, 4500));
        String refusal = refusal(Settings.PLAIN, gap, whole);
        assertTrue(
                refusal.contains("State the band 2001 to 3500 rev/min, which every part covers"),
                refusal);
        Comparison comparison =
                new Comparison(List.of(gap, whole), Settings.PLAIN.withBand(Band.rpm(2001, 3500)));
        assertEquals(List.of(), comparison.leftOut());

        String none = refusal(Settings.PLAIN, gap, part("C", ofPower(3550, 4000, 4500)));
        assertTrue(none.contains("no band that every part covers without a gap"), none);
    }

    private static Run ofPower(double... rpm) {
        RunLog log =
                RunLog.of(
                        "invented",
                        List.of(Column.of(Channel.SPEED), Column.of(Channel.POWER)),
                        Logs.rpm(rpm),
                        Arrays.stream(rpm).map(n -> 20 * n).toArray());
        return new Run(log.pulls().get(0), 1);
    }

    private static String refusal(Settings settings, Part... parts) {
        return assertThrows(
                        ComparisonException.class, () -> new Comparison(List.of(parts), settings))
                .getMessage();
    }

    /** SAE J1349 (from memory): 1.18 · 99/95 · √(303/298) − 0.18 = 1.0600 by pocket calculator. */
    @Test
    void correctsPowerAndSaysWhatIsWrongWithIt() {
        PowerCorrection correction =
                PowerCorrection.of(
                        PowerCorrection.byId("sae-j1349").orElseThrow(), 95e3, 303.15, 0);
        assertEquals(1.0600, correction.factor(), 0.5e-4);
        assertTrue(
                correction.cautions().stream()
                        .anyMatch(c -> c.contains("Compare at equal manifold pressure")));
        Run run = new Run(Logs.flat(100e3, 180e3).pull(), correction.factor());
        assertEquals(106.0e3, run.curve(Channel.POWER).peak().value(), 5);
        assertEquals(180e3, run.curve(Channel.MANIFOLD_PRESSURE).peak().value(), 1e-9);
    }
}

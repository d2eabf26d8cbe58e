// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What somebody concludes of a part from the pulls.
 *
 * @param gain all of it, boost moving as it did; empty if not stated
 * @param atEqualBoost what the part itself is worth; empty if not stated
 * @param claim what the customer is told
 */
public record Conclusion(Optional<Interval> gain, Optional<Interval> atEqualBoost, Claim claim) {
    /** Wider than this many times what the pulls can show, an interval says little. */
    private static final double WIDE = 3;

    /**
     * Narrower than this share of it, it covers the truth by luck: an interval of 95 % is 1.4 times
     * as wide as what the pulls can show, with few pulls twice.
     */
    private static final double NARROW = 0.5;

    private static final String AT_EQUAL_BOOST = "part at equal boost";

    /**
     * From low to high, W.
     *
     * @param low at most high
     */
    public record Interval(double low, double high) {
        public Interval {
            if (!(low <= high)) {
                throw new IllegalArgumentException("from " + low + " to " + high);
            }
        }

        boolean covers(double value) {
            return low <= value && value <= high;
        }

        double width() {
            return high - low;
        }
    }

    /** What can be claimed of a part. */
    public enum Claim {
        /** The part itself gives power. */
        PAYS,
        /** The part itself gives none, or takes some. */
        DOES_NOT,
        /** These pulls do not tell. */
        CANNOT_TELL;

        /** As typed. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        public static Optional<Claim> find(String id) {
            return Arrays.stream(values()).filter(c -> c.id().equals(id)).findFirst();
        }
    }

    /** What is to be said of it, now that the truth may be told. */
    public List<Remark> against(Appraisal appraisal, UnitSystem system) {
        List<Remark> remarks = new ArrayList<>();
        Truth truth = appraisal.truth();
        remarks.add(
                gain.map(g -> judge("gain", g, truth.gain(), appraisal, system))
                        .orElseGet(() -> Remark.mend("gain", TrialWords.of("gain.none"))));
        OptionalDouble part = truth.atEqualBoost();
        if (part.isEmpty()) {
            remarks.add(Remark.note(AT_EQUAL_BOOST, TrialWords.of("part.inseparable")));
            return remarks;
        }
        double worth = part.getAsDouble();
        remarks.add(
                atEqualBoost
                        .map(g -> judge(AT_EQUAL_BOOST, g, worth, appraisal, system))
                        .orElseGet(
                                () ->
                                        Remark.mend(
                                                AT_EQUAL_BOOST,
                                                TrialWords.of("part.none", shown(worth, system)))));
        remarks.add(claim(worth, appraisal, system));
        return remarks;
    }

    private static Remark judge(
            String topic, Interval stated, double truth, Appraisal appraisal, UnitSystem system) {
        String told =
                TrialWords.of(
                                "interval.told",
                                shown(stated.low, system),
                                shown(stated.high, system),
                                shown(truth, system))
                        + " ";
        double sees = appraisal.resolution();
        if (!stated.covers(truth)) {
            return Remark.mend(topic, told + TrialWords.of("interval.misses"));
        }
        if (Double.isInfinite(sees)) {
            return Remark.note(topic, told + TrialWords.of("interval.single"));
        }
        double share = stated.width() / sees;
        if (share > WIDE) {
            String times = DecimalHabit.spoken().write(Numbers.upTo(share, 2));
            return Remark.note(topic, told + TrialWords.of("interval.wide", times));
        }
        return share < NARROW
                ? Remark.note(topic, told + TrialWords.of("interval.narrow"))
                : Remark.good(topic, told + TrialWords.of("interval.good"));
    }

    private Remark claim(double part, Appraisal appraisal, UnitSystem system) {
        boolean visible = Math.abs(part) >= appraisal.resolution();
        Claim fair = !visible ? Claim.CANNOT_TELL : part > 0 ? Claim.PAYS : Claim.DOES_NOT;
        String why =
                " "
                        + (Double.isInfinite(appraisal.resolution())
                                ? TrialWords.of("claim.why-single", shown(part, system))
                                : TrialWords.of(
                                        "claim.why",
                                        shown(part, system),
                                        shown(appraisal.resolution(), system)));
        if (claim == fair) {
            return Remark.good("claim", TrialWords.of("claim.fair") + why);
        }
        boolean holds = claim == (part > 0 ? Claim.PAYS : Claim.DOES_NOT);
        if (holds) {
            return Remark.note("claim", TrialWords.of("claim.unshown") + why);
        }
        return claim == Claim.CANNOT_TELL
                ? Remark.note("claim", TrialWords.of("claim.more") + why)
                : Remark.mend("claim", TrialWords.of("claim.unfair") + why);
    }

    private static String shown(double watt, UnitSystem system) {
        return Shown.of(watt, Quantity.POWER, system, 3).text();
    }
}

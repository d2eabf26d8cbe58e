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

    /** Narrower than this share of it, it covers the truth by luck. */
    private static final double NARROW = 0.3;

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
                        .orElseGet(
                                () -> Remark.mend("gain", "No interval is stated for the gain.")));
        OptionalDouble part = truth.atEqualBoost();
        if (part.isPresent()) {
            remarks.add(
                    atEqualBoost
                            .map(
                                    g ->
                                            judge(
                                                    "part at equal boost",
                                                    g,
                                                    part.getAsDouble(),
                                                    appraisal,
                                                    system))
                            .orElseGet(
                                    () ->
                                            Remark.mend(
                                                    "part at equal boost",
                                                    "No interval is stated for what the part itself is worth; it is "
                                                            + shown(part.getAsDouble(), system)
                                                            + ".")));
            remarks.add(claim(part.getAsDouble(), appraisal, system));
        } else {
            remarks.add(
                    Remark.note(
                            "part at equal boost",
                            "The gate cannot bring both parts to one boost here, so even the cell cannot tell part and boost"
                                    + " apart."));
        }
        return remarks;
    }

    private static Remark judge(
            String topic, Interval stated, double truth, Appraisal appraisal, UnitSystem system) {
        String told =
                "You say "
                        + shown(stated.low, system)
                        + " to "
                        + shown(stated.high, system)
                        + "; the truth is "
                        + shown(truth, system)
                        + ".";
        double sees = appraisal.resolution();
        if (!stated.covers(truth)) {
            return Remark.mend(topic, told + " The interval misses it.");
        }
        if (Double.isInfinite(sees)) {
            return Remark.note(
                    topic,
                    told
                            + " It covers the truth, but with single pulls nothing could tell you so.");
        }
        double share = stated.width() / sees;
        if (share > WIDE) {
            return Remark.note(
                    topic,
                    told
                            + " It covers the truth, but is "
                            + DecimalHabit.spoken().write(Numbers.upTo(share, 2))
                            + " times as wide as these pulls allow, so it says little.");
        }
        return share < NARROW
                ? Remark.note(
                        topic,
                        told
                                + " It covers the truth by luck: it is much narrower than these pulls can show.")
                : Remark.good(
                        topic, told + " The interval covers it, and is as wide as it has to be.");
    }

    private Remark claim(double part, Appraisal appraisal, UnitSystem system) {
        boolean visible = Math.abs(part) >= appraisal.resolution();
        Claim fair = !visible ? Claim.CANNOT_TELL : part > 0 ? Claim.PAYS : Claim.DOES_NOT;
        String why =
                "At equal boost the part gives "
                        + shown(part, system)
                        + (Double.isInfinite(appraisal.resolution())
                                ? ", and single pulls can show nothing."
                                : ", and these pulls can show "
                                        + shown(appraisal.resolution(), system)
                                        + " or more.");
        if (claim == fair) {
            return Remark.good(
                    "claim", "What you tell the customer is what the pulls allow. " + why);
        }
        boolean holds = claim == (part > 0 ? Claim.PAYS : Claim.DOES_NOT);
        if (holds) {
            return Remark.note("claim", "It is true, but these pulls do not show it. " + why);
        }
        return claim == Claim.CANNOT_TELL
                ? Remark.note("claim", "You could have said more. " + why)
                : Remark.mend("claim", "The pulls do not allow that claim. " + why);
    }

    private static String shown(double watt, UnitSystem system) {
        return Shown.of(watt, Quantity.POWER, system, 3).text();
    }
}

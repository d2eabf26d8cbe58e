// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.runlog.Comparison.Gain;
import hotside.statistics.Estimate;
import hotside.statistics.GainSplitRegression;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Says in whole sentences what a comparison shows, what it does not, and what would decide. */
public final class ComparisonWords {
    private static final int DIGITS = 3;
    private static final double SMALL = 0.25;

    /**
     * Of the reading itself: six thousandths of a kelvin at room temperature, two pascals of air.
     */
    private static final double UNSEEN = 2e-5;

    /** Of the half width of its interval. */
    private static final double DROWNED = 0.1;

    private final Comparison comparison;
    private final UnitSystem system;
    private final double confidence;

    public ComparisonWords(Comparison comparison, UnitSystem system) {
        this.comparison = comparison;
        this.system = system;
        this.confidence = comparison.settings().confidence();
    }

    /** What is to be said of one gain, in order. */
    public List<String> of(Gain gain) {
        List<String> says = new ArrayList<>();
        Difference power = gain.band().get(Channel.POWER);
        says.add(headline(gain, power));
        says.add(repeats(gain, power));
        String moved = moved(gain);
        if (!moved.isEmpty()) {
            says.add(moved);
        }
        gain.response().ifPresent(r -> says.add(response(gain, r)));
        gain.byWorth().ifPresent(split -> says.addAll(byWorth(gain, power, split)));
        gain.byRegression().ifPresent(split -> says.add(byRegression(gain, split)));
        if (gain.byRegression().isEmpty()) {
            says.add(
                    "Manifold pressure is not in both logs, so nothing tells how much of the gain belongs to boost.");
        }
        return says;
    }

    private String headline(Gain gain, Difference power) {
        return quoted(gain.after())
                + " gives "
                + size(power.value(), Quantity.POWER)
                + (power.value() < 0 ? " less" : " more")
                + " than "
                + quoted(gain.before())
                + " on average over "
                + comparison.band().words()
                + interval(power, Quantity.POWER)
                + ".";
    }

    private String interval(Difference d, Quantity quantity) {
        return d.estimate().map(e -> interval(e, quantity)).orElse("");
    }

    private String interval(Estimate e, Quantity quantity) {
        return interval(e.value(), e.halfWidth(confidence), quantity);
    }

    private String interval(double value, double half, Quantity quantity) {
        return "; with "
                + DecimalHabit.spoken().write(Numbers.upTo(100 * confidence, DIGITS))
                + " % confidence between "
                + shown(value - half, quantity)
                + " and "
                + shown(value + half, quantity);
    }

    private String repeats(Gain gain, Difference power) {
        int before = gain.before().runs().size();
        int after = gain.after().runs().size();
        if (power.estimate().isEmpty()) {
            return "That stands on "
                    + pulls(before)
                    + " with "
                    + quoted(gain.before())
                    + " and "
                    + pulls(after)
                    + " with "
                    + quoted(gain.after())
                    + ". Nothing shows how far a single pull strays, so there is no interval, and luck or drift of the bench"
                    + " could have made any part of it. Repeats are needed: three pulls with each part at least, in an order"
                    + " such as A B B A A B, so that drift falls out.";
        }
        double half = power.halfWidth(confidence);
        String stands = "That stands on " + before + " and " + after + " pulls. ";
        return Math.abs(power.value()) <= half
                ? stands
                        + "The interval holds zero: luck alone could have made this difference. More pulls, or steadier ones, would"
                        + " narrow it."
                : stands
                        + "Luck is a bad explanation of it; drift is not ruled out unless the order of the pulls was mixed.";
    }

    private static String pulls(int n) {
        return n == 1 ? "one pull" : n + " pulls";
    }

    private String moved(Gain gain) {
        List<String> moves = new ArrayList<>();
        for (Map.Entry<Channel, Difference> e : gain.band().entrySet()) {
            Channel channel = e.getKey();
            if (channel != Channel.POWER && channel != Channel.TORQUE) {
                moves.add(channel.words() + " " + change(e.getValue(), channel));
            }
        }
        return moves.isEmpty()
                ? ""
                : "What else changed, on average over the band: " + String.join("; ", moves) + ".";
    }

    private String change(Difference d, Channel channel) {
        Quantity quantity = difference(channel);
        double half = d.halfWidth(confidence);
        String by =
                isNothing(d, half)
                        ? "as before"
                        : (d.value() > 0 ? "up " : "down ") + size(d.value(), quantity);
        return Double.isNaN(half) ? by : by + " ± " + shown(half, quantity);
    }

    /** True for a difference that drowns in its own doubt, or that no gauge could have shown. */
    private static boolean isNothing(Difference d, double half) {
        double unseen = UNSEEN * Math.abs(d.before());
        return Math.abs(d.value())
                <= (Double.isNaN(half) ? unseen : Math.max(unseen, half * DROWNED));
    }

    /** What a difference of two readings of a channel is a measure of. */
    public static Quantity difference(Channel channel) {
        return switch (channel.quantity()) {
            case PRESSURE -> Quantity.PRESSURE_DIFFERENCE;
            case TEMPERATURE -> Quantity.TEMPERATURE_DIFFERENCE;
            default -> channel.quantity();
        };
    }

    private String response(Gain gain, Difference r) {
        double level = comparison.responseLevel().orElseThrow();
        String start =
                "A manifold pressure of "
                        + shown(level, Quantity.PRESSURE)
                        + " is reached at "
                        + Speeds.rpm(r.before())
                        + " rev/min with "
                        + quoted(gain.before())
                        + " and at "
                        + Speeds.rpm(r.after())
                        + " with "
                        + quoted(gain.after())
                        + ": ";
        String by =
                Speeds.rpm(Math.abs(r.value()))
                        + " rev/min "
                        + (r.value() < 0 ? "earlier" : "later");
        double half = r.halfWidth(confidence);
        return start
                + by
                + (Double.isNaN(half) ? "" : ", ± " + Speeds.rpm(half))
                + ". Only pulls of one ramp rate can be compared so.";
    }

    private List<String> byWorth(Gain gain, Difference power, WorthSplit split) {
        List<String> says = new ArrayList<>();
        Difference boost = gain.band().get(Channel.MANIFOLD_PRESSURE);
        Worth worth = split.worth();
        says.add(
                "Split by a worth of boost: boost is taken to be worth "
                        + shown(worth.value(), Quantity.POWER_PER_PRESSURE)
                        + " ± "
                        + shown(worth.uncertainty(), Quantity.POWER_PER_PRESSURE)
                        + " (standard uncertainty), "
                        + worth.origin()
                        + (worth.conditions().isEmpty()
                                ? ". It is an assumption, not a measurement."
                                : ". It holds where "
                                        + String.join(", and ", worth.conditions())
                                        + "; hotter charge or later spark make boost worth less."));
        says.add(
                "Boost "
                        + (boost.value() < 0 ? "fell" : "rose")
                        + " by "
                        + size(boost.value(), Quantity.PRESSURE_DIFFERENCE)
                        + ", which makes "
                        + shown(split.boost().value(), Quantity.POWER)
                        + " ± "
                        + shown(split.boostError().expanded(confidence), Quantity.POWER)
                        + ": the measured change of boost "
                        + explains(split.boost().value(), power.value())
                        + " the difference. "
                        + shown(split.exhaust(), Quantity.POWER)
                        + " ± "
                        + shown(split.exhaustError().expanded(confidence), Quantity.POWER)
                        + (split.exhaust() < 0
                                ? " was lost elsewhere."
                                : " does not belong to boost."));
        if (!split.scatterKnown()) {
            says.add(
                    "These ± hold the doubt about the worth alone: how far single pulls stray is not known without repeats.");
        }
        says.add(pumping(gain, split));
        return says;
    }

    private String pumping(Gain gain, WorthSplit split) {
        if (split.pumping().isEmpty()) {
            boolean measured =
                    gain.band().containsKey(Channel.TURBINE_INLET_PRESSURE)
                            || gain.band().containsKey(Channel.TURBINE_OUTLET_PRESSURE);
            return measured
                    ? "How much of that the change of exhaust pressure explains needs the displacement of the engine, which was not stated. It stays unexplained."
                    : "No exhaust pressure is in both logs, so what explains that is not known. A pull at matched boost, with the pressure before the turbine read, would tell more.";
        }
        WorthSplit.Pumping pumping = split.pumping().get();
        Difference pressure = gain.band().get(pumping.from());
        return "The "
                + pumping.from().words()
                + " "
                + (pressure.value() < 0 ? "fell" : "rose")
                + " by "
                + size(pressure.value(), Quantity.PRESSURE_DIFFERENCE)
                + (pumping.from() == Channel.TURBINE_OUTLET_PRESSURE
                        ? "; if the piston felt as much, that "
                        : "; that ")
                + (pumping.power() < 0 ? "costs " : "saves ")
                + size(pumping.power(), Quantity.POWER)
                + " of pumping, so the measured pressure change "
                + explains(pumping.power(), split.exhaust())
                + " what does not belong to boost. "
                + shown(split.unexplained(), Quantity.POWER)
                + " stays unexplained; better breathing, heat, drift and luck are candidates, and a pull at matched boost would decide between them.";
    }

    private static String explains(double part, double whole) {
        double share = part / whole;
        if (part == 0 || !Double.isFinite(share)) {
            return "explains nothing of";
        }
        if (share < 0) {
            return "works against";
        }
        String size =
                share < SMALL
                        ? "only a small part"
                        : share < 0.5
                                ? "the smaller part"
                                : share <= 1 ? "the larger part" : "more than all";
        return "explains "
                + size
                + " ("
                + DecimalHabit.spoken().write(Numbers.upTo(100 * share, 2))
                + " %) of";
    }

    private String byRegression(Gain gain, RegressionSplit split) {
        String start = "Split by regression over the pulls: ";
        return split.result()
                .map(
                        r ->
                                split.trouble() == RegressionSplit.Trouble.WORTH_IMPOSSIBLE
                                        ? start + impossible(gain, r)
                                        : start + result(r) + weakness(gain, split.trouble()))
                .orElseGet(() -> start + refusal(gain, split.trouble()));
    }

    private String result(GainSplitRegression.Result r) {
        return "the pulls themselves make boost worth "
                + shown(r.worth().value(), Quantity.POWER_PER_PRESSURE)
                + " ± "
                + shown(r.worth().halfWidth(confidence), Quantity.POWER_PER_PRESSURE)
                + ", so that "
                + shown(r.boostPart(), Quantity.POWER)
                + " belong to boost and "
                + shown(r.gain().value(), Quantity.POWER)
                + " to the part at equal boost"
                + interval(r.gain(), Quantity.POWER)
                + ".";
    }

    private String impossible(Gain gain, GainSplitRegression.Result r) {
        return "it fails. The pulls seem to make boost worth "
                + shown(r.worth().value(), Quantity.POWER_PER_PRESSURE)
                + ", which no engine of this power has; something else, such as heat or drift, moved power and boost"
                + " together from pull to pull. "
                + crossed(gain);
    }

    private String weakness(Gain gain, RegressionSplit.Trouble trouble) {
        return switch (trouble) {
            case MOVED_TOGETHER ->
                    " But part and boost moved nearly together, so these pulls can hardly tell them apart. "
                            + crossed(gain);
            case WORTH_NOT_SHOWN ->
                    " But these pulls do not show that boost is worth anything: its worth may be zero. Boost was moved too"
                            + " little within a part. "
                            + crossed(gain);
            default -> "";
        };
    }

    private String refusal(Gain gain, RegressionSplit.Trouble trouble) {
        return trouble == RegressionSplit.Trouble.TOO_FEW_PULLS
                ? "it cannot be done. With so few pulls boost moved only when the part did, and no arithmetic separates what"
                        + " moved together; four pulls at least, two with each part, are needed. "
                        + crossed(gain)
                : "it cannot be done. Boost moved only when the part did, and no arithmetic separates what moved together. "
                        + crossed(gain);
    }

    /** The pulls that would separate part from boost. */
    private String crossed(Gain gain) {
        Difference boost = gain.band().get(Channel.MANIFOLD_PRESSURE);
        return "Pulls that would: "
                + quoted(gain.before())
                + " again with manifold pressure at "
                + shown(boost.after(), Quantity.PRESSURE)
                + ", and "
                + quoted(gain.after())
                + " at "
                + shown(boost.before(), Quantity.PRESSURE)
                + ", two of each, if the engine's limits allow it.";
    }

    private String size(double si, Quantity quantity) {
        return shown(Math.abs(si), quantity);
    }

    private String shown(double si, Quantity quantity) {
        return Shown.of(si, quantity, system, DIGITS).text();
    }

    private static String quoted(Part part) {
        return "“" + part.label() + "”";
    }
}

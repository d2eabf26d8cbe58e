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
            says.add(LogWords.of("regression.no-boost"));
        }
        return says;
    }

    private String headline(Gain gain, Difference power) {
        return LogWords.of(
                power.value() < 0 ? "gain.less" : "gain.more",
                quoted(gain.after()),
                size(power.value(), Quantity.POWER),
                quoted(gain.before()),
                comparison.band().words(),
                interval(power, Quantity.POWER));
    }

    private String interval(Difference d, Quantity quantity) {
        return d.estimate().map(e -> interval(e, quantity)).orElse("");
    }

    private String interval(Estimate e, Quantity quantity) {
        return interval(e.value(), e.halfWidth(confidence), quantity);
    }

    private String interval(double value, double half, Quantity quantity) {
        return LogWords.of(
                "interval",
                DecimalHabit.spoken().write(Numbers.upTo(100 * confidence, DIGITS)),
                shown(value - half, quantity),
                shown(value + half, quantity));
    }

    private String repeats(Gain gain, Difference power) {
        int before = gain.before().runs().size();
        int after = gain.after().runs().size();
        if (power.estimate().isEmpty()) {
            return LogWords.of(
                    "repeats.single",
                    pulls(before),
                    quoted(gain.before()),
                    pulls(after),
                    quoted(gain.after()));
        }
        boolean zero = Math.abs(power.value()) <= power.halfWidth(confidence);
        return LogWords.of(zero ? "repeats.zero" : "repeats.clear", before, after);
    }

    private static String pulls(int n) {
        return n == 1 ? LogWords.of("pulls.one") : LogWords.of("pulls.many", n);
    }

    private String moved(Gain gain) {
        List<String> moves = new ArrayList<>();
        for (Map.Entry<Channel, Difference> e : gain.band().entrySet()) {
            Channel channel = e.getKey();
            if (channel != Channel.POWER && channel != Channel.TORQUE) {
                moves.add(change(e.getValue(), channel));
            }
        }
        return moves.isEmpty() ? "" : LogWords.of("moved", String.join("; ", moves));
    }

    private String change(Difference d, Channel channel) {
        Quantity quantity = difference(channel);
        double half = d.halfWidth(confidence);
        boolean known = !Double.isNaN(half);
        if (isNothing(d, half)) {
            return known
                    ? LogWords.of("moved.same-within", channel.words(), shown(half, quantity))
                    : LogWords.of("moved.same", channel.words());
        }
        String by = size(d.value(), quantity) + (known ? " ± " + shown(half, quantity) : "");
        return LogWords.of(d.value() > 0 ? "moved.up" : "moved.down", channel.words(), by);
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
        double half = r.halfWidth(confidence);
        return LogWords.of(
                r.value() < 0 ? "response.earlier" : "response.later",
                shown(level, Quantity.PRESSURE),
                Speeds.rpm(r.before()),
                quoted(gain.before()),
                Speeds.rpm(r.after()),
                quoted(gain.after()),
                Speeds.rpm(Math.abs(r.value())),
                Double.isNaN(half) ? "" : LogWords.of("response.within", Speeds.rpm(half)));
    }

    private List<String> byWorth(Gain gain, Difference power, WorthSplit split) {
        List<String> says = new ArrayList<>();
        says.add(assumed(split.worth()));
        says.add(boostPart(gain, power, split) + " " + rest(split));
        if (!split.scatterKnown()) {
            says.add(LogWords.of("worth.no-scatter"));
        }
        says.add(pumping(gain, split));
        return says;
    }

    private String assumed(Worth worth) {
        return LogWords.of(
                worth.conditions().isEmpty() ? "worth.assumed" : "worth.holds",
                shown(worth.value(), Quantity.POWER_PER_PRESSURE),
                shown(worth.uncertainty(), Quantity.POWER_PER_PRESSURE),
                worth.origin(),
                String.join(LogWords.of("worth.and"), worth.conditions()));
    }

    private String boostPart(Gain gain, Difference power, WorthSplit split) {
        Difference boost = gain.band().get(Channel.MANIFOLD_PRESSURE);
        return LogWords.of(
                "worth.boost",
                moved(boost),
                size(boost.value(), Quantity.PRESSURE_DIFFERENCE),
                shown(split.boost().value(), Quantity.POWER),
                shown(split.boostError().expanded(confidence), Quantity.POWER),
                explains("difference", split.boost().value(), power.value()));
    }

    private String rest(WorthSplit split) {
        return LogWords.of(
                split.exhaust() < 0 ? "worth.lost" : "worth.rest",
                shown(Math.abs(split.exhaust()), Quantity.POWER),
                shown(split.exhaustError().expanded(confidence), Quantity.POWER));
    }

    private static String moved(Difference pressure) {
        return LogWords.of(pressure.value() < 0 ? "fell" : "rose");
    }

    private String pumping(Gain gain, WorthSplit split) {
        if (split.pumping().isEmpty()) {
            boolean measured =
                    gain.band().containsKey(Channel.TURBINE_INLET_PRESSURE)
                            || gain.band().containsKey(Channel.TURBINE_OUTLET_PRESSURE);
            return LogWords.of(measured ? "pumping.no-displacement" : "pumping.no-pressure");
        }
        WorthSplit.Pumping pumping = split.pumping().get();
        Difference pressure = gain.band().get(pumping.from());
        boolean guessed = pumping.from() == Channel.TURBINE_OUTLET_PRESSURE;
        String does = guessed ? "pumping.if." : "pumping.that.";
        return LogWords.of(
                "pumping",
                pumping.from().words(),
                moved(pressure),
                size(pressure.value(), Quantity.PRESSURE_DIFFERENCE),
                LogWords.of(does + (pumping.power() < 0 ? "costs" : "saves")),
                size(pumping.power(), Quantity.POWER),
                explains("rest", pumping.power(), split.exhaust()),
                shown(split.unexplained(), Quantity.POWER));
    }

    private static String explains(String of, double part, double whole) {
        String key = "explains." + of + ".";
        double share = part / whole;
        if (part == 0 || !Double.isFinite(share)) {
            return LogWords.of(key + "nothing");
        }
        if (share < 0) {
            return LogWords.of(key + "against");
        }
        String size =
                share < SMALL ? "small" : share < 0.5 ? "smaller" : share <= 1 ? "larger" : "more";
        return LogWords.of(key + size, DecimalHabit.spoken().write(Numbers.upTo(100 * share, 2)));
    }

    private String byRegression(Gain gain, RegressionSplit split) {
        return split.result()
                .map(
                        r ->
                                split.trouble() == RegressionSplit.Trouble.WORTH_IMPOSSIBLE
                                        ? impossible(gain, r)
                                        : result(r) + weakness(gain, split.trouble()))
                .orElseGet(() -> refusal(gain, split.trouble()));
    }

    private String result(GainSplitRegression.Result r) {
        return LogWords.of(
                "regression.result",
                shown(r.worth().value(), Quantity.POWER_PER_PRESSURE),
                shown(r.worth().halfWidth(confidence), Quantity.POWER_PER_PRESSURE),
                shown(r.boostPart(), Quantity.POWER),
                shown(r.gain().value(), Quantity.POWER),
                interval(r.gain(), Quantity.POWER));
    }

    private String impossible(Gain gain, GainSplitRegression.Result r) {
        String worth = shown(r.worth().value(), Quantity.POWER_PER_PRESSURE);
        return LogWords.of("regression.impossible", worth) + crossed(gain);
    }

    private String weakness(Gain gain, RegressionSplit.Trouble trouble) {
        return switch (trouble) {
            case MOVED_TOGETHER -> " " + LogWords.of("regression.together") + crossed(gain);
            case WORTH_NOT_SHOWN -> " " + LogWords.of("regression.not-shown") + crossed(gain);
            default -> "";
        };
    }

    private String refusal(Gain gain, RegressionSplit.Trouble trouble) {
        boolean few = trouble == RegressionSplit.Trouble.TOO_FEW_PULLS;
        return LogWords.of(few ? "regression.too-few" : "regression.not-moved") + crossed(gain);
    }

    /** The pulls that would separate part from boost, as one sentence more. */
    private String crossed(Gain gain) {
        Difference boost = gain.band().get(Channel.MANIFOLD_PRESSURE);
        return " "
                + LogWords.of(
                        "regression.crossed",
                        quoted(gain.before()),
                        shown(boost.after(), Quantity.PRESSURE),
                        quoted(gain.after()),
                        shown(boost.before(), Quantity.PRESSURE));
    }

    private String size(double si, Quantity quantity) {
        return shown(Math.abs(si), quantity);
    }

    private String shown(double si, Quantity quantity) {
        return Shown.of(si, quantity, system, DIGITS).text();
    }

    private static String quoted(Part part) {
        return LogWords.quoted(part.label());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two to six parts set against each other: the first is what the others are measured by. Band
 * averages of each pull are single readings, so that intervals come from pull to pull and not from
 * the many rows of one pull.
 */
public final class Comparison {
    /** What is compared, where every pull of both parts has it. */
    public static final List<Channel> CHANNELS =
            List.of(
                    Channel.POWER,
                    Channel.TORQUE,
                    Channel.MANIFOLD_PRESSURE,
                    Channel.TURBINE_INLET_PRESSURE,
                    Channel.TURBINE_OUTLET_PRESSURE,
                    Channel.CHARGE_TEMPERATURE,
                    Channel.AIR_TEMPERATURE,
                    Channel.EXHAUST_TEMPERATURE,
                    Channel.PIPE_TEMPERATURE,
                    Channel.AIR_FLOW,
                    Channel.COOLANT_TEMPERATURE,
                    Channel.OIL_TEMPERATURE,
                    Channel.LAMBDA,
                    Channel.AIR_FUEL_RATIO);

    private static final int FEWEST = 2;
    private static final int MOST = 6;

    /** Boost that response is timed to, as a share of the least peak, where none is stated. */
    private static final double RESPONSE_SHARE = 0.8;

    private final List<Part> parts;
    private final Settings settings;
    private final Band band;
    private final OptionalDouble responseLevel;
    private final List<String> leftOut = new ArrayList<>();
    private final Map<Run, Map<Channel, Curve>> curves = new HashMap<>();

    /**
     * How to compare.
     *
     * @param band where averages are taken; empty for all that the pulls share
     * @param step between the speeds of the table, turns per second
     * @param confidence of intervals, between 0 and 1
     * @param worth of boost; empty to split by regression alone
     * @param displacement of the engine, m³, to work out pumping
     * @param responseTo absolute manifold pressure that response is timed to, Pa
     */
    public record Settings(
            Optional<Band> band,
            double step,
            double confidence,
            Optional<Worth> worth,
            OptionalDouble displacement,
            OptionalDouble responseTo) {
        /** The shared band, every 250 rev/min, 95 %, nothing known of the engine. */
        public static final Settings PLAIN =
                new Settings(
                        Optional.empty(),
                        Speeds.of(250),
                        0.95,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty());

        public Settings withBand(Band other) {
            return new Settings(
                    Optional.of(other), step, confidence, worth, displacement, responseTo);
        }

        public Settings withWorth(Worth other) {
            return new Settings(
                    band, step, confidence, Optional.of(other), displacement, responseTo);
        }

        public Settings withDisplacement(double cubicMetres) {
            return new Settings(
                    band, step, confidence, worth, OptionalDouble.of(cubicMetres), responseTo);
        }

        public Settings withResponseTo(double pascal) {
            return new Settings(
                    band, step, confidence, worth, displacement, OptionalDouble.of(pascal));
        }
    }

    /**
     * What one part brought over another.
     *
     * @param before the part it is measured by
     * @param after the part
     * @param band difference of the band averages, for each channel that both have
     * @param speeds difference at each speed of the grid, for the same channels; no entry where
     *     either part was not read there
     * @param response speed at which the boost of {@link #responseLevel} is reached, turns per
     *     second; empty if a pull never reaches it
     * @param byWorth empty without power, boost or a worth
     * @param byRegression empty without power or boost
     */
    public record Gain(
            Part before,
            Part after,
            Map<Channel, Difference> band,
            List<AtSpeed> speeds,
            Optional<Difference> response,
            Optional<WorthSplit> byWorth,
            Optional<RegressionSplit> byRegression) {}

    /**
     * Differences at one speed.
     *
     * @param speed turns per second
     */
    public record AtSpeed(double speed, Map<Channel, Difference> differences) {}

    /**
     * Sets parts side by side.
     *
     * @param parts two to six, the first is the one that the others are measured by
     * @throws ComparisonException if they cannot be compared; the message is for people
     */
    public Comparison(List<Part> parts, Settings settings) {
        this.settings = settings;
        if (parts.size() < FEWEST || parts.size() > MOST) {
            String key = parts.size() > MOST ? "compare.too-many-parts" : "compare.parts";
            throw new ComparisonException(LogWords.of(key, parts.size()));
        }
        parts.forEach(Comparison::checkPower);
        this.band = settings.band.orElseGet(() -> shared(parts));
        this.parts = parts.stream().map(part -> covering(part, parts)).toList();
        this.responseLevel = settings.responseTo.isPresent() ? settings.responseTo : usualLevel();
    }

    private static void checkPower(Part part) {
        for (Run run : part.runs()) {
            if (!run.pull().has(Channel.SPEED) || !run.pull().has(Channel.POWER)) {
                throw new ComparisonException(
                        LogWords.of("compare.no-power", run.pull().log().name()));
            }
        }
        if (part.runs().isEmpty()) {
            throw new ComparisonException(LogWords.of("compare.no-pull", part.label()));
        }
    }

    private Band shared(List<Part> parts) {
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        Run narrowest = parts.get(0).runs().get(0);
        double least = Double.POSITIVE_INFINITY;
        for (Run run : parts.stream().flatMap(p -> p.runs().stream()).toList()) {
            Band reach = curve(run, Channel.POWER).reach();
            if (reach == null) {
                throw new ComparisonException(LogWords.of("compare.one-speed", run.words()));
            }
            low = Math.max(low, reach.low());
            high = Math.min(high, reach.high());
            narrowest = reach.width() < least ? run : narrowest;
            least = Math.min(least, reach.width());
        }
        if (!(low < high)) {
            throw new ComparisonException(
                    LogWords.of(
                            "compare.nothing-shared",
                            narrowest.words(),
                            curve(narrowest, Channel.POWER).reach().words()));
        }
        return new Band(low, high);
    }

    /** The part without the pulls that do not cover the band. */
    private Part covering(Part part, List<Part> all) {
        List<Run> kept = new ArrayList<>();
        for (Run run : part.runs()) {
            Curve power = curve(run, Channel.POWER);
            if (Double.isNaN(power.mean(band))) {
                Band widest = power.widest();
                leftOut.add(
                        widest == null
                                ? LogWords.of("compare.left-out", run.words(), band.words())
                                : LogWords.of(
                                        "compare.left-out-holds",
                                        run.words(),
                                        band.words(),
                                        widest.words()));
            } else {
                kept.add(run);
            }
        }
        if (kept.isEmpty()) {
            throw new ComparisonException(
                    LogWords.of(
                            "compare.none-covers",
                            part.label(),
                            band.words(),
                            String.join(" ", leftOut),
                            coveredByAll(all)));
        }
        return new Part(part.label(), kept);
    }

    /** What band to state instead: one that the widest pull of every part covers. */
    private String coveredByAll(List<Part> all) {
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        for (Part part : all) {
            Band widest =
                    part.runs().stream()
                            .map(run -> curve(run, Channel.POWER).widest())
                            .filter(Objects::nonNull)
                            .max(Comparator.comparingDouble(Band::width))
                            .orElse(null);
            low = widest == null ? low : Math.max(low, widest.low());
            high = widest == null ? 0 : Math.min(high, widest.high());
        }
        long from = Speeds.wholeAbove(low);
        long to = Speeds.wholeBelow(high);
        return from < to
                ? LogWords.of("compare.band-instead", Long.toString(from), Long.toString(to))
                : LogWords.of("compare.no-band-instead");
    }

    /** Above where every pull starts, by a share of what every pull still climbs. */
    private OptionalDouble usualLevel() {
        double start = 0;
        double peak = Double.POSITIVE_INFINITY;
        for (Run run : parts.stream().flatMap(p -> p.runs().stream()).toList()) {
            Curve boost = curve(run, Channel.MANIFOLD_PRESSURE);
            if (boost == null || boost.size() == 0) {
                return OptionalDouble.empty();
            }
            start = Math.max(start, boost.value(0));
            peak = Math.min(peak, boost.peak().value());
        }
        return peak > start
                ? OptionalDouble.of(start + RESPONSE_SHARE * (peak - start))
                : OptionalDouble.empty();
    }

    /** Worked out once: a pull may hold a million rows. Null if the pull has no such channel. */
    private Curve curve(Run run, Channel channel) {
        return run.pull().has(channel)
                ? curves.computeIfAbsent(run, r -> new EnumMap<>(Channel.class))
                        .computeIfAbsent(channel, run::curve)
                : null;
    }

    /** The parts with the pulls that were used. */
    public List<Part> parts() {
        return parts;
    }

    public Settings settings() {
        return settings;
    }

    public Band band() {
        return band;
    }

    /** Absolute manifold pressure that response is timed to, Pa; empty if it cannot be. */
    public OptionalDouble responseLevel() {
        return responseLevel;
    }

    /** Pulls that were not used and why; whole sentences. */
    public List<String> leftOut() {
        return List.copyOf(leftOut);
    }

    /** Each later part against the first. */
    public List<Gain> gains() {
        return parts.stream().skip(1).map(after -> gain(parts.get(0), after)).toList();
    }

    /** Band averages of one channel, one for each pull; NaN where a pull has a gap. */
    public double[] bandMeans(Part part, Channel channel) {
        return part.runs().stream()
                .map(run -> curve(run, channel))
                .mapToDouble(curve -> curve == null ? Double.NaN : curve.mean(band))
                .toArray();
    }

    private Gain gain(Part before, Part after) {
        Map<Channel, Difference> means = new EnumMap<>(Channel.class);
        for (Channel channel : CHANNELS) {
            double[] a = bandMeans(before, channel);
            double[] b = bandMeans(after, channel);
            if (whole(a) && whole(b)) {
                means.put(channel, Difference.of(a, b));
            }
        }
        return new Gain(
                before,
                after,
                means,
                speeds(before, after, List.copyOf(means.keySet())),
                response(before, after),
                byWorth(means),
                byRegression(before, after, means));
    }

    private static boolean whole(double[] readings) {
        return Arrays.stream(readings).noneMatch(Double::isNaN);
    }

    private List<AtSpeed> speeds(Part before, Part after, List<Channel> channels) {
        Grid grid = Grid.inside(band, settings.step);
        List<AtSpeed> rows = new ArrayList<>();
        for (int i = 0; i < grid.count(); i++) {
            rows.add(new AtSpeed(grid.speed(i), new EnumMap<>(Channel.class)));
        }
        for (Channel channel : channels) {
            Repeats a = repeats(grid, before, channel);
            Repeats b = repeats(grid, after, channel);
            for (int i = 0; i < grid.count(); i++) {
                double[] x = a.readings(i);
                double[] y = b.readings(i);
                if (x.length > 0 && y.length > 0) {
                    rows.get(i).differences().put(channel, Difference.of(x, y));
                }
            }
        }
        return rows;
    }

    private Repeats repeats(Grid grid, Part part, Channel channel) {
        return new Repeats(grid, part.runs().stream().map(r -> curve(r, channel)).toList());
    }

    private Optional<Difference> response(Part before, Part after) {
        if (responseLevel.isEmpty()) {
            return Optional.empty();
        }
        double[] a = reaching(before);
        double[] b = reaching(after);
        return whole(a) && whole(b) ? Optional.of(Difference.of(a, b)) : Optional.empty();
    }

    private double[] reaching(Part part) {
        return part.runs().stream()
                .map(run -> curve(run, Channel.MANIFOLD_PRESSURE))
                .mapToDouble(c -> c == null ? Double.NaN : c.reaches(responseLevel.getAsDouble()))
                .toArray();
    }

    private Optional<WorthSplit> byWorth(Map<Channel, Difference> means) {
        Difference boost = means.get(Channel.MANIFOLD_PRESSURE);
        if (boost == null || settings.worth.isEmpty()) {
            return Optional.empty();
        }
        Difference power = means.get(Channel.POWER);
        return Optional.of(WorthSplit.of(power, boost, settings.worth.get(), pumping(means)));
    }

    private Optional<WorthSplit.Pumping> pumping(Map<Channel, Difference> means) {
        return settings.displacement.isEmpty()
                ? Optional.empty()
                : List.of(Channel.TURBINE_INLET_PRESSURE, Channel.TURBINE_OUTLET_PRESSURE).stream()
                        .filter(means::containsKey)
                        .findFirst()
                        .map(
                                c ->
                                        WorthSplit.Pumping.of(
                                                c,
                                                means.get(c),
                                                settings.displacement.getAsDouble(),
                                                band.middle()));
    }

    private Optional<RegressionSplit> byRegression(
            Part before, Part after, Map<Channel, Difference> means) {
        if (!means.containsKey(Channel.MANIFOLD_PRESSURE)) {
            return Optional.empty();
        }
        double[] power =
                RegressionSplit.joined(
                        bandMeans(before, Channel.POWER), bandMeans(after, Channel.POWER));
        double[] boost =
                RegressionSplit.joined(
                        bandMeans(before, Channel.MANIFOLD_PRESSURE),
                        bandMeans(after, Channel.MANIFOLD_PRESSURE));
        return Optional.of(
                RegressionSplit.of(power, boost, before.runs().size(), settings.confidence));
    }
}

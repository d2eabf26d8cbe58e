// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.cell.Channel;
import hotside.cell.Part;
import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Stock;
import hotside.unit.DecimalHabit;
import hotside.unit.Expected;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.Typed;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads what a person types of a plan, a prediction or a conclusion. Whatever is not understood is
 * said in a {@link RigException} with what was expected.
 */
public final class PlanText {
    private static final Pattern BAND =
            Pattern.compile(
                    "\\s*(\\d+)\\s*(?:\\.\\.|to|bis|-|–)\\s*(\\d+)\\s*(?:rev/min|rpm|1/min)?\\s*");
    private static final Pattern RANGE =
            Pattern.compile("(.+?)\\s*(?:\\.\\.|\\bto\\b|\\bbis\\b|–)\\s*(.+)");
    private static final Pattern GUESS =
            Pattern.compile("([a-z-]+)\\s+(falls|stays|rises)(?:\\s+(?:by\\s+)?(.+))?");

    private PlanText() {}

    /**
     * A rig with things fitted.
     *
     * @param text parts off the shelf and values, joined by {@code +}: {@code pipe-102 +
     *     control.signalShare=60 %}; {@code as-it-is} for none
     */
    public static Plan.Contestant contestant(Rig rig, Stock stock, String text) {
        Rig fitted = rig;
        List<Supplier<String>> titles = new ArrayList<>();
        for (String item : text.split("\\+", -1)) {
            String what = item.strip();
            if (what.isEmpty() || what.equals("as-it-is")) {
                continue;
            }
            int sign = what.indexOf('=');
            if (sign > 0) {
                fitted = fitted.with(what.substring(0, sign).strip(), what.substring(sign + 1));
                titles.add(() -> what);
            } else {
                Part part = stock.part(what).orElseThrow(() -> noPart(what, stock));
                fitted = fitted.with(part);
                titles.add(part::title);
            }
        }
        return new Plan.Contestant(() -> title(titles), fitted);
    }

    private static String title(List<Supplier<String>> titles) {
        return titles.isEmpty()
                ? TrialWords.of("typed.as-it-is")
                : titles.stream()
                        .map(Supplier::get)
                        .collect(Collectors.joining(TrialWords.of("typed.and")));
    }

    private static RigException noPart(String id, Stock stock) {
        List<String> ids = stock.parts().stream().map(Part::id).toList();
        return new RigException(TrialWords.of("typed.part", id), oneOf(ids));
    }

    private static String oneOf(List<String> names) {
        return TrialWords.of("typed.one-of", String.join(", ", names));
    }

    /** Channels by their names, separated by commas; {@code all} and {@code none} too. */
    public static Set<Channel> channels(String text) {
        Set<Channel> channels = EnumSet.noneOf(Channel.class);
        if (text.strip().equals("all")) {
            return EnumSet.allOf(Channel.class);
        }
        for (String name : text.split("[,\\s]+")) {
            if (!name.isEmpty() && !name.equals("none")) {
                channels.add(Channel.of(name).orElseThrow(() -> noChannel(name)));
            }
        }
        return channels;
    }

    private static RigException noChannel(String name) {
        List<String> labels = Arrays.stream(Channel.values()).map(Channel::label).toList();
        return new RigException(TrialWords.of("typed.channel", name), oneOf(labels));
    }

    /**
     * A band of engine speed, {@code 4000..6000} rev/min.
     *
     * @return low and high end, turns per second
     */
    public static double[] band(String text) {
        Matcher m = BAND.matcher(text);
        if (!m.matches() || m.group(1).length() > 6 || m.group(2).length() > 6) {
            throw new RigException(
                    TrialWords.of("typed.band", text), TrialWords.of("typed.band.wanted"));
        }
        return new double[] {
            Integer.parseInt(m.group(1)) / 60.0, Integer.parseInt(m.group(2)) / 60.0
        };
    }

    /** A time such as {@code 12 min}; a bare number is minutes. Seconds. */
    public static double interval(String text) {
        return number(
                TrialWords.of("typed.interval"),
                text,
                Quantity.TIME,
                Units.bySymbol(Quantity.TIME.dimension(), "min"),
                0);
    }

    /** A boost such as {@code 66 kPa}; empty for {@code free} or nothing. Pa gauge. */
    public static OptionalDouble boost(String text, UnitSystem system, double ambient) {
        String what = text.strip();
        if (what.isEmpty() || what.equals("free") || what.equals("frei")) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                number(
                        TrialWords.of("typed.hold"),
                        what,
                        Quantity.GAUGE_PRESSURE,
                        Quantity.GAUGE_PRESSURE.shown(system),
                        ambient));
    }

    /** An interval of power such as {@code 3 to 9 kW} or {@code -2 .. 4}; empty for nothing. */
    public static Optional<Conclusion.Interval> power(String text, UnitSystem system) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Matcher m = RANGE.matcher(text.strip());
        if (!m.matches()) {
            throw new RigException(
                    TrialWords.of("typed.power", text), TrialWords.of("typed.power.wanted"));
        }
        Typed last = typed(m.group(2), Quantity.POWER, Quantity.POWER.shown(system), 0);
        Scale unit = last instanceof Typed.Understood u ? u.scale() : Quantity.POWER.shown(system);
        double high = si(TrialWords.of("typed.upper"), m.group(2), last);
        double low =
                si(
                        TrialWords.of("typed.lower"),
                        m.group(1),
                        typed(m.group(1), Quantity.POWER, unit, 0));
        if (low > high) {
            throw new RigException(
                    TrialWords.of("typed.high-to-low"), TrialWords.of("typed.high-to-low.wanted"));
        }
        return Optional.of(new Conclusion.Interval(low, high));
    }

    /** A claim by its name. */
    public static Conclusion.Claim claim(String text) {
        return Conclusion.Claim.find(text.strip())
                .orElseThrow(
                        () ->
                                new RigException(
                                        TrialWords.of("typed.claim", text),
                                        TrialWords.of("typed.claim.wanted")));
    }

    /** A prediction such as {@code power rises 8 kW, boost stays, turbine-inlet falls 3 kPa}. */
    public static Prediction prediction(String text, UnitSystem system) {
        Map<Watched, Prediction.Guess> guesses = new EnumMap<>(Watched.class);
        for (String part : text.split("[,;]\\s+|\\n")) {
            Matcher m = GUESS.matcher(part.strip().toLowerCase(Locale.ROOT));
            Watched watched = m.matches() ? Watched.find(m.group(1)).orElse(null) : null;
            if (watched == null) {
                throw new RigException(
                        TrialWords.of("typed.prediction", part.strip()),
                        TrialWords.of(
                                "typed.prediction.wanted",
                                String.join(
                                        ", ",
                                        Arrays.stream(Watched.values())
                                                .map(Watched::id)
                                                .toList())));
            }
            // The unit's capitals matter, so the size is taken from what was typed.
            String size = m.group(3) == null ? "" : part.strip().substring(m.start(3), m.end(3));
            guesses.put(watched, guess(watched, m.group(2), size, system));
        }
        return new Prediction(guesses);
    }

    /**
     * A guess.
     *
     * @param size without a sign; may be empty
     */
    public static Prediction.Guess guess(
            Watched watched, String direction, String size, UnitSystem system) {
        Watched.Direction way =
                Watched.Direction.find(direction)
                        .orElseThrow(
                                () ->
                                        new RigException(
                                                TrialWords.of("typed.direction", direction),
                                                TrialWords.of("typed.direction.wanted")));
        OptionalDouble by =
                size.isBlank()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                Math.abs(
                                        number(
                                                TrialWords.of("typed.size", watched.words()),
                                                size,
                                                watched.quantity(),
                                                watched.quantity().shown(system),
                                                0)));
        return new Prediction.Guess(way, by);
    }

    private static double number(
            String what, String text, Quantity quantity, hotside.unit.Unit unit, double ambient) {
        return number(
                what, text, quantity, new Scale(unit, quantity.siScale().reference()), ambient);
    }

    private static double number(
            String what, String text, Quantity quantity, Scale scale, double ambient) {
        return si(what, text, typed(text, quantity, scale, ambient));
    }

    private static Typed typed(String text, Quantity quantity, Scale scale, double ambient) {
        return Typed.read(text, new Expected(quantity, scale, ambient, DecimalHabit.spoken()));
    }

    private static double si(String what, String text, Typed typed) {
        if (typed instanceof Typed.Understood understood) {
            return understood.si();
        }
        String why =
                typed instanceof Typed.Ambiguous a
                        ? a.question()
                        : ((Typed.NotUnderstood) typed).message();
        throw new RigException(
                TrialWords.of("typed.is", what, text, why.replaceFirst("\\.$", "")), "");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.problem.Given;
import hotside.problem.Literal;
import hotside.problem.Variants;
import hotside.relation.Chain;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import hotside.unit.Reference;
import hotside.unit.Scale;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The computed values of a lesson's prose. An expression is a place (a named value or {@code
 * use.slot}), a difference {@code a - b}, a ratio {@code a / b} or {@code change from a to b} in
 * percent; behind it may stand {@code in UNIT} and {@code , N digits}.
 */
public final class Computed {
    private static final int DIGITS = 3;
    private static final int ROW_DIGITS = 4;
    private static final String PLACE = "[a-z][A-Za-z0-9]*(?:\\.[a-z][A-Za-z0-9]*)?";
    private static final Pattern FORM =
            Pattern.compile(
                    "(?:(?<change>change from (?<from>"
                            + PLACE
                            + ") to (?<to>"
                            + PLACE
                            + "))|(?<a>"
                            + PLACE
                            + ")(?:\\s+(?<op>[-/])\\s+(?<b>"
                            + PLACE
                            + "))?)(?:\\s+in (?<unit>[^,]+?))?(?:,\\s*(?<digits>\\d{1,2}) digits?)?");

    private final Lesson lesson;
    private final UnitSystem system;
    private final Chain.Run run;
    private final double ambient;

    private record Value(double si, Quantity quantity, Scale scale) {}

    private record Scaled(Quantity quantity, Scale scale) {}

    /** Works the lesson's relations. */
    public Computed(Lesson lesson, UnitSystem system) {
        this.lesson = lesson;
        this.system = system;
        this.run = lesson.chain().run(lesson.values());
        this.ambient =
                lesson.values().get(Variants.AMBIENT) instanceof Double air
                        ? air
                        : Units.STANDARD_ATMOSPHERE;
    }

    /** The lesson's relations worked out. */
    public Chain.Run run() {
        return run;
    }

    /** The lesson's air around, Pa. */
    public double ambient() {
        return ambient;
    }

    /** What an expression says; nothing if it is none. */
    public Optional<String> text(String expression) {
        Matcher form = FORM.matcher(expression.strip());
        if (!form.matches()) {
            return Optional.empty();
        }
        if (form.group("a") != null && run.values().get(form.group("a")) instanceof List<?> row) {
            return form.group("op") != null || form.group("unit") != null
                    ? Optional.empty()
                    : scaled(form.group("a")).map(scaled -> row(scaled, row));
        }
        int digits =
                form.group("digits") == null
                        ? DIGITS
                        : Math.max(1, Math.min(9, Integer.parseInt(form.group("digits"))));
        return value(form)
                .filter(v -> Double.isFinite(v.si()))
                .flatMap(
                        v ->
                                form.group("unit") == null
                                        ? Optional.of(v)
                                        : Literal.scale(form.group("unit"), v.quantity())
                                                .map(s -> new Value(v.si(), v.quantity(), s)))
                .map(
                        v ->
                                Shown.of(
                                                v.si(),
                                                v.quantity(),
                                                v.scale(),
                                                ambient,
                                                digits,
                                                DecimalHabit.spoken())
                                        .text());
    }

    /**
     * A row of readings as its author wrote it, or converted to the other shop with one digit more.
     */
    private String row(Scaled scaled, List<?> readings) {
        String label = scaled.scale().told();
        return readings.stream()
                        .map(
                                r ->
                                        Shown.of(
                                                        (Double) r,
                                                        scaled.quantity(),
                                                        scaled.scale(),
                                                        ambient,
                                                        ROW_DIGITS,
                                                        DecimalHabit.spoken())
                                                .number())
                        .collect(Collectors.joining("; "))
                + (label.isEmpty() ? "" : "\u00a0" + label);
    }

    private Optional<Value> value(Matcher form) {
        if (form.group("change") != null) {
            return alike(form.group("from"), form.group("to"))
                    .map(
                            ab ->
                                    pure(
                                            (ab.b().si() - ab.a().si()) / ab.a().si(),
                                            Quantity.PERCENTAGE));
        }
        if (form.group("op") == null) {
            return at(form.group("a"));
        }
        return alike(form.group("a"), form.group("b"))
                .map(
                        ab ->
                                form.group("op").equals("/")
                                        ? pure(ab.a().si() / ab.b().si(), Quantity.RATIO)
                                        : difference(ab.a(), ab.b()));
    }

    private Value pure(double value, Quantity quantity) {
        return new Value(value, quantity, shown(quantity));
    }

    private record Pair(Value a, Value b) {
        /**
         * True if one may be set against the other; a gauge pressure and an absolute one may not.
         */
        boolean isAlike() {
            Quantity one = a.quantity();
            Quantity other = b.quantity();
            boolean twoZeros =
                    one.naturalReference() != Reference.NONE
                            && other.naturalReference() != Reference.NONE
                            && one != other;
            return one.dimension() == other.dimension() && !twoZeros;
        }
    }

    /** Both values, if they measure the same kind of thing. */
    private Optional<Pair> alike(String a, String b) {
        return at(a).flatMap(x -> at(b).map(y -> new Pair(x, y))).filter(Pair::isAlike);
    }

    /** Two of a kind that has a zero differ by one that has none. */
    private Value difference(Value a, Value b) {
        Quantity quantity =
                a.quantity() != b.quantity()
                        ? a.quantity()
                        : switch (a.quantity()) {
                            case PRESSURE, GAUGE_PRESSURE -> Quantity.PRESSURE_DIFFERENCE;
                            case TEMPERATURE -> Quantity.TEMPERATURE_DIFFERENCE;
                            default -> a.quantity();
                        };
        Scale scale = quantity == a.quantity() ? a.scale() : shown(quantity);
        return new Value(a.si() - b.si(), quantity, scale);
    }

    private Optional<Value> at(String place) {
        return run.values().get(place) instanceof Double number
                ? scaled(place).map(s -> new Value(number, s.quantity(), s.scale()))
                : Optional.empty();
    }

    private Optional<Scaled> scaled(String place) {
        Optional<Given> named =
                lesson.named().stream().filter(g -> g.name().equals(place)).findFirst();
        return named.isPresent()
                ? named.map(given -> new Scaled(given.quantity(), scaleOf(given)))
                : lesson.chain()
                        .slotAt(place)
                        .map(slot -> new Scaled(slot.quantity(), SlotScale.of(slot, system)));
    }

    /**
     * A named value is told as its author wrote it, or on the other shop's scale with the same
     * zero.
     */
    private Scale scaleOf(Given given) {
        Scale written = given.si().scale();
        if (system == UnitSystem.SI_SHOP) {
            return written;
        }
        Slot slot = hotside.problem.ChainReader.fedBy(lesson.chain(), given.name()).orElse(null);
        Scale shop = slot == null ? shown(given.quantity()) : SlotScale.of(slot, system);
        return new Scale(shop.unit(), written.reference());
    }

    private Scale shown(Quantity quantity) {
        return quantity.shown(system);
    }
}

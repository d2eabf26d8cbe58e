// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.runlog.ChannelNames.Meaning;
import hotside.unit.Dimension;
import hotside.unit.Reference;
import hotside.unit.Scale;
import hotside.unit.Unit;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column's name taken apart: {@code Power [kW]}, {@code boost (psi)}, {@code p3_kPa gauge},
 * {@code Nm}.
 *
 * @param meaning what the name says
 * @param unit the unit as written; empty if there is none
 */
record HeaderName(Meaning meaning, String unit) {
    private static final Pattern BRACKET =
            Pattern.compile("(?<name>.*)[\\[({](?<unit>[^\\[\\](){}]*)[\\])}]\\s*");
    private static final Pattern BETWEEN = Pattern.compile("[\\s_,/:-]+");
    private static final Pattern NO_UNIT = Pattern.compile("[-–—]|1|:1|λ|lambda|ratio");
    private static final List<Channel> NAMED_BY_UNIT =
            List.of(Channel.SPEED, Channel.POWER, Channel.TORQUE);

    static Optional<HeaderName> of(String cell, ChannelNames names) {
        Optional<HeaderName> bracketed = bracketed(cell, names);
        if (bracketed.isPresent()) {
            return bracketed;
        }
        Optional<Meaning> whole = names.find(cell);
        if (whole.isPresent()) {
            return Optional.of(
                    new HeaderName(whole.get(), alone(cell).map(HeaderName::unit).orElse("")));
        }
        return unitLast(cell, names).or(() -> alone(cell));
    }

    private static Optional<HeaderName> bracketed(String cell, ChannelNames names) {
        Matcher m = BRACKET.matcher(cell);
        if (!m.matches()) {
            return Optional.empty();
        }
        String unit = m.group("unit").strip();
        return names.find(m.group("name") + " " + unit)
                .map(meaning -> new HeaderName(meaning, ""))
                .or(() -> names.find(m.group("name")).map(k -> new HeaderName(k, unit)));
    }

    /** A name with its unit after it, without brackets. */
    private static Optional<HeaderName> unitLast(String cell, ChannelNames names) {
        Matcher gap = BETWEEN.matcher(cell);
        while (gap.find()) {
            Optional<Meaning> meaning = names.find(cell.substring(0, gap.start()));
            String unit = cell.substring(gap.end()).replace('_', ' ');
            if (meaning.isPresent() && scale(meaning.get(), unit).isPresent()) {
                return meaning.map(m -> new HeaderName(m, unit));
            }
        }
        return Optional.empty();
    }

    /** A unit that stands for what it is a unit of. */
    private static Optional<HeaderName> alone(String cell) {
        return NAMED_BY_UNIT.stream()
                .filter(c -> Units.find(c.quantity().dimension(), cell.strip()).isPresent())
                .findFirst()
                .map(
                        c ->
                                new HeaderName(
                                        new Meaning(c, Reference.NONE, Reference.NONE),
                                        cell.strip()));
    }

    HeaderName withUnit(String other) {
        return new HeaderName(meaning, other);
    }

    /** The scale that the readings are on; empty if the unit is none for this channel. */
    Optional<Scale> scale() {
        return scale(meaning, unit);
    }

    /** Whether the zero of a pressure was said, in the name or with the unit. */
    boolean saysItsZero() {
        return meaning.marked() != Reference.NONE
                || Units.find(Dimension.PRESSURE, bare(unit)).isEmpty();
    }

    private static Optional<Scale> scale(Meaning meaning, String spelling) {
        Channel channel = meaning.channel();
        String unit = bare(spelling);
        if (unit.isEmpty()) {
            return channel.hasOneUnitOnly() ? Optional.of(onlyScale(channel)) : Optional.empty();
        }
        if (channel.quantity().dimension() != Dimension.PRESSURE) {
            return Units.find(channel.quantity().dimension(), unit)
                    .map(u -> new Scale(u, Reference.NONE));
        }
        Reference reference =
                meaning.marked() != Reference.NONE ? meaning.marked() : meaning.unmarked();
        Optional<Unit> plain = Units.find(Dimension.PRESSURE, unit);
        return plain.isPresent()
                ? plain.map(u -> new Scale(u, reference))
                : marked(channel, unit.replaceAll("(?i)\\s*\\(?rel(ative)?\\)?$", " gauge"));
    }

    private static Optional<Scale> marked(Channel channel, String unit) {
        try {
            return Optional.of(Scale.of(channel.quantity(), unit));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Scale onlyScale(Channel channel) {
        return channel == Channel.SPEED
                ? channel.quantity().shown(UnitSystem.SI_SHOP)
                : channel.quantity().siScale();
    }

    /** A unit out of its brackets; empty where a sign says that there is none. */
    static String bare(String unit) {
        String text = unit.strip().replace('\uFFFD', '°');
        Matcher m = BRACKET.matcher(text);
        String inner = m.matches() && m.group("name").isBlank() ? m.group("unit").strip() : text;
        return NO_UNIT.matcher(inner).matches() ? "" : inner;
    }
}

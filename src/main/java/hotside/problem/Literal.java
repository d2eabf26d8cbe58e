// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.unit.Dimension;
import hotside.unit.Quantity;
import hotside.unit.Reference;
import hotside.unit.Scale;
import hotside.unit.Unit;
import hotside.unit.Units;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Numbers as authors write them in content files: a point for the decimal mark, then a unit.
 * Stricter than what a learner may type, because a file is written once and read often.
 */
public final class Literal {
    /** A number in a file. Nobody measures to thirty places, so a longer one is none. */
    public static final String NUMBER =
            "[-\u2212]?\\d{1,30}(?:\\.\\d{1,30})?(?:[eE][-+]?\\d{1,2})?(?!\\d)";

    private static final Pattern FORM = Pattern.compile("(" + NUMBER + ")\\s*(.*)");

    private Literal() {}

    /**
     * The scale that a unit spelling means for a quantity, such as {@code kPa gauge}.
     *
     * @param spelling the unit with or without {@code gauge} or {@code abs}; empty for a pure
     *     number
     */
    public static Optional<Scale> scale(String spelling, Quantity quantity) {
        String word = spelling.strip();
        Reference reference = Reference.NONE;
        String lower = word.toLowerCase(Locale.ROOT);
        if (quantity.dimension() == Dimension.PRESSURE) {
            for (String mark : List.of("gauge", "absolute", "abs")) {
                if (lower.endsWith(" " + mark)) {
                    reference = mark.equals("gauge") ? Reference.GAUGE : Reference.ABSOLUTE;
                    word = word.substring(0, word.length() - mark.length()).strip();
                    break;
                }
            }
        }
        if (quantity == Quantity.TEMPERATURE_DIFFERENCE && lower.endsWith(Units.DIFFERENCE)) {
            word = word.substring(0, word.length() - Units.DIFFERENCE.length()).strip();
        }
        Optional<Unit> unit = Units.find(quantity.dimension(), word.isEmpty() ? "1" : word);
        Reference zero = reference == Reference.NONE ? quantity.naturalReference() : reference;
        return unit.map(u -> new Scale(u, zero));
    }

    /**
     * The value of a literal such as {@code 12.5 kPa gauge}, in SI.
     *
     * @param ambient absolute pressure of the air around, Pa
     */
    public static Optional<Double> value(String text, Quantity quantity, double ambient) {
        Matcher matcher = FORM.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double number = number(matcher.group(1)).doubleValue();
        return scale(matcher.group(2), quantity)
                .map(scale -> scale.toSi(number, quantity, ambient));
    }

    /** The number of a text that {@link #NUMBER} matches. */
    static BigDecimal number(String text) {
        return new BigDecimal(text.replace('\u2212', '-'));
    }

    /** {@code a force}, {@code an absolute pressure}. */
    public static String a(Quantity quantity) {
        String words = quantity.words();
        return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
    }

    /** What would have been a literal of this quantity, for findings. */
    public static String expected(Quantity quantity) {
        List<Unit> units = Units.of(quantity.dimension());
        String names =
                units.stream()
                        .map(Unit::symbol)
                        .filter(s -> !s.equals("1"))
                        .collect(Collectors.joining(", "));
        if (names.isEmpty()) {
            return "a number";
        }
        return "a number and a unit: "
                + names
                + (quantity.dimension() == Dimension.PRESSURE ? ", with \"gauge\" or \"abs\"" : "");
    }
}

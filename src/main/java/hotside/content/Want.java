// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A kind of value that a key may ask for.
 *
 * @param said what to call it
 * @param sample a value written after the key's colon
 */
record Want(String said, String sample) {
    static final Want TEXT = new Want("text", "some text");
    static final Want NUMBER = new Want("a number without a unit", "1.5");
    static final Want LIST = new Want("a list", "[first, second]");
    static final Want WORDS = new Want("a word or a list of words", "[first, second]");
    static final Want MAP = new Want("a map", "{name: value}");

    private static final int LONGEST_NUMBER = 40;
    private static final Pattern WHOLE_NUMBER = Pattern.compile("[-+]?\\d{1,9}");
    private static final Pattern DECIMAL =
            Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final Pattern WITH_COMMA = Pattern.compile("[-+]?\\d+,\\d+");
    private static final Pattern WITH_MORE =
            Pattern.compile("([-+]?\\d+(\\.\\d+)?)\\s*[^\\d\\s.,eExX].*");

    static Want whole(int min, int max) {
        return new Want("a whole number from " + min + " to " + max, Integer.toString(min));
    }

    /** How a key with such a value is written. */
    String example(String key) {
        return "\"" + Visible.cut(key, 60) + ": " + sample + "\"";
    }

    /** A typed number with its minus sign as computers know it. */
    static String digits(String typed) {
        return typed.strip().replace('−', '-');
    }

    static Optional<Integer> whole(String text) {
        return WHOLE_NUMBER.matcher(text).matches()
                ? Optional.of(Integer.valueOf(text))
                : Optional.empty();
    }

    static Optional<Double> number(String text) {
        return text.length() <= LONGEST_NUMBER && DECIMAL.matcher(text).matches()
                ? Optional.of(Double.valueOf(text)).filter(d -> !d.isInfinite())
                : Optional.empty();
    }

    /** The number probably meant: with a point for a comma, or without its unit. */
    static Optional<String> mendNumber(String text) {
        if (text.length() > LONGEST_NUMBER) {
            return Optional.empty();
        }
        if (WITH_COMMA.matcher(text).matches()) {
            return Optional.of('"' + text.replace(',', '.') + '"');
        }
        var more = WITH_MORE.matcher(text);
        return more.matches() ? Optional.of('"' + more.group(1) + '"') : Optional.empty();
    }
}

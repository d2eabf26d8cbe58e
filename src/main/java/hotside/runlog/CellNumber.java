// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.DecimalHabit;
import java.util.regex.Pattern;

/**
 * A number in a cell, read in place: a million rows leave no time for a text each. Digits and one
 * decimal mark are read here, exactly; whatever else a number may hold goes the slow way.
 */
final class CellNumber {
    private static final int EXACT_DIGITS = 15;
    private static final double[] TENS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,4})?");
    private static final String GROUPED = "[+-]?[0-9]{1,3}(?:%s[0-9]{3})+(?:%s[0-9]*)?";
    private static final String SPACES = "[ '\u2019\u00A0\u202F]";
    private static final Pattern POINT_GROUPS =
            Pattern.compile(String.format(GROUPED, "(?:,|" + SPACES + ")", "\\."));
    private static final Pattern COMMA_GROUPS =
            Pattern.compile(String.format(GROUPED, "(?:\\.|" + SPACES + ")", ","));
    private static final int LONGEST = 60;

    private CellNumber() {}

    /**
     * The number, or NaN if the cell holds none.
     *
     * @param habit the file's decimal mark; {@code UNKNOWN} counts as a point
     */
    static double of(char[] text, int from, int to, DecimalHabit habit) {
        char mark = habit == DecimalHabit.COMMA ? ',' : '.';
        int at = from;
        boolean negative = at < to && text[at] == '-';
        if (negative || at < to && text[at] == '+') {
            at++;
        }
        long digits = 0;
        int count = 0;
        int decimals = -1;
        for (; at < to; at++) {
            char c = text[at];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                count++;
                decimals += decimals >= 0 ? 1 : 0;
                if (count > EXACT_DIGITS) {
                    return slowly(text, from, to, habit);
                }
            } else if (c == mark && decimals < 0) {
                decimals = 0;
            } else {
                return slowly(text, from, to, habit);
            }
        }
        if (count == 0) {
            return Double.NaN;
        }
        // Both whole numbers are exact in a double, so their quotient is the nearest double.
        double value = digits / TENS[Math.max(0, decimals)];
        return negative ? -value : value;
    }

    private static double slowly(char[] text, int from, int to, DecimalHabit habit) {
        if (to - from > LONGEST) {
            return Double.NaN;
        }
        String cell = new String(text, from, to - from).replace('\u2212', '-');
        boolean comma = habit == DecimalHabit.COMMA;
        if ((comma ? COMMA_GROUPS : POINT_GROUPS).matcher(cell).matches()) {
            cell = cell.replaceAll(SPACES + (comma ? "|\\." : "|,"), "");
        } else if (comma && cell.indexOf('.') >= 0) {
            return Double.NaN;
        }
        String plain = comma ? cell.replace(',', '.') : cell;
        return NUMBER.matcher(plain).matches() ? finite(Double.parseDouble(plain)) : Double.NaN;
    }

    private static double finite(double value) {
        return Double.isFinite(value) ? value : Double.NaN;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number at the start of a typed line, and what follows it.
 *
 * @param typed the number as typed
 * @param rest what follows, without blanks at its ends
 * @param value the number, the mark before three digits being decimal where it could also group;
 *     NaN if the marks stand in odd places
 * @param grouped the number if that mark groups thousands; NaN where there is only one reading
 * @param digits significant digits: leading zeros don't count, trailing ones do
 * @param habit the decimal mark that the number gives away
 * @param mark the mark that could be either; 0 where there is only one reading
 */
record NumberText(
        String typed,
        String rest,
        double value,
        double grouped,
        int digits,
        DecimalHabit habit,
        char mark) {
    /** A fraction is exact: it has as many digits as a double. */
    private static final int EXACT = 15;

    private static final Map<Character, Double> VULGAR =
            Map.ofEntries(
                    Map.entry('½', 1 / 2.0),
                    Map.entry('⅓', 1 / 3.0),
                    Map.entry('⅔', 2 / 3.0),
                    Map.entry('¼', 1 / 4.0),
                    Map.entry('¾', 3 / 4.0),
                    Map.entry('⅕', 1 / 5.0),
                    Map.entry('⅖', 2 / 5.0),
                    Map.entry('⅗', 3 / 5.0),
                    Map.entry('⅘', 4 / 5.0),
                    Map.entry('⅙', 1 / 6.0),
                    Map.entry('⅚', 5 / 6.0),
                    Map.entry('⅛', 1 / 8.0),
                    Map.entry('⅜', 3 / 8.0),
                    Map.entry('⅝', 5 / 8.0),
                    Map.entry('⅞', 7 / 8.0));
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final String SIGN = "(?<sign>[+-]?)[ \u00A0]?";
    private static final Pattern FRACTION =
            Pattern.compile(
                    SIGN
                            + "(?:(?<whole>[0-9]+)[ \u00A0-])?(?<over>[0-9]+) ?[/⁄] ?(?<under>[0-9]+)(?![0-9.,])");
    private static final Pattern VULGAR_FRACTION =
            Pattern.compile(SIGN + "(?<whole>[0-9]*)[ \u00A0]?(?<fraction>[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])");
    private static final String POWER =
            "(?:(?:\\^|\\*\\*)\\(?(?<power>[+-]?[0-9]+)\\)?|(?<raised>[⁺⁻]?["
                    + SUPERSCRIPTS
                    + "]+))";
    private static final Pattern POWER_OF_TEN = Pattern.compile(SIGN + "10" + POWER);
    private static final String SPACED =
            "[0-9]{1,3}(?<gap>[ '\u00A0])[0-9]{3}(?![0-9/])(?:\\k<gap>[0-9]{3}(?![0-9/]))*";
    private static final String ONE_MARK = "[0-9]*[.,][0-9]+";
    private static final String THOUSANDS = "[1-9][0-9]{0,2}([.,])[0-9]{3}(?:\\1[0-9]{3})*";
    private static final String THOUSANDS_AND_DECIMALS = THOUSANDS + "(?!\\1)[.,][0-9]+";
    private static final Pattern DECIMAL =
            Pattern.compile(
                    SIGN
                            + "(?<body>(?:"
                            + SPACED
                            + "|[0-9]+)(?:[.,][0-9]+)*|[.,][0-9]+)[.,]?"
                            + "(?:[eE](?<e>[+-]?[0-9]+)|[ \u00A0]?[x×X*·⋅][ \u00A0]?10"
                            + POWER
                            + ")?");

    /** The number that tidy text begins with; empty if it begins with none. */
    static Optional<NumberText> read(String tidy) {
        Matcher m = FRACTION.matcher(tidy);
        if (m.lookingAt()) {
            double part = number(m.group("over")) / number(m.group("under"));
            return Optional.of(fraction(m, tidy, part));
        }
        m = VULGAR_FRACTION.matcher(tidy);
        if (m.lookingAt()) {
            return Optional.of(fraction(m, tidy, VULGAR.get(m.group("fraction").charAt(0))));
        }
        m = POWER_OF_TEN.matcher(tidy);
        if (m.lookingAt()) {
            double value = number("1e" + exponent(m));
            return Optional.of(only(m, tidy, value, 1, DecimalHabit.UNKNOWN));
        }
        m = DECIMAL.matcher(tidy);
        return m.lookingAt() ? Optional.of(decimal(m, tidy)) : Optional.empty();
    }

    /** True if the number can be read in two ways. */
    boolean eitherWay() {
        return mark != 0;
    }

    private static NumberText fraction(Matcher m, String tidy, double part) {
        String whole = m.group("whole");
        double value = (whole == null || whole.isEmpty() ? 0 : number(whole)) + part;
        return only(m, tidy, value, EXACT, DecimalHabit.UNKNOWN);
    }

    private static NumberText decimal(Matcher m, String tidy) {
        String exponent = m.group("e") != null ? m.group("e") : exponent(m);
        String bare = m.group("body").replaceAll("[ '\u00A0]", "");
        String all = bare.replaceAll("[.,]", "");
        int digits = digits(all);
        double whole = number(all + "e" + exponent);
        if (bare.equals(all)) {
            return only(m, tidy, whole, digits, DecimalHabit.UNKNOWN);
        }
        int last = Math.max(bare.lastIndexOf('.'), bare.lastIndexOf(','));
        String fraction = bare.substring(last + 1);
        String before = all.substring(0, all.length() - fraction.length());
        double decimal = number(before + "." + fraction + "e" + exponent);
        char mark = bare.charAt(last);
        boolean spaced = bare.length() < m.group("body").length();
        boolean oneMark = bare.matches(ONE_MARK);
        boolean thousands = !spaced && bare.matches(THOUSANDS);
        if (oneMark && thousands && exponent.equals("0")) {
            return either(m, tidy, decimal, whole, digits, mark);
        }
        if (oneMark || !spaced && bare.matches(THOUSANDS_AND_DECIMALS)) {
            return only(m, tidy, decimal, digits, habit(mark));
        }
        return thousands
                ? only(m, tidy, whole, digits, habit(mark == '.' ? ',' : '.'))
                : only(m, tidy, Double.NaN, digits, DecimalHabit.UNKNOWN);
    }

    private static NumberText either(
            Matcher m, String tidy, double decimal, double grouped, int digits, char mark) {
        return new NumberText(
                typed(m),
                rest(m, tidy),
                signed(m, decimal),
                signed(m, grouped),
                digits,
                DecimalHabit.UNKNOWN,
                mark);
    }

    private static NumberText only(
            Matcher m, String tidy, double value, int digits, DecimalHabit habit) {
        return new NumberText(
                typed(m), rest(m, tidy), signed(m, value), Double.NaN, digits, habit, (char) 0);
    }

    private static DecimalHabit habit(char decimalMark) {
        return decimalMark == '.' ? DecimalHabit.POINT : DecimalHabit.COMMA;
    }

    private static String typed(Matcher m) {
        return Spelling.tidy(m.group());
    }

    private static String rest(Matcher m, String tidy) {
        return Spelling.tidy(tidy.substring(m.end())).replace(Spelling.FIXED_SPACE, ' ');
    }

    private static double signed(Matcher m, double value) {
        return m.group("sign").equals("-") ? -value : value;
    }

    private static String exponent(Matcher m) {
        if (m.group("power") != null) {
            return m.group("power");
        }
        if (m.group("raised") == null) {
            return "0";
        }
        StringBuilder plain = new StringBuilder();
        for (char c : m.group("raised").toCharArray()) {
            int digit = SUPERSCRIPTS.indexOf(c);
            plain.append(digit >= 0 ? (char) ('0' + digit) : c == '⁻' ? '-' : '+');
        }
        return plain.toString();
    }

    private static double number(String digits) {
        return Double.parseDouble(digits);
    }

    private static int digits(String digits) {
        String significant = digits.replaceFirst("^0+", "");
        return Math.max(1, significant.length());
    }
}

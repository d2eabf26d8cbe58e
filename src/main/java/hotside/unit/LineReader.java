// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one line. */
final class LineReader {
    /** A number with its unit is a few characters; this keeps pasted pages out. */
    static final int LONGEST = 200;

    private static final Set<String> YES = Set.of("yes", "y", "true", "1", "on", "ja", "j");
    private static final Set<String> NO = Set.of("no", "n", "false", "0", "off", "nein");
    private static final Pattern FEET_INCHES =
            Pattern.compile(
                    "([+-]?)([0-9]+) ?(?:'|′|ft|feet|foot) ?-? ?([0-9].*?) ?(?:\"|''|in\\.?|inch|inches)",
                    Pattern.CASE_INSENSITIVE);
    private static final int INCHES_IN_A_FOOT = 12;

    private final Expected expected;
    private final UnitReader units;

    LineReader(Expected expected) {
        this.expected = expected;
        this.units = new UnitReader(expected);
    }

    Typed read(String text) {
        if (text.length() > LONGEST) {
            return not(UnitWords.of("too-long", text.length(), expected.sentence()));
        }
        String line = Spelling.tidy(text);
        if (line.isEmpty()) {
            return not(UnitWords.of("nothing", expected.sentence()));
        }
        if (expected.quantity() == Quantity.FLAG) {
            return flag(line);
        }
        Matcher feet = FEET_INCHES.matcher(line);
        if (expected.quantity() == Quantity.LENGTH && feet.matches()) {
            return feetAndInches(feet, line);
        }
        return NumberText.read(line)
                .map(number -> withUnit(number, line))
                .orElseGet(
                        () ->
                                not(
                                        UnitWords.of(
                                                "no-number",
                                                Spelling.quote(line),
                                                expected.sentence())));
    }

    private Typed flag(String line) {
        String word = line.toLowerCase(Locale.ROOT);
        if (YES.contains(word) || NO.contains(word)) {
            double value = YES.contains(word) ? 1 : 0;
            return new Typed.Understood(value, value, Quantity.FLAG.siScale(), false, 1);
        }
        return not(UnitWords.of("neither", Spelling.quote(line), expected.sentence()));
    }

    private Typed feetAndInches(Matcher feet, String line) {
        Optional<NumberText> inches =
                NumberText.read(feet.group(3)).filter(n -> n.rest().isEmpty() && !n.eitherWay());
        if (inches.isEmpty() || Double.isNaN(inches.get().value())) {
            return not(UnitWords.of("inches", Spelling.quote(line)));
        }
        double size = INCHES_IN_A_FOOT * Double.parseDouble(feet.group(2)) + inches.get().value();
        double signed = feet.group(1).equals("-") ? -size : size;
        Scale scale = new Scale(Units.bySymbol(Dimension.LENGTH, "in"), Reference.NONE);
        int digits = Math.min(15, feet.group(2).length() + inches.get().digits());
        return understood(signed, scale, true, digits, line);
    }

    private Typed withUnit(NumberText number, String line) {
        if (Double.isNaN(number.value())) {
            return not(UnitWords.of("odd-marks", Spelling.quote(number.typed())));
        }
        Optional<Scale> found = units.scale(number.rest());
        if (found.isEmpty()) {
            return not(units.complaint(number, line));
        }
        Scale scale = found.get();
        boolean unitTyped = !number.rest().isEmpty();
        Typed decimal = understood(number.value(), scale, unitTyped, number.digits(), line);
        if (!number.eitherWay()) {
            return decimal;
        }
        Typed grouped = understood(number.grouped(), scale, unitTyped, number.digits(), line);
        DecimalHabit ifDecimal = number.mark() == '.' ? DecimalHabit.POINT : DecimalHabit.COMMA;
        DecimalHabit ifGrouped = number.mark() == '.' ? DecimalHabit.COMMA : DecimalHabit.POINT;
        if (expected.habit() != DecimalHabit.UNKNOWN) {
            return expected.habit() == ifDecimal ? decimal : grouped;
        }
        if (decimal instanceof Typed.Understood one && grouped instanceof Typed.Understood two) {
            return new Typed.Ambiguous(question(number, scale), one, two, ifDecimal, ifGrouped);
        }
        return grouped instanceof Typed.Understood ? grouped : decimal;
    }

    private static String question(NumberText number, Scale scale) {
        String mark = String.valueOf(number.mark());
        return UnitWords.of(
                "two-ways",
                Spelling.quote(number.typed()),
                told(number.value(), scale),
                told(number.grouped(), scale),
                number.typed() + "0",
                number.typed().replace(mark, ""));
    }

    private static String told(double value, Scale scale) {
        return Shown.join(DecimalHabit.spoken().write(Numbers.plain(value)), scale);
    }

    private Typed understood(
            double value, Scale scale, boolean unitTyped, int digits, String line) {
        double si = scale.toSi(value, expected.quantity(), expected.ambient());
        if (!Double.isFinite(si)) {
            return not(UnitWords.of("too-large", Spelling.quote(line), expected.sentence()));
        }
        if (expected.quantity() == Quantity.COUNT && value != Math.rint(value)) {
            return not(UnitWords.of("not-whole", Spelling.quote(line), expected.sentence()));
        }
        return new Typed.Understood(si, value, scale, unitTyped, digits);
    }

    private static Typed.NotUnderstood not(String message) {
        return new Typed.NotUnderstood(message);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.Numbers;
import hotside.unit.Quantity;
import java.util.HashMap;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes the lines of a working in TeX: once with symbols, once with the numbers put in. */
public final class StepTex {
    /** Significant digits of numbers put in and of results. */
    public static final int DIGITS = 6;

    private static final Pattern NAME = Pattern.compile("@([A-Za-z][A-Za-z0-9]*)(\\s*\\^)?");

    /** Where one factor ends and the next begins, with at most a space between. */
    private static final Pattern SIDE_BY_SIDE =
            Pattern.compile(
                    "(?<=[0-9)}]|@[A-Za-z0-9]{1,60})(?:\\\\[,;: ]|\\s)*(?=@)"
                            + "|(?<=@[A-Za-z0-9]{1,60})(?:\\\\[,;: ]|\\s)*(?=\\\\frac)");

    /** What is applied to the next thing rather than multiplied by it, with its limits. */
    private static final Pattern APPLIED =
            Pattern.compile(
                    "\\\\(?:sum|prod|int|log|ln|lg|exp|max|min|sin|cos|tan|text|mathrm|operatorname)"
                            + "(?:[_^]?\\{[^{}]*}|[_^]\\\\?\\w)*$");

    private record Known(String symbol, Quantity quantity, Object value) {}

    private final Map<String, Known> known = new HashMap<>();

    public StepTex(Worked worked) {
        for (Slot slot : worked.relation().inputs()) {
            known.put(
                    slot.name(),
                    new Known(slot.symbol(), slot.quantity(), worked.in().get(slot.name())));
        }
        worked.steps()
                .forEach(s -> known.put(s.name(), new Known(s.symbol(), s.quantity(), s.value())));
    }

    /**
     * The line with symbols: {@code A = \frac{\pi}{4} d_s^2}; the symbol alone for a line in words.
     */
    public String symbolic(Step step) {
        return step.formula().isEmpty()
                ? step.symbol()
                : step.symbol() + " = " + replace(step.formula(), (k, power) -> k.symbol() + power);
    }

    /** The line with numbers in SI units and its result. */
    public String numeric(Step step) {
        String result = quantity(step.value(), step.quantity());
        if (step.formula().isEmpty()) {
            return step.symbol() + " = " + result;
        }
        String filled =
                replace(
                        multiplied(step.formula()),
                        (k, power) -> {
                            String text =
                                    k.value() instanceof Double number
                                            ? quantity(number, k.quantity())
                                            : k.symbol();
                            return power.isEmpty() && !text.startsWith("-")
                                    ? text
                                    : "\\left(" + text + "\\right)" + power;
                        });
        return step.symbol() + " = " + filled + " = " + result;
    }

    /**
     * A formula as it must stand before numbers are put in: two numbers side by side would read as
     * one.
     */
    public static String multiplied(String formula) {
        Matcher matcher = SIDE_BY_SIDE.matcher(formula);
        return matcher.replaceAll(
                gap -> {
                    boolean applied = APPLIED.matcher(formula.substring(0, gap.start())).find();
                    return Matcher.quoteReplacement(applied ? gap.group() : "\\times ");
                });
    }

    /** Both in one line, as for another program. */
    public String whole(Step step) {
        String numeric = numeric(step);
        return step.formula().isEmpty()
                ? numeric
                : symbolic(step) + numeric.substring(step.symbol().length());
    }

    /** A number with its SI unit in TeX. */
    public static String quantity(double value, Quantity quantity) {
        String unit = quantity.si().symbol();
        return number(written(value, quantity))
                + (unit.equals("1") ? "" : "\\,\\mathrm{" + unit.replace("·", "\\,") + "}");
    }

    /**
     * A number of a working: whole where it counts, else no more digits than it has or {@link
     * #DIGITS}.
     */
    public static String written(double value, Quantity quantity) {
        boolean counted = quantity == Quantity.COUNT || quantity == Quantity.FLAG;
        return counted ? Numbers.plain(value) : Numbers.upTo(value, DIGITS);
    }

    private static String number(String shown) {
        String text = shown.replace('−', '-');
        int times = text.indexOf("×10");
        if (times < 0) {
            return text;
        }
        String exponent = text.substring(times + 3);
        StringBuilder plain = new StringBuilder();
        for (char c : exponent.toCharArray()) {
            plain.append(c == '⁻' ? '-' : (char) ('0' + "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c)));
        }
        return text.substring(0, times) + "\\times 10^{" + plain + "}";
    }

    private String replace(String formula, BiFunction<Known, String, String> with) {
        Matcher matcher = NAME.matcher(formula);
        StringBuilder out = new StringBuilder();
        while (matcher.find()) {
            Known value = known.get(matcher.group(1));
            if (value == null) {
                throw new IllegalStateException(
                        "formula names what is not known: @" + matcher.group(1));
            }
            String power = matcher.group(2) == null ? "" : "^";
            matcher.appendReplacement(out, Matcher.quoteReplacement(with.apply(value, power)));
        }
        matcher.appendTail(out);
        return out.toString();
    }
}

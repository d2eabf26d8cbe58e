// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.Values;
import hotside.unit.Dimension;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a statement holds: comparisons of a problem's values, joined by "and", such as {@code
 * small.drop > large.drop and gain.low > 0 kW}.
 *
 * @param all each must be true
 */
public record Condition(List<Comparison> all) {
    /** What always holds. */
    static final Condition ALWAYS = new Condition(List.of());

    /** Values closer together than this, relatively, are too close to be called. */
    private static final double CLOSE = 0.005;

    private static final Pattern COMPARISON =
            Pattern.compile("([^<>]{1,80}?)\\s*(<=|>=|<|>)\\s*([^<>=]{1,80})");
    private static final int LONGEST = 300;

    public Condition {
        all = List.copyOf(all);
    }

    /**
     * @param greater true for {@code >} and {@code >=}
     * @param inclusive true for {@code <=} and {@code >=}
     * @param quantity what both sides measure
     */
    record Comparison(
            String left, boolean greater, boolean inclusive, String right, Quantity quantity) {

        /**
         * Whether it is true; nothing if the two are too close for anybody to tell.
         *
         * @param ambient absolute pressure of the air around, Pa
         */
        Optional<Boolean> holds(Values values, double ambient) {
            double a = value(left, values, ambient);
            double b = value(right, values, ambient);
            boolean exact = quantity.dimension() == Dimension.NONE;
            if (!exact && Math.abs(a - b) <= CLOSE * Math.max(Math.abs(a), Math.abs(b))) {
                return Optional.empty();
            }
            return Optional.of(a == b ? inclusive : a > b == greater);
        }

        private double value(String text, Values values, double ambient) {
            return values.has(text)
                    ? values.number(text)
                    : Literal.value(text, quantity, ambient).orElseThrow();
        }
    }

    /**
     * Whether all comparisons are true; nothing if one of them cannot be told.
     *
     * @param values by place
     */
    Optional<Boolean> holds(Values values, double ambient) {
        boolean holds = true;
        for (Comparison comparison : all) {
            Optional<Boolean> one = comparison.holds(values, ambient);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            holds &= one.get();
        }
        return Optional.of(holds);
    }

    /** What never holds. */
    static Condition never() {
        return new Condition(List.of(new Comparison("0", true, false, "1", Quantity.COUNT)));
    }

    /** What is wrong with a condition's text. */
    static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;
        private final String expected;

        Unreadable(String what, String expected) {
            super(what, null, false, false);
            this.expected = expected;
        }

        String expected() {
            return expected;
        }
    }

    /**
     * @param quantities what the value at a place measures; nothing if there is none
     */
    static Condition read(String text, Function<String, Optional<Quantity>> quantities)
            throws Unreadable {
        if (text.length() > LONGEST) {
            throw new Unreadable(
                    "a condition of " + text.length() + " characters", "at most " + LONGEST);
        }
        List<Comparison> all = new ArrayList<>();
        for (String part : text.strip().split("\\s+and\\s+")) {
            Matcher matcher = COMPARISON.matcher(part.strip());
            if (!matcher.matches()) {
                throw new Unreadable(
                        "\"" + part + "\" compares nothing",
                        "two values with <, >, <= or >= between, such as \"small.drop > large.drop\"");
            }
            all.add(comparison(matcher, quantities));
        }
        return new Condition(all);
    }

    private static Comparison comparison(
            Matcher matcher, Function<String, Optional<Quantity>> quantities) throws Unreadable {
        String left = matcher.group(1).strip();
        String right = matcher.group(3).strip();
        Optional<Quantity> a = quantities.apply(left);
        Optional<Quantity> b = quantities.apply(right);
        if (a.isEmpty() && b.isEmpty()) {
            throw new Unreadable(
                    "neither \"" + left + "\" nor \"" + right + "\" is a value of this problem",
                    "a given or a result, such as small.drop, on one side at least");
        }
        Quantity quantity = a.or(() -> b).orElseThrow();
        if (a.isPresent() && b.isPresent() && !ChainReader.fits(a.get(), b.get())) {
            throw new Unreadable(
                    left
                            + " is "
                            + Literal.a(a.get())
                            + ", but "
                            + right
                            + " is "
                            + Literal.a(b.get()),
                    "two values of the same kind");
        }
        String literal = a.isEmpty() ? left : right;
        if ((a.isEmpty() || b.isEmpty()) && Literal.value(literal, quantity, 0).isEmpty()) {
            throw new Unreadable("\"" + literal + "\" is no value", Literal.expected(quantity));
        }
        String sign = matcher.group(2);
        return new Comparison(left, sign.startsWith(">"), sign.endsWith("="), right, quantity);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * A named input or output of a relation. Immutable; each {@code with}-like method gives a changed
 * copy.
 *
 * <p>Two ranges guard an input. Outside {@linkplain #range} the relation has no meaning and refuses
 * to work. Outside {@linkplain #usual} it works, and says which assumption weakens.
 */
public final class Slot {
    /** What a slot holds. */
    public enum Kind {
        /** One number. */
        NUMBER,
        /** A row of readings. */
        NUMBERS,
        /** One word out of {@link Slot#choices}. */
        CHOICE,
        /** Free text, such as a run order {@code ABBA}. */
        TEXT
    }

    private final String name;
    private final String symbol;
    private final Kind kind;
    private final Quantity quantity;
    private final String meaning;
    private final double min;
    private final double max;
    private final boolean minExcluded;
    private final boolean maxExcluded;
    private final double usualMin;
    private final double usualMax;
    private final String usualReason;
    private final boolean usualSaid;
    private final Object typical;
    private final Object fallback;
    private final List<String> choices;
    private final String siShown;
    private final String usShown;

    /** The id of the relation that it belongs to; empty while it belongs to none. */
    private final String relation;

    private Slot(Draft d) {
        this.relation = d.relation;
        this.name = d.name;
        this.symbol = d.symbol;
        this.kind = d.kind;
        this.quantity = d.quantity;
        this.meaning = d.meaning;
        this.min = d.min;
        this.max = d.max;
        this.minExcluded = d.minExcluded;
        this.maxExcluded = d.maxExcluded;
        this.usualMin = d.usualMin;
        this.usualMax = d.usualMax;
        this.usualReason = d.usualReason;
        this.usualSaid = d.usualSaid;
        this.typical = d.typical;
        this.fallback = d.fallback;
        this.choices = d.choices;
        this.siShown = d.siShown;
        this.usShown = d.usShown;
    }

    /**
     * A slot for one number.
     *
     * @param name as on the command line, such as {@code seatDiameter}
     * @param symbol in TeX, such as {@code d_s}
     * @param quantity what it measures; the core counts in its SI unit
     * @param meaning a phrase for people, without the unit
     */
    public static Slot number(String name, String symbol, Quantity quantity, String meaning) {
        return new Draft(name, symbol, Kind.NUMBER, quantity, meaning).build();
    }

    /** A slot for a row of readings. */
    public static Slot numbers(String name, String symbol, Quantity quantity, String meaning) {
        return new Draft(name, symbol, Kind.NUMBERS, quantity, meaning).build();
    }

    /** A slot for one word out of several. */
    public static Slot choice(String name, String meaning, String... choices) {
        Draft d = new Draft(name, "\\text{" + name + "}", Kind.CHOICE, Quantity.COUNT, meaning);
        d.choices = List.of(choices);
        d.typical = choices[0];
        return d.build();
    }

    /** A slot for text. */
    public static Slot text(String name, String meaning) {
        return new Draft(name, "\\text{" + name + "}", Kind.TEXT, Quantity.COUNT, meaning).build();
    }

    /** The numbers, in SI and both included, outside which the relation refuses to work. */
    public Slot range(double min, double max) {
        Draft d = new Draft(this);
        d.min = min;
        d.max = max;
        return d.build();
    }

    /** As {@link #range}, with the lower end itself refused. */
    public Slot above(double min, double max) {
        Draft d = new Draft(range(min, max));
        d.minExcluded = true;
        return d.build();
    }

    /** As {@link #range}, with both ends themselves refused. */
    public Slot between(double min, double max) {
        Draft d = new Draft(above(min, max));
        d.maxExcluded = true;
        return d.build();
    }

    /**
     * The numbers, in SI, for which the assumptions are good; also where a calculator's slider
     * runs.
     *
     * @param reason what fails outside, and roughly by how much
     */
    public Slot usual(double min, double max, String reason) {
        Draft d = new Draft(this);
        d.usualMin = min;
        d.usualMax = max;
        d.usualReason = reason;
        d.usualSaid = true;
        return d.build();
    }

    /** A sensible value to start from, in SI. */
    public Slot typical(double value) {
        Draft d = new Draft(this);
        d.typical = value;
        return d.build();
    }

    /** A sensible row of readings to start from, in SI. */
    public Slot typical(List<Double> values) {
        Draft d = new Draft(this);
        d.typical = List.copyOf(values);
        return d.build();
    }

    /** A sensible text to start from. */
    public Slot typical(String text) {
        Draft d = new Draft(this);
        d.typical = text;
        return d.build();
    }

    /** The slot as one of a relation, which knows its words in other languages. */
    Slot of(String relationId) {
        Draft d = new Draft(this);
        d.relation = relationId;
        return d.build();
    }

    /** Makes the slot optional. */
    public Slot orElse(double value) {
        Draft d = new Draft(this);
        d.fallback = value;
        d.typical = value;
        return d.build();
    }

    /** Makes the slot optional. */
    public Slot orElse(String word) {
        Draft d = new Draft(this);
        d.fallback = word;
        d.typical = word;
        return d.build();
    }

    /**
     * The slot for readings of a known quantity; itself if it does not hold readings as measured.
     * What is usual was said in numbers as people read them, so it counts in their unit: kW, not W.
     */
    Slot measuring(Quantity known) {
        if (quantity != Quantity.AS_MEASURED) {
            return this;
        }
        Draft d = new Draft(this);
        d.quantity = known;
        double unit = known.shown(UnitSystem.SI_SHOP).unit().factor();
        d.usualMin *= unit;
        d.usualMax *= unit;
        return d.build();
    }

    /**
     * Shows the slot in these units where the quantity's own would be clumsy: a pipe's length in m,
     * not mm.
     */
    public Slot shown(String siShop, String usShop) {
        Draft d = new Draft(this);
        d.siShown = siShop;
        d.usShown = usShop;
        return d.build();
    }

    public String name() {
        return name;
    }

    public String symbol() {
        return symbol;
    }

    public Kind kind() {
        return kind;
    }

    public Quantity quantity() {
        return quantity;
    }

    public String meaning() {
        return CardWords.card(relation + "." + name, meaning);
    }

    public double min() {
        return min;
    }

    public double max() {
        return max;
    }

    /** True if {@link #min} itself is refused. */
    public boolean minExcluded() {
        return minExcluded;
    }

    /** True if {@link #max} itself is refused. */
    public boolean maxExcluded() {
        return maxExcluded;
    }

    /** The lower end of the good range, in SI; {@link #min} where none was given. */
    public double usualMin() {
        return usualMin;
    }

    public double usualMax() {
        return usualMax;
    }

    /** What weakens outside the good range; empty where nothing was said. */
    public String usualReason() {
        return usualReason.isEmpty()
                ? usualReason
                : CardWords.card(relation + ".beyond." + name, usualReason);
    }

    /** A {@code Double}, {@code List<Double>} or {@code String} to start from. */
    public Object typical() {
        return typical;
    }

    /** What an optional slot holds when nothing is given. */
    public Optional<Object> fallback() {
        return Optional.ofNullable(fallback);
    }

    public List<String> choices() {
        return choices;
    }

    /** A choice as people read it, in the language spoken. */
    public String told(String choice) {
        return CardWords.card(relation + "." + name + ".is." + choice, choice);
    }

    /**
     * Symbol of the unit to show in an SI shop instead of the quantity's own; null for the usual
     * one.
     */
    public String siShown() {
        return siShown;
    }

    /**
     * Symbol of the unit to show in a US shop instead of the quantity's own; null for the usual
     * one.
     */
    public String usShown() {
        return usShown;
    }

    /** True if the relation can work with this number; NaN never is. */
    public boolean admits(double value) {
        boolean above = minExcluded ? value > min : value >= min;
        boolean below = maxExcluded ? value < max : value <= max;
        return above && below && !Double.isInfinite(value);
    }

    /** The range as people write it, in SI: {@code (0.0, 0.2] m}. */
    public String rangeText() {
        boolean endless = min == -Double.MAX_VALUE;
        String low =
                (endless || minExcluded ? "(" : "[")
                        + (endless ? RelationWords.of("range.lowest") : end(min));
        String high =
                max == Double.MAX_VALUE
                        ? RelationWords.of("range.highest") + ")"
                        : end(max) + (maxExcluded ? ")" : "]");
        String unit = quantity.siScale().told();
        return RelationWords.of("range", low, high) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String end(double value) {
        return DecimalHabit.spoken().write(String.valueOf(value));
    }

    private static final class Draft {
        private final String name;
        private final String symbol;
        private final Kind kind;
        private Quantity quantity;
        private final String meaning;
        private double min = -Double.MAX_VALUE;
        private double max = Double.MAX_VALUE;
        private boolean minExcluded;
        private boolean maxExcluded;
        private double usualMin;
        private double usualMax;
        private String usualReason = "";
        private boolean usualSaid;
        private Object typical;
        private Object fallback;
        private List<String> choices = List.of();
        private String siShown;
        private String usShown;
        private String relation = "";

        Draft(String name, String symbol, Kind kind, Quantity quantity, String meaning) {
            this.name = name;
            this.symbol = symbol;
            this.kind = kind;
            this.quantity = quantity;
            this.meaning = meaning;
        }

        Draft(Slot s) {
            this(s.name, s.symbol, s.kind, s.quantity, s.meaning);
            min = s.min;
            max = s.max;
            minExcluded = s.minExcluded;
            maxExcluded = s.maxExcluded;
            usualMin = s.usualMin;
            usualMax = s.usualMax;
            usualReason = s.usualReason;
            usualSaid = s.usualSaid;
            typical = s.typical;
            fallback = s.fallback;
            choices = s.choices;
            siShown = s.siShown;
            usShown = s.usShown;
            relation = s.relation;
        }

        Slot build() {
            if (!usualSaid) {
                usualMin = min;
                usualMax = max;
            }
            return new Slot(this);
        }
    }
}

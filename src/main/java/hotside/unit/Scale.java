// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.Locale;

/**
 * A unit with the zero it is counted from: {@code kPa gauge}, {@code kPa abs}, {@code mm}.
 *
 * @param unit the unit
 * @param reference the zero, for pressures; {@link Reference#NONE} otherwise
 */
public record Scale(Unit unit, Reference reference) {

    /**
     * The scale that a label such as {@code kPa gauge} or {@code mm} names; without a mark, a
     * pressure counts from the quantity's own zero.
     *
     * @throws IllegalArgumentException if the label names no unit of the quantity; the message
     *     lists those that would do
     */
    public static Scale of(Quantity quantity, String label) {
        Expected bare = Expected.of(quantity, (Scale) null);
        UnitReader reader = new UnitReader(bare);
        String tidy = Spelling.tidy(label);
        return reader.scale(tidy)
                .orElseThrow(() -> new IllegalArgumentException(reader.complaint(tidy)));
    }

    /** As a person reads it beside a number, in the language spoken; empty for a pure number. */
    public String told() {
        String symbol = unit.told();
        return reference == Reference.NONE
                ? symbol
                : symbol
                        + " "
                        + UnitWords.of("reference." + reference.name().toLowerCase(Locale.ROOT));
    }

    /** As files write it beside a number, whatever the language; empty for a pure number. */
    public String label() {
        String symbol = unit.symbol().equals("1") ? "" : unit.symbol();
        return switch (reference) {
            case ABSOLUTE -> symbol + " abs";
            case GAUGE -> symbol + " gauge";
            case NONE -> symbol;
        };
    }

    /**
     * The core's number for a reading on this scale.
     *
     * @param value the reading
     * @param quantity what it measures; of the dimension of this unit
     * @param ambient absolute ambient pressure in Pa, used when gauge and absolute meet
     * @return in SI; pressures of kind {@link Quantity#PRESSURE} absolute
     */
    public double toSi(double value, Quantity quantity, double ambient) {
        double si = value * unit.factor() + zero(quantity);
        return si + (inside(quantity) - counted(quantity)) * ambient;
    }

    /** The reading on this scale for the core's number; the inverse of {@link #toSi}. */
    public double fromSi(double si, Quantity quantity, double ambient) {
        double here = si - (inside(quantity) - counted(quantity)) * ambient;
        return (here - zero(quantity)) / unit.factor();
    }

    private double zero(Quantity quantity) {
        return quantity == Quantity.TEMPERATURE ? unit.offset() : 0;
    }

    /** 1 where the core's number contains ambient pressure. */
    private static int inside(Quantity quantity) {
        return quantity == Quantity.PRESSURE ? 1 : 0;
    }

    /**
     * 1 where the reading contains ambient pressure; an unmarked reading is taken as the quantity's
     * own kind.
     */
    private int counted(Quantity quantity) {
        if (quantity == Quantity.PRESSURE_DIFFERENCE || reference == Reference.NONE) {
            return inside(quantity);
        }
        return reference == Reference.ABSOLUTE ? 1 : 0;
    }
}

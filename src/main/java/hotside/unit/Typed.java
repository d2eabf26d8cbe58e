// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.List;

/**
 * What a person typed, read as a number with its unit.
 *
 * <p>Decimal point and comma are both understood, and where a mark could be either, the person is
 * asked: a guess would be wrong by a factor of a thousand. So are {@code 1.2e3}, {@code 1,2x10^3},
 * {@code 3 1/2 in}, {@code 5' 6"}, {@code 85 %}, and pressures marked {@code psig}, {@code kPa abs}
 * and the like. No text makes {@link #read} or {@link #list} throw.
 */
public sealed interface Typed {

    /**
     * Read without doubt.
     *
     * @param si the core's number
     * @param asTyped the number on the scale it was typed in
     * @param scale that scale
     * @param unitTyped whether the unit was typed, or taken from the field
     * @param significantDigits as typed, leading zeros left out; 15 for a fraction, which is exact
     */
    record Understood(
            double si, double asTyped, Scale scale, boolean unitTyped, int significantDigits)
            implements Typed {}

    /**
     * Two readings, both sensible. For a row it is the first doubtful reading; once the person has
     * answered, read again with the habit that the answer shows.
     *
     * @param question to put to the person
     * @param asDecimal the reading if the mark is decimal
     * @param asGrouped the reading if the mark groups thousands
     * @param ifDecimal the habit to remember if it is decimal
     * @param ifGrouped the habit to remember if it groups
     */
    record Ambiguous(
            String question,
            Understood asDecimal,
            Understood asGrouped,
            DecimalHabit ifDecimal,
            DecimalHabit ifGrouped)
            implements Typed, Row {}

    /**
     * Not read.
     *
     * @param message what is the matter, what was expected and how to mend it; whole sentences
     */
    record NotUnderstood(String message) implements Typed, Row {}

    /** A row of readings: {@link Readings}, {@link Ambiguous} or {@link NotUnderstood}. */
    sealed interface Row {}

    /** A row that was read without doubt; at least one reading. */
    record Readings(List<Understood> readings) implements Row {
        public Readings {
            readings = List.copyOf(readings);
        }

        /** The core's numbers, in the order typed. */
        public List<Double> si() {
            return readings.stream().map(Understood::si).toList();
        }
    }

    /** Reads one number with its unit. */
    static Typed read(String text, Expected expected) {
        return new LineReader(expected).read(text);
    }

    /**
     * Reads a row of readings. Spaces, tabs and line breaks separate them, or a comma with a space
     * after it; if there is a semicolon, semicolons and line breaks do, and a space may group
     * digits. A unit after the last reading alone is the unit of all.
     */
    static Row list(String text, Expected expected) {
        return new RowReader(expected).read(text);
    }
}

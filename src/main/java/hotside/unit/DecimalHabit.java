// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import hotside.speech.Language;

/** The decimal mark that a person writes, which decides what {@code 1,234} means. */
public enum DecimalHabit {
    /** {@code 1.5}; a comma before three digits groups thousands. */
    POINT,
    /** {@code 1,5}; a point before three digits groups thousands. */
    COMMA,
    /** Not known yet: where both readings make sense, ask. */
    UNKNOWN;

    /** The mark of the language that the program speaks, for numbers that people read. */
    public static DecimalHabit spoken() {
        return Language.spoken().decimalMark() == ',' ? COMMA : POINT;
    }

    /** A number that was written with a point, with this person's mark instead. */
    public String write(String number) {
        return this == COMMA ? number.replace('.', ',') : number;
    }

    /**
     * The habit that a typed number gives away: {@code 12,5} shows {@link #COMMA}, {@code 1,234.5}
     * shows {@link #POINT}; {@link #UNKNOWN} if it could be either.
     */
    public static DecimalHabit shownIn(String text) {
        return NumberText.read(Spelling.tidy(text)).map(NumberText::habit).orElse(UNKNOWN);
    }
}

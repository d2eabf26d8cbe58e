// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import hotside.speech.Phrases;

/** What this room says to people, kept in {@code words.properties} and its translations. */
final class UnitWords {
    private static final Phrases PHRASES = Phrases.of("hotside.unit.words");

    private UnitWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }

    /** A unit's symbol, where the language spoken writes another one. */
    static String symbol(String symbol) {
        return PHRASES.find("symbol." + symbol).orElse(symbol);
    }
}

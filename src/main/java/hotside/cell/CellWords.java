// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.speech.Phrases;
import hotside.speech.Translations;
import java.util.List;

/** What this room says to people, kept in {@code words.properties} and its translations. */
final class CellWords {
    private static final Phrases PHRASES = Phrases.of("hotside.cell.words");

    /** By {@code rig.id} and {@code part.id}. */
    private static final Translations STOCK = Translations.of("hotside.cell.stock");

    private CellWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }

    /** The words of a key in every language. */
    static List<String> all(String key) {
        return PHRASES.inEveryLanguage(key);
    }

    /** A title of the stock in the language spoken; as its file has it where there is no other. */
    static String title(String key, String english) {
        return STOCK.find(key).orElse(english);
    }
}

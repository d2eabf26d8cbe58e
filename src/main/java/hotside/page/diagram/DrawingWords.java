// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.speech.Phrases;

/** The words in drawings, kept in {@code words.properties} and its translations. */
final class DrawingWords {
    private static final Phrases PHRASES = Phrases.of("hotside.page.diagram.words");

    private DrawingWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }

    /** Words of several lines, with {@code |} between them. */
    static String[] lines(String key, Object... fillings) {
        return of(key, fillings).split("\\|");
    }
}

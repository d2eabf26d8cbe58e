// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.speech.Phrases;

/** What this room says to people, kept in {@code words.properties} and its translations. */
final class LogWords {
    private static final Phrases PHRASES = Phrases.of("hotside.runlog.words");

    private LogWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }

    /** A name set apart from the sentence that it stands in. */
    static String quoted(String name) {
        return of("quoted", name);
    }
}

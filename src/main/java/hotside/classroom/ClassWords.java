// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.speech.Phrases;

/** What is said of sets and hand-ins, kept in {@code words.properties} and its translations. */
final class ClassWords {
    private static final Phrases PHRASES = Phrases.of("hotside.classroom.words");

    private ClassWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }
}

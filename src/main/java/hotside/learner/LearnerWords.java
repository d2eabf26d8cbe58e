// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.speech.Phrases;

/** What is said of a record, kept in {@code words.properties} and its translations. */
final class LearnerWords {
    private static final Phrases PHRASES = Phrases.of("hotside.learner.words");

    private LearnerWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }
}

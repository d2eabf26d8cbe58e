// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.speech.Phrases;

/** What this room says to learners, kept in {@code words.properties} and its translations. */
final class ProblemWords {
    private static final Phrases PHRASES = Phrases.of("hotside.problem.words");

    private ProblemWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }
}

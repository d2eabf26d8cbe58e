// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.speech.Phrases;

/** What this room says to people, kept in {@code words.properties} and its translations. */
final class TrialWords {
    private static final Phrases PHRASES = Phrases.of("hotside.trial.words");

    private TrialWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }

    /** A topic by its English words, in the language spoken. */
    static String topic(String english) {
        return of("topic." + english.replace(' ', '-'));
    }

    /** A section of a rig in the language spoken. */
    static String section(String id) {
        return PHRASES.find("section." + id).orElse(id);
    }
}

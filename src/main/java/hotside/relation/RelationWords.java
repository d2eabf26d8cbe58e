// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.speech.Phrases;

/** What this room says of any relation, kept in {@code words.properties} and its translations. */
final class RelationWords {
    private static final Phrases PHRASES = Phrases.of("hotside.relation.words");

    private RelationWords() {}

    static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.speech.Phrases;

/**
 * The words of pages and of the desk around them, kept in {@code words.properties} and its
 * translations.
 */
public final class Words {
    private static final Phrases PHRASES = Phrases.of("hotside.page.words");

    private Words() {}

    /**
     * The words of this key in the language spoken, with {@code {0}}, {@code {1}} … filled in.
     *
     * @throws java.util.MissingResourceException if there are none; a test asks for every key that
     *     is used
     */
    public static String of(String key, Object... fillings) {
        return PHRASES.get(key, fillings);
    }
}

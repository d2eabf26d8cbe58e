// SPDX-License-Identifier: Apache-2.0
package hotside.speech;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;

/**
 * Words in other languages for things that carry their English words with them: {@code
 * cards_de.properties} for the cards of relations. What is not there stays in English.
 */
public final class Translations {
    private final Map<Language, ResourceBundle> bundles = new EnumMap<>(Language.class);

    private Translations(String name) {
        for (Language language : Language.values()) {
            if (language != Language.ENGLISH) {
                bundles.put(
                        language,
                        ResourceBundle.getBundle(name, language.bundles(), Phrases.NO_GUESSING));
            }
        }
    }

    /**
     * The translations of a bundle.
     *
     * @param name as {@code hotside.relation.cards}
     */
    public static Translations of(String name) {
        return new Translations(name);
    }

    /** The words of this key in the language spoken, if that is not English and has some. */
    public Optional<String> find(String key) {
        ResourceBundle bundle = bundles.get(Language.spoken());
        return bundle != null && bundle.containsKey(key)
                ? Optional.of(bundle.getString(key))
                : Optional.empty();
    }
}

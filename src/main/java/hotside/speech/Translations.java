// SPDX-License-Identifier: Apache-2.0
package hotside.speech;

import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Words in other languages for things that carry their English words with them: {@code
 * cards_de.properties} for the cards of relations. What is not there stays in English.
 */
public final class Translations {
    private final String name;

    /** Each language's is read when it is first spoken. */
    private final Map<Language, ResourceBundle> bundles = new ConcurrentHashMap<>();

    private Translations(String name) {
        this.name = name;
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
        Language spoken = Language.spoken();
        if (spoken == Language.ENGLISH) {
            return Optional.empty();
        }
        ResourceBundle bundle =
                bundles.computeIfAbsent(
                        spoken,
                        l -> ResourceBundle.getBundle(name, l.bundles(), Phrases.NO_GUESSING));
        return bundle.containsKey(key) ? Optional.of(bundle.getString(key)) : Optional.empty();
    }
}

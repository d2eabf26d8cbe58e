// SPDX-License-Identifier: Apache-2.0
package hotside.speech;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences of one room, kept in a bundle: {@code slips.properties} in English, {@code
 * slips_de.properties} in German. They come in the language spoken, where the bundle has it.
 */
public final class Phrases {
    static final ResourceBundle.Control NO_GUESSING =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private static final Pattern PLACE = Pattern.compile("\\{(\\d{1,2})}");

    private final String name;

    /** Each language's is read when it is first spoken. */
    private final Map<Language, ResourceBundle> bundles = new ConcurrentHashMap<>();

    private Phrases(String name) {
        this.name = name;
    }

    /**
     * The phrases of a bundle.
     *
     * @param name as {@code hotside.problem.slips}
     */
    public static Phrases of(String name) {
        return new Phrases(name);
    }

    /**
     * The words of this key, with {@code {0}}, {@code {1}} … filled in.
     *
     * @throws MissingResourceException if there are none
     */
    public String get(String key, Object... fillings) {
        String text = bundle().getString(key);
        return fillings.length == 0 ? text : filled(text, fillings);
    }

    /** In one go, so that a filling with braces of its own stays as it is. */
    private static String filled(String text, Object... fillings) {
        return PLACE.matcher(text)
                .replaceAll(
                        place -> {
                            int i = Integer.parseInt(place.group(1));
                            return Matcher.quoteReplacement(
                                    i < fillings.length
                                            ? String.valueOf(fillings[i])
                                            : place.group());
                        });
    }

    /**
     * The words of this key in every language, English first: for names that a person may have
     * typed in another language than the one spoken.
     *
     * @throws MissingResourceException if there are none
     */
    public List<String> inEveryLanguage(String key) {
        return Arrays.stream(Language.values())
                .map(language -> bundle(language).getString(key))
                .distinct()
                .toList();
    }

    /** The words of this key, if there are some. */
    public Optional<String> find(String key) {
        return bundle().containsKey(key) ? Optional.of(bundle().getString(key)) : Optional.empty();
    }

    private ResourceBundle bundle() {
        return bundle(Language.spoken());
    }

    private ResourceBundle bundle(Language language) {
        return bundles.computeIfAbsent(
                language, l -> ResourceBundle.getBundle(name, l.bundles(), NO_GUESSING));
    }
}

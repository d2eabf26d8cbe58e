// SPDX-License-Identifier: Apache-2.0
package hotside.speech;

import java.text.Collator;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * A language that the program speaks.
 *
 * <p>One person sits at one desk, so the program speaks one language at a time: {@link #spoken}.
 * Only the desk changes it, before it draws its pages anew; the command line stays with English,
 * for scripts read what it says. Where a text has no words in the language spoken, the English ones
 * are taken.
 */
public enum Language {
    ENGLISH("en", "English", Locale.ROOT, '.'),
    GERMAN("de", "Deutsch", Locale.GERMAN, ',');

    private static volatile Language spoken = ENGLISH;

    private final String code;
    private final String ownName;
    private final Locale bundles;
    private final char decimalMark;

    Language(String code, String ownName, Locale bundles, char decimalMark) {
        this.code = code;
        this.ownName = ownName;
        this.bundles = bundles;
        this.decimalMark = decimalMark;
    }

    /** What the program speaks now. */
    public static Language spoken() {
        return spoken;
    }

    /** From now on the program speaks this; what is drawn already stays as it is. */
    public static void speak(Language language) {
        spoken = language;
    }

    /** The language of this code, if the program speaks it. */
    public static Optional<Language> find(String code) {
        return Arrays.stream(values()).filter(l -> l.code.equals(code)).findFirst();
    }

    /** The language of this machine if the program speaks it, else English. */
    public static Language of(Locale machine) {
        return find(machine.getLanguage()).orElse(ENGLISH);
    }

    /** As in names of bundles and of content folders: {@code de}. */
    public String code() {
        return code;
    }

    /** What its speakers call it. */
    public String ownName() {
        return ownName;
    }

    /** The mark before the decimals. */
    public char decimalMark() {
        return decimalMark;
    }

    /** In the order of its dictionaries, whatever the case. */
    public Comparator<String> alphabet() {
        return this == ENGLISH
                ? String.CASE_INSENSITIVE_ORDER
                : Collator.getInstance(bundles)::compare;
    }

    /** For the names of days and months. */
    public Locale dates() {
        return this == ENGLISH ? Locale.UK : bundles;
    }

    /** English stands in the bundles without a language. */
    Locale bundles() {
        return bundles;
    }
}

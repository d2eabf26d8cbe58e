// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A word of the trade with its meaning.
 *
 * @param name as it heads its entry
 * @param also other spellings that mean the same
 * @param meaning Markdown, a sentence or two
 * @param lesson the lesson that explains it, if the glossary names one
 * @param original the English term that it translates, if it is a translation
 * @param forms how name and spellings are bent in a text; not shown
 * @param place where its entry stands in the glossary's file
 */
public record Term(
        String name,
        List<String> also,
        String meaning,
        Optional<String> lesson,
        Optional<String> original,
        List<String> forms,
        Place place) {
    public Term {
        also = List.copyOf(also);
        forms = List.copyOf(forms);
    }

    /** A translation is explained where its original is, unless it says otherwise. */
    Term explainedIn(Optional<String> known) {
        return new Term(name, also, meaning, lesson.or(() -> known), original, forms, place);
    }

    /** As links name it: {@code absolute-pressure}. */
    public String slug() {
        return slug(name);
    }

    static String slug(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }

    /** All spellings, the name first. */
    public List<String> spellings() {
        List<String> all = new ArrayList<>(List.of(name));
        all.addAll(also);
        return all;
    }

    /** The spellings and their bent forms: all by which a text can name it. */
    List<String> inTexts() {
        List<String> all = spellings();
        all.addAll(forms);
        return all;
    }
}

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
 * @param place where its entry stands in the glossary's file
 */
public record Term(
        String name, List<String> also, String meaning, Optional<String> lesson, Place place) {
    public Term {
        also = List.copyOf(also);
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
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Lesson;
import hotside.problem.Template;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds English in a text by words that English sentences cannot do without and German ones do not
 * have. Titles that are marked as English are let be.
 */
final class EnglishWords {
    private static final String MARK = "(auf Englisch)";
    private static final int AROUND = 45;
    private static final Pattern ENGLISH =
            Pattern.compile(
                    "(?i)(?<![\\p{L}\\p{N}/.-])(the|of|and|is|with|are|this|that|from|for|your|you"
                            + "|not|it|its|has|to|mon|tue|ctrl|shift|table)(?![\\p{L}\\p{N}/-])");

    private final List<String> titles;

    private EnglishWords(List<String> titles) {
        this.titles = titles;
    }

    /** Where these lessons and problems may be named. */
    static EnglishWords besides(Library library) {
        Set<String> marked = new LinkedHashSet<>();
        Stream.concat(
                        library.course().lessons().stream().map(Lesson::title),
                        library.bank().all().stream().map(Template::title))
                .filter(title -> title.endsWith(MARK))
                .forEach(marked::add);
        // The longest first, for one may begin another.
        return new EnglishWords(
                marked.stream()
                        .sorted(Comparator.comparingInt(String::length).reversed())
                        .toList());
    }

    /** What stands around each English word, after the name of the text. */
    List<String> in(String name, String text) {
        String shown = text;
        for (String title : titles) {
            shown = shown.replace(title, "…");
        }
        String searched = shown;
        Matcher english = ENGLISH.matcher(searched);
        return english.results()
                .map(
                        word ->
                                searched.substring(
                                        Math.max(0, word.start() - AROUND),
                                        Math.min(searched.length(), word.end() + AROUND)))
                .map(near -> name + ": " + near.replaceAll("\\s+", " ").strip())
                .toList();
    }
}

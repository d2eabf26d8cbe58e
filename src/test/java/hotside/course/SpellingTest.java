// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.problem.ProblemBank;
import hotside.problem.Template;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Every word of lessons, glossary and problems stands in a general list of British English or among
 * the words of the trade. A word that is right and missing goes into {@code trade.txt}.
 */
class SpellingTest {
    private static final Pattern WORD = Pattern.compile("\\p{L}+(?:['’]\\p{L}+)*");
    private static final Pattern ORDER_OF_PULLS = Pattern.compile("[ABCD]{2,}");
    private static final Pattern NOT_PROSE =
            Pattern.compile(
                    "\\{\\{[^}]*}}|\\$\\$.*?\\$\\$|\\$[^$]*\\$|`[^`]*`|]\\([^)]*\\)",
                    Pattern.DOTALL);

    private static final Set<String> KNOWN = new HashSet<>();

    @BeforeAll
    static void readTheLists() throws IOException {
        try (InputStream general = list("british.txt.gz");
                InputStream plain = new GZIPInputStream(general);
                InputStream trade = list("trade.txt")) {
            add(plain);
            add(trade);
        }
    }

    private static InputStream list(String name) {
        return SpellingTest.class.getResourceAsStream("/hotside/spelling/" + name);
    }

    private static void add(InputStream in) {
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                .lines()
                .filter(line -> !line.startsWith("#"))
                .forEach(KNOWN::add);
    }

    private static Set<String> unknown(String text) {
        Set<String> unknown = new HashSet<>();
        Matcher words = WORD.matcher(text);
        while (words.find()) {
            String word = words.group().replace('’', '\'');
            String bare = word.toLowerCase(Locale.ROOT).replaceFirst("'s$", "");
            boolean sound =
                    bare.length() < 2
                            || KNOWN.contains(bare)
                            || ORDER_OF_PULLS.matcher(word).matches();
            if (!sound) {
                unknown.add(word);
            }
        }
        return unknown;
    }

    private static String prose(String markdown) {
        return NOT_PROSE.matcher(markdown).replaceAll(" ");
    }

    @Test
    void aMisspeltWordIsFoundAndARightOneIsNot() {
        assertEquals(Set.of("exaust"), unknown("The turbo's exaust isn't hot; ABBA."));
    }

    @Test
    void lessonsAreSpeltRightly() {
        TreeMap<String, Set<String>> wrong = new TreeMap<>();
        for (Lesson lesson : Course.shipped().lessons()) {
            String text =
                    lesson.title()
                            + " "
                            + String.join(" ", lesson.cautions())
                            + " "
                            + prose(Search.words(lesson));
            Set<String> unknown = unknown(text);
            if (!unknown.isEmpty()) {
                wrong.put(lesson.id(), unknown);
            }
        }
        assertTrue(wrong.isEmpty(), wrong.toString());
    }

    @Test
    void theGlossaryIsSpeltRightly() {
        List<Term> terms = Course.shipped().glossary().terms();
        String text =
                terms.stream()
                        .map(term -> term.name() + " " + prose(term.meaning()))
                        .collect(Collectors.joining(" "));
        assertEquals(Set.of(), unknown(text));
    }

    @Test
    void problemsAreSpeltRightly() {
        TreeMap<String, Set<String>> wrong = new TreeMap<>();
        for (Template problem : ProblemBank.shipped().all()) {
            String text =
                    prose(
                            String.join(
                                    " ",
                                    problem.title(),
                                    problem.prompt(),
                                    String.join(" ", problem.hints()),
                                    problem.why()));
            Set<String> unknown = unknown(text);
            if (!unknown.isEmpty()) {
                wrong.put(problem.id(), unknown);
            }
        }
        assertTrue(wrong.isEmpty(), wrong.toString());
    }
}

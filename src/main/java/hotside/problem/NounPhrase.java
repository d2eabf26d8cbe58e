// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.speech.Language;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The meaning of a slot as it stands in a sentence: {@code push of the exhaust, positive opens the
 * valve} becomes {@code the push of the exhaust}. What is a clause rather than a noun is quoted:
 * {@code the value for “how far the valve stands off its seat”}.
 */
final class NounPhrase {
    private static final Pattern ASIDE = Pattern.compile("\\s*[;:(?].*");
    private static final Set<String> CLAUSE =
            Set.of("how", "what", "where", "when", "whether", "why", "is", "are", "if");
    private static final Set<String> WITHOUT_ARTICLE =
            Set.of("the", "all", "both", "half", "each", "every", "one", "two", "its", "their");
    private static final Set<String> WANTS_MORE =
            Set.of("on", "of", "for", "from", "in", "with", "by", "to", "at", "and", "or", "over");

    private NounPhrase() {}

    /**
     * @param meaning a phrase, perhaps with an aside after a comma, colon or semicolon
     */
    static String of(String meaning) {
        String whole = ASIDE.matcher(meaning.strip()).replaceFirst("");
        if (Language.spoken() != Language.ENGLISH) {
            return quoted(withoutAside(whole));
        }
        String first = word(whole, 0);
        if (CLAUSE.contains(first) || first.isEmpty() || Character.isDigit(first.charAt(0))) {
            return quoted(whole);
        }
        String noun = withoutAside(whole);
        if (first.equals("a") || first.equals("an")) {
            return "the " + noun.substring(first.length()).strip();
        }
        boolean bare = WITHOUT_ARTICLE.contains(first) || first.endsWith("'s");
        return bare ? noun : "the " + noun;
    }

    private static String quoted(String text) {
        return ProblemWords.of("value-for", text);
    }

    /** Without what stands behind the first comma, unless the noun is not complete before it. */
    private static String withoutAside(String whole) {
        int comma = whole.indexOf(", ");
        if (comma < 0) {
            return whole;
        }
        String noun = whole.substring(0, comma);
        String last = word(noun, noun.lastIndexOf(' ') + 1);
        return WANTS_MORE.contains(last) ? whole : noun;
    }

    private static String word(String text, int from) {
        int end = text.indexOf(' ', from);
        return text.substring(from, end < 0 ? text.length() : end).toLowerCase(Locale.ROOT);
    }
}

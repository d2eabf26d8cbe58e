// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.speech.Language;
import hotside.speech.Translations;
import hotside.unit.DecimalHabit;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What relations say, in the language spoken. Their English stands beside their formulas; other
 * languages stand in {@code cards} by id and slot or step, and in {@code remarks} by how a sentence
 * begins. There {@code {0}} is the first number, or the first thing in quotes, of the English
 * sentence.
 */
final class CardWords {
    private static final Translations CARDS = Translations.of("hotside.relation.cards");
    private static final Translations REMARKS = Translations.of("hotside.relation.remarks");

    private static final int WORDS_OF_KEY = 6;
    private static final Pattern WORD = Pattern.compile("[A-Za-z]+");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
    private static final Pattern FILLING =
            Pattern.compile(
                    "\"([^\"]*)\""
                            + "|((?<![A-Za-z\\d.])[−-]?\\d+(?:\\.\\d+)?(?:E-?\\d+|×10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)?)");

    private CardWords() {}

    /** A title, a slot's meaning and the like. */
    static String card(String key, String english) {
        return CARDS.find(key).orElse(english);
    }

    /** What a step is for; where that hangs on the case, each case has a key of its own. */
    static String step(String relation, String step, String english) {
        if (isEnglish()) {
            return english;
        }
        String key = relation + ".step." + step;
        return CARDS.find(key + "." + beginning(english)).orElseGet(() -> card(key, english));
    }

    static String caution(String english) {
        return isEnglish() ? english : remark("caution.", english);
    }

    /** Why a relation cannot be worked: {@code relation: slot …}, or without the slot. */
    static String refusal(String slot, String english) {
        int colon = english.indexOf(": ");
        if (isEnglish() || colon < 0) {
            return english;
        }
        String relation = english.substring(0, colon + 2);
        String rest = english.substring(colon + 2);
        String subject = !slot.isEmpty() && rest.startsWith(slot + " ") ? slot + " " : "";
        return relation + subject + remark("refusal.", rest.substring(subject.length()));
    }

    private static boolean isEnglish() {
        return Language.spoken() == Language.ENGLISH;
    }

    private static String remark(String kind, String english) {
        return REMARKS.find(kind + beginning(english))
                .map(told -> filled(told, fillings(english)))
                .orElse(english);
    }

    /** {@code the-valve-is-open-before-there}; numbers and what is quoted do not count. */
    static String beginning(String english) {
        return WORD.matcher(FILLING.matcher(english).replaceAll(""))
                .results()
                .limit(WORDS_OF_KEY)
                .map(MatchResult::group)
                .collect(Collectors.joining("-"))
                .toLowerCase(Locale.ROOT);
    }

    private static List<String> fillings(String english) {
        return FILLING.matcher(english)
                .results()
                .map(m -> m.group(1) != null ? m.group(1) : DecimalHabit.spoken().write(m.group(2)))
                .toList();
    }

    private static String filled(String text, List<String> fillings) {
        return PLACE.matcher(text)
                .replaceAll(
                        place -> {
                            int i = Integer.parseInt(place.group(1));
                            return Matcher.quoteReplacement(
                                    i < fillings.size() ? fillings.get(i) : place.group());
                        });
    }
}

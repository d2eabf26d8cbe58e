// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a learner stands with a skill, ready to be told.
 *
 * @param id of the skill
 * @param name for people
 * @param strand the name of its strand
 * @param level 0 for untouched, then 1 straw, 2 bronze, 3 violet, 4 blue
 * @param right problems right without help
 * @param tries problems tried
 * @param answersMissing right answers that mastery still wants
 * @param problemsMissing different problems that it still wants
 * @param daysMissing days that it still wants
 * @param week true if it was still there a week later
 * @param flagged true if many tries did not lead to mastery
 * @param due when it is to be looked at again, in words
 */
public record SkillLine(
        String id,
        String name,
        String strand,
        int level,
        int right,
        int tries,
        int answersMissing,
        int problemsMissing,
        int daysMissing,
        boolean week,
        boolean flagged,
        Optional<String> due) {
    private static final int MASTERED = 4;
    private static final int LEVELS = 4;

    /** The bar in temper colours, with its word. */
    String temper() {
        return "<span class=\"temper\""
                + Html.attribute("data-level", String.valueOf(level))
                + "><span class=\"bar\" aria-hidden=\"true\">"
                + "<i></i>".repeat(LEVELS)
                + "</span> <span>"
                + Xml.escape(word())
                + "</span></span>";
    }

    /** The word that goes with the colour. */
    String word() {
        return Words.of("temper." + level + (level == MASTERED && week ? ".week" : ""));
    }

    /** The evidence in counts, and what mastery still wants. */
    String counts() {
        if (tries == 0) {
            return "";
        }
        List<String> wants = new ArrayList<>();
        if (answersMissing > 0) {
            wants.add(count("skill.wants-answers", answersMissing));
        }
        if (problemsMissing > 0) {
            wants.add(count("skill.wants-problems", problemsMissing));
        }
        if (daysMissing > 0) {
            wants.add(count("skill.wants-days", daysMissing));
        }
        String counts = Words.of("skill.counts", right, tries);
        String more =
                level == MASTERED || wants.isEmpty()
                        ? ""
                        : " " + Words.of("skill.wants", String.join(", ", wants));
        return counts + more + (flagged ? " " + Words.of("skill.flagged") : "");
    }

    private static String count(String key, int number) {
        return Words.of(number == 1 ? key + ".one" : key, number);
    }
}

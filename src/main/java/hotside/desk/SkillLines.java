// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.SkillStanding;
import hotside.learner.Syllabus;
import hotside.page.SkillLine;
import hotside.page.Words;
import java.time.LocalDate;

/** How a learner stands, made ready for a page. */
final class SkillLines {
    private SkillLines() {}

    static SkillLine of(SkillStanding s, Syllabus syllabus, LocalDate today) {
        return new SkillLine(
                s.skill(),
                s.name(),
                syllabus.skills().strands().getOrDefault(s.strand(), s.strand()),
                s.temper().ordinal(),
                s.right(),
                s.tries(),
                s.answersMissing(),
                s.problemsMissing(),
                s.daysMissing(),
                s.week(),
                s.flagged(),
                s.due().map(day -> due(day, today)));
    }

    /** When something is due, in words. */
    static String due(LocalDate day, LocalDate today) {
        long ahead = day.toEpochDay() - today.toEpochDay();
        if (ahead < 0) {
            return Words.of("mywork.due-late", -ahead);
        }
        return ahead == 0
                ? Words.of("mywork.due-today")
                : ahead == 1 ? Words.of("mywork.due-tomorrow") : Words.of("mywork.due-on", day);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.page.Words;
import hotside.problem.Answers;
import hotside.problem.Marker;
import hotside.problem.Task;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import java.util.List;
import java.util.Optional;

/**
 * How the program reads an answer that somebody types in from paper. It tells nothing of right and
 * wrong: who types shall see slips of typing, and no more.
 *
 * @param understood true if the answer can be judged as it stands
 * @param words for whoever types
 */
public record PaperReading(boolean understood, String words) {
    /**
     * @param answers to all questions of the problem
     * @param ask the question meant
     */
    public static PaperReading of(
            Variant variant, List<String> answers, int ask, DecimalHabit habit) {
        Optional<Verdict> verdict = Marker.mark(variant, answers, habit).get(ask);
        if (verdict.isEmpty()) {
            return new PaperReading(true, Words.of("class.paper-none"));
        }
        Verdict said = verdict.get();
        boolean plan = variant.template().task() instanceof Task.Devise;
        if (said.kind() == Verdict.Kind.UNREADABLE || said.kind() == Verdict.Kind.ASK && !plan) {
            return new PaperReading(false, Words.of("class.paper-no-points", said.feedback()));
        }
        if (plan) {
            return new PaperReading(true, Words.of("class.paper-line"));
        }
        return new PaperReading(
                true,
                Words.of(
                        "class.paper-read",
                        variant.lettered().isEmpty()
                                ? Answers.told(variant, ask, said.value())
                                : String.join(", ", Answers.letters(variant, answers.get(ask)))));
    }
}

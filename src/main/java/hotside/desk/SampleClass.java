// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.Composer;
import hotside.classroom.Draft;
import hotside.classroom.ProblemSet;
import hotside.classroom.Regrader;
import hotside.classroom.SetFile;
import hotside.classroom.SigningKey;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A class that has done its work, for the tour: twelve learners who know more and more, every third
 * of whom makes the first known mistake of the first problem, and a stray file.
 */
record SampleClass(Path set, Path folder) {
    private static final int LEARNERS = 12;
    private static final int PROBLEMS = 4;
    private static final Instant START = Instant.parse("2026-11-30T08:00:00Z");

    /** Writes the set and the hand-ins into a folder. */
    static SampleClass handedIn(Path folder, ProblemBank bank) throws IOException {
        return handedIn(folder, bank, "gate", "Gates, week 3");
    }

    /** The same on problems of some skill or strand. */
    static SampleClass handedIn(Path folder, ProblemBank bank, String skill, String title)
            throws IOException {
        SampleClass made =
                new SampleClass(folder.resolve("sample" + SetFile.ENDING), folder.resolve("in"));
        Files.createDirectories(made.folder);
        List<Template> templates = Composer.choose(bank, List.of(skill), 1, 2, PROBLEMS);
        ProblemSet set =
                new ProblemSet(
                        "sample",
                        1,
                        title,
                        Variants.GENERATOR_VERSION,
                        new ProblemSet.Rules(
                                UnitSystem.SI_SHOP,
                                ProblemSet.Numbers.OWN,
                                0,
                                true,
                                ProblemSet.Feedback.NOW,
                                Optional.empty()),
                        templates.stream().map(t -> Composer.item(t, 2)).toList());
        SetFile file = SetFile.write(made.set, set, SigningKey.fresh());
        Regrader regrader = new Regrader(set, bank);
        for (int i = 0; i < LEARNERS; i++) {
            made.work(file, regrader, i);
        }
        Files.writeString(made.folder.resolve("notes.txt"), "Bring the torch.\n");
        return made;
    }

    private void work(SetFile file, Regrader regrader, int number) throws IOException {
        String learner = "L" + (10 + number);
        Path work = set.resolveSibling(learner + ".work");
        Draft draft = Draft.begin(work, file, learner, DecimalHabit.spoken(), START);
        for (int slot = 0; slot < file.set().items().size(); slot++) {
            Variant variant = regrader.variant(learner, slot);
            List<String> answers = new ArrayList<>();
            for (int ask = 0; ask < variant.template().asks().size(); ask++) {
                answers.add(Answers.key(variant, ask));
            }
            boolean slips = slot == 0 ? number % 3 == 0 : number < 3 * slot;
            if (slips && !variant.slips().isEmpty()) {
                Variant.Slipped slip = variant.slips().get(0);
                answers.set(slip.ask(), Answers.told(variant, slip.ask(), slip.value()));
            }
            draft.answer(slot, answers, START.plusSeconds(240L * (slot + 1)));
        }
        draft.handIn(
                folder.resolve(learner + ".handin"), SigningKey.fresh(), START.plusSeconds(3600));
        Files.delete(work);
    }
}

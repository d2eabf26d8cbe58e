// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.Composer;
import hotside.classroom.Draft;
import hotside.classroom.ProblemSet;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.classroom.SetFile;
import hotside.classroom.SigningKey;
import hotside.page.Words;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A class that has done its work, invented, to play with and for the tour: twelve learners who know
 * more and more, every third of whom makes the first known mistake of the first problem, two who
 * write a number without its unit, a list of learners with three more, and a stray file.
 */
record SampleClass(Path set, Path folder, Path roster) {
    private static final int LEARNERS = 12;
    private static final int PROBLEMS = 4;
    private static final List<String> NAMES =
            List.of(
                    "Asta", "Bo", "Cleo", "Dag", "Edda", "Finn", "Gesa", "Hal", "Ines", "Jon",
                    "Kai", "Lea", "Mats", "Nele", "Ole");
    private static final Instant START = Instant.parse("2026-11-30T08:00:00Z");

    /** As {@link #handedIn}, in place of what the folder held. */
    static SampleClass anew(Path folder, ProblemBank bank) {
        try {
            if (Files.exists(folder)) {
                try (Stream<Path> old = Files.walk(folder)) {
                    for (Path file : old.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(file);
                    }
                }
            }
            return handedIn(folder, bank);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes the set and the hand-ins into a folder. */
    static SampleClass handedIn(Path folder, ProblemBank bank) throws IOException {
        return handedIn(folder, bank, "gate", Words.of("class.sample-title"));
    }

    /** The same on problems of some skill or strand. */
    static SampleClass handedIn(Path folder, ProblemBank bank, String skill, String title)
            throws IOException {
        SampleClass made =
                new SampleClass(
                        folder.resolve("sample" + SetFile.ENDING),
                        folder.resolve("in"),
                        folder.resolve("class.csv"));
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
        Files.writeString(
                made.roster,
                Roster.of(
                                IntStream.range(0, LEARNERS + 3)
                                        .mapToObj(i -> new Roster.Learner(id(i), NAMES.get(i), ""))
                                        .toList())
                        .csv());
        Files.writeString(made.folder.resolve("notes.txt"), "Bring the torch.\n");
        return made;
    }

    private static String id(int number) {
        return "L" + (10 + number);
    }

    private void work(SetFile file, Regrader regrader, int number) throws IOException {
        String learner = id(number);
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
            if (slot == 1 && number % 6 == 5) {
                answers.set(0, answers.get(0).replaceAll("[^0-9.,]", ""));
            }
            draft.answer(slot, answers, START.plusSeconds(240L * (slot + 1)));
        }
        draft.handIn(
                folder.resolve(learner + ".handin"), SigningKey.fresh(), START.plusSeconds(3600));
        Files.delete(work);
    }
}

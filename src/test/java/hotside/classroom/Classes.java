// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.classroom.ProblemSet.Feedback;
import hotside.classroom.ProblemSet.Numbers;
import hotside.classroom.ProblemSet.Rules;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A class for tests: three problems, one of them in steps, and learners who answer by script. */
final class Classes {
    static final ProblemBank BANK = ProblemBank.shipped();
    static final SigningKey INSTRUCTOR = SigningKey.fresh();
    static final Instant DUE = Instant.parse("2026-12-01T12:00:00Z");
    static final Instant START = Instant.parse("2026-11-30T08:00:00Z");
    static final Instant END = Instant.parse("2026-11-30T09:00:00Z");
    static final List<String> PROBLEMS =
            List.of("push-on-the-valve", "power-of-a-pipe", "next-size-up");

    private Classes() {}

    static Rules rules(Numbers numbers, int tries, Feedback feedback) {
        return new Rules(UnitSystem.SI_SHOP, numbers, tries, true, feedback, Optional.of(DUE));
    }

    static ProblemSet set(Numbers numbers) {
        return set(rules(numbers, 0, Feedback.AFTER_DUE));
    }

    static ProblemSet set(Rules rules) {
        return new ProblemSet(
                "gates-1",
                1,
                "Gates and pipes",
                Variants.GENERATOR_VERSION,
                rules,
                PROBLEMS.stream()
                        .map(id -> Composer.item(BANK.find(id).orElseThrow(), 2))
                        .toList());
    }

    static SetFile file(ProblemSet set) {
        return SetFile.read(SetFile.bytes(set, INSTRUCTOR));
    }

    static List<String> right(Variant variant) {
        List<String> answers = new ArrayList<>();
        for (int i = 0; i < variant.answers().size(); i++) {
            answers.add(Answers.key(variant, i));
        }
        return answers;
    }

    /** What a learner answers who slips once and goes on rightly elsewhere. */
    static List<String> slipped(Variant variant, int slip) {
        Variant.Slipped made = variant.slips().get(slip);
        List<String> answers = right(variant);
        answers.set(made.ask(), Answers.told(variant, made.ask(), made.value()));
        return answers;
    }

    /** A draft with the right answers to everything. */
    static Draft worked(Path folder, SetFile file, String learner) throws IOException {
        Regrader regrader = new Regrader(file.set(), BANK);
        Draft draft =
                Draft.begin(
                        folder.resolve(learner + ".work"),
                        file,
                        learner,
                        DecimalHabit.POINT,
                        START);
        for (int slot = 0; slot < file.set().items().size(); slot++) {
            draft.answer(
                    slot,
                    right(regrader.variant(learner, slot)),
                    START.plus(Duration.ofMinutes(slot + 1L)));
        }
        return draft;
    }
}

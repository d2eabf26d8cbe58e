// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.Words;
import hotside.problem.Answers;
import hotside.problem.Marker;
import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shipped skills and problems, from a typed answer to the skill that it speaks of. */
class SyllabusTest {
    private static ProblemBank bank;
    private static Syllabus syllabus;

    @BeforeAll
    static void read() {
        bank = ProblemBank.shipped();
        syllabus = Syllabus.of(SkillMap.shipped(), bank);
    }

    @Test
    void everyProblemIsPractised() {
        assertEquals(bank.all().size(), syllabus.all().size());
        syllabus.practised().forEach(s -> assertTrue(syllabus.of(s.id()).size() > 0));
    }

    @Test
    void aGaugeReadingTakenForAbsoluteIsLaidToTheAirNotToTheGate() {
        Standing standing = answered(true);
        assertEquals(1, standing.of("ground.air").wrong);
        assertEquals(0, standing.of("gate.valve-force").tries);
        assertEquals("gauge-as-absolute", standing.slips().get(0).slip());
    }

    @Test
    void aRightAnswerIsTheGates() {
        Standing standing = answered(false);
        assertEquals(1, standing.of("gate.valve-force").right);
        assertEquals(0, standing.of("ground.air").tries);
    }

    /** Works a shipped problem through the marker, as a learner would. */
    private static Standing answered(boolean slipped) {
        var template = bank.find("push-on-the-valve").orElseThrow();
        Variant variant = Variants.draw(template, 7, UnitSystem.SI_SHOP);
        double slip =
                variant.slips().stream()
                        .filter(s -> s.mistake().id().startsWith("gauge-as-absolute"))
                        .findFirst()
                        .orElseThrow()
                        .value();
        Standing standing = new Standing(syllabus, ZoneOffset.UTC);
        for (int ask = 0; ask < variant.answers().size(); ask++) {
            String typed =
                    slipped && ask == 0
                            ? Answers.told(variant, 0, slip)
                            : Answers.told(variant, ask);
            Verdict verdict =
                    Marker.mark(variant, List.of(typed), DecimalHabit.POINT).get(0).orElseThrow();
            standing.take(
                    1 + ask,
                    new Attempt(
                            template.id(),
                            "7",
                            "1",
                            template.fingerprint(),
                            "si_shop",
                            ask,
                            typed,
                            "",
                            verdict.mistake().orElse(null),
                            verdict.kind().good(),
                            0,
                            1,
                            Instant.EPOCH,
                            null));
        }
        return standing;
    }

    @Test
    void whatProblemsSayOfSkillsIsInTheFingerprint() {
        Syllabus fewer =
                new Syllabus(SkillMap.shipped(), syllabus.all().subList(1, syllabus.all().size()));
        assertNotEquals(syllabus.fingerprint(), fewer.fingerprint());
        assertEquals(
                syllabus.fingerprint(),
                Syllabus.of(SkillMap.shipped(), ProblemBank.shipped()).fingerprint());
    }

    @Test
    void everyReasonHasWords() {
        for (String kind :
                List.of(
                        "block",
                        "due",
                        "due-yesterday",
                        "overdue",
                        "missed",
                        "mistake-gone",
                        "mistake-once",
                        "mistake-twice",
                        "mistake",
                        "another-day",
                        "proof",
                        "weak",
                        "back",
                        "fresh",
                        "fresh-after",
                        "keep",
                        "early",
                        "chosen",
                        "chosen-problem")) {
            assertTrue(Words.of("reason." + kind).endsWith("."), kind);
        }
    }
}

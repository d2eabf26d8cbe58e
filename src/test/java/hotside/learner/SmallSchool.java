// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.content.ContentReader;
import hotside.problem.SkillMap;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Three skills in a row and one apart, two problems each; and a learner's days among them. */
final class SmallSchool {
    static final ZoneId ZONE = ZoneOffset.UTC;
    static final LocalDate FIRST_DAY = LocalDate.of(2026, 11, 25);

    static final SkillMap MAP =
            SkillMap.read(
                    ContentReader.read(
                            "skills.yaml",
                            """
                            ---
                            strands:
                              - {id: a, name: Strand A}
                              - {id: b, name: Strand B}
                            skills:
                              - {id: a.one, name: One, strand: a}
                              - {id: a.two, name: Two, strand: a, needs: [a.one]}
                              - {id: a.three, name: Three, strand: a, needs: [a.two]}
                              - {id: b.four, name: Four, strand: b}
                            ---
                            """));

    static final Syllabus SYLLABUS = new Syllabus(MAP, exercises());

    private final Standing standing = new Standing(SYLLABUS, ZONE);
    private long number;
    private LocalDate day = FIRST_DAY;

    private static List<Exercise> exercises() {
        List<Exercise> all = new ArrayList<>();
        for (SkillMap.Skill skill : MAP.all()) {
            for (String which : List.of("p", "q")) {
                all.add(exercise(skill.id() + "-" + which, skill.id(), 1));
            }
        }
        all.add(exercise("b.steps", "b.four", 3));
        return all;
    }

    private static Exercise exercise(String id, String skill, int asks) {
        return new Exercise(
                id,
                "Problem " + id,
                skill,
                1,
                "number",
                asks,
                Map.of("gauge-as-absolute", "a.one"),
                Set.of("gauge-as-absolute", "left-out"));
    }

    Standing standing() {
        return standing;
    }

    LocalDate today() {
        return day;
    }

    SkillLog log(String skill) {
        return standing.of(skill);
    }

    SmallSchool on(int days) {
        day = FIRST_DAY.plusDays(days);
        return this;
    }

    /** A fresh set of numbers, one question, right without help. */
    SmallSchool right(String problem) {
        return take(problem, ++number, 0, true, null, 0, Attempt.Way.FULL);
    }

    SmallSchool wrong(String problem) {
        return wrong(problem, null);
    }

    SmallSchool wrong(String problem, String mistake) {
        return take(problem, ++number, 0, false, mistake, 0, Attempt.Way.FULL);
    }

    SmallSchool right(String problem, int hints, Attempt.Way way) {
        return take(problem, ++number, 0, true, null, hints, way);
    }

    SmallSchool take(
            String problem,
            long seed,
            int ask,
            boolean right,
            String mistake,
            int hints,
            Attempt.Way way) {
        standing.take(standing.upTo() + 1, attempt(problem, seed, ask, right, mistake, hints, way));
        return this;
    }

    Attempt attempt(
            String problem,
            long seed,
            int ask,
            boolean right,
            String mistake,
            int hints,
            Attempt.Way way) {
        return new Attempt(
                problem,
                Long.toString(seed),
                "1",
                "f",
                "si_shop",
                ask,
                "1 kPa",
                right ? "right" : mistake == null ? "wrong" : "mistake",
                mistake,
                right,
                hints,
                10,
                noon(day),
                null,
                way);
    }

    static Instant noon(LocalDate day) {
        return day.atTime(12, 0).toInstant(ZoneOffset.UTC);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A skill that was mastered, by the evidence that stands in a list of answers and nothing else.
 *
 * @param skill how the learner stood with it then; its days are the fewest that there were
 * @param at when the answer was given that completed the evidence
 */
public record Mastery(SkillStanding skill, Instant at) {
    /** The skills that these answers prove, each once, in the order of their proof. */
    public static List<Mastery> of(List<Attempt> attempts, Syllabus syllabus, ZoneId zone) {
        Standing standing = new Standing(syllabus, zone);
        List<Mastery> mastered = new ArrayList<>();
        for (int i = 0; i < attempts.size(); i++) {
            Attempt attempt = attempts.get(i);
            String skill = syllabus.find(attempt.problem()).map(Exercise::skill).orElse("");
            boolean before = standing.of(skill).everMastered();
            standing.take(i + 1L, attempt);
            if (!before && standing.of(skill).everMastered()) {
                mastered.add(
                        new Mastery(
                                standing.skill(
                                        skill,
                                        Optional.empty(),
                                        LocalDate.ofInstant(attempt.time(), zone)),
                                attempt.time()));
            }
        }
        return mastered;
    }
}

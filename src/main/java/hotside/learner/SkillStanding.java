// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How a learner stands with one skill, in counts.
 *
 * @param skill its id
 * @param name for people
 * @param strand the id of its strand
 * @param temper how far it has come
 * @param tries problems begun
 * @param right of them solved at the first try without help
 * @param helped solved at the first try with help
 * @param wrong failed at the first try
 * @param proofs of the right ones, those that count towards mastery: not the same problem twice in
 *     a row on one day
 * @param problems how many different problems were solved without help
 * @param days on how many days, counted to the number that mastery wants
 * @param toProve from how many problems it must be proven
 * @param stage how much is shown beforehand
 * @param flagged true if many tries did not lead to mastery
 * @param week true if it was still there a week later
 * @param due when it is to be looked at again
 */
public record SkillStanding(
        String skill,
        String name,
        String strand,
        Temper temper,
        int tries,
        int right,
        int helped,
        int wrong,
        int proofs,
        int problems,
        int days,
        int toProve,
        Stage stage,
        boolean flagged,
        boolean week,
        Optional<LocalDate> due) {

    /** Right answers without help that mastery still wants. */
    public int answersMissing() {
        return Math.max(0, SkillLog.PROOFS - proofs);
    }

    /** Problems that mastery still wants. */
    public int problemsMissing() {
        return Math.max(0, toProve - problems);
    }

    /** Days that mastery still wants. */
    public int daysMissing() {
        return Math.max(0, SkillLog.DAYS - days);
    }
}

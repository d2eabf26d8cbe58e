// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import java.util.Optional;

/**
 * What is to be said of an answer.
 *
 * @param kind the sort of verdict
 * @param mistake the mistake that gives just this number, if one does
 * @param value the answer as understood, SI; NaN if it was not
 * @param feedback for the learner, one or more sentences
 */
public record Verdict(Kind kind, Optional<String> mistake, double value, String feedback) {
    /** Sorts of verdict. */
    public enum Kind {
        RIGHT,
        /** Right for the learner's own wrong earlier answer: the method is right. */
        CARRIED,
        /** The number of a known mistake. */
        MISTAKE,
        /** Wrong, and like no known mistake. */
        WRONG,
        /** Right as far as it goes, but with too few digits to tell. */
        COARSE,
        /** Not to be judged before the learner has said more: unit or decimal mark. */
        ASK,
        /** Not understood. */
        UNREADABLE;

        /** True if the answer counts as a try. */
        public boolean counts() {
            return this == RIGHT || this == CARRIED || this == MISTAKE || this == WRONG;
        }

        /** True if the method was right. */
        public boolean good() {
            return this == RIGHT || this == CARRIED;
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.time.Instant;
import java.util.List;

/** One thing that a learner did with a set. */
public sealed interface Entry {
    /** When, by the learner's own clock. */
    Instant at();

    /** The item's index, from 0. */
    int slot();

    /**
     * Answers to a problem, each replacing what was answered before.
     *
     * @param answers as typed, one for each ask; blank for one not yet given
     */
    record Answered(Instant at, int slot, List<String> answers) implements Entry {
        public Answered {
            answers = List.copyOf(answers);
        }
    }

    /**
     * A hint was read.
     *
     * @param rung its number on the ladder, from 1
     */
    record Hinted(Instant at, int slot, int rung) implements Entry {}

    /**
     * Something typed and not yet given as an answer. Drafts keep it, hand-ins don't hold it.
     *
     * @param answers as they stand in the fields
     */
    record Typed(Instant at, int slot, List<String> answers) implements Entry {
        public Typed {
            answers = List.copyOf(answers);
        }
    }
}

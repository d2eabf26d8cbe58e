// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.problem.Variant;
import hotside.problem.Verdict;

/**
 * A counted try.
 *
 * @param where the lesson it was made in, or {@link #PRACTICE}
 * @param variant the problem with its numbers
 * @param ask which of its questions
 * @param answer as typed
 * @param verdict what was said of it
 * @param hints how many hints were shown
 * @param seconds since the numbers were drawn
 */
record Try(
        String where,
        Variant variant,
        int ask,
        String answer,
        Verdict verdict,
        int hints,
        int seconds) {
    /** Filed under no lesson. */
    static final String PRACTICE = "";
}

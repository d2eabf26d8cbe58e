// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/** How often a sort of mistake was made. */
final class SlipLog {
    /** So many problems that invite a mistake must go well before it counts as gone. */
    static final int CLEAN = 2;

    int total;

    /** Since it last counted as gone. */
    int open;

    /** Problems in a row that invited it and went well. */
    int clean;

    long lastDay;

    /** The problem that it was last made in. */
    String lastProblem = "";

    void made(String problem, long day) {
        lastProblem = problem;
        total++;
        open++;
        clean = 0;
        lastDay = day;
    }

    void avoided() {
        if (open > 0 && ++clean >= CLEAN) {
            open = 0;
            clean = 0;
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.util.TreeSet;

/** One problem with one set of numbers, while its questions are being answered. */
final class Sitting {
    /** The questions whose first answer is in. */
    TreeSet<Integer> answered = new TreeSet<>();

    /** True once it has said what it has to say. */
    boolean decided;

    /** The highest hint that was read before a first answer. */
    int rung;
}

// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.LocalDate;

/**
 * A sort of mistake that a learner makes.
 *
 * @param slip which
 * @param total how often it was made
 * @param open how often since it last counted as gone; 0 if it does
 * @param problem the problem that it was last made in
 * @param last the day of the last time
 */
public record SlipStanding(String slip, int total, int open, String problem, LocalDate last) {
    /** How people are told: the words of its id. */
    public String name() {
        return slip.replace('-', ' ');
    }
}

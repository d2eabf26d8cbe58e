// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.util.List;

/**
 * One of the things that are compared, with the pulls made on it.
 *
 * @param label for people
 * @param runs in the order they were made
 */
public record Part(String label, List<Run> runs) {
    public Part {
        runs = List.copyOf(runs);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.Instant;

/**
 * How a learner stands with one problem.
 *
 * @param problem its id
 * @param tries answers given
 * @param right how many of them were right
 * @param last when the last was given
 */
public record Progress(String problem, int tries, int right, Instant last) {}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.time.Instant;

/**
 * Points that an instructor set for one learner's problem, in place of those worked out.
 *
 * @param points 0 to what the problem is worth
 * @param reason why; the learner reads it in the report
 * @param at when they were set
 */
public record ByHand(double points, String reason, Instant at) {}

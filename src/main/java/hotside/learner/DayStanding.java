// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/**
 * The work of one day.
 *
 * @param tries answers given
 * @param right how many of them were right
 */
public record DayStanding(int tries, int right) {}

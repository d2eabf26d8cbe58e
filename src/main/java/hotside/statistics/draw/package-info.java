// SPDX-License-Identifier: Apache-2.0
/**
 * Chance that a seed repeats: generators of published definition, frozen for all versions. Start at
 * {@link hotside.statistics.draw.SplitMix64}. They know nothing of what is drawn.
 */
package hotside.statistics.draw;

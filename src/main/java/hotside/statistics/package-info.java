// SPDX-License-Identifier: Apache-2.0
/**
 * What a set of readings allows to be said: means and intervals, gains, drift, sample sizes,
 * uncertainty and the split of a gain. One relation per class, listed in {@link
 * hotside.statistics.StatisticsRelations}. Statistics know no physics: readings come in the unit
 * they were taken in and leave in it.
 *
 * <p>Start at {@link hotside.statistics.Estimate}, what every comparison comes to. {@link
 * hotside.statistics.LeastSquares} and the distributions in {@link hotside.statistics.Confidence},
 * {@link hotside.statistics.NoncentralT} and {@link hotside.statistics.StudentizedRange} carry the
 * rest.
 */
package hotside.statistics;

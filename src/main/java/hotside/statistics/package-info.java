// SPDX-License-Identifier: Apache-2.0
/**
 * What a set of readings allows to be said: means and intervals, gains, drift, sample sizes,
 * uncertainty and the split of a gain. One relation per class, listed in {@link
 * hotside.statistics.StatisticsRelations}. Statistics know no physics: readings come in the unit
 * they were taken in and leave in it.
 */
package hotside.statistics;

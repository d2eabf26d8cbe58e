// SPDX-License-Identifier: Apache-2.0
/**
 * What a reading or a curve does to the truth before anybody counts: scale of a chart, lag of a
 * sensor, pace of a sweep, smoothing, steps of a display. One relation per class, listed in {@link
 * hotside.statistics.StatisticsRelations}.
 */
package hotside.statistics.reading;

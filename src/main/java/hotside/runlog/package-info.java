// SPDX-License-Identifier: Apache-2.0
/**
 * Dyno logs and what can be said of them: read, align, correct, compare, split.
 *
 * <p>Start at {@link hotside.runlog.LogReader}, which makes a {@link hotside.runlog.RunLog} of a
 * file from any bench; {@link hotside.runlog.Curve} is one channel against engine speed; {@link
 * hotside.runlog.Comparison} sets parts against each other and {@link
 * hotside.runlog.ComparisonWords} says what came of it. All numbers are SI, pressures absolute.
 * Formulas live in {@code physics} and {@code statistics}; this room calls them and does not know
 * where a log comes from, nor who will look at it.
 */
package hotside.runlog;

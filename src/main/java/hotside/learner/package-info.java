// SPDX-License-Identifier: Apache-2.0
/**
 * The record: what a learner has tried, kept on this machine and nowhere else.
 *
 * <p>Start at {@link hotside.learner.LearnerRecord}; {@link hotside.learner.RecordFolder} says
 * where it lies. An answer that was acknowledged is on the disk. This room keeps strings and
 * numbers as it gets them: it knows no screen, no lesson and no physics.
 */
package hotside.learner;

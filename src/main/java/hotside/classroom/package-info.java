// SPDX-License-Identifier: Apache-2.0
/**
 * The class: problem sets, hand-outs on paper and as files, hand-ins, marking by recomputing, item
 * analysis, exports.
 *
 * <p>Start at {@link hotside.classroom.ProblemSet} and follow a set through {@link
 * hotside.classroom.SetFile} to a learner's {@link hotside.classroom.Draft}, the {@link
 * hotside.classroom.HandIn} that it becomes, and {@link hotside.classroom.Marking}, which marks a
 * folder of them. Everything that comes back from a learner is hostile until read by {@link
 * hotside.classroom.SealedLines}; no mark in a file is believed. The seals show tampering on the
 * way; they cannot show who did the work. This room knows no window and no command.
 */
package hotside.classroom;

// SPDX-License-Identifier: Apache-2.0
/**
 * The learner: what was tried, kept on this machine and nowhere else; what it says of each skill;
 * and what to practise next.
 *
 * <p>Start at {@link hotside.learner.Tutor}. {@link hotside.learner.LearnerRecord} stores answers:
 * one that was acknowledged is on the disk. A {@code Standing} folds them into a belief and the
 * evidence for each skill, a {@code Picker} chooses the next problem and says why. {@link
 * hotside.learner.Learners} knows who else works on this machine. This room draws no variants and
 * marks no answers: it gets verdicts. It knows no screen.
 */
package hotside.learner;

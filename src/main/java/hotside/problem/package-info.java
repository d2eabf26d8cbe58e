// SPDX-License-Identifier: Apache-2.0
/**
 * Problems: templates, variants with numbers of their own, named mistakes, verdicts.
 *
 * <p>Start at {@link hotside.problem.Template}: a chain of relations, givens on grids, asks,
 * mistakes. {@link hotside.problem.Variants} draws a {@link hotside.problem.Variant} from a seed,
 * {@link hotside.problem.Marker} turns an answer into a {@link hotside.problem.Verdict}. A mistake
 * is never a formula: {@link hotside.problem.Slips} corrupt one value and the same chain is worked
 * again. This room knows nothing of pages, screens or learners.
 */
package hotside.problem;

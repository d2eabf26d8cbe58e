// SPDX-License-Identifier: Apache-2.0
/**
 * A trial: a test plan, written before anything is seen, run in the simulated cell, read as the run
 * logs of any bench, and judged by the truth, which only the program knows. Start at {@link
 * hotside.trial.Plan} and {@link hotside.trial.Trial}. Knows cell and run log, which do not know
 * each other; knows nothing of problems, pages or people.
 */
package hotside.trial;

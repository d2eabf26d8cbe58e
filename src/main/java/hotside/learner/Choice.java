// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

/**
 * What to practise next.
 *
 * @param exercise which problem
 * @param stage how much of the working to show beforehand
 * @param reason why this one
 */
public record Choice(Exercise exercise, Stage stage, Reason reason) {}

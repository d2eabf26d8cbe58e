// SPDX-License-Identifier: Apache-2.0
/**
 * Pictures that the program draws: how things are arranged, and numbers of a relation to scale.
 *
 * <p>Start at {@link hotside.page.diagram.Drawings}. A drawing is a function from {@link
 * hotside.page.diagram.Facts} to a {@link hotside.page.diagram.Picture}, made with a {@link
 * hotside.page.diagram.Sketch}. It knows relations and units, and nothing of lessons or of the page
 * around it.
 */
package hotside.page.diagram;

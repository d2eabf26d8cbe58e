// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

/**
 * Something that a learner chooses or moves, under the letter of this variant.
 *
 * @param letter {@code A} and on, in the order shown
 * @param id what is recorded where it is taken wrongly; an item's own name
 * @param text for people, its values filled in
 * @param right true if it is to be taken; false for all items of an order
 * @param because why it is right or wrong; empty where the marker says it
 */
public record Lettered(String letter, String id, String text, boolean right, String because) {}

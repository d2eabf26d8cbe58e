// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

/**
 * A warning that a result stands on a weakened assumption.
 *
 * @param about the slot or result concerned
 * @param text what is weakened and roughly by how much, a sentence for people
 */
public record Caution(String about, String text) {}

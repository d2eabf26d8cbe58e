// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.Quantity;

/**
 * One line of a working.
 *
 * @param name what later lines call it
 * @param symbol in TeX
 * @param quantity what it measures
 * @param formula TeX in which {@code @name} stands for an input or an earlier line; empty for a
 *     line in words
 * @param value in SI
 * @param text why, a phrase for people
 * @param output true if this line is a result of the relation
 */
public record Step(
        String name,
        String symbol,
        Quantity quantity,
        String formula,
        double value,
        String text,
        boolean output) {}

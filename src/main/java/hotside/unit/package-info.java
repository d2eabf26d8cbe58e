// SPDX-License-Identifier: Apache-2.0
/**
 * Units of the trade, and reading what a person types.
 *
 * <p>Everything above this room counts in SI, absolute pressure and kelvin; gauge pressure, psi and
 * degrees Fahrenheit exist only here, at the edge. Start at {@link hotside.unit.Quantity}, then
 * {@link hotside.unit.Units} for the table and {@link hotside.unit.Typed} for reading a line. This
 * room knows no other.
 */
package hotside.unit;

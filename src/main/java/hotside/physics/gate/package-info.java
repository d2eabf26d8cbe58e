// SPDX-License-Identifier: Apache-2.0
/**
 * The wastegate: the forces on its valve, what reaches its diaphragm, what passes it, and what
 * moves the boost it holds.
 *
 * <p>Start at {@link hotside.physics.gate.CrackPressure}, the balance of the three forces. Forces
 * that open the valve are positive; the spring's own is given as the force with which it closes.
 */
package hotside.physics.gate;

// SPDX-License-Identifier: Apache-2.0
/**
 * Air and burned gas: what they weigh, how they store heat, how they flow without friction.
 *
 * <p>Start at {@link hotside.physics.gas.ExhaustGas}. Knows no pipe, no engine and no gate.
 */
package hotside.physics.gas;

// SPDX-License-Identifier: Apache-2.0
/**
 * Exhaust pipes: what it costs to push gas through them.
 *
 * <p>Start at {@link hotside.physics.duct.PipeFrictionDrop}, the pipe with gas of constant density,
 * then {@link hotside.physics.duct.DuctFlow}, where the gas speeds up on its way and may choke.
 * Knows the gas, and no engine, turbine or gate.
 */
package hotside.physics.duct;

// SPDX-License-Identifier: Apache-2.0
/**
 * The hot wheel: what a turbine gets out of the exhaust, what that does to the pressure before it,
 * and how fast the rotor follows.
 *
 * <p>Start at {@link hotside.physics.turbine.TurbineExpansion}, then {@link
 * hotside.physics.turbine.TurboBalance}. Knows no pipe and no gate but the share that goes round
 * the wheel.
 */
package hotside.physics.turbine;

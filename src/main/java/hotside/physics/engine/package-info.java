// SPDX-License-Identifier: Apache-2.0
/**
 * What an engine takes in and gives out: flow, torque, power, and what the weather does to them.
 *
 * <p>Start at {@link hotside.physics.engine.SpeedDensity} for the air, at {@link
 * hotside.physics.engine.PowerToFlow} for a short cut from power. The four correction factors stand
 * beside each other; {@link hotside.physics.engine.HeldBoostCorrection} says what they get wrong.
 * Four-stroke engines only. Knows no compressor, no turbine and no pipe.
 */
package hotside.physics.engine;

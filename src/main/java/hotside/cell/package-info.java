// SPDX-License-Identifier: Apache-2.0
/**
 * The simulated test cell. A {@link hotside.cell.Rig} is an engine with its turbo, gate, cooler,
 * pipe and sensors, as data. {@link hotside.cell.OperatingPoint} says what that rig does at one
 * speed, {@link hotside.cell.Spool} how long its rotor takes, and {@link hotside.cell.Pull} what a
 * learner would read of it, with the truth kept apart.
 *
 * <p>Start at {@code OperatingPoint}. Every formula is called from {@link hotside.physics}; here
 * they are only tied together. The cell knows no lesson, problem or screen.
 */
package hotside.cell;

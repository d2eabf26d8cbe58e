// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * The true state at an instant of a pull.
 *
 * @param time since the pull began, s
 * @param brakeTorque that reaches the brake, N·m: the engine's less what speeding up takes
 * @param point everything else
 */
public record Moment(double time, double brakeTorque, OperatingPoint point) {}

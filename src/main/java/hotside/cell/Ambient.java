// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * The air around.
 *
 * @param pressure absolute, Pa
 * @param temperature K
 */
public record Ambient(double pressure, double temperature) {}

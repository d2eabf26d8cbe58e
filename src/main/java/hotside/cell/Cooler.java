// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * A charge cooler.
 *
 * @param effectiveness of the charge side, 0 for none
 * @param coolantTemperature of the air or water that reaches it, K
 * @param chargeLoss pressure lost between compressor and manifold, Pa
 */
public record Cooler(double effectiveness, double coolantTemperature, double chargeLoss) {}

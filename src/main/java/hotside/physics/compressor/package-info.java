// SPDX-License-Identifier: Apache-2.0
/**
 * The cold side: what a compressor does to the air and what a cooler takes back.
 *
 * <p>Start at {@link hotside.physics.compressor.PressureRatio}, then {@link
 * hotside.physics.compressor.CompressorOutlet} and {@link hotside.physics.compressor.ChargeCooler}.
 * Air is dry, with constant specific heats. Knows no engine and no turbine.
 */
package hotside.physics.compressor;

// SPDX-License-Identifier: Apache-2.0
/**
 * The physics of the trade, flat by topic, one relation per class: a pure function in SI (absolute
 * pressure, kelvin) with its card and its working beside it.
 *
 * <p>{@link hotside.physics.PhysicsRelations} lists them all. The sub-packages are topics: gas,
 * engine, compressor, turbine, duct, gate. Nothing here knows a screen, a file or a problem.
 */
package hotside.physics;

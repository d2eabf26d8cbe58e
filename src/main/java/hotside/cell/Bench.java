// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * How the cell runs a pull, and how a day in it goes.
 *
 * @param fromSpeed of the engine at the start, turns per second
 * @param toSpeed at the end
 * @param step between held speeds
 * @param hold how long each is held, s
 * @param averaging over which the readings of a held speed are averaged, its last part, s
 * @param sampling time between samples, s
 * @param rampRate how fast a ramp speeds up, turns per second each second; 0 holds steps instead
 * @param inertia of engine and brake, kg·m²
 * @param inertiaSetting what the cell takes for that inertia and adds back, kg·m²
 * @param powerFactor what the cell multiplies torque and power with
 * @param boostLimit at which it stops a pull, Pa gauge
 * @param repeatability standard deviation of an engine's power from pull to pull, as a share
 * @param driftPerHour of the ambient temperature, K
 * @param interval between the starts of two pulls, s
 * @param soakPerPull by how much one pull warms what reaches the cooler, K
 * @param soakRecovery time in which that warmth falls to 1/e, s
 */
public record Bench(
        double fromSpeed,
        double toSpeed,
        double step,
        double hold,
        double averaging,
        double sampling,
        double rampRate,
        double inertia,
        double inertiaSetting,
        double powerFactor,
        double boostLimit,
        double repeatability,
        double driftPerHour,
        double interval,
        double soakPerPull,
        double soakRecovery) {}

// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.engine.Rotation;

/**
 * A turbo with the same efficiencies everywhere on its maps.
 *
 * @param compressorEfficiency isentropic
 * @param turbineEfficiency isentropic, total to static
 * @param mechanicalEfficiency of the bearings
 * @param effectiveArea of the turbine, m²
 * @param rotorInertia kg·m²
 * @param wheelDiameter of the compressor, m
 * @param workCoefficient work on each kilogram over the square of the rim's speed
 * @param inletLeak bore of a hole through which exhaust is lost before the turbine, m
 */
public record Turbo(
        double compressorEfficiency,
        double turbineEfficiency,
        double mechanicalEfficiency,
        double effectiveArea,
        double rotorInertia,
        double wheelDiameter,
        double workCoefficient,
        double inletLeak) {

    /**
     * Work that the wheel puts into each kilogram at this speed, by Euler's equation for a wheel
     * fed without swirl (Dixon and Hall, chapter 7, from memory).
     *
     * @param speed turns per second
     * @return J/kg
     */
    double work(double speed) {
        double rim = Rotation.angular(speed) * wheelDiameter / 2;
        return workCoefficient * rim * rim;
    }

    /**
     * The speed at which the wheel does this work, turns per second; the inverse of {@link #work}.
     */
    double speed(double work) {
        return Math.sqrt(Math.max(0, work) / work(1));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

/**
 * What a unit measures: units of one dimension convert into each other by a factor (temperature
 * also by an offset).
 */
public enum Dimension {
    PRESSURE,
    TEMPERATURE,
    LENGTH,
    AREA,
    VOLUME,
    MASS_FLOW,
    VOLUME_FLOW,
    DENSITY,
    VELOCITY,
    POWER,
    TORQUE,
    ROTATION,
    FORCE,
    SPRING_RATE,
    ENERGY,
    TIME,
    RATIO,
    SPECIFIC_ENERGY,
    SPECIFIC_HEAT,
    MOLAR_MASS,
    VISCOSITY,
    FUEL_PER_ENERGY,
    CONDUCTANCE,
    HEAT_TRANSFER,
    INERTIA,
    ANGLE,
    POWER_PER_PRESSURE,
    ROTATION_RATE,
    NONE
}

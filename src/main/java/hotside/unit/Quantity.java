// SPDX-License-Identifier: Apache-2.0
package hotside.unit;

import java.util.Locale;

/**
 * What a number in the tutor is a measure of. It fixes the SI unit in which the core counts, and
 * the units in which each shop reads it.
 *
 * <p>Pressure comes as three quantities because the difference between them is half of what
 * learners get wrong: {@link #PRESSURE} is absolute, {@link #GAUGE_PRESSURE} is counted from
 * ambient, {@link #PRESSURE_DIFFERENCE} has no zero of its own. Temperature likewise comes as a
 * temperature (kelvin) and a difference.
 */
public enum Quantity {
    PRESSURE(Dimension.PRESSURE, "Pa", "kPa", "psi"),
    GAUGE_PRESSURE(Dimension.PRESSURE, "Pa", "kPa", "psi"),
    PRESSURE_DIFFERENCE(Dimension.PRESSURE, "Pa", "kPa", "psi"),
    TEMPERATURE(Dimension.TEMPERATURE, "K", "°C", "°F"),
    TEMPERATURE_DIFFERENCE(Dimension.TEMPERATURE, "K", "K", "°F"),
    LENGTH(Dimension.LENGTH, "m", "mm", "in"),
    AREA(Dimension.AREA, "m²", "mm²", "in²"),
    VOLUME(Dimension.VOLUME, "m³", "L", "in³"),
    MASS_FLOW(Dimension.MASS_FLOW, "kg/s", "g/s", "lb/min"),
    VOLUME_FLOW(Dimension.VOLUME_FLOW, "m³/s", "m³/s", "ft³/min"),
    DENSITY(Dimension.DENSITY, "kg/m³", "kg/m³", "lb/ft³"),
    VELOCITY(Dimension.VELOCITY, "m/s", "m/s", "ft/s"),
    POWER(Dimension.POWER, "W", "kW", "hp"),
    TORQUE(Dimension.TORQUE, "N·m", "N·m", "lbf·ft"),
    /** Rotational frequency: whole turns a second in the core, turns a minute in both shops. */
    ROTATION(Dimension.ROTATION, "1/s", "rev/min", "rev/min"),
    FORCE(Dimension.FORCE, "N", "N", "lbf"),
    SPRING_RATE(Dimension.SPRING_RATE, "N/m", "N/mm", "lbf/in"),
    ENERGY(Dimension.ENERGY, "J", "kJ", "Btu"),
    TIME(Dimension.TIME, "s", "s", "s"),
    /** A pure number, such as a ratio, an efficiency or a Mach number. */
    RATIO(Dimension.RATIO, "1", "1", "1"),
    /** A pure number that people say in percent. */
    PERCENTAGE(Dimension.RATIO, "1", "%", "%"),
    SPECIFIC_ENERGY(Dimension.SPECIFIC_ENERGY, "J/kg", "kJ/kg", "Btu/lb"),
    SPECIFIC_HEAT(Dimension.SPECIFIC_HEAT, "J/(kg·K)", "J/(kg·K)", "Btu/(lb·°F)"),
    MOLAR_MASS(Dimension.MOLAR_MASS, "kg/mol", "g/mol", "g/mol"),
    VISCOSITY(Dimension.VISCOSITY, "Pa·s", "µPa·s", "µPa·s"),
    FUEL_PER_ENERGY(Dimension.FUEL_PER_ENERGY, "kg/J", "g/kWh", "lb/(hp·h)"),
    CONDUCTANCE(Dimension.CONDUCTANCE, "W/K", "W/K", "Btu/(h·°F)"),
    HEAT_TRANSFER(Dimension.HEAT_TRANSFER, "W/(m²·K)", "W/(m²·K)", "Btu/(h·ft²·°F)"),
    INERTIA(Dimension.INERTIA, "kg·m²", "kg·m²", "lb·ft²"),
    ANGLE(Dimension.ANGLE, "rad", "°", "°"),
    POWER_PER_PRESSURE(Dimension.POWER_PER_PRESSURE, "W/Pa", "kW/kPa", "hp/psi"),
    /** How fast rotational frequency changes. */
    ROTATION_RATE(Dimension.ROTATION_RATE, "1/s²", "rev/min/s", "rev/min/s"),
    /** How many; a whole number. */
    COUNT(Dimension.NONE, "1", "1", "1"),
    /** Yes (1) or no (0). */
    FLAG(Dimension.NONE, "1", "1", "1"),
    /** Whatever the readings were taken in: statistics give back what they were given. */
    AS_MEASURED(Dimension.NONE, "1", "1", "1");

    private final Dimension dimension;
    private final String si;
    private final String siShop;
    private final String usShop;

    Quantity(Dimension dimension, String si, String siShop, String usShop) {
        this.dimension = dimension;
        this.si = si;
        this.siShop = siShop;
        this.usShop = usShop;
    }

    /** What it is called in the language spoken, such as {@code gauge pressure}. */
    public String words() {
        return UnitWords.of("quantity." + name().toLowerCase(Locale.ROOT));
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The unit in which the core counts; its factor is one. */
    public Unit si() {
        return Units.bySymbol(dimension, si);
    }

    /** How the core's own number is labelled, such as {@code Pa} or {@code Pa gauge}. */
    public Scale siScale() {
        return new Scale(si(), naturalReference());
    }

    /** The scale on which a shop of this system reads the quantity. */
    public Scale shown(UnitSystem system) {
        return new Scale(
                Units.bySymbol(dimension, system == UnitSystem.SI_SHOP ? siShop : usShop),
                naturalReference());
    }

    /** The zero that a number of this quantity is counted from when nothing else is said. */
    public Reference naturalReference() {
        return switch (this) {
            case PRESSURE -> Reference.ABSOLUTE;
            case GAUGE_PRESSURE -> Reference.GAUGE;
            default -> Reference.NONE;
        };
    }
}

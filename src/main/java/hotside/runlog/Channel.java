// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.unit.Quantity;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a column of a run log measures. Pressures are kept absolute, temperatures in kelvin. */
public enum Channel {
    SPEED(Quantity.ROTATION, "engine speed"),
    POWER(Quantity.POWER, "power"),
    TORQUE(Quantity.TORQUE, "torque"),
    MANIFOLD_PRESSURE(Quantity.PRESSURE, "manifold pressure"),
    TURBINE_INLET_PRESSURE(Quantity.PRESSURE, "pressure before the turbine"),
    TURBINE_OUTLET_PRESSURE(Quantity.PRESSURE, "pressure after the turbine"),
    CHARGE_TEMPERATURE(Quantity.TEMPERATURE, "charge temperature"),
    AIR_TEMPERATURE(Quantity.TEMPERATURE, "air temperature"),
    EXHAUST_TEMPERATURE(Quantity.TEMPERATURE, "exhaust temperature"),
    PIPE_TEMPERATURE(Quantity.TEMPERATURE, "temperature after the turbine"),
    AIR_FLOW(Quantity.MASS_FLOW, "air flow"),
    COOLANT_TEMPERATURE(Quantity.TEMPERATURE, "coolant temperature"),
    OIL_TEMPERATURE(Quantity.TEMPERATURE, "oil temperature"),
    BAROMETER(Quantity.PRESSURE, "barometer"),
    LAMBDA(Quantity.RATIO, "lambda"),
    AIR_FUEL_RATIO(Quantity.RATIO, "air-fuel ratio"),
    TIME(Quantity.TIME, "time"),
    /** Which pull a row belongs to; its cells may be words. */
    PULL(Quantity.COUNT, "pull"),
    /** Kept as it stands, in the unit that it came in. */
    UNKNOWN(Quantity.AS_MEASURED, "unknown");

    private final Quantity quantity;
    private final String heading;

    Channel(Quantity quantity, String heading) {
        this.quantity = quantity;
        this.heading = heading;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** What it is called in a sentence, in the language spoken. */
    public String words() {
        return LogWords.of("channel." + id());
    }

    /** What it is called at the head of a column that this program writes, in English. */
    String heading() {
        return heading;
    }

    /** What it is called in files and on the command line, such as {@code manifold-pressure}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Channel> byId(String id) {
        return Arrays.stream(values()).filter(c -> c.id().equals(id)).findFirst();
    }

    /** Whether a number without a unit can mean one thing only. */
    boolean hasOneUnitOnly() {
        return this == SPEED || this == TIME || quantity == Quantity.RATIO || this == PULL;
    }
}

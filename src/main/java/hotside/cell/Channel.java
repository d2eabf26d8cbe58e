// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.engine.TorquePower;
import hotside.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What can be told of a moment of a pull; a sensor reads one of them, the truth knows all. */
public enum Channel {
    ENGINE_SPEED("engineSpeed", Quantity.ROTATION, m -> m.point().speed()),
    TORQUE("torque", Quantity.TORQUE, Moment::brakeTorque),
    POWER("power", Quantity.POWER, m -> TorquePower.of(m.brakeTorque(), m.point().speed())),
    BOOST("boost", Quantity.GAUGE_PRESSURE, m -> m.point().boost()),
    MANIFOLD_TEMPERATURE(
            "manifoldTemperature", Quantity.TEMPERATURE, m -> m.point().manifoldTemperature()),
    TURBINE_INLET_PRESSURE(
            "turbineInletPressure", Quantity.PRESSURE, m -> m.point().turbineInletPressure()),
    /** At a wall tap where the pipe begins. */
    TURBINE_OUTLET_PRESSURE(
            "turbineOutletPressure", Quantity.PRESSURE, m -> m.point().tapPressure()),
    /** What the turbine works against. */
    TURBINE_OUTLET_TOTAL(
            "turbineOutletTotal", Quantity.PRESSURE, m -> m.point().turbineOutletPressure()),
    TURBINE_INLET_TEMPERATURE(
            "turbineInletTemperature",
            Quantity.TEMPERATURE,
            m -> m.point().turbineInletTemperature()),
    PIPE_TEMPERATURE("pipeTemperature", Quantity.TEMPERATURE, m -> m.point().pipeTemperature()),
    AIR_FLOW("airFlow", Quantity.MASS_FLOW, m -> m.point().airFlow()),
    FUEL_FLOW("fuelFlow", Quantity.MASS_FLOW, m -> m.point().fuelFlow()),
    LIFT("lift", Quantity.LENGTH, m -> m.point().lift()),
    BYPASS_FRACTION("bypassFraction", Quantity.PERCENTAGE, m -> m.point().bypassFraction()),
    SIGNAL_SHARE("signalShare", Quantity.PERCENTAGE, m -> m.point().signalShare()),
    TURBO_SPEED("turboSpeed", Quantity.ROTATION, m -> m.point().turboSpeed()),
    AMBIENT_PRESSURE(
            "ambientPressure", Quantity.PRESSURE, m -> m.point().rig().ambient().pressure()),
    AMBIENT_TEMPERATURE(
            "ambientTemperature",
            Quantity.TEMPERATURE,
            m -> m.point().rig().ambient().temperature()),
    COOLANT_TEMPERATURE(
            "coolantTemperature",
            Quantity.TEMPERATURE,
            m -> m.point().rig().cooler().coolantTemperature());

    private final String label;
    private final Quantity quantity;
    private final ToDoubleFunction<Moment> truth;

    Channel(String label, Quantity quantity, ToDoubleFunction<Moment> truth) {
        this.label = label;
        this.quantity = quantity;
        this.truth = truth;
    }

    /** As in a rig file and at the head of a column, such as {@code engineSpeed}. */
    public String label() {
        return label;
    }

    /** What it is called in the language spoken. */
    public String words() {
        return CellWords.of("channel." + label);
    }

    /** What it is called in all languages, for names that a person typed. */
    public List<String> allWords() {
        return CellWords.all("channel." + label);
    }

    public Quantity quantity() {
        return quantity;
    }

    /** What a difference of two of its values is. */
    Quantity difference() {
        return switch (quantity) {
            case PRESSURE, GAUGE_PRESSURE -> Quantity.PRESSURE_DIFFERENCE;
            case TEMPERATURE -> Quantity.TEMPERATURE_DIFFERENCE;
            default -> quantity;
        };
    }

    /** The true value in SI. */
    public double truth(Moment moment) {
        return truth.applyAsDouble(moment);
    }

    public static Optional<Channel> of(String label) {
        return Arrays.stream(values()).filter(c -> c.label.equals(label)).findFirst();
    }

    static List<String> labels() {
        return Arrays.stream(values()).map(Channel::label).toList();
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.cell.OperatingPoint;
import hotside.unit.Quantity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What a learner can be asked to foresee of a rig at one engine speed. */
public enum Watched {
    BOOST("boost", Quantity.GAUGE_PRESSURE, OperatingPoint::boost),
    P2("p2", Quantity.PRESSURE, p -> p.manifoldPressure()),
    P3("p3", Quantity.PRESSURE, OperatingPoint::turbineInletPressure),
    P4("p4", Quantity.PRESSURE, OperatingPoint::turbineOutletPressure),
    TAP("tap", Quantity.PRESSURE, p -> p.tapPressure()),
    BACK_PRESSURE("backPressure", Quantity.GAUGE_PRESSURE, OperatingPoint::backPressure),
    EXPANSION("expansionRatio", Quantity.RATIO, p -> p.expansionRatio()),
    POWER("power", Quantity.POWER, OperatingPoint::power),
    TORQUE("torque", Quantity.TORQUE, OperatingPoint::torque),
    AIR_FLOW("airFlow", Quantity.MASS_FLOW, OperatingPoint::airFlow),
    EXHAUST_FLOW("exhaustFlow", Quantity.MASS_FLOW, OperatingPoint::exhaustFlow),
    GATE_FLOW("gateFlow", Quantity.MASS_FLOW, OperatingPoint::gateFlow),
    BYPASS("bypass", Quantity.PERCENTAGE, OperatingPoint::bypassFraction),
    LIFT("lift", Quantity.LENGTH, OperatingPoint::lift),
    SIGNAL_SHARE("signalShare", Quantity.PERCENTAGE, OperatingPoint::signalShare),
    TURBO_SPEED("turboSpeed", Quantity.ROTATION, p -> p.turboSpeed()),
    CHARGE_TEMPERATURE(
            "chargeTemperature", Quantity.TEMPERATURE, OperatingPoint::manifoldTemperature),
    TURBINE_POWER("turbinePower", Quantity.POWER, p -> p.turbinePower()),
    PUMPING("pumping", Quantity.POWER, OperatingPoint::pumpingPower);

    private final String id;
    private final Quantity quantity;
    private final ToDoubleFunction<OperatingPoint> value;

    Watched(String id, Quantity quantity, ToDoubleFunction<OperatingPoint> value) {
        this.id = id;
        this.quantity = quantity;
        this.value = value;
    }

    /** As lessons write it. */
    public String id() {
        return id;
    }

    /** For people, without article, in the language spoken. */
    public String words() {
        return CourseWords.of("watched." + id);
    }

    public Quantity quantity() {
        return quantity;
    }

    /** In SI. */
    public double of(OperatingPoint point) {
        return value.applyAsDouble(point);
    }

    static Optional<Watched> find(String id) {
        return Arrays.stream(values()).filter(w -> w.id.equals(id)).findFirst();
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(Watched::id).toList();
    }
}

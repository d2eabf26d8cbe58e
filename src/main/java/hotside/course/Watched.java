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
    BOOST("boost", "boost", Quantity.GAUGE_PRESSURE, OperatingPoint::boost),
    P2("p2", "pressure in the intake manifold, p2", Quantity.PRESSURE, p -> p.manifoldPressure()),
    P3(
            "p3",
            "pressure before the turbine, p3",
            Quantity.PRESSURE,
            OperatingPoint::turbineInletPressure),
    P4(
            "p4",
            "total pressure behind the turbine, p4",
            Quantity.PRESSURE,
            OperatingPoint::turbineOutletPressure),
    TAP("tap", "what a wall tap behind the turbine reads", Quantity.PRESSURE, p -> p.tapPressure()),
    BACK_PRESSURE(
            "backPressure",
            "back pressure: p4 above ambient",
            Quantity.GAUGE_PRESSURE,
            OperatingPoint::backPressure),
    EXPANSION("expansionRatio", "expansion ratio p3/p4", Quantity.RATIO, p -> p.expansionRatio()),
    POWER("power", "power", Quantity.POWER, OperatingPoint::power),
    TORQUE("torque", "torque", Quantity.TORQUE, OperatingPoint::torque),
    AIR_FLOW("airFlow", "air flow", Quantity.MASS_FLOW, OperatingPoint::airFlow),
    EXHAUST_FLOW("exhaustFlow", "exhaust flow", Quantity.MASS_FLOW, OperatingPoint::exhaustFlow),
    GATE_FLOW("gateFlow", "flow through the gate", Quantity.MASS_FLOW, OperatingPoint::gateFlow),
    BYPASS(
            "bypass",
            "share that goes round the turbine",
            Quantity.PERCENTAGE,
            OperatingPoint::bypassFraction),
    LIFT("lift", "lift of the gate", Quantity.LENGTH, OperatingPoint::lift),
    SIGNAL_SHARE(
            "signalShare",
            "share of the boost at the gate's diaphragm",
            Quantity.PERCENTAGE,
            OperatingPoint::signalShare),
    TURBO_SPEED("turboSpeed", "speed of the turbo", Quantity.ROTATION, p -> p.turboSpeed()),
    CHARGE_TEMPERATURE(
            "chargeTemperature",
            "temperature of the charge in the manifold",
            Quantity.TEMPERATURE,
            OperatingPoint::manifoldTemperature),
    TURBINE_POWER("turbinePower", "power of the turbine", Quantity.POWER, p -> p.turbinePower()),
    PUMPING("pumping", "power spent on moving gas", Quantity.POWER, OperatingPoint::pumpingPower);

    private final String id;
    private final String words;
    private final Quantity quantity;
    private final ToDoubleFunction<OperatingPoint> value;

    Watched(String id, String words, Quantity quantity, ToDoubleFunction<OperatingPoint> value) {
        this.id = id;
        this.words = words;
        this.quantity = quantity;
        this.value = value;
    }

    /** As lessons write it. */
    public String id() {
        return id;
    }

    /** For people, without article. */
    public String words() {
        return words;
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

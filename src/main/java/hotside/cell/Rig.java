// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.duct.Pipe;
import hotside.relation.Slot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An engine with its turbo, gate, cooler, exhaust, sensors and cell, as data. Immutable. Each value
 * has a path, such as {@code exhaust.bore}, {@code engine.curve.3.exhaustTemperature} or {@code
 * sensors.boost.noise}; {@link #with(String, String)} makes a rig with one value changed.
 */
public final class Rig {
    private final String id;
    private final String title;
    private final Map<String, Object> values;
    private final Ambient ambient;
    private final Engine engine;
    private final Turbo turbo;
    private final Gate gate;
    private final Control control;
    private final Cooler cooler;
    private final Exhaust exhaust;
    private final Bench bench;
    private final List<Sensor> sensors;

    private Rig(String id, String title, Map<String, Object> values) {
        this.id = id;
        this.title = title;
        this.values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        ambient = new Ambient(number("ambient.pressure"), number("ambient.temperature"));
        engine = readEngine();
        turbo = readTurbo();
        gate = readGate();
        control = readControl();
        cooler =
                new Cooler(
                        number("cooler.effectiveness"),
                        number("cooler.coolantTemperature"),
                        number("cooler.chargeLoss"));
        exhaust = readExhaust();
        bench = readBench();
        sensors = readSensors();
    }

    /**
     * @param values by path, in SI; complete
     * @throws RigException if values contradict each other
     */
    static Rig of(String id, String title, Map<String, Object> values) {
        Rig rig = new Rig(id, title, values);
        rig.requireSense();
        return rig;
    }

    private void requireSense() {
        for (int i = 1; i < engine.curve().size(); i++) {
            if (!(engine.curve().get(i).speed() > engine.curve().get(i - 1).speed())) {
                throw new RigException(
                        "point " + (i + 1) + " of engine.curve is not faster than the one before",
                        "points by rising speed");
            }
        }
        if (!(bench.toSpeed() >= bench.fromSpeed())) {
            throw new RigException(
                    "cell.toSpeed is below cell.fromSpeed", "a pull from slow to fast");
        }
        if (!(bench.averaging() <= bench.hold())) {
            throw new RigException(
                    "cell.averaging is longer than cell.hold", "an average over part of the hold");
        }
        for (Sensor sensor : sensors) {
            if (!(sensor.lowest() < sensor.highest())) {
                throw new RigException(
                        "sensors." + sensor.channel().label() + " has highest not above lowest",
                        "the ends of its range");
            }
        }
    }

    public String id() {
        return id;
    }

    public String title() {
        return CellWords.title("rig." + id, title);
    }

    public Ambient ambient() {
        return ambient;
    }

    public Engine engine() {
        return engine;
    }

    public Turbo turbo() {
        return turbo;
    }

    public Gate gate() {
        return gate;
    }

    public Control control() {
        return control;
    }

    public Cooler cooler() {
        return cooler;
    }

    public Exhaust exhaust() {
        return exhaust;
    }

    public Bench bench() {
        return bench;
    }

    /** In the order of the file. */
    public List<Sensor> sensors() {
        return sensors;
    }

    /** The paths of all values, in the order of the file's sections. */
    public Set<String> paths() {
        return values.keySet();
    }

    /** What a value is: unit, range, meaning; empty if this rig has no such value. */
    public Optional<Slot> slot(String path) {
        return values.containsKey(path) ? RigSlots.at(path) : Optional.empty();
    }

    /**
     * A value.
     *
     * @return a {@code Double} in SI, or a {@code String} for a choice
     * @throws RigException if there is no such value; the message lists the nearest
     */
    public Object value(String path) {
        Object value = values.get(path);
        if (value == null) {
            throw RigText.unknown(path, values.keySet());
        }
        return value;
    }

    /**
     * This rig with one value changed.
     *
     * @param text as typed, such as {@code 60.2 mm}; without a unit it is in SI
     * @throws RigException if there is no such value, or it can't be that
     */
    public Rig with(String path, String text) {
        return changed(path, RigText.read(path, known(path), text, ambient.pressure()));
    }

    /**
     * This rig with one number changed.
     *
     * @param si the number in SI
     * @throws RigException if there is no such number, or it is out of range
     */
    public Rig with(String path, double si) {
        Slot slot = known(path);
        if (slot.kind() != Slot.Kind.NUMBER) {
            throw new RigException(
                    path + " is no number", "one of: " + String.join(", ", slot.choices()));
        }
        return changed(path, RigText.number(path, slot, si));
    }

    /** This rig with a part fitted. */
    public Rig with(Part part) {
        Rig fitted = this;
        for (var entry : part.settings().entrySet()) {
            fitted = fitted.with(entry.getKey(), entry.getValue());
        }
        return fitted;
    }

    private Slot known(String path) {
        return slot(path).orElseThrow(() -> RigText.unknown(path, values.keySet()));
    }

    private Rig changed(String path, Object value) {
        Map<String, Object> changed = new LinkedHashMap<>(values);
        changed.put(path, value);
        return of(id, title, changed);
    }

    private double number(String path) {
        return (Double) values.get(path);
    }

    private Engine readEngine() {
        List<SpeedPoint> curve = new ArrayList<>();
        for (int i = 1; values.containsKey(RigSlots.pointPath(i, "speed")); i++) {
            curve.add(
                    new SpeedPoint(
                            number(RigSlots.pointPath(i, "speed")),
                            number(RigSlots.pointPath(i, "volumetricEfficiency")),
                            number(RigSlots.pointPath(i, "friction")),
                            number(RigSlots.pointPath(i, "exhaustTemperature"))));
        }
        return new Engine(
                number("engine.displacement"),
                number("engine.compressionRatio"),
                number("engine.indicatedEfficiency"),
                number("engine.lambda"),
                number("engine.hydrogenCarbonRatio"),
                number("engine.fuelEnergy"),
                curve);
    }

    private Turbo readTurbo() {
        return new Turbo(
                number("turbo.compressorEfficiency"),
                number("turbo.turbineEfficiency"),
                number("turbo.mechanicalEfficiency"),
                number("turbo.effectiveArea"),
                number("turbo.rotorInertia"),
                number("turbo.wheelDiameter"),
                number("turbo.workCoefficient"),
                number("turbo.inletLeak"));
    }

    private Gate readGate() {
        return new Gate(
                values.get("gate.vents").equals("pipe"),
                number("gate.seatDiameter"),
                number("gate.diaphragmDiameter"),
                number("gate.preload"),
                number("gate.rate"),
                number("gate.maxLift"),
                number("gate.dischargeCoefficient"),
                number("gate.seatLeak"),
                values.get("gate.stuck").equals("yes"),
                number("gate.stuckLift"));
    }

    private Control readControl() {
        String word = (String) values.get("control.kind");
        Control.Kind kind = Control.Kind.SPRING;
        for (Control.Kind candidate : Control.Kind.values()) {
            if (candidate.word().equals(word)) {
                kind = candidate;
            }
        }
        return new Control(
                kind,
                number("control.signalShare"),
                number("control.targetBoost"),
                number("control.leastShare"));
    }

    private Exhaust readExhaust() {
        double roughness = number("exhaust.roughness");
        Pipe pipe =
                new Pipe(
                        number("exhaust.bore"),
                        number("exhaust.length"),
                        roughness,
                        number("exhaust.bends"));
        double loss = number("exhaust.mufflerLoss");
        Optional<Pipe> muffler =
                loss > 0
                        ? Optional.of(new Pipe(number("exhaust.mufflerBore"), 0, roughness, loss))
                        : Optional.empty();
        return new Exhaust(pipe, muffler);
    }

    private Bench readBench() {
        return new Bench(
                number("cell.fromSpeed"),
                number("cell.toSpeed"),
                number("cell.step"),
                number("cell.hold"),
                number("cell.averaging"),
                number("cell.sampling"),
                number("cell.rampRate"),
                number("cell.inertia"),
                number("cell.inertiaSetting"),
                number("cell.powerFactor"),
                number("cell.boostLimit"),
                number("cell.repeatability"),
                number("cell.driftPerHour"),
                number("cell.interval"),
                number("cell.soakPerPull"),
                number("cell.soakRecovery"));
    }

    private List<Sensor> readSensors() {
        List<Sensor> read = new ArrayList<>();
        for (String path : values.keySet()) {
            if (path.startsWith(RigSlots.SENSORS + ".") && path.endsWith(".lowest")) {
                String label = path.split("\\.", -1)[1];
                Channel.of(label).ifPresent(channel -> read.add(readSensor(channel)));
            }
        }
        return List.copyOf(read);
    }

    private Sensor readSensor(Channel channel) {
        return new Sensor(
                channel,
                number(RigSlots.sensorPath(channel, "lowest")),
                number(RigSlots.sensorPath(channel, "highest")),
                number(RigSlots.sensorPath(channel, "noise")),
                number(RigSlots.sensorPath(channel, "offset")),
                number(RigSlots.sensorPath(channel, "gainError")),
                number(RigSlots.sensorPath(channel, "lag")),
                number(RigSlots.sensorPath(channel, "resolution")));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.duct.Pipe;
import hotside.physics.gas.ExhaustGas;
import hotside.relation.Slot;
import hotside.unit.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What a rig is made of: its sections and their slots, with units and ranges. */
final class RigSlots {
    static final String CURVE = "curve";
    static final String SENSORS = "sensors";

    private static final int MOST_POINTS = 40;

    /** Slots by section, in the order of a file. Ambient first: other pressures count from it. */
    static final Map<String, List<Slot>> SECTIONS = sections();

    /** The slots of one point of the engine's curve. */
    static final List<Slot> POINT =
            List.of(
                    number("speed", Quantity.ROTATION, "crankshaft speed").range(1, 500),
                    number(
                                    "volumetricEfficiency",
                                    Quantity.PERCENTAGE,
                                    "filling referred to the manifold, at equal pressures")
                            .range(0.2, 1.5),
                    number(
                                    "friction",
                                    Quantity.PRESSURE_DIFFERENCE,
                                    "mean effective pressure of friction and auxiliaries")
                            .range(0, 600e3),
                    number("exhaustTemperature", Quantity.TEMPERATURE, "before the turbine")
                            .range(500, 1500));

    private RigSlots() {}

    private static Map<String, List<Slot>> sections() {
        Map<String, List<Slot>> all = new LinkedHashMap<>();
        all.put(
                "ambient",
                List.of(
                        number("pressure", Quantity.PRESSURE, "around the cell").range(50e3, 120e3),
                        number("temperature", Quantity.TEMPERATURE, "around the cell")
                                .range(230, 330)));
        all.put("engine", engine());
        all.put("turbo", turbo());
        all.put("gate", gate());
        all.put("control", control());
        all.put(
                "cooler",
                List.of(
                        number("effectiveness", Quantity.PERCENTAGE, "of the charge side")
                                .range(0, 1),
                        number("coolantTemperature", Quantity.TEMPERATURE, "where it enters")
                                .range(230, 400),
                        number("chargeLoss", Quantity.PRESSURE_DIFFERENCE, "compressor to manifold")
                                .range(0, 40e3)
                                .orElse(0)));
        all.put("exhaust", exhaust());
        all.put("cell", cell());
        return java.util.Collections.unmodifiableMap(all);
    }

    private static List<Slot> engine() {
        return List.of(
                number("displacement", Quantity.VOLUME, "swept by all cylinders").range(1e-4, 0.05),
                number("compressionRatio", Quantity.RATIO, "geometric").range(5, 25),
                number(
                                "indicatedEfficiency",
                                Quantity.PERCENTAGE,
                                "gross work over the heat of the fuel that finds air")
                        .range(0.1, 0.6),
                number("lambda", Quantity.RATIO, "air over the air that just burns the fuel")
                        .range(0.6, 6),
                number("hydrogenCarbonRatio", Quantity.RATIO, "of the fuel's atoms")
                        .range(0, 4)
                        .orElse(ExhaustGas.PETROL),
                number("fuelEnergy", Quantity.SPECIFIC_ENERGY, "lower heating value")
                        .range(10e6, 130e6)
                        .orElse(43e6));
    }

    private static List<Slot> turbo() {
        return List.of(
                number("compressorEfficiency", Quantity.PERCENTAGE, "isentropic").range(0.3, 0.9),
                number("turbineEfficiency", Quantity.PERCENTAGE, "total to static").range(0.3, 0.9),
                number("mechanicalEfficiency", Quantity.PERCENTAGE, "of the bearings")
                        .range(0.5, 1)
                        .orElse(0.96),
                number("effectiveArea", Quantity.AREA, "of the turbine").range(1e-5, 0.02),
                number("rotorInertia", Quantity.INERTIA, "shaft and wheels").range(1e-7, 0.05),
                number("wheelDiameter", Quantity.LENGTH, "of the compressor's rim")
                        .range(0.02, 0.3),
                number("workCoefficient", Quantity.RATIO, "work over the rim speed's square")
                        .range(0.3, 1)
                        .orElse(0.72),
                number("inletLeak", Quantity.LENGTH, "a round hole before the turbine")
                        .range(0, 0.05)
                        .orElse(0));
    }

    private static List<Slot> gate() {
        return List.of(
                Slot.choice("vents", "where its flow goes", "ambient", "pipe"),
                number("seatDiameter", Quantity.LENGTH, "bore of the seat").range(0.005, 0.12),
                number("diaphragmDiameter", Quantity.LENGTH, "effective").range(0.01, 0.2),
                number("preload", Quantity.FORCE, "of the spring with the valve shut")
                        .range(0, 5e3),
                number("rate", Quantity.SPRING_RATE, "of the spring").range(100, 200e3),
                number("maxLift", Quantity.LENGTH, "to the far stop").range(0, 0.05),
                number("dischargeCoefficient", Quantity.RATIO, "of the gap")
                        .range(0.2, 1)
                        .orElse(0.7),
                number("seatLeak", Quantity.LENGTH, "a round hole that no valve shuts")
                        .range(0, 0.05)
                        .orElse(0),
                Slot.choice("stuck", "whether the valve is stuck", "no", "yes").orElse("no"),
                number("stuckLift", Quantity.LENGTH, "where it is stuck").range(0, 0.05).orElse(0));
    }

    private static List<Slot> control() {
        return List.of(
                Slot.choice("kind", "how the signal is chosen", "spring", "bleed", "regulated"),
                number("signalShare", Quantity.PERCENTAGE, "of boost, set by hand")
                        .range(0, 1)
                        .orElse(1),
                number("targetBoost", Quantity.GAUGE_PRESSURE, "that a regulating control holds")
                        .range(1e3, 400e3)
                        .orElse(50e3),
                number("leastShare", Quantity.PERCENTAGE, "least that a regulating control gives")
                        .range(0, 1)
                        .orElse(0.4));
    }

    private static List<Slot> exhaust() {
        return List.of(
                number("bore", Quantity.LENGTH, "of the pipe").range(0.015, 0.4),
                number("length", Quantity.LENGTH, "from turbine to end").range(0, 20),
                number("bends", Quantity.RATIO, "sum of the loss coefficients of bends")
                        .range(0, 30)
                        .orElse(0),
                number("roughness", Quantity.LENGTH, "of the wall")
                        .range(0, 2e-3)
                        .orElse(Pipe.STEEL),
                number("mufflerBore", Quantity.LENGTH, "of the muffler").range(0.015, 0.4),
                number("mufflerLoss", Quantity.RATIO, "its loss coefficient; 0 for none")
                        .range(0, 100)
                        .orElse(0));
    }

    private static List<Slot> cell() {
        return List.of(
                number("fromSpeed", Quantity.ROTATION, "where a pull starts").range(5, 400),
                number("toSpeed", Quantity.ROTATION, "where it ends").range(5, 400),
                number("step", Quantity.ROTATION, "between held speeds").range(0.5, 100),
                number("hold", Quantity.TIME, "of each speed").range(0.5, 600).orElse(8),
                number("averaging", Quantity.TIME, "at the end of each hold")
                        .range(0.05, 600)
                        .orElse(3),
                number("sampling", Quantity.TIME, "between samples").range(0.005, 10).orElse(0.1),
                number("rampRate", Quantity.ROTATION_RATE, "of a ramp; 0 holds steps")
                        .range(0, 100)
                        .orElse(0),
                number("inertia", Quantity.INERTIA, "of engine and brake").range(0, 100).orElse(0),
                number("inertiaSetting", Quantity.INERTIA, "that the cell adds back in a ramp")
                        .range(0, 100)
                        .orElse(0),
                number("powerFactor", Quantity.RATIO, "that the cell puts on torque and power")
                        .range(0.5, 2)
                        .orElse(1),
                number("boostLimit", Quantity.GAUGE_PRESSURE, "at which the cell stops a pull")
                        .range(1e3, 700e3)
                        .orElse(300e3),
                number("repeatability", Quantity.PERCENTAGE, "of power from pull to pull")
                        .range(0, 0.05)
                        .orElse(0),
                number("driftPerHour", Quantity.TEMPERATURE_DIFFERENCE, "of the ambient air")
                        .range(-20, 20)
                        .orElse(0),
                number("interval", Quantity.TIME, "between starts of pulls")
                        .range(1, 86400)
                        .orElse(600),
                number("soakPerPull", Quantity.TEMPERATURE_DIFFERENCE, "of the coolant")
                        .range(0, 60)
                        .orElse(0),
                number("soakRecovery", Quantity.TIME, "to 1/e").range(1, 86400).orElse(900));
    }

    /** The slots of a sensor of this channel. */
    static List<Slot> sensor(Channel channel) {
        Quantity difference = channel.difference();
        return List.of(
                number("lowest", channel.quantity(), "that it can tell"),
                number("highest", channel.quantity(), "that it can tell"),
                number("noise", difference, "standard deviation of a sample")
                        .range(0, 1e9)
                        .orElse(0),
                number("offset", difference, "added to every reading").orElse(0),
                number("gainError", Quantity.PERCENTAGE, "share by which it reads too much")
                        .range(-0.5, 0.5)
                        .orElse(0),
                number("lag", Quantity.TIME, "time constant").range(0, 60).orElse(0),
                number("resolution", difference, "step between readings").range(0, 1e9).orElse(0));
    }

    private static Slot number(String name, Quantity quantity, String meaning) {
        return Slot.number(name, "", quantity, meaning);
    }

    /** The slot at a path such as {@code exhaust.bore} or {@code sensors.boost.noise}. */
    static Optional<Slot> at(String path) {
        String[] parts = path.split("\\.", -1);
        if (parts.length == 2) {
            return named(SECTIONS.getOrDefault(parts[0], List.of()), parts[1]);
        }
        if (parts.length == 4 && parts[0].equals("engine") && parts[1].equals(CURVE)) {
            return isPoint(parts[2]) ? named(POINT, parts[3]) : Optional.empty();
        }
        return parts.length == 3 && parts[0].equals(SENSORS)
                ? Channel.of(parts[1]).flatMap(c -> named(sensor(c), parts[2]))
                : Optional.empty();
    }

    private static Optional<Slot> named(List<Slot> slots, String name) {
        return slots.stream().filter(slot -> slot.name().equals(name)).findFirst();
    }

    private static boolean isPoint(String text) {
        return text.matches("[1-9]\\d?") && Integer.parseInt(text) <= MOST_POINTS;
    }

    static String pointPath(int number, String name) {
        return "engine." + CURVE + "." + number + "." + name;
    }

    static String sensorPath(Channel channel, String name) {
        return SENSORS + "." + channel.label() + "." + name;
    }

    /** All paths outside lists. */
    static Stream<String> paths() {
        return SECTIONS.entrySet().stream()
                .flatMap(e -> e.getValue().stream().map(slot -> e.getKey() + "." + slot.name()));
    }
}

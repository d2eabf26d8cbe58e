// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.content.ContentFile;
import hotside.content.Fields;
import hotside.content.ScalarNode;
import hotside.relation.Slot;
import hotside.unit.Units;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes a rig of a file, and findings of what is wrong with it. */
final class RigReader {
    private final ContentFile file;
    private final Map<String, Object> values = new LinkedHashMap<>();

    private RigReader(ContentFile file) {
        this.file = file;
    }

    /** The rig; empty if there are findings. */
    static Optional<Rig> read(ContentFile file) {
        return new RigReader(file).rig();
    }

    private Optional<Rig> rig() {
        Fields fields = file.fields();
        String title = fields.text("title");
        RigSlots.SECTIONS.forEach(
                (section, slots) -> {
                    Fields part = fields.map(section);
                    readSlots(part, section, slots);
                    if (section.equals("engine")) {
                        readCurve(part);
                    }
                    part.noOthers();
                });
        fields.optionalMap(RigSlots.SENSORS).ifPresent(this::readSensors);
        fields.noOthers();
        if (!file.findings().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Rig.of(file.name(), title, values));
        } catch (RigException e) {
            file.findings().add(fields.place(), e.what(), e.expected(), "");
            return Optional.empty();
        }
    }

    private void readSlots(Fields fields, String path, List<Slot> slots) {
        for (Slot slot : slots) {
            readSlot(fields, path + "." + slot.name(), slot);
        }
    }

    private void readSlot(Fields fields, String path, Slot slot) {
        Optional<Object> fallback = fallback(path, slot);
        if (fallback.isPresent() && !fields.has(slot.name())) {
            values.put(path, fallback.get());
            return;
        }
        fields.scalar(slot.name()).ifPresent(node -> put(fields, path, slot, node));
    }

    /**
     * A muffler's bore is asked for only where there is one; without it, it is that of the pipe.
     */
    private Optional<Object> fallback(String path, Slot slot) {
        return path.equals("exhaust.mufflerBore")
                ? Optional.ofNullable(values.get("exhaust.bore"))
                : slot.fallback();
    }

    private void put(Fields fields, String path, Slot slot, ScalarNode node) {
        try {
            values.put(path, RigText.read(path, slot, node.text(), ambient()));
        } catch (RigException e) {
            fields.findings().add(node, e.what(), e.expected(), "");
        }
    }

    private double ambient() {
        return values.get("ambient.pressure") instanceof Double pressure
                ? pressure
                : Units.STANDARD_ATMOSPHERE;
    }

    private void readCurve(Fields engine) {
        int number = 0;
        for (Fields point : engine.maps(RigSlots.CURVE)) {
            number++;
            readSlots(
                    point, RigSlots.pointPath(number, "").replaceFirst("\\.$", ""), RigSlots.POINT);
            point.noOthers();
        }
    }

    private void readSensors(Fields sensors) {
        for (Channel channel : Channel.values()) {
            sensors.optionalMap(channel.label())
                    .ifPresent(
                            sensor -> {
                                readSlots(
                                        sensor,
                                        RigSlots.SENSORS + "." + channel.label(),
                                        RigSlots.sensor(channel));
                                sensor.noOthers();
                            });
        }
        sensors.noOthers();
    }
}

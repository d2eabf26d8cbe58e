// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.ContentReader;
import hotside.content.Fields;
import hotside.content.Finding;
import hotside.relation.Slot;
import hotside.unit.Units;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rigs that can be run and the parts that can be fitted, with what was wrong with the rest. */
public final class Stock {
    private final Map<String, Rig> rigs = new LinkedHashMap<>();
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private Stock() {}

    /** What comes with the program. */
    public static Stock shipped() {
        Stock stock = new Stock();
        stock.addRigs(ContentFolder.dataOfResources("hotside/rigs"));
        stock.addParts(ContentFolder.dataOfResources("hotside/parts"));
        return stock;
    }

    /** The rigs of a folder, with the shipped parts. */
    public static Stock of(Path folder) {
        Stock stock = new Stock();
        stock.addRigs(ContentFolder.readData(folder));
        stock.addParts(ContentFolder.dataOfResources("hotside/parts"));
        return stock;
    }

    /** A single rig's file, with the shipped parts. */
    public static Stock ofFile(Path file) {
        Stock stock = new Stock();
        stock.addRig(ContentReader.readData(file));
        stock.addParts(ContentFolder.dataOfResources("hotside/parts"));
        return stock;
    }

    /** A rig's text; nothing of the shelf. */
    static Stock ofText(String path, String text) {
        Stock stock = new Stock();
        stock.addRig(ContentReader.readData(path, text));
        return stock;
    }

    public List<Rig> rigs() {
        return List.copyOf(rigs.values());
    }

    public Optional<Rig> rig(String id) {
        return Optional.ofNullable(rigs.get(id));
    }

    public List<Part> parts() {
        return List.copyOf(parts.values());
    }

    public Optional<Part> part(String id) {
        return Optional.ofNullable(parts.get(id));
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    private void addRigs(ContentFolder folder) {
        findings.addAll(folder.findings());
        folder.files().forEach(this::addRig);
    }

    private void addRig(ContentFile file) {
        RigReader.read(file)
                .filter(rig -> isNew(file, rig.id()))
                .ifPresent(rig -> rigs.put(rig.id(), rig));
        findings.addAll(file.findings().list());
    }

    private boolean isNew(ContentFile file, String id) {
        if (!rigs.containsKey(id)) {
            return true;
        }
        file.findings()
                .add(
                        file.fields().place(),
                        "another rig's file is called \"" + id + "\" too",
                        "a file name of its own",
                        "rename the file");
        return false;
    }

    private void addParts(ContentFolder folder) {
        findings.addAll(folder.findings());
        for (ContentFile file : folder.files()) {
            Fields fields = file.fields();
            fields.maps("parts").forEach(this::addPart);
            fields.noOthers();
            findings.addAll(file.findings().list());
        }
    }

    private void addPart(Fields fields) {
        String id = fields.text("id");
        String title = fields.text("title");
        Fields set = fields.map("set");
        Map<String, String> settings = new LinkedHashMap<>();
        for (String path : set.names()) {
            set.scalar(path)
                    .ifPresent(
                            node -> {
                                settings.put(path, node.text());
                                check(set, path, node.text());
                            });
        }
        fields.noOthers();
        if (parts.putIfAbsent(id, new Part(id, title, settings)) != null) {
            fields.findings()
                    .add(
                            fields.place("id"),
                            "another part is called \"" + id + "\" too",
                            "an id of its own",
                            "");
        }
    }

    private static void check(Fields set, String path, String text) {
        try {
            Slot slot =
                    RigSlots.at(path)
                            .orElseThrow(() -> RigText.unknown(path, RigSlots.paths().toList()));
            RigText.read(path, slot, text, Units.STANDARD_ATMOSPHERE);
        } catch (RigException e) {
            set.findings().add(set.place(path), e.what(), e.expected(), "");
        }
    }
}

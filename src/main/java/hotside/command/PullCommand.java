// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.cell.Note;
import hotside.cell.Part;
import hotside.cell.Pull;
import hotside.cell.PullTable;
import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Stock;
import hotside.content.Finding;
import hotside.relation.Slot;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a pull in the simulated test cell and writes what the sensors showed. */
@Command(
        name = "pull",
        description = "Runs a pull of a rig in the simulated test cell; the table is CSV in SI.",
        mixinStandardHelpOptions = true)
final class PullCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "RIG",
            description = "its id, or a rig's .yaml file; --list shows the ids")
    private String rigName;

    @Option(names = "--list", description = "lists the rigs and the parts that can be fitted")
    private boolean list;

    @Option(names = "--values", description = "shows the rig's values instead of pulling")
    private boolean values;

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            description = "changes a value, such as exhaust.bore=60.2mm; may be repeated")
    private List<String> settings = List.of();

    @Option(names = "--part", description = "fits a part off the shelf; may be repeated")
    private List<String> parts = List.of();

    @Option(names = "--seed", description = "of scatter and noise", defaultValue = "1")
    private long seed;

    @Option(
            names = "--number",
            description = "which pull of the day it is: air drifts, heat soaks",
            defaultValue = "1")
    private int number;

    @Option(
            names = "--truth",
            description = "adds columns of the truth, and says who decides the boost")
    private boolean truth;

    @Option(names = "--out", description = "a file to write the table to")
    private Path file;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (list || rigName == null) {
            tell(Stock.shipped(), out);
            return CommandLineDoor.FINE;
        }
        Stock stock = isFile() ? Stock.ofFile(Path.of(rigName)) : Stock.shipped();
        if (isFile() && !stock.findings().isEmpty()) {
            stock.findings().stream().map(Finding::text).forEach(out::println);
            return CommandLineDoor.FINDINGS;
        }
        try {
            Rig rig = changed(stock, found(stock));
            if (values) {
                tell(rig, out);
            } else {
                pull(rig, out);
            }
        } catch (RigException e) {
            throw new UsageException(e.getMessage() + ".");
        }
        return CommandLineDoor.FINE;
    }

    private boolean isFile() {
        return rigName.endsWith(".yaml");
    }

    private Rig found(Stock stock) {
        if (isFile()) {
            return stock.rigs().get(0);
        }
        List<String> known = stock.rigs().stream().map(Rig::id).toList();
        return stock.rig(rigName)
                .orElseThrow(() -> Lookups.unknown("rig", rigName, known, "pull --list"));
    }

    private Rig changed(Stock stock, Rig rig) {
        Rig changed = rig;
        List<String> known = stock.parts().stream().map(Part::id).toList();
        for (String id : parts) {
            changed =
                    changed.with(
                            stock.part(id)
                                    .orElseThrow(
                                            () ->
                                                    Lookups.unknown(
                                                            "part", id, known, "pull --list")));
        }
        for (String setting : settings) {
            int sign = setting.indexOf('=');
            if (sign < 1) {
                throw new UsageException(
                        "--set \""
                                + setting
                                + "\" is not PATH=VALUE; write it like --set exhaust.bore=60.2mm.");
            }
            changed = changed.with(setting.substring(0, sign).strip(), setting.substring(sign + 1));
        }
        return changed;
    }

    private void pull(Rig rig, PrintWriter out) {
        Pull pull = Pull.run(rig, seed, number);
        String table = truth ? PullTable.withTruth(pull) : PullTable.of(pull);
        if (file == null) {
            out.print(table);
        } else {
            OutFile.write(table, file);
        }
        if (truth) {
            tell(pull.notes(), spec.commandLine().getErr());
        }
    }

    private static void tell(List<Note> notes, PrintWriter err) {
        for (Note note : notes) {
            String from = Shown.of(note.speed(), Quantity.ROTATION, UnitSystem.SI_SHOP, 4).text();
            err.println("From " + from + ": " + String.join("; ", note.statements()) + ".");
        }
    }

    private static void tell(Stock stock, PrintWriter out) {
        stock.findings().stream().map(Finding::text).forEach(out::println);
        stock.rigs().forEach(rig -> out.println(rig.id() + ": " + rig.title()));
        out.println();
        for (Part part : stock.parts()) {
            List<String> set = new ArrayList<>();
            for (Map.Entry<String, String> entry : part.settings().entrySet()) {
                set.add(entry.getKey() + "=" + entry.getValue());
            }
            out.println(part.id() + ": " + part.title() + " (" + String.join(", ", set) + ")");
        }
    }

    private static void tell(Rig rig, PrintWriter out) {
        out.println(rig.title());
        for (String path : rig.paths()) {
            Slot slot = rig.slot(path).orElseThrow();
            Object value = rig.value(path);
            String shown =
                    value instanceof Double number
                            ? Shown.of(number, slot.quantity(), UnitSystem.SI_SHOP, 6).text()
                            : value.toString();
            out.println(path + " = " + shown + "  (" + slot.meaning() + ")");
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.catalogue.Catalogue;
import hotside.relation.Relation;
import hotside.relation.Slot;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists all relations, for people or for another program. */
@Command(
        name = "relations",
        description = "Lists the relations: slots, units, ranges, sources.",
        mixinStandardHelpOptions = true)
final class RelationsCommand implements Callable<Integer> {
    @Option(names = "--json", description = "For another program: SI units, everything there is.")
    private boolean json;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Json.text(Catalogue.all().stream().map(RelationsCommand::object).toList()));
            return CommandLineDoor.FINE;
        }
        String topic = "";
        for (Relation relation : Catalogue.all()) {
            if (!relation.topic().equals(topic)) {
                topic = relation.topic();
                out.println();
                out.println(topic);
                out.println("-".repeat(topic.length()));
            }
            out.println(relation.id() + ": " + relation.title());
            relation.inputs().forEach(slot -> out.println("    in   " + line(slot)));
            relation.outputs().forEach(slot -> out.println("    out  " + line(slot)));
            relation.sources().forEach(source -> out.println("    source: " + source));
        }
        return CommandLineDoor.FINE;
    }

    private static String line(Slot slot) {
        String unit = slot.quantity().siScale().label();
        String optional = slot.fallback().map(value -> " [" + value + "]").orElse("");
        return slot.name()
                + (unit.isEmpty() ? "" : ", " + unit)
                + optional
                + ": "
                + slot.meaning()
                + (slot.choices().isEmpty() ? "" : " (" + String.join(", ", slot.choices()) + ")")
                + range(slot);
    }

    private static String range(Slot slot) {
        boolean bounded = slot.min() > -Double.MAX_VALUE || slot.max() < Double.MAX_VALUE;
        return bounded ? "; " + slot.rangeText() : "";
    }

    private static Map<String, Object> object(Relation relation) {
        return Json.object(
                "id", relation.id(),
                "title", relation.title(),
                "topic", relation.topic(),
                "says", relation.says(),
                "tex", relation.tex(),
                "inputs", relation.inputs().stream().map(RelationsCommand::object).toList(),
                "outputs", relation.outputs().stream().map(RelationsCommand::object).toList(),
                "assumptions", relation.assumptions(),
                "sources", relation.sources());
    }

    private static Map<String, Object> object(Slot slot) {
        Map<String, Object> map =
                Json.object(
                        "slot", slot.name(),
                        "symbol", slot.symbol(),
                        "kind", slot.kind().name().toLowerCase(java.util.Locale.ROOT),
                        "quantity", slot.quantity().name().toLowerCase(java.util.Locale.ROOT),
                        "unit", slot.quantity().si().symbol(),
                        "meaning", slot.meaning());
        if (slot.kind() == Slot.Kind.NUMBER || slot.kind() == Slot.Kind.NUMBERS) {
            map.put("min", finite(slot.min()));
            map.put("max", finite(slot.max()));
            map.put("minExcluded", slot.minExcluded());
            map.put("maxExcluded", slot.maxExcluded());
            map.put("usualMin", finite(slot.usualMin()));
            map.put("usualMax", finite(slot.usualMax()));
        }
        if (!slot.choices().isEmpty()) {
            map.put("choices", List.copyOf(slot.choices()));
        }
        map.put("typical", slot.typical());
        map.put("optional", slot.fallback().isPresent());
        slot.fallback().ifPresent(value -> map.put("default", value));
        return map;
    }

    /** No bound is no number in JSON. */
    private static Double finite(double bound) {
        return Math.abs(bound) == Double.MAX_VALUE ? null : bound;
    }
}

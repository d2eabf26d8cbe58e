// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.page.Maths;
import hotside.page.WorkingText;
import hotside.relation.Caution;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Solver;
import hotside.relation.Step;
import hotside.relation.StepTex;
import hotside.relation.Values;
import hotside.relation.Worked;
import hotside.unit.DecimalHabit;
import hotside.unit.Expected;
import hotside.unit.Quantity;
import hotside.unit.Typed;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works one relation: once, or for every row of a table. */
@Command(
        name = "work",
        description = {
            "Works a relation. A bare number is in the slot's SI unit, \"80 kPa gauge\" is understood too.",
            "With --solve-for, give one output and leave out that input."
        },
        mixinStandardHelpOptions = true)
final class WorkCommand implements Callable<Integer> {
    private static final Pattern UNIT_AT_END =
            Pattern.compile(".*[0-9]\\s*([^0-9\\s;,.][^;]{0,40})", Pattern.DOTALL);

    @Parameters(
            index = "0",
            paramLabel = "RELATION",
            description = "its id; \"relations\" lists them")
    private String id;

    @Parameters(
            index = "1..*",
            paramLabel = "slot=value",
            description = "inputs, such as seatDiameter=46mm")
    private List<String> assignments = List.of();

    @Option(
            names = "--solve-for",
            paramLabel = "SLOT",
            description = "the input to find from the output given")
    private String solveFor;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "a table with slots as header; - for standard input")
    private String csv;

    @Option(names = "--json", description = "for another program: SI, with steps")
    private boolean json;

    @Option(names = "--units", description = "si or us, for the told results", defaultValue = "si")
    private Shop shop;

    @Option(
            names = "--ambient",
            description = "air around, for gauge pressures",
            defaultValue = "101.325 kPa")
    private String ambientText;

    @Spec private CommandSpec spec;

    private final InputStream in;

    WorkCommand(InputStream in) {
        this.in = in;
    }

    @Override
    public Integer call() throws IOException {
        Relation relation = Lookups.relation(id);
        PrintWriter out = spec.commandLine().getOut();
        if (csv != null) {
            if (!assignments.isEmpty() || solveFor != null || json) {
                throw new UsageException(
                        "--csv takes its values from the table; leave out slot=value, --solve-for and --json.");
            }
            return new TableWork(relation, in).run(csv, out, spec.commandLine().getErr());
        }
        double ambient =
                number("--ambient", ambientText, Quantity.PRESSURE, Units.STANDARD_ATMOSPHERE);
        if (ambient < 0) {
            throw new UsageException("--ambient: the air around has no pressure below zero.");
        }
        Map<String, String> texts = texts();
        relation = measuring(relation, texts);
        Values given = read(relation, texts, ambient);
        Worked worked = relation.work(solveFor == null ? given : turnedRound(relation, given));
        if (json) {
            out.println(Json.text(object(worked)));
        } else {
            out.println(new WorkingText(new Maths()).of(worked, shop.system(), ambient));
            worked.cautions().forEach(caution -> out.println("Caution: " + caution.text()));
        }
        return CommandLineDoor.FINE;
    }

    private Values turnedRound(Relation relation, Values given) {
        List<String> outputs = given.names().stream().filter(relation::isOutput).toList();
        if (outputs.size() != 1) {
            throw new UsageException(
                    "--solve-for needs exactly one output of "
                            + relation.id()
                            + " to be given: one of "
                            + String.join(", ", names(relation.outputs()))
                            + ".");
        }
        if (!relation.isInput(solveFor)) {
            throw Lookups.unknown("input", solveFor, names(relation.inputs()), "relations");
        }
        if (given.has(solveFor)) {
            throw new UsageException(
                    "Leave out " + solveFor + "=…: --solve-for " + solveFor + " finds it.");
        }
        String output = outputs.get(0);
        Values others = given.without(output);
        double found = Solver.solveFor(relation, solveFor, output, given.number(output), others);
        return others.with(solveFor, found);
    }

    private static List<String> names(List<Slot> slots) {
        return slots.stream().map(Slot::name).toList();
    }

    /** What was typed for each slot. */
    private Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String assignment : assignments) {
            int equals = assignment.indexOf('=');
            if (equals < 1) {
                throw new UsageException("\"" + assignment + "\" is not of the form slot=value.");
            }
            String name = assignment.substring(0, equals);
            if (texts.put(name, assignment.substring(equals + 1)) != null) {
                throw new UsageException(name + " is given twice.");
            }
        }
        return texts;
    }

    /**
     * Readings typed with a unit make the relation speak that quantity: powers have a mean power.
     */
    private static Relation measuring(Relation relation, Map<String, String> texts) {
        return texts.entrySet().stream()
                .filter(
                        text ->
                                relation.slot(text.getKey())
                                        .map(s -> s.quantity() == Quantity.AS_MEASURED)
                                        .orElse(false))
                .map(text -> UNIT_AT_END.matcher(text.getValue()))
                .filter(Matcher::matches)
                .flatMap(unit -> Units.quantityOf(unit.group(1)).stream())
                .findFirst()
                .map(relation::measuring)
                .orElse(relation);
    }

    private Values read(Relation relation, Map<String, String> texts, double ambient) {
        Map<String, Object> map = new LinkedHashMap<>();
        texts.forEach((name, text) -> map.put(name, value(relation, name, text, ambient)));
        return Values.of(map);
    }

    private Object value(Relation relation, String name, String text, double ambient) {
        List<String> known = new ArrayList<>(names(relation.inputs()));
        if (solveFor != null) {
            known.addAll(names(relation.outputs()));
        }
        if (!known.contains(name)) {
            throw Lookups.unknown("slot", name, known, "relations");
        }
        Slot slot = relation.slot(name).orElseThrow();
        return switch (slot.kind()) {
            case NUMBER -> number(name, text, slot.quantity(), ambient);
            case NUMBERS -> numbers(name, text, slot.quantity(), ambient);
            case CHOICE, TEXT -> text;
        };
    }

    private static double number(String name, String text, Quantity quantity, double ambient) {
        Typed typed = Typed.read(text, expected(quantity, ambient));
        if (typed instanceof Typed.Understood understood) {
            return understood.si();
        }
        throw new UsageException(
                name
                        + ": "
                        + (typed instanceof Typed.Ambiguous a
                                ? a.question()
                                : ((Typed.NotUnderstood) typed).message()));
    }

    private static List<Double> numbers(
            String name, String text, Quantity quantity, double ambient) {
        Typed.Row row = Typed.list(text, expected(quantity, ambient));
        if (row instanceof Typed.Readings readings) {
            return readings.si();
        }
        throw new UsageException(
                name
                        + ": "
                        + (row instanceof Typed.Ambiguous a
                                ? a.question()
                                : ((Typed.NotUnderstood) row).message()));
    }

    private static Expected expected(Quantity quantity, double ambient) {
        return new Expected(quantity, quantity.siScale(), ambient, DecimalHabit.POINT);
    }

    private static Map<String, Object> object(Worked worked) {
        StepTex tex = new StepTex(worked);
        return Json.object(
                "relation", worked.relation().id(),
                "in", worked.in().asMap(),
                "out", worked.out().asMap(),
                "steps", worked.steps().stream().map(step -> step(tex, step)).toList(),
                "cautions", worked.cautions().stream().map(Caution::text).toList());
    }

    static Map<String, Object> step(StepTex tex, Step step) {
        return Json.object(
                "text", step.text(),
                "tex", tex.whole(step),
                "value", step.value(),
                "unit", step.quantity().si().symbol());
    }

    /** Whose units. */
    enum Shop {
        SI,
        US;

        UnitSystem system() {
            return this == SI ? UnitSystem.SI_SHOP : UnitSystem.US_SHOP;
        }
    }
}

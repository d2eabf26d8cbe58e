// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.learner.OwnContent;
import hotside.page.Maths;
import hotside.page.ProblemText;
import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.Figure;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.relation.Step;
import hotside.relation.StepTex;
import hotside.relation.Worked;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what a problem looks like with the numbers of a seed. */
@Command(
        name = "variant",
        description = "Draws a problem's variants from seeds.",
        mixinStandardHelpOptions = true)
final class VariantCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "PROBLEM",
            description = "its id; --list shows them")
    private String id;

    @Option(names = "--list", description = "lists all problems")
    private boolean list;

    @Option(names = "--seed", description = "the (first) seed", defaultValue = "1")
    private long seed;

    @Option(
            names = "--count",
            description = "how many seeds, one after the other; more than one makes a table",
            defaultValue = "1")
    private int count;

    @Option(names = "--json", description = "for another program: SI")
    private boolean json;

    @Option(names = "--units", description = "si or us", defaultValue = "si")
    private WorkCommand.Shop shop;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        ProblemBank bank = OwnContent.bank(OwnContent.folder());
        if (list || id == null) {
            bank.all()
                    .forEach(
                            t ->
                                    out.println(
                                            t.id()
                                                    + ": "
                                                    + t.title()
                                                    + " ("
                                                    + t.skill()
                                                    + ", level "
                                                    + t.level()
                                                    + ")"));
            return CommandLineDoor.FINE;
        }
        Template template = Lookups.problem(bank, id);
        if (count < 1) {
            throw new UsageException("--count must be 1 or more.");
        }
        List<Variant> variants = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            variants.add(Variants.draw(template, seed + i, shop.system()));
        }
        Maths maths = new Maths();
        if (json) {
            List<Map<String, Object>> objects =
                    variants.stream().map(v -> object(v, maths)).toList();
            out.println(Json.text(count == 1 ? objects.get(0) : objects));
        } else if (count == 1) {
            tell(variants.get(0), maths, out);
        } else {
            table(variants, out);
        }
        return CommandLineDoor.FINE;
    }

    static String prompt(Variant variant, Maths maths) {
        return new ProblemText(maths).prompt(variant);
    }

    /** The ladder of hints; its last rung is the full working. */
    static List<String> hints(Variant variant, Maths maths) {
        return new ProblemText(maths).hints(variant);
    }

    static String working(Variant variant, Maths maths) {
        return new ProblemText(maths).working(variant);
    }

    private static void tell(Variant variant, Maths maths, PrintWriter out) {
        out.println(variant.template().title() + " (seed " + variant.seed() + ")");
        out.println();
        out.println(prompt(variant, maths));
        out.println();
        for (int i = 0; i < variant.answers().size(); i++) {
            out.println(
                    "Asked: "
                            + variant.template().asks().get(i).phrase()
                            + " = "
                            + Answers.told(variant, i));
        }
        variant.slips()
                .forEach(
                        slip ->
                                out.println(
                                        "Mistake "
                                                + slip.mistake().id()
                                                + ": "
                                                + Answers.told(variant, slip.ask(), slip.value())));
        out.println();
        out.println(working(variant, maths));
    }

    private static void table(List<Variant> variants, PrintWriter out) {
        Template template = variants.get(0).template();
        List<String> head = new ArrayList<>(List.of("seed"));
        template.givens().forEach(given -> head.add(given.name()));
        template.asks().forEach(ask -> head.add(ask.place()));
        List<List<String>> rows = new ArrayList<>(List.of(head));
        for (Variant variant : variants) {
            List<String> row = new ArrayList<>(List.of(String.valueOf(variant.seed())));
            template.givens()
                    .forEach(
                            given ->
                                    row.add(
                                            variant.shown()
                                                    .get(given.name())
                                                    .replace('\u00a0', ' ')));
            for (int i = 0; i < variant.answers().size(); i++) {
                row.add(Answers.key(variant, i));
            }
            rows.add(row);
        }
        TextTable.print(rows, out);
    }

    private static List<Map<String, Object>> options(Variant variant) {
        return variant.lettered().stream()
                .map(
                        o ->
                                Json.object(
                                        "letter", o.letter(),
                                        "id", o.id(),
                                        "text", o.text(),
                                        "right", o.right(),
                                        "because", o.because()))
                .toList();
    }

    private static Map<String, Object> chart(Figure figure) {
        return Json.object(
                "x", axis(figure.x()),
                "y", axis(figure.y()),
                "curves",
                        figure.curves().stream()
                                .map(
                                        c ->
                                                Json.object(
                                                        "id", c.id(),
                                                        "name", c.name(),
                                                        "unit", c.scale().label(),
                                                        "x", c.xs(),
                                                        "y", c.ys()))
                                .toList());
    }

    private static Map<String, Object> axis(Figure.Axis axis) {
        return Json.object(
                "label", axis.label(),
                "unit", axis.scale().label(),
                "from", axis.marks().low(),
                "to", axis.marks().high(),
                "step", axis.marks().step());
    }

    private static Map<String, Object> object(Variant variant, Maths maths) {
        Template template = variant.template();
        List<Object> asks = new ArrayList<>();
        for (int i = 0; i < template.asks().size(); i++) {
            Ask ask = template.asks().get(i);
            Variant.Answer answer = variant.answers().get(i);
            if (!template.kind().isNumeric()) {
                asks.add(Json.object("slot", ask.place(), "key", Answers.key(variant, i)));
                continue;
            }
            asks.add(
                    Json.object(
                            "slot", ask.place(),
                            "unit", ask.quantity().si().symbol(),
                            "value", answer.value(),
                            "low", answer.low(),
                            "high", answer.high()));
        }
        List<Object> working = new ArrayList<>();
        for (Worked worked : variant.run().workings()) {
            StepTex tex = new StepTex(worked);
            for (Step step : worked.steps()) {
                working.add(WorkCommand.step(tex, step));
            }
        }
        Map<String, Object> given = new LinkedHashMap<>(variant.givens().asMap());
        return Json.object(
                "problem", template.id(),
                "seed", variant.seed(),
                "generator", Variants.GENERATOR_VERSION,
                "template", template.fingerprint(),
                "units", variant.system() == hotside.unit.UnitSystem.SI_SHOP ? "si" : "us",
                "prompt", prompt(variant, maths),
                "given", given,
                "ask", asks,
                "options", options(variant),
                "charts", variant.figures().stream().map(VariantCommand::chart).toList(),
                "mistakes",
                        variant.slips().stream()
                                .map(
                                        s ->
                                                Json.object(
                                                        "id", s.mistake().id(),
                                                        "slot",
                                                                template.asks()
                                                                        .get(s.ask())
                                                                        .place(),
                                                        "value", s.value()))
                                .toList(),
                "hints", hints(variant, maths),
                "working", working);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.catalogue.Catalogue;
import hotside.content.ContentFile;
import hotside.content.Findings;
import hotside.content.Nearest;
import hotside.content.Place;
import hotside.content.ScalarNode;
import hotside.problem.ChainReader;
import hotside.problem.Given;
import hotside.problem.GivenReader;
import hotside.problem.Literal;
import hotside.relation.Chain;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Values;
import hotside.unit.DecimalHabit;
import hotside.unit.Expected;
import hotside.unit.Quantity;
import hotside.unit.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.FencedCodeBlock;

/**
 * Reads the fenced blocks that embed living parts. A block with another info string stays what it
 * is, code.
 */
final class PartReader {
    private static final Pattern X = Pattern.compile("(\\w+)\\s+from\\s+(.+?)\\s+to\\s+(.+)");
    private static final String AXIS = "x: slot from value to value";
    private static final Pattern BETWEEN_COMMAS = Pattern.compile("[^,\\s][^,]*");
    private static final Pattern BY = Pattern.compile("(\\w+)\\s*=\\s*(.+)");
    private static final List<String> KINDS =
            List.of(
                    "calculator",
                    "problem",
                    "worked",
                    "faded",
                    "chart",
                    "diagram",
                    "predict",
                    "note",
                    "caution");
    private static final int MOST_CURVES = 6;

    private final ContentFile file;
    private final Findings findings;
    private final Chain chain;
    private final Values values;
    private final List<Given> named;
    private final double ambient;

    /** The parts read so far, in the order of the page. */
    private final List<Part> ready = new ArrayList<>();

    PartReader(ContentFile file, Chain chain, Values values, List<Given> named, double ambient) {
        this.file = file;
        this.findings = file.findings();
        this.chain = chain;
        this.values = values;
        this.named = named;
        this.ambient = ambient;
    }

    Optional<Part> read(FencedCodeBlock fence) {
        Optional<Part> part = one(fence);
        part.ifPresent(ready::add);
        return part;
    }

    private Optional<Part> one(FencedCodeBlock fence) {
        String[] words =
                fence.getInfo() == null ? new String[0] : fence.getInfo().strip().split("\\s+");
        String kind = words.length == 0 ? "" : words[0];
        Fence block = new Fence(file, fence, words);
        return switch (kind) {
            case "calculator" -> calculator(block);
            case "problem" -> problem(block);
            case "worked" -> worked(block);
            case "faded" -> faded(block);
            case "chart" -> chart(block);
            case "diagram" -> diagram(block);
            case "predict" -> new PredictReader(block, findings, ambient).read();
            case "note", "caution" ->
                    Optional.of(new Part.Aside(kind.equals("caution"), block.markdown()));
            default -> {
                Nearest.to(kind, KINDS)
                        .filter(near -> !kind.isEmpty())
                        .ifPresent(
                                near ->
                                        findings.add(
                                                block.word(0),
                                                "unknown block \"" + kind + "\"",
                                                "one of " + String.join(", ", KINDS),
                                                "write \"" + near + "\""));
                yield Optional.empty();
            }
        };
    }

    private Optional<Relation> relation(Fence block) {
        Optional<Relation> relation = Catalogue.find(block.subject());
        if (relation.isEmpty()) {
            ChainReader.unknownRelation(new ScalarNode(block.word(1), block.subject()), findings);
        }
        return relation;
    }

    private Optional<Part> problem(Fence block) {
        if (block.words().size() != 2) {
            findings.add(
                    block.word(1), "a problem block names one problem", "problem and its id", "");
            return Optional.empty();
        }
        return Optional.of(new Part.ProblemCard(block.subject()));
    }

    private Optional<Part> worked(Fence block) {
        return uses(block).map(uses -> new Part.WorkedExample(uses, title(uses), block.markdown()));
    }

    private Optional<Part> faded(Fence block) {
        return uses(block)
                .flatMap(
                        uses ->
                                new FadedReader(block, findings, chain, named, ambient)
                                        .read(uses, title(uses)));
    }

    /** The uses that a block names; nothing after a finding. */
    private Optional<List<String>> uses(Fence block) {
        List<String> uses = block.words().subList(1, block.words().size());
        List<String> known = chain.uses().stream().map(Chain.Use::name).toList();
        if (!uses.isEmpty() && known.containsAll(uses)) {
            return Optional.of(uses);
        }
        int bad = 0;
        while (bad < uses.size() && known.contains(uses.get(bad))) {
            bad++;
        }
        findings.add(
                block.word(bad + 1),
                "a " + block.words().get(0) + " block names what the lesson works",
                known.isEmpty()
                        ? "a name under \"work\" in the front matter"
                        : "one or more of " + String.join(", ", known),
                "");
        return Optional.empty();
    }

    private String title(List<String> uses) {
        return chain.uses().stream()
                .filter(use -> use.name().equals(uses.get(uses.size() - 1)))
                .map(use -> use.relation().title())
                .findFirst()
                .orElseThrow();
    }

    private Optional<Part> diagram(Fence block) {
        Optional<Diagram> found = Diagram.find(block.subject());
        Map<String, ScalarNode> lines = block.keyed();
        if (found.isEmpty()) {
            List<String> known = Diagram.all().stream().map(Diagram::id).toList();
            findings.add(
                    block.word(1),
                    "there is no diagram \"" + block.subject() + "\"",
                    "one of " + String.join(", ", known),
                    Nearest.to(block.subject(), known)
                            .map(near -> "write \"" + near + "\"")
                            .orElse(""));
            return Optional.empty();
        }
        Diagram diagram = found.get();
        Optional<Part.Calculator> follows =
                Optional.ofNullable(lines.remove("follows")).flatMap(line -> leader(diagram, line));
        if (diagram.relation().isEmpty()) {
            lines.keySet()
                    .forEach(
                            line ->
                                    findings.add(
                                            block.key(line),
                                            diagram.id() + " is drawn without numbers",
                                            "no lines",
                                            "take this line out"));
            return Optional.of(new Part.DiagramFigure(diagram, Values.NONE, follows));
        }
        Relation relation = measuring(diagram.relation().get(), lines);
        Values start = starts(block, relation, lines);
        return Optional.of(
                new Part.DiagramFigure(
                        new Diagram(diagram.id(), diagram.title(), Optional.of(relation)),
                        start,
                        follows));
    }

    /** The nearest calculator of this name before a diagram that has inputs in common with it. */
    private Optional<Part.Calculator> leader(Diagram diagram, ScalarNode line) {
        Optional<Part.Calculator> found =
                ready.stream()
                        .filter(Part.Calculator.class::isInstance)
                        .map(Part.Calculator.class::cast)
                        .filter(calculator -> calculator.relation().id().equals(line.text()))
                        .reduce((first, last) -> last);
        if (found.isEmpty()) {
            findings.add(
                    line,
                    "no calculator of \"" + line.text() + "\" stands before this diagram",
                    "the id of the relation of a calculator before it",
                    "");
            return found;
        }
        if (diagram.shared(found.get().relation()).isEmpty()) {
            findings.add(
                    line,
                    diagram.id() + " has nothing in common with " + line.text(),
                    diagram.relation()
                            .map(own -> "a calculator of " + own.id())
                            .orElse("no such line: it is drawn without numbers"),
                    "");
            return Optional.empty();
        }
        return found;
    }

    private Optional<Part> calculator(Fence block) {
        Optional<Relation> found = relation(block);
        Map<String, ScalarNode> lines = block.keyed();
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Relation relation = measuring(found.get(), lines);
        Optional<Slot> over = named(lines.remove("over"), numbers(relation));
        Optional<Slot> curve = named(lines.remove("curve"), relation.outputs());
        Values start = starts(block, relation, lines);
        return Optional.of(
                new Part.Calculator(
                        relation, start, over, curve.orElse(relation.outputs().get(0))));
    }

    /** The inputs that a curve can run over. */
    private static List<Slot> numbers(Relation relation) {
        return relation.inputs().stream().filter(s -> s.kind() == Slot.Kind.NUMBER).toList();
    }

    /** Readings written with a unit make the calculator speak that quantity. */
    private Relation measuring(Relation relation, Map<String, ScalarNode> lines) {
        return lines.entrySet().stream()
                .filter(
                        line ->
                                relation.slot(line.getKey())
                                        .map(s -> s.quantity() == Quantity.AS_MEASURED)
                                        .orElse(false))
                .flatMap(line -> measuredIn(line.getValue()).stream())
                .findFirst()
                .map(relation::measuring)
                .orElse(relation);
    }

    private Optional<Quantity> measuredIn(ScalarNode scalar) {
        return named.stream()
                .filter(given -> given.name().equals(scalar.text()))
                .map(Given::quantity)
                .findFirst()
                .or(() -> GivenReader.measuredIn(scalar));
    }

    private Optional<Part> chart(Fence block) {
        Optional<Relation> found = relation(block);
        Map<String, ScalarNode> lines = block.keyed();
        ScalarNode title = lines.remove("title");
        ScalarNode x = lines.remove("x");
        ScalarNode by = lines.remove("by");
        ScalarNode y = lines.remove("y");
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Relation relation = found.get();
        if (title == null || x == null || y == null) {
            findings.add(
                    block.start(),
                    "this chart is incomplete",
                    "title: words; " + AXIS + "; y: an output",
                    "");
            return Optional.empty();
        }
        Matcher range = X.matcher(x.text());
        if (!range.matches()) {
            findings.add(x, "\"" + x.text() + "\" is no axis", AXIS, "");
            return Optional.empty();
        }
        Optional<Slot> output = named(y, relation.outputs());
        Optional<Slot> along = named(Fence.part(x, range, 1), numbers(relation));
        if (along.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> from = value(Fence.part(x, range, 2), along.get());
        Optional<Double> to = value(Fence.part(x, range, 3), along.get());
        Optional<Curves> curves = by == null ? Optional.of(Curves.ONE) : curves(by, relation);
        Values fixed = starts(block, relation, lines);
        if (output.isEmpty() || from.isEmpty() || to.isEmpty() || curves.isEmpty()) {
            return Optional.empty();
        }
        if (from.get() >= to.get()) {
            findings.add(x, "this axis has no length", "from the smaller value to the larger", "");
        }
        return Optional.of(
                new Part.ChartFigure(
                        relation,
                        title.text(),
                        along.get(),
                        from.get(),
                        to.get(),
                        output.get(),
                        fixed,
                        curves.get().by(),
                        curves.get().each()));
    }

    private record Curves(Optional<Slot> by, List<Double> each) {
        static final Curves ONE = new Curves(Optional.empty(), List.of());
    }

    private Optional<Curves> curves(ScalarNode by, Relation relation) {
        Matcher form = BY.matcher(by.text());
        if (!form.matches() || !BETWEEN_COMMAS.matcher(form.group(2)).find()) {
            findings.add(
                    by, "\"" + by.text() + "\" tells no curves apart", "slot = value, value", "");
            return Optional.empty();
        }
        Optional<Slot> slot = named(Fence.part(by, form, 1), numbers(relation));
        List<Double> each = new ArrayList<>();
        Matcher values = BETWEEN_COMMAS.matcher(by.text()).region(form.start(2), form.end());
        while (values.find()) {
            ScalarNode value = Fence.part(by, values, 0);
            slot.flatMap(s -> value(value, s)).ifPresent(each::add);
        }
        if (each.size() > MOST_CURVES) {
            findings.add(by, each.size() + " curves in one chart", "at most " + MOST_CURVES, "");
        }
        return slot.map(s -> new Curves(Optional.of(s), each));
    }

    /** The typical values of a relation, with what the lines say in their place. */
    private Values starts(Fence block, Relation relation, Map<String, ScalarNode> lines) {
        Values start = relation.typical();
        for (Map.Entry<String, ScalarNode> line : lines.entrySet()) {
            Place key = block.key(line.getKey());
            Optional<Slot> slot = named(new ScalarNode(key, line.getKey()), relation.inputs());
            Optional<Object> value = slot.flatMap(s -> anyValue(line.getValue(), s));
            if (value.isPresent()) {
                start = start.with(line.getKey(), value.get());
            }
        }
        try {
            relation.work(start);
        } catch (RelationException e) {
            findings.add(
                    lines.containsKey(e.slot()) ? lines.get(e.slot()).place() : block.start(),
                    e.getMessage(),
                    "values that the relation can work with",
                    "");
        }
        return start;
    }

    private Optional<Slot> named(ScalarNode name, List<Slot> slots) {
        if (name == null) {
            return Optional.empty();
        }
        Optional<Slot> slot = slots.stream().filter(s -> s.name().equals(name.text())).findFirst();
        if (slot.isEmpty()) {
            List<String> known = slots.stream().map(Slot::name).toList();
            findings.add(
                    name,
                    "no slot is called \"" + name.text() + "\"",
                    "one of " + String.join(", ", known),
                    Nearest.to(name.text(), known)
                            .map(near -> "write \"" + near + "\"")
                            .orElse(""));
        }
        return slot;
    }

    private Optional<Object> anyValue(ScalarNode scalar, Slot slot) {
        return switch (slot.kind()) {
            case NUMBER -> value(scalar, slot).map(v -> v);
            case NUMBERS -> row(scalar, slot).map(v -> v);
            case CHOICE, TEXT -> Optional.of(scalar.text());
        };
    }

    private Optional<List<Double>> row(ScalarNode scalar, Slot slot) {
        if (values.get(scalar.text()) instanceof List<?>) {
            return Optional.of(values.numbers(scalar.text()));
        }
        Typed.Row row =
                Typed.list(
                        scalar.text(),
                        new Expected(
                                slot.quantity(),
                                slot.quantity().siScale(),
                                ambient,
                                DecimalHabit.POINT));
        if (row instanceof Typed.Readings readings) {
            return Optional.of(readings.si());
        }
        findings.add(
                scalar,
                "\"" + scalar.text() + "\" is no row of readings",
                Literal.expected(slot.quantity()),
                "");
        return Optional.empty();
    }

    private Optional<Double> value(ScalarNode scalar, Slot slot) {
        String text = scalar.text();
        if (values.get(text) instanceof Double known) {
            boolean fits =
                    named.stream()
                            .anyMatch(
                                    g ->
                                            g.name().equals(text)
                                                    && ChainReader.fits(
                                                            g.quantity(), slot.quantity()));
            if (!fits) {
                findings.add(
                        scalar,
                        text + " does not fit " + slot.name(),
                        Literal.a(slot.quantity()),
                        "");
            }
            return Optional.of(known);
        }
        Optional<Double> value = Literal.value(text, slot.quantity(), ambient);
        if (value.isEmpty()) {
            findings.add(
                    scalar,
                    "\"" + text + "\" is no value for " + slot.name(),
                    Literal.expected(slot.quantity()),
                    "");
        } else if (!slot.admits(value.get())) {
            findings.add(
                    scalar,
                    text + " is outside the range of " + slot.name(),
                    "a value in " + slot.rangeText(),
                    "");
            return Optional.empty();
        }
        return value;
    }
}

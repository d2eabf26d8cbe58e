// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.ContentFile;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.MapNode;
import hotside.content.Once;
import hotside.content.Place;
import hotside.content.ScalarNode;
import hotside.problem.ChainReader;
import hotside.problem.Given;
import hotside.problem.GivenReader;
import hotside.problem.TemplateReader;
import hotside.problem.Variants;
import hotside.relation.Chain;
import hotside.relation.RelationException;
import hotside.relation.Values;
import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;

/** Reads a lesson file into a lesson, or into findings that say what is wrong with it. */
public final class LessonReader {
    private static final int MOST_VALUES = 200;
    private static final int MOST_FORMULAS = 600;

    /** The line of a problem's card, as {@link PartReader} takes it. */
    private static final Pattern PROBLEM_CARD =
            Pattern.compile("^(?:`{3}|~{3})problem +(\\S+) *$", Pattern.MULTILINE);

    private final ContentFile file;
    private final Findings findings;

    private LessonReader(ContentFile file) {
        this.file = file;
        this.findings = file.findings();
    }

    /**
     * @param file a lesson file; findings are added to its own
     * @return the lesson, if the file is free of findings
     */
    public static Optional<Lesson> read(ContentFile file) {
        return new LessonReader(file).lesson();
    }

    /**
     * A lesson's words in another language: title, strand, sources, cautions and text; values and
     * what is worked with them stay those of the original.
     *
     * @param file findings are added to its own
     */
    static Optional<Lesson> translation(ContentFile file, Lesson original) {
        return new LessonReader(file).translation(original);
    }

    /** A lesson whose page is read when it is opened, and whether the file is sound then. */
    record Later(Lesson lesson, Once<Optional<Lesson>> whole) {}

    /** The lesson of a file that comes with the program and should be sound. */
    static Later later(ContentFile file) {
        Fields fields = file.fields();
        LessonReader reader = new LessonReader(file);
        Teaching teaching = reader.teaching(fields);
        return later(
                file,
                reader.words(fields),
                teaching,
                new Once<>(() -> new LessonReader(file).lesson()));
    }

    /** The same for a translation. */
    static Later later(ContentFile file, Lesson original) {
        Teaching teaching = new Teaching(original.skills(), original.needs(), original.minutes());
        return later(
                file,
                new LessonReader(file).words(file.fields()),
                teaching,
                new Once<>(() -> translation(file, original)));
    }

    private static Later later(
            ContentFile file, Words words, Teaching teaching, Once<Optional<Lesson>> whole) {
        List<String> problems =
                PROBLEM_CARD.matcher(file.body()).results().map(m -> m.group(1)).toList();
        Once<Lesson.Content> content =
                new Once<>(
                        () ->
                                whole.get()
                                        .map(Lesson::content)
                                        .orElseThrow(
                                                () ->
                                                        new IllegalStateException(
                                                                file.findings()
                                                                        .list()
                                                                        .toString())));
        return new Later(new Lesson(head(file, words, teaching, problems), content), whole);
    }

    /** What a lesson says of itself in one language. */
    private record Words(
            String title, String strand, List<String> sources, List<String> cautions) {}

    /** What it says of itself in every language. */
    private record Teaching(List<String> skills, List<String> needs, int minutes) {}

    private Words words(Fields fields) {
        return new Words(
                fields.text("title"),
                fields.text("strand"),
                fields.words("sources"),
                fields.optionalWords("cautions"));
    }

    private Teaching teaching(Fields fields) {
        return new Teaching(
                skills(fields.scalars("skills")),
                skills(fields.optionalScalars("needs")),
                fields.whole("minutes", 1, 120));
    }

    private static Lesson.Head head(
            ContentFile file, Words words, Teaching teaching, List<String> problems) {
        return new Lesson.Head(
                id(file.path()),
                words.strand(),
                words.title(),
                teaching.skills(),
                teaching.needs(),
                teaching.minutes(),
                words.sources(),
                words.cautions(),
                problems);
    }

    private Optional<Lesson> lesson() {
        Fields fields = file.fields();
        Words words = words(fields);
        Teaching teaching = teaching(fields);
        MapNode valueNodes =
                fields.has("values")
                        ? ChainReader.map(fields, "values")
                        : new MapNode(fields.place(), Map.of());
        MapNode work =
                fields.has("work")
                        ? ChainReader.map(fields, "work")
                        : new MapNode(fields.place(), Map.of());
        fields.noOthers();
        double ambient = ambient(valueNodes);
        Chain chain = ChainReader.read(work, valueNodes, ambient, findings);
        List<Given> named = named(valueNodes, chain);
        return lesson(
                words, teaching, new Numbers(named, Given.values(named, ambient), chain, ambient));
    }

    /** What is worked in a lesson, the same in every language. */
    private record Numbers(List<Given> named, Values values, Chain chain, double ambient) {}

    private Optional<Lesson> translation(Lesson original) {
        Fields fields = file.fields();
        Words words = words(fields);
        fields.noOthers();
        if (words.cautions().size() != original.cautions().size()) {
            findings.add(
                    fields.has("cautions") ? fields.place("cautions") : fields.place(),
                    words.cautions().size() + " cautions",
                    original.cautions().size() + ", as in the original",
                    "");
        }
        Numbers numbers =
                new Numbers(
                        original.named(),
                        original.values(),
                        original.chain(),
                        new Computed(original, UnitSystem.SI_SHOP).ambient());
        Teaching teaching = new Teaching(original.skills(), original.needs(), original.minutes());
        return lesson(words, teaching, numbers).filter(lesson -> hasPartsOf(original, lesson));
    }

    private boolean hasPartsOf(Lesson original, Lesson lesson) {
        List<String> wanted = kinds(original);
        List<String> found = kinds(lesson);
        int at = 0;
        while (at < Math.min(wanted.size(), found.size()) && wanted.get(at).equals(found.get(at))) {
            at++;
        }
        if (at == wanted.size() && at == found.size()) {
            return true;
        }
        findings.add(
                file.fields().place(),
                "part " + (at + 1) + " is " + (at < found.size() ? found.get(at) : "missing"),
                at < wanted.size() ? wanted.get(at) + ", as in the original" : "no more parts",
                "");
        return false;
    }

    private static List<String> kinds(Lesson lesson) {
        return lesson.parts().stream()
                .map(
                        part ->
                                part instanceof Part.ProblemCard card
                                        ? "problem " + card.problem()
                                        : part.getClass().getSimpleName())
                .toList();
    }

    private Optional<Lesson> lesson(Words words, Teaching teaching, Numbers numbers) {
        Node body = Markup.parse(file.body());
        List<Part> parts = new ArrayList<>();
        PartReader reader =
                new PartReader(
                        file,
                        numbers.chain(),
                        numbers.values(),
                        numbers.named(),
                        numbers.ambient());
        replaceFences(body, reader, parts);
        Lesson.Content content =
                new Lesson.Content(numbers.named(), numbers.values(), numbers.chain(), body, parts);
        Lesson lesson =
                new Lesson(head(file, words, teaching, content.problems()), Once.of(content));
        if (findings.isEmpty()) {
            checkComputed(lesson);
            countFormulas(lesson);
        }
        return findings.isEmpty() ? Optional.of(lesson) : Optional.empty();
    }

    private List<String> skills(List<ScalarNode> words) {
        for (ScalarNode word : words) {
            if (!TemplateReader.isSkill(word.text().strip())) {
                findings.add(
                        word,
                        "skill \"" + word.text() + "\" has the wrong form",
                        "strand.skill in lower case",
                        "");
            }
        }
        return words.stream().map(word -> word.text().strip()).toList();
    }

    /** Strand and name without their numbers: {@code 02-gate/01-lift.md} is {@code gate/lift}. */
    static String id(String path) {
        String[] parts = path.replace('\\', '/').split("/");
        String name = parts[parts.length - 1].replaceFirst("\\.md$", "");
        String strand = parts.length > 1 ? parts[parts.length - 2] : "";
        String bare = name.replaceFirst("^\\d+-", "");
        return strand.isEmpty() ? bare : strand.replaceFirst("^\\d+-", "") + "/" + bare;
    }

    private double ambient(MapNode values) {
        return values.get(Variants.AMBIENT)
                .flatMap(
                        node ->
                                new GivenReader(new Findings(file.path(), file.text()))
                                        .read(Variants.AMBIENT, node, Quantity.PRESSURE))
                .map(
                        g ->
                                g.si().scale()
                                        .toSi(
                                                g.si().values().get(0).doubleValue(),
                                                Quantity.PRESSURE,
                                                Units.STANDARD_ATMOSPHERE))
                .orElse(Units.STANDARD_ATMOSPHERE);
    }

    private List<Given> named(MapNode nodes, Chain chain) {
        List<Given> named = new ArrayList<>();
        GivenReader reader = new GivenReader(findings);
        if (nodes.entries().size() > MOST_VALUES) {
            findings.add(
                    nodes,
                    nodes.entries().size() + " named values",
                    "at most " + MOST_VALUES,
                    "split the lesson");
            return named;
        }
        nodes.entries()
                .forEach(
                        (name, entry) -> {
                            Quantity quantity = GivenReader.quantity(name, entry.value(), chain);
                            ChainReader.refuseMixedUse(
                                    name, entry.keyPlace(), chain, quantity, findings);
                            reader.read(name, entry.value(), quantity)
                                    .ifPresent(
                                            given -> {
                                                if (!given.isFixedRow()
                                                        && (given.si().values().size() > 1
                                                                || given.isRow())) {
                                                    findings.add(
                                                            entry.value(),
                                                            name + " has several values",
                                                            "one: a lesson draws no lots",
                                                            "");
                                                } else {
                                                    named.add(given);
                                                }
                                            });
                        });
        return named;
    }

    private void replaceFences(Node body, PartReader reader, List<Part> parts) {
        List<FencedCodeBlock> fences = new ArrayList<>();
        body.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(FencedCodeBlock fence) {
                        fences.add(fence);
                    }
                });
        for (FencedCodeBlock fence : fences) {
            Optional<Part> part = reader.read(fence);
            if (part.isPresent()) {
                PartBlock block = new PartBlock(part.get());
                block.setSourceSpans(fence.getSourceSpans());
                fence.insertBefore(block);
                fence.unlink();
                parts.add(part.get());
            }
        }
    }

    private void checkComputed(Lesson lesson) {
        Computed computed;
        try {
            computed = new Computed(lesson, UnitSystem.SI_SHOP);
        } catch (RelationException e) {
            findings.add(
                    Place.START,
                    "the lesson's work has no result: " + e.getMessage(),
                    "",
                    "mend the values");
            return;
        }
        lesson.texts().forEach(text -> checkComputed(text, computed));
    }

    /** Setting a formula takes some milliseconds, and a lesson is read by people. */
    private void countFormulas(Lesson lesson) {
        List<Tex> formulas = new ArrayList<>();
        for (Node text : lesson.texts()) {
            text.accept(
                    new AbstractVisitor() {
                        @Override
                        public void visit(CustomNode custom) {
                            if (custom instanceof Tex tex) {
                                formulas.add(tex);
                            }
                            visitChildren(custom);
                        }
                    });
        }
        if (formulas.size() > MOST_FORMULAS) {
            findings.add(
                    Markup.place(file, formulas.get(MOST_FORMULAS)),
                    formulas.size() + " formulas in one lesson",
                    "at most " + MOST_FORMULAS,
                    "split the lesson");
        }
    }

    private void checkComputed(Node node, Computed computed) {
        node.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(CustomNode custom) {
                        if (custom instanceof ComputedValue value
                                && computed.text(value.expression()).isEmpty()) {
                            findings.add(
                                    Markup.place(file, custom),
                                    "nothing is computed by \"" + value.expression() + "\"",
                                    "a named value, use.slot, a - b, a / b or change from a to b",
                                    "");
                        }
                        visitChildren(custom);
                    }
                });
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.content.ContentFile;
import hotside.content.Finding;
import hotside.content.Nearest;
import hotside.content.Place;
import hotside.course.Lesson;
import hotside.course.LessonReader;
import hotside.course.Markup;
import hotside.course.Part;
import hotside.course.Tex;
import hotside.problem.NoVariantException;
import hotside.problem.Template;
import hotside.problem.TemplateReader;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/**
 * What an author wants to know before anybody else reads a file: does every formula set, does every
 * link lead somewhere, does every problem draw sound numbers from every seed?
 */
public final class ContentCheck {
    /** Seeds that each problem is drawn from, in both shops. */
    private static final int SEEDS = 200;

    private final Maths maths = new Maths();
    private final Map<ContentFile, Template> problems = new LinkedHashMap<>();
    private final Map<ContentFile, Lesson> lessons = new LinkedHashMap<>();

    /**
     * Checks files together: lessons may name the problems among them.
     *
     * @param files lessons and problems; findings are added to their own
     * @return all findings, file by file
     */
    public List<Finding> check(List<ContentFile> files) {
        for (ContentFile file : files) {
            if (file.fields().has("ask") || file.fields().has("givens")) {
                TemplateReader.read(file).ifPresent(template -> problems.put(file, template));
            } else {
                LessonReader.read(file).ifPresent(lesson -> lessons.put(file, lesson));
            }
        }
        refuseTwins();
        problems.forEach(this::problem);
        lessons.forEach(this::lesson);
        return files.stream().flatMap(file -> file.findings().list().stream()).toList();
    }

    /** How many files were sound enough to be used. */
    public int read() {
        return problems.size() + lessons.size();
    }

    private void refuseTwins() {
        Map<String, ContentFile> first = new LinkedHashMap<>();
        problems.forEach(
                (file, template) -> {
                    ContentFile other = first.putIfAbsent(template.id(), file);
                    if (other != null) {
                        file.findings()
                                .add(
                                        file.fields().place("id"),
                                        "\""
                                                + template.id()
                                                + "\" is the id of "
                                                + other.path()
                                                + " too",
                                        "an id of its own",
                                        "");
                    }
                });
    }

    private void problem(ContentFile file, Template template) {
        for (UnitSystem system : UnitSystem.values()) {
            for (int seed = 1; seed <= SEEDS; seed++) {
                try {
                    Variants.draw(template, seed, system);
                } catch (NoVariantException e) {
                    file.findings()
                            .add(
                                    file.fields().place("givens"),
                                    e.getMessage(),
                                    "sound numbers for every seed, in SI and in US units",
                                    "change the grids, or take out what cannot be told apart");
                    break;
                }
            }
        }
        Node body = Markup.parse(file.body());
        formulas(file, body);
    }

    private void lesson(ContentFile file, Lesson lesson) {
        formulas(file, lesson.body());
        links(file, lesson.body());
        for (Part part : lesson.parts()) {
            if (part instanceof Part.ProblemCard card) {
                List<String> known = problems.values().stream().map(Template::id).toList();
                if (!known.contains(card.problem())) {
                    file.findings()
                            .add(
                                    placeOf(file, "problem " + card.problem()),
                                    "there is no problem \"" + card.problem() + "\"",
                                    "one of "
                                            + String.join(
                                                    ", ", Nearest.sorted(card.problem(), known)),
                                    Nearest.to(card.problem(), known)
                                            .map(near -> "write \"" + near + "\"")
                                            .orElse(""));
                }
            }
        }
        if (file.findings().isEmpty()) {
            for (UnitSystem system : UnitSystem.values()) {
                new LessonPage(maths)
                        .html(lesson, system, new NoCards(), Optional.empty(), Optional.empty());
            }
        }
    }

    /** Leaves the cards of a page empty. */
    static final class NoCards implements LessonPage.Cards {
        @Override
        public String id(Part part) {
            return "";
        }

        @Override
        public String html(Part part) {
            return "";
        }

        @Override
        public int chartWidth() {
            return 680;
        }
    }

    private void formulas(ContentFile file, Node root) {
        root.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(CustomNode node) {
                        if (node instanceof Tex tex) {
                            try {
                                maths.inline(tex.source());
                            } catch (MathsException e) {
                                file.findings()
                                        .add(
                                                place(file, node),
                                                "this formula cannot be set: " + e.getMessage(),
                                                "TeX maths",
                                                "");
                            }
                        }
                        visitChildren(node);
                    }
                });
    }

    private void links(ContentFile file, Node root) {
        List<String> known = new ArrayList<>(lessons.values().stream().map(Lesson::id).toList());
        root.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Link link) {
                        String target = link.getDestination();
                        if (target.startsWith("lesson:") && !known.contains(target.substring(7))) {
                            file.findings()
                                    .add(
                                            place(file, link),
                                            "no lesson is called \"" + target.substring(7) + "\"",
                                            "one of " + String.join(", ", known),
                                            "");
                        }
                        if (target.startsWith("relation:")
                                && hotside.catalogue.Catalogue.find(target.substring(9))
                                        .isEmpty()) {
                            file.findings()
                                    .add(
                                            place(file, link),
                                            "no relation is called \"" + target.substring(9) + "\"",
                                            "",
                                            "");
                        }
                        visitChildren(link);
                    }
                });
    }

    private static Place place(ContentFile file, Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            List<SourceSpan> spans = at.getSourceSpans();
            if (!spans.isEmpty()) {
                return file.inBody(
                        spans.get(0).getLineIndex() + 1, spans.get(0).getColumnIndex() + 1);
            }
        }
        return Place.START;
    }

    private static Place placeOf(ContentFile file, String text) {
        String[] lines = file.body().split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].contains(text)) {
                return file.inBody(i + 1, lines[i].indexOf(text) + 1);
            }
        }
        return Place.START;
    }
}

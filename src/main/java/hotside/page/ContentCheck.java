// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.catalogue.Catalogue;
import hotside.content.ContentFile;
import hotside.content.Finding;
import hotside.content.Nearest;
import hotside.course.Course;
import hotside.course.Glossary;
import hotside.course.Lesson;
import hotside.course.LessonReader;
import hotside.course.LessonTranslation;
import hotside.course.Markup;
import hotside.course.Part;
import hotside.course.PartBlock;
import hotside.course.ReadingTime;
import hotside.course.Tex;
import hotside.problem.ChartPlan;
import hotside.problem.Given;
import hotside.problem.NoVariantException;
import hotside.problem.ProblemBank;
import hotside.problem.ProblemTranslation;
import hotside.problem.Task;
import hotside.problem.Template;
import hotside.problem.TemplateReader;
import hotside.problem.Variants;
import hotside.relation.Relation;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Link;
import org.commonmark.node.Node;

/**
 * What an author wants to know before anybody else reads a file: does every formula set, does every
 * link lead somewhere, does every problem draw sound numbers from every seed?
 */
public final class ContentCheck {
    /** Seeds that each problem is drawn from, in both shops. */
    private static final int SEEDS = 200;

    /** So many names are enough of a suggestion. */
    private static final int FEW = 8;

    private static final String LESSON = "lesson:";
    private static final String RELATION = "relation:";
    private static final Pattern VALUE =
            Pattern.compile("\\{\\{\\s*+([a-z][A-Za-z0-9]{0,60})(?:\\.[A-Za-z0-9]{1,60})?\\s*+}}");

    private final Maths maths = new Maths();
    private final Map<ContentFile, Template> problems = new LinkedHashMap<>();
    private final Map<ContentFile, Lesson> lessons = new LinkedHashMap<>();
    private final Map<ContentFile, Glossary> glossaries = new LinkedHashMap<>();
    private final List<ContentFile> translations = new ArrayList<>();

    /** Read when a name is not among the files; null until then. */
    private List<String> shippedProblems;

    private List<String> shippedLessons;
    private ProblemBank bank;

    /**
     * Checks files together: lessons may name the lessons and problems among them, and those that
     * come with the program.
     *
     * @param files lessons and problems; findings are added to their own
     * @return all findings, file by file
     */
    public List<Finding> check(List<ContentFile> files) {
        for (ContentFile file : files) {
            if (Glossary.isGlossary(file)) {
                glossaries.put(file, Glossary.read(file));
            } else if (isProblem(file)) {
                TemplateReader.read(file).ifPresent(template -> problems.put(file, template));
            } else {
                LessonReader.read(file).ifPresent(lesson -> lessons.put(file, lesson));
            }
        }
        Map<ContentFile, String> ids = new LinkedHashMap<>();
        problems.forEach((file, template) -> ids.put(file, template.id()));
        refuseTwins(ids, "id");
        ids.clear();
        lessons.forEach((file, lesson) -> ids.put(file, lesson.id()));
        refuseTwins(ids, "title");
        problems.forEach(this::problem);
        lessons.forEach(this::lesson);
        glossaries.forEach(this::glossary);
        return files.stream().flatMap(file -> file.findings().list().stream()).toList();
    }

    /**
     * Checks the files of a language's folder: words for lessons and problems among those checked
     * before, or for those that come with the program.
     *
     * @return all findings, file by file
     */
    public List<Finding> checkTranslations(List<ContentFile> files) {
        Map<String, Lesson> originals = new LinkedHashMap<>();
        Course.shipped().lessons().forEach(lesson -> originals.put(lesson.id(), lesson));
        lessons.values().forEach(lesson -> originals.put(lesson.id(), lesson));
        Map<String, Template> templates = new LinkedHashMap<>();
        bank().all().forEach(template -> templates.put(template.id(), template));
        problems.values().forEach(template -> templates.put(template.id(), template));
        for (ContentFile file : files) {
            if (Glossary.isGlossary(file)) {
                Glossary words = Glossary.read(file);
                words.checkOriginals(file, originalTerms());
                glossary(file, words);
            } else if (file.fields().has("id")) {
                ProblemTranslation.read(file, id -> Optional.ofNullable(templates.get(id)))
                        .ifPresent(template -> text(file, template));
            } else {
                LessonTranslation.read(file, id -> Optional.ofNullable(originals.get(id)))
                        .ifPresent(lesson -> text(file, lesson));
            }
        }
        translations.addAll(files);
        return files.stream().flatMap(file -> file.findings().list().stream()).toList();
    }

    /** How many files nothing is wrong with. */
    public int sound() {
        return (int)
                Stream.concat(
                                translations.stream(),
                                Stream.of(problems, lessons, glossaries)
                                        .flatMap(files -> files.keySet().stream()))
                        .filter(file -> file.findings().isEmpty())
                        .count();
    }

    private static boolean isProblem(ContentFile file) {
        return Stream.of("ask", "givens", "kind", "level").anyMatch(file.fields()::has);
    }

    private static void refuseTwins(Map<ContentFile, String> ids, String key) {
        Map<String, ContentFile> first = new LinkedHashMap<>();
        ids.forEach(
                (file, id) -> {
                    ContentFile other = first.putIfAbsent(id, file);
                    if (other != null) {
                        file.findings()
                                .add(
                                        file.fields().place(key),
                                        "\"" + id + "\" is the id of " + other.path() + " too",
                                        "an id of its own",
                                        "");
                    }
                });
    }

    private void problem(ContentFile file, Template template) {
        for (UnitSystem system : UnitSystem.values()) {
            for (int seed = 1; seed <= seeds(template); seed++) {
                try {
                    Variants.draw(template, seed, system);
                } catch (NoVariantException e) {
                    file.findings()
                            .add(
                                    file.fields()
                                            .place(file.fields().has("givens") ? "givens" : "kind"),
                                    e.getMessage(),
                                    "sound numbers for every seed, in SI and in US units",
                                    "change the grids, or take out what cannot be told apart");
                    break;
                }
            }
        }
        text(file, template);
    }

    private void text(ContentFile file, Template template) {
        List<String> names = template.givens().stream().map(Given::name).toList();
        Node body = Markup.parse(file.body());
        formulas(file, body, names);
        links(file, body);
    }

    /** A pull takes a thousand times as long as a relation. */
    private static int seeds(Template template) {
        boolean pulls =
                template.task() instanceof Task.Diagnose
                        || template.task() instanceof Task.Devise
                        || template.task() instanceof Task.Split
                        || template.task() instanceof Task.Read read
                                && read.chart() instanceof ChartPlan.Pulls;
        return pulls ? SEEDS / 20 : SEEDS;
    }

    private void lesson(ContentFile file, Lesson lesson) {
        readingTime(file, lesson);
        text(file, lesson);
    }

    private void text(ContentFile file, Lesson lesson) {
        List<String> names = new ArrayList<>(lesson.values().names());
        lesson.chain().uses().forEach(use -> names.add(use.name()));
        for (Node root : lesson.texts()) {
            formulas(file, root, names);
            links(file, root);
        }
        problemCards(file, lesson);
        if (file.findings().isEmpty()) {
            for (UnitSystem system : UnitSystem.values()) {
                draw(lesson, system);
            }
        }
    }

    private void glossary(ContentFile file, Glossary glossary) {
        glossary.checkLessons(file, knownLessons());
        Node body = Markup.parse(file.body());
        formulas(file, body, List.of());
        links(file, body);
    }

    private Glossary originalTerms() {
        Glossary all = Course.shipped().glossary();
        for (Glossary checked : glossaries.values()) {
            all = all.with(checked);
        }
        return all;
    }

    private Set<String> knownLessons() {
        Set<String> known = new LinkedHashSet<>();
        lessons.values().forEach(lesson -> known.add(lesson.id()));
        known.addAll(shippedLessons());
        return known;
    }

    /** Every block, on the screen's page and on paper. */
    private void draw(Lesson lesson, UnitSystem system) {
        new LessonPage(maths)
                .html(lesson, system, new NoCards(), Optional.empty(), Optional.empty());
        new PrintLesson(maths, bank(), system)
                .html(lesson, "", PrintLesson.Form.BOOK, href -> Optional.of(href));
    }

    private ProblemBank bank() {
        if (bank == null) {
            bank = ProblemBank.shipped();
        }
        return bank;
    }

    private static void readingTime(ContentFile file, Lesson lesson) {
        ReadingTime time = ReadingTime.of(lesson);
        if (lesson.minutes() < time.least() || lesson.minutes() > time.most()) {
            file.findings()
                    .add(
                            file.fields().place("minutes"),
                            lesson.minutes()
                                    + " minutes for "
                                    + time.words()
                                    + " words and "
                                    + time.parts()
                                    + " parts to work",
                            time.least() + " to " + time.most(),
                            "");
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

    private void problemCards(ContentFile file, Lesson lesson) {
        lesson.body()
                .accept(
                        new AbstractVisitor() {
                            @Override
                            public void visit(CustomBlock block) {
                                if (block instanceof PartBlock part
                                        && part.part() instanceof Part.ProblemCard card) {
                                    problemCard(file, block, card.problem());
                                }
                                visitChildren(block);
                            }
                        });
    }

    private void problemCard(ContentFile file, Node block, String id) {
        Set<String> known = new LinkedHashSet<>();
        problems.values().forEach(template -> known.add(template.id()));
        if (known.contains(id)) {
            return;
        }
        known.addAll(shippedProblems());
        refuseUnknown(file, block, "problem", id, known);
    }

    private List<String> shippedProblems() {
        if (shippedProblems == null) {
            shippedProblems = bank().all().stream().map(Template::id).toList();
        }
        return shippedProblems;
    }

    private List<String> shippedLessons() {
        if (shippedLessons == null) {
            shippedLessons = Course.shipped().lessons().stream().map(Lesson::id).toList();
        }
        return shippedLessons;
    }

    private static void refuseUnknown(
            ContentFile file, Node node, String kind, String id, Collection<String> known) {
        if (known.contains(id) || file.findings().isFull()) {
            return;
        }
        List<String> nearest = Nearest.sorted(id, known);
        file.findings()
                .add(
                        Markup.place(file, node),
                        "there is no " + kind + " \"" + id + "\"",
                        known.isEmpty()
                                ? ""
                                : "one of "
                                        + String.join(
                                                ", ",
                                                nearest.subList(0, Math.min(FEW, nearest.size())))
                                        + (nearest.size() > FEW ? " …" : ""),
                        Nearest.to(id, known).map(near -> "write \"" + near + "\"").orElse(""));
    }

    /**
     * @param names values that would be filled in anywhere but in a formula
     */
    private void formulas(ContentFile file, Node root, List<String> names) {
        root.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(CustomNode node) {
                        if (node instanceof Tex tex) {
                            formula(file, tex, names);
                        }
                        visitChildren(node);
                    }
                });
    }

    private void formula(ContentFile file, Tex tex, List<String> names) {
        if (file.findings().isFull()) {
            return;
        }
        try {
            maths.inline(tex.source());
        } catch (MathsException e) {
            file.findings()
                    .add(
                            Markup.place(file, tex),
                            "this formula cannot be set: " + e.getMessage(),
                            "TeX maths",
                            "");
        }
        VALUE.matcher(tex.source())
                .results()
                .map(match -> match.group(1))
                .filter(names::contains)
                .forEach(
                        name ->
                                file.findings()
                                        .add(
                                                Markup.place(file, tex),
                                                "the value " + name + " is not filled in here",
                                                "values outside of formulas",
                                                "end the formula before it"));
    }

    private void links(ContentFile file, Node root) {
        root.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Link link) {
                        link(file, link);
                        visitChildren(link);
                    }
                });
    }

    private void link(ContentFile file, Link link) {
        String target = link.getDestination();
        if (target.startsWith(LESSON)) {
            refuseUnknown(file, link, "lesson", target.substring(LESSON.length()), knownLessons());
        } else if (target.startsWith(RELATION)) {
            List<String> known = Catalogue.all().stream().map(Relation::id).toList();
            refuseUnknown(file, link, "relation", target.substring(RELATION.length()), known);
        } else if (MarkdownHtml.isRefused(target)) {
            file.findings()
                    .add(
                            Markup.place(file, link),
                            "this link leads nowhere: \"" + target + "\"",
                            "https://…, mailto:…, lesson:strand/name or relation:id",
                            "");
        }
    }
}

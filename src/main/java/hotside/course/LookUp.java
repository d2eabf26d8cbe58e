// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import hotside.content.Once;
import hotside.problem.SkillMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.commonmark.node.Node;

/** Pages to look things up in: glossary, skill map, what a search found, a single problem. */
public final class LookUp {
    /** What the ids of these pages begin with. */
    public static final String PREFIX = "look-up/";

    /** The links to two of them. */
    public static final String GLOSSARY = "lesson:" + PREFIX + "glossary";

    public static final String SKILLS = "lesson:" + PREFIX + "skills";

    private LookUp() {}

    /** The terms with their meanings and where each is first used. */
    public static Lesson glossary(Course course) {
        StringBuilder text = new StringBuilder();
        for (Term term : course.glossary().terms()) {
            text.append("## ").append(plain(term.name())).append("\n\n").append(term.meaning());
            if (!term.also().isEmpty()) {
                text.append(CourseWords.of("glossary.also", plain(String.join(", ", term.also()))));
            }
            term.lesson()
                    .flatMap(course::find)
                    .or(() -> course.firstUse(term))
                    .ifPresent(lesson -> text.append(CourseWords.of("glossary.see", link(lesson))));
            text.append("\n\n");
        }
        return page(
                "glossary",
                CourseWords.of("glossary.title"),
                Markup.parse(text.toString()),
                List.of());
    }

    /** The skills as a picture and as a list with the lessons that teach them. */
    public static Lesson skills(Course course, SkillMap map) {
        Part picture = new Part.SkillPicture(map);
        Node body = Markup.parse(CourseWords.of("skills.intro") + "\n\n");
        body.appendChild(new PartBlock(picture));
        StringBuilder text = new StringBuilder();
        for (Map.Entry<String, String> strand : map.strands().entrySet()) {
            text.append("## ").append(plain(strand.getValue())).append("\n\n");
            map.all().stream()
                    .filter(skill -> skill.strand().equals(strand.getKey()))
                    .forEach(skill -> text.append(line(course, map, skill)));
            text.append('\n');
        }
        appendAll(body, Markup.parse(text.toString()));
        return page("skills", CourseWords.of("skills.title"), body, List.of(picture));
    }

    private static String line(Course course, SkillMap map, SkillMap.Skill skill) {
        String needs =
                skill.needs().stream()
                        .map(need -> map.find(need).map(SkillMap.Skill::name).orElse(need))
                        .map(LookUp::plain)
                        .collect(Collectors.joining(", "));
        String lessons =
                course.lessons().stream()
                        .filter(lesson -> lesson.skills().contains(skill.id()))
                        .map(LookUp::link)
                        .collect(Collectors.joining(", "));
        return "- **"
                + plain(skill.name())
                + "**"
                + (needs.isEmpty() ? "" : CourseWords.of("skills.builds", needs))
                + "."
                + (lessons.isEmpty() ? "" : CourseWords.of("skills.taught", lessons))
                + "\n";
    }

    /** What a search found. */
    public static Lesson results(String query, List<Search.Hit> hits) {
        StringBuilder text =
                new StringBuilder(
                        CourseWords.of(
                                        hits.isEmpty() ? "search.none" : "search.found",
                                        plain(query))
                                + "\n\n");
        if (hits.isEmpty()) {
            text.append(CourseWords.of("search.elsewhere", GLOSSARY, SKILLS)).append("\n");
        }
        for (Search.Hit hit : hits) {
            text.append("- [")
                    .append(plain(hit.title()))
                    .append("](")
                    .append(hit.link())
                    .append("), ")
                    .append(hit.kind().words());
            if (!hit.excerpt().isEmpty()) {
                text.append(". ").append(plain(hit.excerpt()));
            }
            text.append("\n");
        }
        return page(
                "results: " + query,
                CourseWords.of("search.title"),
                Markup.parse(text.toString()),
                List.of());
    }

    /** A page with one problem, found by a search and set in no lesson. */
    public static Lesson problem(String id, String title) {
        Part card = new Part.ProblemCard(id);
        Node body = Markup.parse("");
        body.appendChild(new PartBlock(card));
        return page("problem-" + id, title, body, List.of(card));
    }

    private static void appendAll(Node body, Node more) {
        List<Node> children = new ArrayList<>();
        for (Node child = more.getFirstChild(); child != null; child = child.getNext()) {
            children.add(child);
        }
        children.forEach(body::appendChild);
    }

    private static String link(Lesson lesson) {
        return "[" + plain(lesson.title()) + "](lesson:" + lesson.id() + ")";
    }

    private static Lesson page(String id, String title, Node body, List<Part> parts) {
        return Lesson.page(
                PREFIX + id,
                CourseWords.of("look-up.strand"),
                title,
                List.of(),
                List.of(),
                Once.of(Lesson.Content.of(body, parts)));
    }

    /** Text that Markdown leaves as it is. */
    static String plain(String text) {
        return text.replaceAll("([\\\\`*_{}\\[\\]<>#|$&!])", "\\\\$1").replace('\n', ' ');
    }

    /** The term's meaning as a page would show it in a note. */
    public static Node meaning(Term term) {
        return Markup.parse(term.meaning());
    }

    /** The lesson that explains a term, or uses it first. */
    public static Optional<Lesson> lessonOf(Course course, Term term) {
        return term.lesson().flatMap(course::find).or(() -> course.firstUse(term));
    }
}

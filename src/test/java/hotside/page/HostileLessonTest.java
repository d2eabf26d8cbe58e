// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.ContentReader;
import hotside.content.Finding;
import hotside.course.Lesson;
import hotside.course.LessonReader;
import hotside.problem.ProblemBank;
import hotside.unit.UnitSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is in a lesson or a problem, checking and drawing it ends, in findings or as plain text.
 */
class HostileLessonTest {
    /** Only against hanging for ever; each takes a fraction of it. */
    private static final Duration GUARD = Duration.ofSeconds(20);

    private static final int MUCH = 100_000;

    private static final Maths MATHS = new Maths();

    private static final String LESSON =
            """
            ---
            title: A lesson
            strand: Tests
            skills: test.reading
            minutes: 5
            sources: our own
            ---
            """;

    static Stream<Map.Entry<String, String>> bodies() {
        Map<String, String> bodies = new LinkedHashMap<>();
        bodies.put("nested quotes", ">".repeat(10_000) + " deep");
        bodies.put("spaced nested quotes", "> ".repeat(10_000) + "deep");
        bodies.put("nested lists on one line", "- ".repeat(10_000) + "deep");
        bodies.put("nested lists as stairs", stairs("- a"));
        bodies.put("numbered stairs", stairs("1. a"));
        bodies.put("quotes in lists", "- > ".repeat(10_000) + "deep");
        bodies.put("dollars", "$".repeat(MUCH));
        bodies.put("dollars before letters", "$a ".repeat(MUCH));
        bodies.put("dollars apart", "$ a".repeat(MUCH));
        bodies.put("pairs of dollars", "$$ ".repeat(MUCH));
        bodies.put("one pair and many dollars", "$$" + "a$ ".repeat(MUCH));
        bodies.put("escaped dollars", "$a\\".repeat(MUCH));
        bodies.put("braces", "{{".repeat(MUCH));
        bodies.put("half closed braces", "{{a} ".repeat(MUCH));
        bodies.put("braces far from their close", "{{ ".repeat(MUCH) + "}}");
        bodies.put("empty values", "{{}} ".repeat(MUCH));
        bodies.put("long expression", "{{" + "a".repeat(MUCH) + "}}");
        bodies.put("blanks in an expression", "{{a" + " ".repeat(150) + "b}} ".repeat(2_000));
        bodies.put("backticks", "`".repeat(50_000));
        bodies.put("backticks apart", "` a ".repeat(50_000));
        bodies.put("growing backticks", growing('`'));
        bodies.put("brackets", "[".repeat(MUCH));
        bodies.put("closing brackets", "]".repeat(MUCH));
        bodies.put("pictures", "![".repeat(MUCH));
        bodies.put("nested pictures", "![".repeat(5_000) + "a" + "](x)".repeat(5_000));
        bodies.put("nested links", "[".repeat(5_000) + "a" + "](http://x)".repeat(5_000));
        bodies.put("open links", "[a](".repeat(MUCH));
        bodies.put("open angle links", "[a](<b".repeat(MUCH / 2));
        bodies.put("open titles", "[a](b \"c".repeat(MUCH / 2));
        bodies.put("emphasis", "*a _a ".repeat(MUCH / 2));
        bodies.put("nested emphasis", "*a **b ".repeat(10_000) + "c** d* ".repeat(10_000));
        bodies.put("stars", "*".repeat(MUCH) + "a" + "*".repeat(MUCH));
        bodies.put("underscores in words", "a_b".repeat(MUCH));
        bodies.put("angle brackets", "<".repeat(MUCH));
        bodies.put("open tags", "<a ".repeat(MUCH));
        bodies.put("open comments", "<!-- ".repeat(MUCH));
        bodies.put("open instructions", "a <?".repeat(MUCH));
        bodies.put("open declarations", "a <!A ".repeat(MUCH));
        bodies.put("open data", "a <![CDATA[".repeat(50_000));
        bodies.put("attributes", "a <b " + "c='d' ".repeat(50_000));
        bodies.put("entities", "&#x0;&#1;&#xD800;&#xFFFF;&amp;".repeat(10_000));
        bodies.put("open entities", "&a".repeat(MUCH));
        bodies.put("backslashes", "\\".repeat(MUCH));
        bodies.put("bars", "|".repeat(MUCH) + "\n" + "|-".repeat(MUCH / 2) + "|\n|x|");
        bodies.put("wide table", table(2_000, 20));
        bodies.put("table with few heads", "|a|\n|-|\n" + "|b".repeat(MUCH) + "|");
        bodies.put("definitions", definitions());
        bodies.put("one definition, many uses", "[a]: http://x\n\n" + "[a]".repeat(50_000));
        bodies.put("headings", "# a\n".repeat(50_000));
        bodies.put("underlines", "a\n".repeat(50_000) + "===\n");
        bodies.put("rules", "---\n".repeat(50_000));
        bodies.put("hard breaks", "a  \n".repeat(50_000));
        bodies.put("one word", "x".repeat(1_000_000));
        bodies.put("blanks", " ".repeat(1_000_000));
        bodies.put("line ends", "\n".repeat(1_000_000));
        bodies.put("tabs", "\t".repeat(500_000));
        bodies.put("notes", "```note\nx\n```\n".repeat(20_000));
        bodies.put("note of dollars", "```note\n" + "$a ".repeat(MUCH) + "\n```\n");
        bodies.put("note of quotes", "```caution\n" + ">".repeat(10_000) + "\n```\n");
        bodies.put("calculators", "```calculator valve-force\n```\n".repeat(3_000));
        bodies.put("unknown calculators", "```calculator valve-farce\n```\n".repeat(20_000));
        bodies.put("problems", "```problem nothing\n```\n".repeat(20_000));
        bodies.put(
                "long line in a part",
                "```calculator valve-force\na: " + "b ".repeat(200_000) + "\n```\n");
        bodies.put(
                "many lines in a part",
                "```calculator valve-force\n" + "upstream: 1 bar\n".repeat(50_000) + "```\n");
        bodies.put(
                "senseless lines in a part",
                "```chart valve-force\n" + "a\n".repeat(MUCH) + "```\n");
        bodies.put("blanks in an axis", chart("upstream from a" + " ".repeat(900) + "b"));
        bodies.put("numbers in an axis", chart("upstream from " + "1 to ".repeat(190) + "2 bar"));
        bodies.put(
                "curves",
                chart("upstream from 1 bar to 2 bar\nby: upstream = " + "1,".repeat(400)));
        bodies.put("bad links", "[a](javascript:x) ".repeat(20_000));
        bodies.put("links to nowhere", "[a](lesson:no/where) ".repeat(20_000));
        bodies.put("control characters", "a\0\u0001\u001B[2J\uFFFF".repeat(20_000));
        bodies.put("direction marks", "\u202Ea\u2066b".repeat(50_000));
        bodies.put("combining marks", "a" + "\u0301".repeat(MUCH));
        bodies.put("wide characters", "\uD83D\uDE00".repeat(MUCH));
        bodies.put("formulas", "$a_{1}$ ".repeat(20_000));
        bodies.put("different formulas", differentFormulas());
        bodies.put("faulty formulas", "$\\frac{$ ".repeat(20_000));
        bodies.put("huge formula", "$" + "a+".repeat(MUCH) + "a$");
        bodies.put("deep formula", "$" + "{".repeat(20_000) + "}".repeat(20_000) + "$");
        bodies.put("macros", "$\\def\\a{\\a\\a}\\a$ and $\\newcommand\\b{\\b}\\b$");
        return bodies.entrySet().stream();
    }

    private static String stairs(String step) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 700; i++) {
            text.append(" ".repeat(2 * i)).append(step).append('\n');
        }
        return text.toString();
    }

    private static String growing(char c) {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i < 1_000; i++) {
            text.append(String.valueOf(c).repeat(i)).append(' ');
        }
        return text.toString();
    }

    private static String table(int columns, int rows) {
        return "|a".repeat(columns)
                + "|\n"
                + "|-".repeat(columns)
                + "|\n"
                + ("|b".repeat(columns) + "|\n").repeat(rows);
    }

    private static String definitions() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 20_000; i++) {
            text.append('[').append(i).append("]: http://x\n");
        }
        return text.toString();
    }

    private static String chart(String x) {
        return "```chart valve-force\ntitle: t\ny: force\nx: " + x + "\n```\n";
    }

    private static String differentFormulas() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 2_000; i++) {
            text.append("$x_{").append(i).append("}$ ");
        }
        return text.toString();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("bodies")
    void aHostileBodyEndsInFindingsOrAsText(Map.Entry<String, String> body) {
        assertTimeoutPreemptively(
                GUARD, () -> checkAndDraw(LESSON + body.getValue()), body.getKey());
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("bodies")
    void aHostileProblemTextEndsInFindingsOrAsText(Map.Entry<String, String> body) {
        String problem =
                """
                ---
                id: hostile
                title: Hostile
                skill: test.reading
                level: 1
                kind: number
                givens:
                  seat: 40 mm
                work:
                  push: {relation: valve-force, seatDiameter: seat, upstream: 180 kPa, downstream: 100 kPa}
                ask:
                  - {of: push.force, say: the push}
                mistakes:
                  - {slip: thousand-too-big, at: push.force}
                ---
                {{seat}} %s

                ## Hints

                1. %s
                2. Two.
                3. Three.

                ## Why

                Because.
                """;
        String text = body.getValue();
        String half = text.substring(0, Math.min(text.length(), 400_000));
        assertTimeoutPreemptively(
                GUARD,
                () -> {
                    String whole = problem.replaceFirst("%s", "@one").replaceFirst("%s", "@two");
                    ContentFile file =
                            ContentReader.read(
                                    "p.md", whole.replace("@one", half).replace("@two", half));
                    new ContentCheck().check(List.of(file)).forEach(Finding::text);
                },
                body.getKey());
    }

    private static void checkAndDraw(String text) {
        ContentFile file = ContentReader.read("l.md", text);
        List<Finding> findings = new ContentCheck().check(List.of(file));
        assertTrue(findings.size() <= 101);
        findings.forEach(finding -> assertTrue(finding.text().length() < 3_000));
        Optional<Lesson> lesson = LessonReader.read(ContentReader.read("l.md", text));
        if (lesson.isPresent()) {
            String html =
                    new LessonPage(MATHS)
                            .html(
                                    lesson.get(),
                                    UnitSystem.US_SHOP,
                                    new ContentCheck.NoCards(),
                                    Optional.empty(),
                                    Optional.empty());
            assertTrue(html.endsWith("<div id=\"term-note\" role=\"status\"></div>"));
            ProblemBank none = ProblemBank.of(new ContentFolder("none", List.of(), List.of()));
            new LessonText(MATHS).of(lesson.get(), none, UnitSystem.SI_SHOP);
        }
    }

    static Stream<Map.Entry<String, String>> fronts() {
        Map<String, String> fronts = new LinkedHashMap<>();
        fronts.put("bomb", "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n");
        fronts.put("many values", "values:\n" + numbered("  v%d: 1 to 10000 by 1 mm\n", 5_000));
        fronts.put(
                "many uses",
                "work:\n"
                        + numbered(
                                "  u%d: {relation: torque-power, torque: 1 N·m, speed: 1 1/s}\n",
                                4_000));
        fronts.put(
                "many bad uses",
                "work:\n" + numbered("  u%d: {relation: torque-powr, torqe: a, sped: b}\n", 3_000));
        fronts.put(
                "many bad feeds",
                "values:\n"
                        + numbered("  v%d: 1 mm\n", 150)
                        + "work:\n"
                        + numbered(
                                "  u%d: {relation: valve-force, seatDiameter: w, upstream: x, downstream: y}\n",
                                3_000));
        fronts.put("long row", "values:\n  v: " + "1 ".repeat(MUCH) + "mm\n");
        fronts.put("long list", "values:\n  v: one of " + "1 ".repeat(MUCH) + "mm\n");
        fronts.put("long blank", "values:\n  v: '1" + " ".repeat(MUCH) + "x'\n");
        fronts.put("long number", "values:\n  v: " + "1".repeat(MUCH) + " mm\n");
        fronts.put("huge exponent", "values:\n  v: 1e999999999 mm\n");
        fronts.put("many skills", "needs: [" + numbered("a%d, ", 9_000) + "b]\n");
        fronts.put("long skill", "needs: " + "a-".repeat(MUCH) + "\n");
        fronts.put("many cautions", "cautions: [" + numbered("c%d, ", 9_000) + "d]\n");
        fronts.put("long title", "cautions: " + "<b>".repeat(MUCH) + "\n");
        return fronts.entrySet().stream();
    }

    private static String numbered(String line, int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(line.formatted(i));
        }
        return text.toString();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("fronts")
    void aHostileHeadEndsInFindingsOrAsText(Map.Entry<String, String> front) {
        String lesson = LESSON.replace("minutes: 5\n", "minutes: 5\n" + front.getValue());
        assertTimeoutPreemptively(GUARD, () -> checkAndDraw(lesson + "Text.\n"), front.getKey());
        String problem =
                lesson.replace("title", "givens: {a: 1 mm}\ntitle").replace("values:", "ask:");
        assertTimeoutPreemptively(GUARD, () -> checkAndDraw(problem), front.getKey());
    }

    static Stream<Map.Entry<String, String>> problemHeads() {
        Map<String, String> heads = new LinkedHashMap<>();
        heads.put("id", "id: " + "a-".repeat(MUCH) + "a\n");
        heads.put("skill", "skill: " + "a.".repeat(MUCH) + "a\n");
        heads.put(
                "tolerance",
                "ask: [{of: push.force, say: x, tolerance: '2 %" + " ".repeat(MUCH) + "'}]\n");
        heads.put("asks", "ask: [" + "{of: push.farce, say: x}, ".repeat(4_000) + "{}]\n");
        heads.put(
                "mistakes",
                "mistakes: [" + "{slip: left-uot, at: push.farce}, ".repeat(4_000) + "{}]\n");
        heads.put("givens", "givens:\n" + numbered("  g%d: 1 to 10000 by 1 mm\n", 5_000));
        heads.put(
                "factor", "mistakes: [{slip: factor, at: a, factor: " + "9".repeat(MUCH) + "}]\n");
        return heads.entrySet().stream();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("problemHeads")
    void aHostileProblemHeadEndsInFindings(Map.Entry<String, String> head) {
        String text =
                "---\nkind: number\nwork:\n  push: {relation: valve-force, seatDiameter: 4 cm, upstream: 2 bar, downstream: 1 bar}\n"
                        + head.getValue()
                        + "---\nText.\n";
        assertTimeoutPreemptively(
                GUARD,
                () -> {
                    ContentFile file = ContentReader.read("p.md", text);
                    List<Finding> findings = new ContentCheck().check(List.of(file));
                    assertTrue(findings.size() <= 101 && !findings.isEmpty());
                },
                head.getKey());
    }

    @Test
    void aLineOfFiveMegabytesIsOneFinding(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("long.md");
        Files.writeString(file, LESSON + "x".repeat(5_000_000));
        List<Finding> findings =
                assertTimeoutPreemptively(
                        GUARD, () -> new ContentCheck().check(ContentFolder.read(folder).files()));
        assertEquals(List.of("larger than 1 MiB"), findings.stream().map(Finding::what).toList());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.ContentReader;
import hotside.content.Finding;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ContentCheckTest {
    private static final String LESSON =
            """
            ---
            title: A lesson
            strand: Tests
            skills: test.reading
            minutes: 5
            sources: our own
            values:
              seat: 40 mm
            ---
            """;

    private static final String PROBLEM =
            """
            ---
            id: push
            title: The push
            skill: gate.push
            level: 1
            kind: number
            givens:
              seat: 40 to 50 by 1 mm
            work:
              push: {relation: valve-force, seatDiameter: seat, upstream: 180 kPa, downstream: 100 kPa}
            ask:
              - {of: push.force, say: the push}
            mistakes:
              - {slip: radius-as-diameter, at: push.seatDiameter}
            ---
            A seat of {{seat}}.

            ## Hints

            1. One.
            2. Two.
            3. Three.

            ## Why

            Because.
            """;

    private static List<Finding> check(String... pathsAndTexts) {
        List<ContentFile> files = new ArrayList<>();
        for (int i = 0; i < pathsAndTexts.length; i += 2) {
            files.add(ContentReader.read(pathsAndTexts[i], pathsAndTexts[i + 1]));
        }
        return new ContentCheck().check(files);
    }

    private static void assertFinds(String body, String text) {
        List<Finding> findings = check("t/l.md", LESSON + body);
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(text.stripTrailing(), findings.get(0).text());
    }

    @Test
    void soundFilesHaveNoFindings() {
        List<ContentFile> files =
                List.of(
                        ContentReader.read("t/p.md", PROBLEM),
                        ContentReader.read(
                                "t/l.md",
                                LESSON
                                        + "Text [on](lesson:t/l), [law](relation:valve-force), [web](https://example.org) and"
                                        + " $a^2$ in {{seat}}.\n\n```problem push\n```\n\n```note\n$b$\n```\n"));
        ContentCheck check = new ContentCheck();
        assertEquals(List.of(), check.check(files));
        assertEquals(2, check.sound());
    }

    @Test
    void aFileWithAFindingIsNotCountedAsSound() {
        ContentCheck check = new ContentCheck();
        check.check(
                List.of(
                        ContentReader.read("t/l.md", LESSON + "$\\frac{$"),
                        ContentReader.read("t/m.md", LESSON + "Text.")));
        assertEquals(1, check.sound());
    }

    @Test
    void aFormulaMustSet() {
        List<Finding> findings = check("t/l.md", LESSON + "Text\n\nand $\\frac{a}$ here.");
        assertEquals(1, findings.size(), findings.toString());
        assertTrue(
                findings.get(0).what().startsWith("this formula cannot be set: "),
                findings.get(0).what());
        assertEquals("12:5", findings.get(0).place().toString());
    }

    @Test
    void aFormulaInsideAPartMustSetToo() {
        for (String kind : List.of("note", "caution")) {
            List<Finding> findings =
                    check("t/l.md", LESSON + "Text\n\n```" + kind + "\nx\nand $\\frac{a}$\n```\n");
            assertEquals("14:5", findings.get(0).place().toString(), findings.toString());
        }
    }

    @Test
    void aFormulaInAHintMustSetToo() {
        List<Finding> findings = check("p.md", PROBLEM.replace("2. Two.", "2. $\\frac{a}$"));
        assertTrue(findings.get(0).what().startsWith("this formula cannot be set: "));
        assertEquals("21:4", findings.get(0).place().toString());
    }

    @Test
    void valuesAreNotFilledInInsideFormulas() {
        assertFinds(
                "It is $d = {{seat}}$ wide.",
                """
                t/l.md:10:7: the value seat is not filled in here
                    10 | It is $d = {{seat}}$ wide.
                               ^
                  expected: values outside of formulas
                  to mend:  end the formula before it
                """);
        List<Finding> findings =
                check(
                        "p.md",
                        PROBLEM.replace("A seat of {{seat}}.", "{{seat}} or $d = {{seat}}$."));
        assertEquals("the value seat is not filled in here", findings.get(0).what());
    }

    @Test
    void linksLeadSomewhere() {
        assertFinds(
                "Go [on](lesson:t/m).",
                """
                t/l.md:10:4: there is no lesson "t/m"
                    10 | Go [on](lesson:t/m).
                            ^
                  expected: one of t/l
                  to mend:  write "t/l"
                """
                        .replace("one of t/l", expectedLessons()));
        assertFinds(
                "See [it](javascript:x).",
                """
                t/l.md:10:5: this link leads nowhere: "javascript:x"
                    10 | See [it](javascript:x).
                             ^
                  expected: https://…, mailto:…, lesson:strand/name or relation:id
                """);
        Finding relation =
                check("t/l.md", LESSON + "```note\n[it](relation:valve-farce)\n```\n").get(0);
        assertEquals("there is no relation \"valve-farce\"", relation.what());
        assertEquals("11:1", relation.place().toString());
        assertEquals("write \"valve-force\"", relation.mend());
    }

    /** What comes with the program may be linked to as well, and is suggested after one's own. */
    private static String expectedLessons() {
        List<String> known = new ArrayList<>(List.of("t/l"));
        hotside.course.Course.shipped().lessons().forEach(lesson -> known.add(lesson.id()));
        List<String> sorted = hotside.content.Nearest.sorted("t/m", known);
        return "one of "
                + String.join(", ", sorted.subList(0, Math.min(8, sorted.size())))
                + (sorted.size() > 8 ? " …" : "");
    }

    @Test
    void aProblemBlockNamesAProblemOfTheFilesOrOfTheProgram() {
        Finding finding =
                check(
                                "t/l.md",
                                LESSON + "A problem pusch.\n\n```problem pusch\n```\n",
                                "p.md",
                                PROBLEM)
                        .get(0);
        assertEquals("there is no problem \"pusch\"", finding.what());
        assertEquals("12:1", finding.place().toString());
        assertEquals("write \"push\"", finding.mend());
    }

    @Test
    void aProblemDrawsFromEverySeedInBothShops() {
        List<Finding> findings =
                check("p.md", PROBLEM.replace("40 to 50 by 1 mm", "one of 40 300 mm"));
        assertEquals(List.of(), findings, "what cannot be drawn is drawn again");
        Finding finding = check("p.md", PROBLEM.replace("40 to 50 by 1 mm", "300 mm")).get(0);
        assertEquals(
                "push: no sound variant in 400 draws; the last one failed because valve-force:"
                        + " seatDiameter = 0.3 is outside (0.0, 0.2] m",
                finding.what());
        assertEquals("8:3", finding.place().toString());
    }

    @Test
    void anIdIsUsedOnce() {
        List<Finding> problems = check("a.md", PROBLEM, "b.md", PROBLEM);
        assertEquals("\"push\" is the id of a.md too", problems.get(0).what());
        assertEquals("b.md:2:5", problems.get(0).path() + ":" + problems.get(0).place());
        List<Finding> lessons = check("1-t/1-l.md", LESSON, "2-t/3-l.md", LESSON);
        assertEquals("\"t/l\" is the id of 1-t/1-l.md too", lessons.get(0).what());
    }

    @Test
    void aProblemIsKnownByAnyOfItsKeys() {
        String halved =
                PROBLEM.replaceAll("(?s)givens:.*?work:", "work:")
                        .replaceAll("(?s)ask:.*?mistakes:", "mistakes:");
        List<Finding> findings = check("p.md", halved);
        assertTrue(
                findings.stream().anyMatch(f -> f.what().equals("missing key \"ask\"")),
                findings.toString());
        assertTrue(
                findings.stream().noneMatch(f -> f.what().equals("missing key \"strand\"")),
                findings.toString());
    }

    @Test
    void findingsOfAllFilesComeFileByFile() {
        List<Finding> findings =
                check(
                        "a.md", PROBLEM.replace("level: 1", "level: 9"),
                        "t/l.md", LESSON.replace("minutes: 5", "minutes: 0"),
                        "c.md", "no head");
        assertEquals(
                List.of("a.md", "t/l.md", "c.md"),
                findings.stream().map(Finding::path).distinct().toList());
    }

    /** Every shipped file, in the words of its finding. */
    @TestFactory
    Stream<DynamicTest> whatComesWithTheProgramIsSound() {
        List<ContentFile> files =
                Stream.of("hotside/lessons", "hotside/problems")
                        .flatMap(folder -> ContentFolder.ofResources(folder).files().stream())
                        .toList();
        new ContentCheck().check(files);
        return files.stream()
                .map(
                        file ->
                                DynamicTest.dynamicTest(
                                        file.path(),
                                        () -> assertEquals(List.of(), file.findings().list())));
    }

    @Test
    void aLessonIsDrawnWithItsComputedValuesAndParts() {
        Maths maths = new Maths();
        ContentFile file =
                ContentReader.read(
                        "t/l.md",
                        LESSON.replace(
                                        "sources: our own",
                                        "sources: our <own>\ncautions: Hot & loud.")
                                + "A seat of {{seat}}.\n\n```note\nBeside.\n```\n");
        var lesson = hotside.course.LessonReader.read(file).orElseThrow();
        String html =
                new LessonPage(maths)
                        .html(
                                lesson,
                                UnitSystem.US_SHOP,
                                new ContentCheck.NoCards(),
                                Optional.of(lesson),
                                Optional.empty());
        assertTrue(html.contains("<span class=\"computed\">1.57 in</span>"), html);
        assertTrue(html.contains("<li>Hot &amp; loud.</li>"), html);
        assertTrue(html.contains("<li>our &lt;own&gt;</li>"), html);
        assertTrue(html.contains("<aside class=\"note\" role=\"note\">"), html);
        assertTrue(html.contains("<a href=\"lesson:t/l\">Before this: A lesson</a>"), html);
        Xml.parse("<main>" + html + "</main>");
    }
}

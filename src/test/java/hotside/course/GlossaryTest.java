// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.ContentReader;
import hotside.content.Finding;
import hotside.speech.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlossaryTest {
    private static final String HEAD = "---\ntitle: Glossary\n---\n";
    private static final String LESSON =
            """
            ---
            title: T
            strand: S
            skills: [s.t]
            minutes: 5
            sources: our own
            ---
            ## A wall tap in a heading

            A [wall tap](relation:valve-force) in a link, Wall taps in the text, another wall tap.

            ```note
            Boost, and `bore` in code; rebored is no bore-hole word. A bore is.
            ```
            """;

    private static List<String> findings(String body) {
        ContentFile file = ContentReader.read("glossary.md", HEAD + body);
        Glossary.read(file);
        return file.findings().list().stream().map(f -> f.place() + " " + f.what()).toList();
    }

    @Test
    void aTermHasSpellingsAMeaningAndPerhapsALesson() {
        Glossary glossary =
                Glossary.read(
                        ContentReader.read(
                                "glossary.md",
                                HEAD
                                        + "## wall tap\nalso: tap, static tap\nlesson: s/t\nA small *hole*.\n\n## bore\nInside.\n"));
        assertEquals(
                List.of("bore", "wall tap"), glossary.terms().stream().map(Term::name).toList());
        Term tap = glossary.find("wall-tap").orElseThrow();
        assertEquals(List.of("wall tap", "tap", "static tap"), tap.spellings());
        assertEquals("A small *hole*.", tap.meaning());
        assertEquals("s/t", tap.lesson().orElseThrow());
        assertEquals("4:1", tap.place().toString());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    ## bore\\nx\\n## Bore\\ny            | 6:1 "Bore" is explained twice
                    ## bore\\nalso: hole\\nx\\n## hole\\ny | 7:1 "hole" is explained twice
                    ## bore                              | 4:1 "bore" has no meaning
                    ## \\nx                              | 4:1 this term has no fit name
                    text                                 | 1:1 this glossary is empty
                    """)
    void whatIsWrongIsSaid(String body, String finding) {
        assertEquals(List.of(finding), findings(body.replace("\\n", "\n")));
    }

    @Test
    void aMissingLessonIsSaid() {
        ContentFile file =
                ContentReader.read("glossary.md", HEAD + "## bore\nlesson: s/u\nInside.\n");
        Glossary.read(file).checkLessons(file, List.of("s/t"));
        assertEquals(
                "\"bore\" names the lesson \"s/u\", which is not there",
                file.findings().list().get(0).what());
    }

    @Test
    void theFirstUseInRunningTextIsMarked(@TempDir Path folder) throws IOException {
        Files.createDirectory(folder.resolve("01-s"));
        Files.writeString(folder.resolve("01-s/01-t.md"), LESSON);
        Files.writeString(
                folder.resolve("glossary.md"),
                HEAD
                        + "## wall tap\nA hole.\n\n## bore\nInside.\n\n## boost\nMore.\n\n## unused\nNo.\n");
        Course course = Course.of(ContentFolder.read(folder));
        assertEquals(List.of(), course.findings());
        Lesson lesson = course.find("s/t").orElseThrow();
        assertEquals(List.of("Wall taps", "Boost", "bore"), marked(lesson));
        Term tap = course.glossary().find("wall-tap").orElseThrow();
        assertEquals(lesson, course.firstUse(tap).orElseThrow());
        Lesson page = LookUp.glossary(course);
        assertTrue(Search.words(page.body()).contains("A hole. See T."), Search.words(page.body()));
    }

    @Test
    void theShippedGlossaryIsRead() {
        Course course = Course.shipped();
        assertTrue(course.glossary().terms().size() >= 60);
        for (Term term : course.glossary().terms()) {
            assertEquals(term, course.glossary().find(term.slug()).orElseThrow());
        }
    }

    @Test
    void aTranslationTakesThePlaceOfItsOriginal(@TempDir Path folder) throws IOException {
        Files.createDirectory(folder.resolve("01-s"));
        Files.writeString(folder.resolve("01-s/01-t.md"), LESSON);
        Files.writeString(
                folder.resolve("glossary.md"),
                HEAD + "## wall tap\nlesson: s/t\nA hole.\n\n## boost\nMore.\n");
        Path german = folder.resolve("de");
        Files.createDirectory(german);
        Files.writeString(
                german.resolve("glossary.md"),
                HEAD
                        + "## Überdruck\nNeu.\n\n## Wandbohrung\nof: wall tap\nforms: Wandbohrungen\nEin Loch.\n\n"
                        + "## Zeug\nof: stuff\nNichts.\n");
        Course english = Course.of(ContentFolder.read(folder));
        Language.speak(Language.GERMAN);
        Course course = english.translated(ContentFolder.read(german));
        assertEquals(
                List.of("boost", "Überdruck", "Wandbohrung", "Zeug"),
                course.glossary().terms().stream().map(Term::name).toList());
        Term tap = course.glossary().find("wall-tap").orElseThrow();
        assertEquals("Wandbohrung", tap.name());
        assertEquals("s/t", tap.lesson().orElseThrow());
        assertEquals(tap, course.glossary().find("wandbohrung").orElseThrow());
        assertEquals("s/t", course.firstUse(tap).orElseThrow().id());
        assertEquals(
                List.of("there is no term \"stuff\" to translate"),
                course.findings().stream().map(Finding::what).toList());
    }

    @Test
    void everyTermIsTranslatedAndFoundInGermanLessons() {
        Course english = Course.shipped();
        Language.speak(Language.GERMAN);
        Course german = Course.shipped(Language.GERMAN);
        assertEquals(english.glossary().terms().size(), german.glossary().terms().size());
        for (Term term : english.glossary().terms()) {
            Term told = german.glossary().find(term.slug()).orElseThrow();
            assertEquals(term.name(), told.original().orElse("none"));
            assertNotEquals(term.meaning(), told.meaning());
        }
        Lesson first = german.find("ground/four-words-for-pressure").orElseThrow();
        List<String> marked = marked(first);
        assertTrue(
                marked.containsAll(List.of("Überdruck", "Saugrohr", "Membran")), () -> "" + marked);
    }

    @AfterEach
    void speakEnglishAgain() {
        Language.speak(Language.ENGLISH);
    }

    private static List<String> marked(Lesson lesson) {
        List<String> marked = new ArrayList<>();
        lesson.texts()
                .forEach(
                        text ->
                                text.accept(
                                        new AbstractVisitor() {
                                            @Override
                                            public void visit(CustomNode node) {
                                                if (node instanceof TermUse use) {
                                                    marked.add(use.literal());
                                                }
                                                visitChildren(node);
                                            }
                                        }));
        return marked;
    }
}

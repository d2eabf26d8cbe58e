// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.course.Lesson;
import hotside.page.Words;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Search, glossary, skill map and what is written to disk, in the real window. */
class CourseToolsTest {
    @TempDir private static Path data;

    private static Library library;
    private static RecordKeeper keeper;
    private static DeskWindow window;
    private static OpenDesk desk;

    @BeforeAll
    static void openTheDesk() {
        Screen.start();
        library = Libraries.read();
        desk = OpenDesk.fresh(library, data, () -> 1L);
        keeper = desk.keeper();
        window = desk.window();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
    }

    private static String page() {
        return Screen.on(() -> window.page().text());
    }

    @Test
    void aSearchShowsWhatItFoundAndItsLinksLead() {
        Screen.run(
                () -> {
                    window.openAtStart(Optional.empty());
                    TextField field = (TextField) window.scene().lookup("#search-course");
                    field.setText("wall tap");
                    field.fireEvent(new javafx.event.ActionEvent());
                });
        String found = page();
        assertTrue(found.contains("wall tap, glossary"), found);
        Screen.run(() -> window.page().clickFirstLink());
        assertTrue(
                Screen.on(() -> window.page().text("term-note").orElse(""))
                        .contains("flush and square"));
    }

    @Test
    void aTermInALessonOpensItsNoteAndCloses() {
        Lesson lesson = library.course().lessons().get(0);
        Screen.run(() -> window.open(lesson));
        Screen.run(() -> window.lessonPlace().explain("turbine"));
        assertTrue(
                Screen.on(() -> window.page().text("term-note").orElse(""))
                        .contains("the exhaust drives"));
        Screen.run(() -> window.lessonPlace().explain(""));
        assertEquals("", Screen.on(() -> window.page().text("term-note").orElse("?")));
    }

    @Test
    void glossaryAndSkillMapAreOnePressAway() {
        Screen.run(() -> ((Button) window.scene().lookup("#open-glossary")).fire());
        assertTrue(page().contains("wall tap"));
        Screen.run(() -> ((Button) window.scene().lookup("#open-skills")).fire());
        assertTrue(page().contains("Taught in"), page());
    }

    @Test
    void whereOneLeftOffIsALessonAndNoPageToLookUp() {
        Lesson lesson = library.course().lessons().get(1);
        Screen.run(() -> window.open(lesson));
        Screen.run(() -> ((Button) window.scene().lookup("#open-glossary")).fire());
        assertEquals(Optional.of(lesson.id()), keeper.remembered("lesson"));
    }

    /** Answers every question with one file. */
    private record Chosen(Path file) implements Chooser {
        @Override
        public List<Path> files(String title) {
            return List.of();
        }

        @Override
        public Optional<Path> folder(String title) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> save(String title, String name) {
            return Optional.of(file);
        }
    }

    private static SaveAs saveAs(Optional<Lesson> open, Path file) {
        return Screen.on(
                () ->
                        new SaveAs(
                                () -> library,
                                () -> open,
                                () -> Settings.USUAL.system(),
                                new Worker(Runnable::run, Runnable::run),
                                new Chosen(file)));
    }

    @Test
    void aLessonAndTheCourseAreWritten(@TempDir Path folder) throws Exception {
        Lesson lesson = library.course().lessons().get(0);
        SaveAs saveAs = saveAs(Optional.of(lesson), folder.resolve("a"));
        Screen.run(() -> saveAs.save(SaveAs.Kind.LESSON_HTML));
        assertTrue(Files.readString(folder.resolve("a")).contains(lesson.title()));
        Screen.run(() -> saveAs.save(SaveAs.Kind.COURSE_EPUB));
        byte[] epub = Files.readAllBytes(folder.resolve("a"));
        assertEquals("PK", new String(epub, 0, 2, StandardCharsets.US_ASCII));
        assertTrue(saveAs.news().startsWith(Words.of("save.done", "").strip()), saveAs.news());
    }

    @Test
    void whatCannotBeWrittenIsSaidAndLeavesNothing(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "no folder");
        SaveAs saveAs = saveAs(Optional.of(library.course().lessons().get(0)), file.resolve("a"));
        Screen.run(() -> saveAs.save(SaveAs.Kind.LESSON_HTML));
        assertTrue(saveAs.news().startsWith("Nothing was written."), saveAs.news());
        assertEquals("no folder", Files.readString(file));
    }

    @Test
    void withoutAnOpenLessonThereIsNothingToPrint(@TempDir Path folder) {
        SaveAs saveAs = saveAs(Optional.empty(), folder.resolve("a"));
        Screen.run(() -> saveAs.save(SaveAs.Kind.LESSON_PDF));
        assertEquals(Words.of("save.no-lesson"), saveAs.news());
    }
}

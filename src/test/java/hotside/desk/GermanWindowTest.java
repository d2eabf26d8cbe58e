// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.course.Course;
import hotside.course.Lesson;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.speech.Language;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The German desk in its window speaks German. English is known by words that no English sentence
 * can do without. Titles of lessons and problems that are not translated yet are marked and let be.
 */
@Tag("pictures")
class GermanWindowTest {
    @TempDir private static Path data;
    private static Library library;
    private static EnglishWords english;
    private static OpenDesk desk;

    private final List<String> findings = new ArrayList<>();

    @BeforeAll
    static void openTheDesk() {
        NoNetwork.install();
        Screen.start();
        Language.speak(Language.GERMAN);
        library = Libraries.read(Language.GERMAN);
        english = EnglishWords.besides(library);
        try (RecordKeeper keeper = RecordKeeper.open(data.resolve("record"), Runnable::run)) {
            keeper.remember("language", Language.GERMAN.code());
        }
        desk =
                OpenDesk.open(
                        library,
                        data.resolve("record"),
                        keeper -> Optional.of("ground/four-words-for-pressure"));
    }

    @BeforeEach
    void speakGerman() {
        Language.speak(Language.GERMAN);
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
        Language.speak(Language.ENGLISH);
    }

    @Test
    void whatIsNotTranslatedIsMarkedAndNothingElse() {
        List<Lesson> english = Course.shipped().lessons();
        for (Lesson lesson : english) {
            String title = library.course().find(lesson.id()).orElseThrow().title();
            boolean first = lesson.strand().equals("Ground");
            assertEquals(!first, title.equals(lesson.title() + " (auf Englisch)"), title);
        }
        for (Template template : ProblemBank.shipped().all()) {
            Template told = library.bank().find(template.id()).orElseThrow();
            boolean same = told.prompt().equals(template.prompt());
            assertEquals(same, told.title().endsWith(" (auf Englisch)"), told.title());
            assertEquals(template.fingerprint(), told.fingerprint());
        }
    }

    @Test
    void everyLessonOfTheFirstStrandIsGermanThroughout() {
        library.course().lessons().stream()
                .filter(lesson -> lesson.strand().equals("Grundlagen"))
                .forEach(
                        lesson -> {
                            Screen.run(() -> desk.window().open(lesson));
                            look(lesson.id());
                        });
        assertEquals(List.of(), findings);
    }

    @Test
    void glossarySkillMapAndSearchAreGerman() {
        for (String tool : List.of("glossary", "skills")) {
            Screen.run(() -> desk.window().open(desk.window().place("course").orElseThrow()));
            Screen.run(
                    () ->
                            ((javafx.scene.control.Button)
                                            desk.window().scene().lookup("#open-" + tool))
                                    .fire());
            look(tool);
        }
        for (String query : List.of("Druck", "gibtesnicht")) {
            Screen.run(() -> desk.window().open(new LookUpPages(library).results(query)));
            look("search " + query);
        }
        assertEquals(List.of(), findings);
    }

    @Test
    void aTermIsExplainedInGermanAlsoInAnEnglishLesson() {
        Screen.run(() -> desk.window().open(library.course().lessons().get(0)));
        for (String slug : List.of("überdruck", "gauge-pressure")) {
            Screen.run(() -> desk.window().lessonPlace().explain(slug));
            String note = Screen.on(() -> desk.window().page().text("term-note").orElse(""));
            assertTrue(note.contains("von der Luft ringsum an gezählt"), note);
        }
    }

    @Test
    void practiceAndMyWorkAreGerman() {
        Screen.run(() -> desk.window().open(desk.window().practicePlace()));
        settle();
        look("practice");
        Variant variant =
                Screen.on(() -> desk.window().practicePlace().problem().orElseThrow().variant());
        Screen.run(
                () -> {
                    for (int ask = 0; ask < variant.answers().size(); ask++) {
                        desk.window().page().type("p1-answer-" + ask, Answers.told(variant, ask));
                    }
                    desk.window().page().click("p1-check");
                });
        settle();
        look("practice, solved");
        Screen.run(() -> desk.window().open(desk.window().myWorkPlace()));
        settle();
        look("my work");
        assertEquals(List.of(), findings);
    }

    @Test
    void theClassIsGerman() throws Exception {
        SampleClass sample =
                SampleClass.handedIn(
                        Files.createDirectory(data.resolve("class")),
                        library.bank(),
                        "ground",
                        "Luft, Woche 3");
        ClassPlace place = (ClassPlace) desk.window().place("class").orElseThrow();
        Screen.run(() -> desk.window().open(place));
        look("class");
        Screen.run(() -> place.give(sample.set(), sample.folder()));
        Screen.until(
                () ->
                        desk.window().page().text().contains("notes.txt")
                                && desk.window().page().text().contains("L21"));
        look("class, marked");
        Screen.run(() -> place.work(sample.set(), "L10"));
        settle();
        look("class, at work");
        assertEquals(List.of(), findings);
    }

    @Test
    void helpIsGerman() {
        Screen.run(() -> desk.window().open(desk.window().place("help").orElseThrow()));
        look("help");
        assertEquals(List.of(), findings);
    }

    /** The toolkit's own buttons would speak the language of the machine. */
    @Test
    void windowsThatAskAreAnsweredInGerman() {
        List<String> buttons =
                Screen.on(
                        () ->
                                Stream.of(
                                                Dialogs.question("Löschen?", "Alles?"),
                                                Dialogs.warning("Hinweis", "Etwas"))
                                        .flatMap(alert -> alert.getButtonTypes().stream())
                                        .map(ButtonType::getText)
                                        .toList());
        assertEquals(List.of("Ja", "Nein", "OK"), buttons);
    }

    /** English is found where it is: a test of the test. */
    @Test
    void anEnglishLessonIsSeenToBeEnglish() {
        Screen.run(() -> desk.window().open(library.course().lessons().get(10)));
        look("an English lesson");
        assertTrue(findings.size() > 10, () -> "" + findings);
    }

    private static void settle() {
        for (int i = 0; i < 3; i++) {
            desk.keeper().settle();
            Screen.frames(2);
        }
    }

    private void look(String what) {
        settle();
        String shown = Screen.on(() -> desk.window().page().text() + "\n" + around());
        // The list of libraries holds names that were given to them, one a line.
        shown = shown.replaceAll("(?m)^.*\\([^)]*(?:Licen[sc]e|BSD|MIT|EPL)[^)]*\\).*$", "");
        findings.addAll(english.in(what, shown));
    }

    /** Labels, buttons and prompts around the page. */
    private static String around() {
        StringBuilder text = new StringBuilder();
        all(desk.window().scene().getRoot())
                .forEach(
                        node -> {
                            if (node instanceof Labeled label && label.getText() != null) {
                                text.append(label.getText()).append('\n');
                            }
                            if (node instanceof TextInputControl field
                                    && field.getPromptText() != null) {
                                text.append(field.getPromptText()).append('\n');
                            }
                            if (node.getAccessibleText() != null) {
                                text.append(node.getAccessibleText()).append('\n');
                            }
                        });
        return text.toString();
    }

    private static Stream<Node> all(Node node) {
        return Stream.concat(
                Stream.of(node),
                node instanceof Parent parent
                        ? parent.getChildrenUnmodifiable().stream().flatMap(GermanWindowTest::all)
                        : Stream.empty());
    }
}

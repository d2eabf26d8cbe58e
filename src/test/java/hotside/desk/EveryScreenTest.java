// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.course.Lesson;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Variant;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every place at 1280 by 800, in pairs of theme, text size and units: a picture that is blank, text
 * that is cut and words that only a fault writes are findings.
 */
@Tag("pictures")
class EveryScreenTest {
    /** Any two of theme, size and units meet in one of them; both themes meet both sizes. */
    private static final List<Settings> LOOKS =
            List.of(
                    new Settings(UnitSystem.SI_SHOP, false, 100),
                    new Settings(UnitSystem.US_SHOP, true, 100),
                    new Settings(UnitSystem.US_SHOP, false, 200),
                    new Settings(UnitSystem.SI_SHOP, true, 200),
                    // German words are longer.
                    new Settings(UnitSystem.SI_SHOP, false, 100, Language.GERMAN),
                    new Settings(UnitSystem.US_SHOP, true, 200, Language.GERMAN));

    private static final List<String> PLACES =
            List.of("practice", "mywork", "cell", "logs", "relations", "class", "help");

    /** What a page says where something went wrong; nobody does anything wrong here. */
    private static final String ERRORS = ".field-note.wrong, .verdict.ask, .verdict.wrong";

    private static final Pattern FAULTY =
            Pattern.compile(
                    "\\{\\{|\\?\\?\\?|\\bnull\\b|\\bNaN\\b|\\bInfinity\\b|[a-z]Exception\\b");

    /** Different colours in the part of a picture that the page fills; a blank one has one. */
    private static final int LEAST_COLOURS = 12;

    private final List<String> findings = new ArrayList<>();
    private DeskWindow window;
    private RecordKeeper keeper;

    @TempDir private Path data;

    @Test
    void noneIsBlankOrCutOrShowsAFault() throws IOException {
        NoNetwork.install();
        Screen.start();
        Library library = Libraries.read();
        keeper = RecordKeeper.open(data, Platform::runLater);
        Stage stage = Screen.on(() -> opened(library));
        Screen.until(() -> window.page().ready().isDone());
        everyPlace("empty ", List.of(LOOKS.get(3)));
        work();
        List<Lesson> lessons = firstOfEachStrand(library);
        for (Settings look : LOOKS) {
            Screen.run(() -> window.settings(look));
            assertEquals(look.language(), Language.spoken());
            if (look.language() == Language.GERMAN) {
                lessons = firstOfEachStrand(Libraries.read(Language.GERMAN));
            }
            everyPlace("", List.of(look));
            for (Lesson lesson : lessons) {
                Screen.run(() -> window.open(lesson));
                look(lesson.id() + " " + look);
            }
            Screen.run(() -> window.plain(true));
            look("plain text " + look);
            Screen.run(() -> window.plain(false));
        }
        Screen.run(stage::close);
        keeper.close();
        Language.speak(Language.ENGLISH);
        assertEquals(List.of(), findings);
    }

    /** Every place, and the pages to look things up in. */
    private void everyPlace(String state, List<Settings> looks) {
        for (Settings look : looks) {
            Screen.run(() -> window.settings(look));
            for (String place : PLACES) {
                Screen.run(() -> window.open(window.place(place).orElseThrow()));
                look(state + place + " " + look);
            }
            Screen.run(() -> window.open(window.place("course").orElseThrow()));
            for (String tool : List.of("glossary", "skills")) {
                Screen.run(() -> ((Button) window.scene().lookup("#open-" + tool)).fire());
                look(state + tool + " " + look);
            }
            for (String words : List.of("wastegate", "sauerkraut")) {
                Screen.run(() -> search(words));
                look(state + "search for " + words + " " + look);
            }
        }
    }

    private void search(String words) {
        TextField field = (TextField) window.scene().lookup("#search-course");
        field.setText(words);
        field.fireEvent(new ActionEvent());
        field.clear();
    }

    /** A finding is found: a word of a fault, a blank picture, an element beyond the edge. */
    @Test
    void whatIsLookedForIsSeen() {
        NoNetwork.install();
        Screen.start();
        keeper = RecordKeeper.open(data, Platform::runLater);
        Stage stage = Screen.on(() -> opened(Libraries.read()));
        Screen.until(() -> window.page().ready().isDone());
        Screen.run(() -> window.page().show("", ""));
        look("blank");
        Screen.run(
                () ->
                        window.page()
                                .show(
                                        "<div style='width:3000px'>{{p}} is NaN</div>".repeat(20)
                                                + "<p class='field-note wrong'>No number</p>",
                                        ""));
        Screen.run(
                () ->
                        ((TextField) window.scene().lookup("#search-course"))
                                .setPromptText("too long ".repeat(20)));
        look("bad");
        Screen.run(stage::close);
        keeper.close();
        String all = String.join("\n", findings);
        assertTrue(all.contains("blank: a blank picture"), all);
        assertTrue(all.contains("bad: beyond the edge"), all);
        assertTrue(all.contains("bad: shows {{"), all);
        assertTrue(all.contains("bad: cut too long"), all);
        assertTrue(all.contains("bad: says No number"), all);
        assertTrue(all.contains("bad: shows NaN"), all);
    }

    private Stage opened(Library library) {
        AtomicLong seed = new AtomicLong(6);
        window =
                new DeskWindow(
                        library,
                        keeper.settings(),
                        keeper,
                        seed::incrementAndGet,
                        data.resolve("page"),
                        address -> {});
        Stage shown = new Stage();
        shown.setScene(window.scene());
        shown.show();
        return shown;
    }

    /** Something to see in each place: logs compared, a set composed. */
    private void work() throws IOException {
        Screen.run(() -> window.open(window.place("logs").orElseThrow()));
        Screen.run(() -> window.page().click("logs-sample"));
        Screen.until(() -> window.page().text("logs-files").orElse("").contains("pull-6"));
        Map.of("band", "4000 to 6000", "worth", "2.2 kW/kPa", "displacement", "4.6 L")
                .forEach(
                        (name, value) ->
                                Screen.run(() -> window.page().type("logs-" + name, value)));
        Screen.run(() -> window.page().click("logs-compare"));
        Screen.until(() -> window.page().text("logs-result").orElse("").length() > 100);
        Screen.run(() -> window.open(window.place("practice").orElseThrow()));
        keeper.settle();
        Screen.frames(2);
        Screen.run(() -> window.page().click("do-alone"));
        keeper.settle();
        Screen.frames(2);
        answer();
        Screen.run(() -> window.open(window.place("class").orElseThrow()));
        Screen.run(() -> window.page().type("class-title", "Gates, week 3"));
        Screen.run(() -> window.page().type("class-skill", "gate"));
        Screen.run(() -> window.page().click("class-choose"));
        aClass();
    }

    /** A set that was handed out, a paper half typed in, and what came of marking. */
    private void aClass() throws IOException {
        SampleClass sample = SampleClass.handedIn(data.resolve("sample"), ProblemBank.shipped());
        ClassPlace place = (ClassPlace) Screen.on(() -> window.place("class").orElseThrow());
        Screen.run(() -> place.prepare(sample.set(), sample.roster()));
        Screen.run(() -> place.give(sample.set(), sample.folder()));
        Screen.until(() -> window.page().text("class-result").orElse("").length() > 100);
        Screen.run(() -> window.page().type("class-paper-code", "L22"));
        Screen.run(() -> window.page().click("class-paper-open"));
        Screen.run(() -> window.page().type("class-paper-0-0", "133 N"));
    }

    /** Works the problem of the practice rightly, so that My work has something to show. */
    private void answer() {
        Variant variant = Screen.on(() -> window.practicePlace().problem().orElseThrow().variant());
        for (int i = 0; i < variant.answers().size(); i++) {
            int ask = i;
            Screen.run(() -> window.page().type("p1-answer-" + ask, Answers.told(variant, ask)));
        }
        Screen.run(() -> window.page().click("p1-check"));
        keeper.settle();
        Screen.frames(2);
        Screen.run(() -> window.page().click("do-next"));
        keeper.settle();
        Screen.frames(2);
    }

    private static List<Lesson> firstOfEachStrand(Library library) {
        Set<String> strands = new LinkedHashSet<>();
        return library.course().lessons().stream().filter(l -> strands.add(l.strand())).toList();
    }

    private void look(String what) {
        keeper.settle();
        Screen.frames(4);
        boolean plain = Screen.on(() -> window.page().node().getScene() == null);
        String shown = Screen.on(() -> window.page().text()) + Screen.on(this::nativeText);
        // A German zero is no fault.
        boolean german = Language.spoken() == Language.GERMAN;
        Matcher faulty = FAULTY.matcher(german ? shown.replaceAll("\\bnull\\b", "0") : shown);
        while (faulty.find()) {
            findings.add(what + ": shows " + faulty.group());
        }
        String beyond = plain ? "" : Screen.on(() -> window.page().cutOff());
        if (!beyond.isEmpty()) {
            findings.add(what + ": beyond the edge " + beyond);
        }
        String errors = plain ? "" : Screen.on(() -> window.page().seen(ERRORS));
        if (!errors.isEmpty()) {
            findings.add(what + ": says " + errors);
        }
        Screen.on(this::cut).forEach(text -> findings.add(what + ": cut " + text));
        WritableImage image = Screen.on(() -> window.scene().snapshot(null));
        if (colours(image) < LEAST_COLOURS) {
            findings.add(what + ": a blank picture");
        }
    }

    /** Colours of the middle of a picture, where the page is. */
    private static int colours(WritableImage image) {
        PixelReader pixels = image.getPixelReader();
        Set<Integer> seen = new HashSet<>();
        int left = (int) image.getWidth() * 2 / 5;
        for (int y = (int) image.getHeight() / 3; y < image.getHeight() - 4; y += 2) {
            for (int x = left; x < image.getWidth() - 20; x += 2) {
                seen.add(pixels.getArgb(x, y));
            }
        }
        return seen.size();
    }

    private String nativeText() {
        StringBuilder text = new StringBuilder();
        for (Node node : all(window.scene().getRoot())) {
            text.append(node instanceof Labeled label ? label.getText() + "\n" : "");
        }
        return text.toString().replaceAll("(?m)^null$", "");
    }

    /** Labels and buttons around the page that show less than they say. */
    private List<String> cut() {
        List<String> list = new ArrayList<>();
        for (Node node : all(window.scene().getRoot())) {
            if (node instanceof Text text
                    && node.getParent() instanceof Labeled label
                    && label.getText() != null
                    && seen(label)
                    && !text.getText().equals(label.getText())) {
                list.add(label.getText());
            }
            if (node instanceof TextField field && seen(field)) {
                cutPrompt(field).ifPresent(list::add);
            }
        }
        return list;
    }

    private static Optional<String> cutPrompt(TextField field) {
        double room = field.getWidth() - field.getInsets().getLeft() - field.getInsets().getRight();
        return all(field).stream()
                .filter(node -> node instanceof Text text && node.isVisible())
                .map(node -> (Text) node)
                .filter(text -> text.getText().equals(field.getPromptText()))
                .filter(text -> text.getLayoutBounds().getWidth() > room)
                .map(Text::getText)
                .findFirst();
    }

    /** Not behind a fold. */
    private static boolean seen(Node node) {
        for (Node above = node; above != null; above = above.getParent()) {
            if (!above.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private static List<Node> all(Node node) {
        List<Node> list = new ArrayList<>(List.of(node));
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> list.addAll(all(child)));
        }
        return list;
    }
}

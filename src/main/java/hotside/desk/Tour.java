// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Lesson;
import hotside.page.CalculatorState;
import hotside.page.ProblemState;
import hotside.problem.Answers;
import hotside.problem.Variant;
import hotside.relation.Slot;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;

/**
 * The tour: the real screens, drawn into memory, driven through the main job. A lesson is opened, a
 * calculator moved, a problem drawn, answered wrongly and then rightly; pictures and a log are left
 * behind.
 */
public final class Tour {
    /** How much is shown. */
    public enum Length {
        /** One lesson. */
        FIRST,
        /** Every place, and the head of every lesson. */
        PLACES,
        /** Every lesson from top to bottom too. */
        WHOLE
    }

    private static final int SETTLED = 6;

    /** The last one is the course, because glossary, skill map and search stand there. */
    private static final List<String> PLACES =
            List.of("practice", "mywork", "cell", "logs", "relations", "class", "help", "course");

    private final Path folder;
    private final Length length;
    private final List<String> log = new ArrayList<>();
    private DeskWindow window;
    private RecordKeeper keeper;
    private int pictures;

    private Tour(Path folder, Length length) {
        this.folder = folder;
        this.length = length;
    }

    /**
     * Takes the tour.
     *
     * @param folder where pictures and log go; made if need be
     * @param length how much of it
     * @param out where it is told what was done
     * @return the exit code, 0
     */
    public static int guide(Path folder, Length length, PrintWriter out) {
        Headless.install();
        NoNetwork.install();
        try {
            Files.createDirectories(folder);
            Path data = Files.createTempDirectory("hotside-tour-record");
            try {
                new Tour(folder, length).take(data);
            } finally {
                delete(data);
            }
            out.println(Files.readString(folder.resolve("tour.txt")));
            out.println("Pictures and log: " + folder.toAbsolutePath());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.flush();
        Platform.exit();
        return 0;
    }

    private void take(Path data) throws IOException {
        Library library = Libraries.read();
        Screen.start();
        AtomicLong seed = new AtomicLong();
        keeper = RecordKeeper.open(data, Platform::runLater);
        Stage stage =
                Screen.on(
                        () -> {
                            window =
                                    new DeskWindow(
                                            library,
                                            Settings.USUAL,
                                            keeper,
                                            seed::incrementAndGet,
                                            data.resolve("page"),
                                            address -> {});
                            Stage shown = new Stage();
                            shown.setScene(window.scene());
                            shown.show();
                            window.page().node().requestFocus();
                            return shown;
                        });
        Screen.until(() -> window.page().ready().isDone());
        empty();
        mainJob(library);
        if (length != Length.FIRST) {
            places(library, data);
        }
        Screen.run(stage::close);
        keeper.close();
        write("tour.txt", String.join("\n", log) + "\n");
    }

    private void places(Library library, Path data) throws IOException {
        looks();
        german(library);
        relation();
        plainText();
        practice();
        testCell();
        runLogs();
        theClass(library, data);
        everyPlace();
        everyLesson(library);
    }

    private void mainJob(Library library) throws IOException {
        Lesson lesson =
                library.course().lessons().stream()
                        .filter(l -> l.id().startsWith("gate/"))
                        .findFirst()
                        .orElse(library.course().lessons().get(0));
        open(lesson);
        picture("lesson");
        CalculatorState before =
                Screen.on(() -> window.lessonPlace().calculator("c1").orElseThrow());
        String slot = before.over().orElse(before.relation().inputs().get(0)).name();
        double moved = before.values().number(slot) * 1.1;
        String typed =
                Screen.on(
                        () ->
                                hotside.page.CalculatorCard.fieldText(
                                        before.with(slot, moved),
                                        before.relation().slot(slot).orElseThrow()));
        Screen.run(
                () -> {
                    window.page().reveal("c1");
                    window.page().type("c1-" + slot, typed);
                    window.page().click("c1-working");
                });
        note(
                "Moved the calculator \""
                        + before.relation().title()
                        + "\": "
                        + slot
                        + " = "
                        + typed
                        + "; it shows: "
                        + Screen.on(() -> window.page().text("c1-out").orElse("")));
        picture("calculator");
        List<Slot> inputs = before.relation().inputs();
        Screen.run(
                () ->
                        window.page()
                                .reveal("c1-" + inputs.get(Math.max(0, inputs.size() - 2)).name()));
        picture("calculator-curve");
        problem();
    }

    private void problem() throws IOException {
        ProblemState fresh = Screen.on(() -> window.lessonPlace().problem("p1").orElseThrow());
        Variant variant = fresh.variant();
        note(
                "Drew the problem \""
                        + variant.template().title()
                        + "\" from seed "
                        + variant.seed()
                        + ".");
        Variant.Slipped slip = variant.slips().get(0);
        String wrong = Answers.told(variant, slip.ask(), slip.value());
        answer(slip.ask(), wrong);
        note("Answered " + wrong + ". Verdict: " + verdict(slip.ask()));
        Screen.run(() -> window.page().reveal("p1"));
        picture("answered-wrongly");
        Screen.run(() -> window.page().click("p1-hint"));
        for (int ask = 0; ask < variant.answers().size(); ask++) {
            answer(ask, Answers.told(variant, ask));
        }
        note("Answered " + Answers.told(variant, 0) + ". Verdict: " + verdict(0));
        Screen.run(() -> window.page().reveal("p1"));
        picture("answered-rightly");
        Screen.run(
                () -> {
                    window.page().click("p1-solution");
                    window.page().reveal("p1-solution-text");
                });
        picture("worked-answer");
    }

    /** The open lesson in the other theme, at the largest text and in the other shop's units. */
    private void looks() throws IOException {
        Settings usual = Screen.on(window::settings);
        List<Settings> all =
                List.of(
                        usual.dark(true),
                        usual.percent(200),
                        usual.percent(200).dark(true),
                        usual.in(UnitSystem.US_SHOP));
        List<String> names = List.of("dark", "large-text", "large-text-dark", "us-shop");
        for (int i = 0; i < all.size(); i++) {
            Settings settings = all.get(i);
            Screen.run(() -> window.settings(settings));
            Screen.run(() -> window.page().reveal("lesson-title"));
            picture(names.get(i) + "-lesson");
            Screen.run(() -> window.page().reveal("c1"));
            picture(names.get(i) + "-calculator");
            Screen.run(() -> window.page().reveal("p1"));
            picture(names.get(i) + "-problem");
        }
        Screen.run(() -> window.settings(usual));
        note("Looked at it in the dark theme, at 200 % text and in US shop units.");
    }

    /** The first lesson and one of its problems in German, if there is a German one. */
    private void german(Library library) throws IOException {
        Lesson english = library.course().lessons().get(0);
        open(english);
        Settings usual = Screen.on(window::settings);
        speak(usual.speaking(Language.GERMAN));
        picture("german-lesson");
        Screen.run(() -> window.page().reveal("c1"));
        picture("german-calculator");
        Screen.run(
                () -> {
                    window.page().type("p1-answer-0", "1,234");
                    window.page().click("p1-check");
                    window.page().reveal("p1");
                });
        picture("german-problem");
        note("Asked in German: " + verdict(0));
        speak(usual);
    }

    /** Changes the language and waits for the words of the open lesson. */
    private void speak(Settings settings) {
        Optional<Lesson> before = Screen.on(() -> window.lessonPlace().lesson());
        Screen.run(() -> window.settings(settings));
        Screen.until(() -> !window.lessonPlace().lesson().equals(before));
    }

    /** Every place before anything was done in it. */
    private void empty() throws IOException {
        for (String place : List.of("practice", "mywork", "cell", "logs", "class")) {
            openPlace(place);
            settled();
            picture("empty-" + place);
        }
        note("Looked at the places that are still empty.");
    }

    /** Every place and page to look things up in, with what is in it by now, in every look. */
    private void everyPlace() throws IOException {
        Settings usual = Screen.on(window::settings);
        Map<String, Settings> looks = new LinkedHashMap<>();
        looks.put("", usual);
        looks.put("-dark", usual.dark(true));
        looks.put("-large-text", usual.percent(200));
        looks.put("-large-text-dark", usual.percent(200).dark(true));
        looks.put("-us-shop", usual.in(UnitSystem.US_SHOP));
        for (Map.Entry<String, Settings> look : looks.entrySet()) {
            Screen.run(() -> window.settings(look.getValue()));
            for (String place : PLACES) {
                openPlace(place);
                settled();
                Screen.run(() -> window.page().turnTo(0));
                picture("place-" + place + look.getKey());
            }
            for (String tool : List.of("glossary", "skills")) {
                Screen.run(() -> ((Button) window.scene().lookup("#open-" + tool)).fire());
                picture(tool + look.getKey());
            }
            search("wastegate");
            picture("search" + look.getKey());
            search("sauerkraut");
            picture("search-nothing" + look.getKey());
        }
        Screen.run(() -> window.settings(usual));
        note("Looked at every place, glossary, skill map and search in every look.");
    }

    private void search(String words) {
        Screen.run(
                () -> {
                    TextField field = (TextField) window.scene().lookup("#search-course");
                    field.setText(words);
                    field.fireEvent(new ActionEvent());
                    field.clear();
                });
    }

    /** The page of a relation, found by its name. */
    private void relation() throws IOException {
        Screen.run(() -> window.openRelation("crack-pressure"));
        picture("relation");
        Screen.run(() -> window.page().reveal("c1"));
        picture("relation-calculator");
        note("Looked up a relation.");
    }

    /** The page of keys and licences; a lesson in native controls. */
    private void plainText() throws IOException {
        openPlace(HelpPlace.ID);
        everyScreen("help", 2);
        openPlace("course");
        Screen.run(() -> window.plain(true));
        picture("plain-text");
        Screen.run(() -> window.plainView().focus("p1-answer-0"));
        picture("plain-text-problem");
        Screen.run(() -> window.plain(false));
        note("Read the keys, and the lesson in plain text.");
    }

    /** A comparison in the test cell, from the prediction to the truth. */
    private void testCell() throws IOException {
        openPlace("cell");
        picture("cell-empty");
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("rig", "eight-vented-bleed");
        fields.put("a", "pipe-76");
        fields.put("b", "pipe-102");
        fields.put("way-power", "rises");
        fields.put("size-power", "12 kW");
        fields.put("way-boost", "stays");
        fields.put("way-turbine-inlet", "falls");
        fields.put("way-turbine-outlet", "falls");
        fields.put("order", "AB BA AB BA");
        fields.put("warm-up", "1");
        fill("cell", fields);
        Screen.run(() -> window.page().click("cell-run"));
        Screen.until(() -> window.page().text("cell-result").orElse("").length() > 100);
        everyScreen("cell-pulls");
        fill("cell", Map.of("gain", "6 to 12 kW", "part", "-1 to 5 kW", "claim", "cannot-tell"));
        Screen.run(() -> window.page().click("cell-judge"));
        Screen.until(() -> window.page().text("cell-judged").orElse("").length() > 100);
        Screen.run(() -> window.page().reveal("cell-judged"));
        picture("cell-judged");
        note("Compared two pipes in the test cell: " + text("cell-judged"));
    }

    /** A set worked and handed in by a class, and what came of it. */
    private void theClass(Library library, Path data) throws IOException {
        openPlace("class");
        fill("class", Map.of("title", "Gates, week 3", "skill", "gate", "count", "6"));
        Screen.run(() -> window.page().click("class-choose"));
        Screen.run(() -> window.page().click("class-preview-3"));
        everyScreen("class-compose");
        SampleClass sample = SampleClass.handedIn(data.resolve("class"), library.bank());
        ClassPlace place = (ClassPlace) Screen.on(() -> window.place("class").orElseThrow());
        Screen.run(() -> place.work(sample.set(), "L99"));
        Screen.until(() -> window.page().text("set-0").isPresent());
        everyScreen("class-work");
        Screen.run(() -> place.prepare(sample.set(), sample.roster()));
        fill("class", Map.of("paper-code", "L22"));
        Screen.run(() -> window.page().click("class-paper-open"));
        Screen.until(() -> window.page().value("class-paper-0-0").isPresent());
        fill("class", Map.of("paper-0-0", "133 N", "paper-1-0", "12,5"));
        everyScreen("class-paper");
        Screen.run(() -> window.page().click("class-paper-store"));
        Screen.run(() -> place.give(sample.set(), sample.folder()));
        Screen.until(() -> window.page().text("class-result").orElse("").length() > 100);
        everyScreen("class-result");
        note("Marked a class: " + text("class-result").replaceFirst("(?s)\\..*", "."));
    }

    /** The sample logs, compared. */
    private void runLogs() throws IOException {
        openPlace("logs");
        picture("logs-empty");
        Screen.run(() -> window.page().click("logs-sample"));
        Screen.until(() -> window.page().text("logs-files").orElse("").contains("pull-6"));
        fill(
                "logs",
                Map.of(
                        "band",
                        "4000 to 6000",
                        "worth",
                        "2.2 kW/kPa",
                        "displacement",
                        "4.6 L",
                        "smooth",
                        "7"));
        Screen.run(() -> window.page().click("logs-compare"));
        Screen.until(() -> window.page().text("logs-result").orElse("").length() > 100);
        everyScreen("logs");
        note("Compared the sample logs.");
        Settings usual = Screen.on(window::settings);
        Screen.run(() -> window.settings(usual.percent(200).dark(true)));
        Screen.until(() -> window.page().text("logs-result").orElse("").length() > 100);
        everyScreen("logs-large-dark", length == Length.WHOLE ? Integer.MAX_VALUE : 3);
        Screen.run(() -> window.settings(usual));
    }

    private void openPlace(String id) {
        Screen.run(() -> window.open(window.place(id).orElseThrow()));
    }

    private void fill(String part, Map<String, String> fields) {
        fields.forEach(
                (name, value) -> Screen.run(() -> window.page().type(part + "-" + name, value)));
    }

    private String text(String id) {
        return Screen.on(() -> window.page().text(id).orElse(""));
    }

    /** The page from top to bottom, a screenful a picture. */
    private void everyScreen(String name) throws IOException {
        everyScreen(name, Integer.MAX_VALUE);
    }

    private void everyScreen(String name, int most) throws IOException {
        int screens = Math.min(most, Screen.on(() -> window.page().screenfuls()));
        for (int i = 0; i < screens; i++) {
            int screen = i;
            Screen.run(() -> window.page().turnTo(screen));
            picture(name + "-" + (i + 1));
        }
    }

    /** Practice, a mock test and what is kept of it all. */
    private void practice() throws IOException {
        Screen.run(() -> window.open(window.practicePlace()));
        settled();
        looksOf("practice", "practice-title");
        Screen.run(() -> window.page().click("do-alone"));
        settled();
        for (int problem = 0; problem < 3; problem++) {
            ProblemState state = Screen.on(() -> window.practicePlace().problem().orElseThrow());
            for (int ask = 0; ask < state.variant().answers().size(); ask++) {
                Variant variant = state.variant();
                int index = ask;
                Screen.run(
                        () ->
                                window.page()
                                        .type("p1-answer-" + index, Answers.told(variant, index)));
            }
            Screen.run(() -> window.page().click("p1-check"));
            settled();
            settled();
            if (problem == 0) {
                picture("practice-solved");
            }
            note(
                    "Practised \""
                            + state.variant().template().title()
                            + "\": "
                            + Screen.on(() -> window.page().text("practice-after").orElse("")));
            Screen.run(() -> window.page().click("do-next"));
            settled();
            note(
                    "Next, because: "
                            + Screen.on(() -> window.page().text("practice-why").orElse("")));
        }
        Screen.run(() -> window.page().click("do-test"));
        settled();
        picture("test");
        Screen.run(() -> window.page().click("do-hand-in"));
        settled();
        picture("test-over");
        Screen.run(() -> window.page().click("do-next"));
        settled();
        Screen.run(() -> window.open(window.myWorkPlace()));
        settled();
        settled();
        looksOf("my-work", "page");
        int screens = Screen.on(() -> window.page().screenfuls());
        for (int i = 1; i < screens; i++) {
            int screen = i;
            Screen.run(() -> window.page().turnTo(screen));
            picture("my-work-" + (i + 1));
        }
        note("Looked at the work done, in " + screens + " screens.");
    }

    /** Waits for the record's thread, then for the screen. */
    private void settled() {
        keeper.settle();
        Screen.frames(SETTLED);
    }

    /** What is open now, light and dark, and at the largest text. */
    private void looksOf(String name, String top) throws IOException {
        Settings usual = Screen.on(window::settings);
        List<Settings> all = List.of(usual, usual.dark(true), usual.percent(200));
        List<String> names = List.of(name, name + "-dark", name + "-large-text");
        for (int i = 0; i < all.size(); i++) {
            Settings settings = all.get(i);
            Screen.run(() -> window.settings(settings));
            settled();
            Screen.run(() -> window.page().reveal(top));
            picture(names.get(i));
        }
        Screen.run(() -> window.settings(usual));
        settled();
    }

    /** Every lesson: its head, or all of it. */
    private void everyLesson(Library library) throws IOException {
        for (Lesson lesson : library.course().lessons()) {
            open(lesson);
            everyScreen(
                    lesson.id().replace('/', '-'), length == Length.WHOLE ? Integer.MAX_VALUE : 1);
            note("Read \"" + lesson.title() + "\".");
        }
    }

    private void open(Lesson lesson) {
        Screen.run(() -> window.open(lesson));
        note("Opened the lesson \"" + lesson.title() + "\".");
    }

    private void answer(int ask, String text) {
        Screen.run(
                () -> {
                    window.page().type("p1-answer-" + ask, text);
                    window.page().click("p1-check");
                });
        Screen.until(() -> !window.page().text("p1-verdict-" + ask).orElse("").isEmpty());
        keeper.settle();
        Screen.frames(1);
    }

    private String verdict(int ask) {
        return Screen.on(() -> window.page().text("p1-verdict-" + ask).orElse(""));
    }

    private void note(String line) {
        log.add(line.replaceAll("\\s+", " "));
    }

    private void picture(String name) throws IOException {
        Screen.frames(SETTLED);
        String cutOff = Screen.on(() -> window.page().cutOff());
        if (!cutOff.isEmpty()) {
            note("Wider than the window in " + name + ": " + cutOff);
        }
        WritableImage image = Screen.on(() -> window.scene().snapshot(null));
        Pictures.write(image, folder.resolve(String.format("%02d-%s.png", ++pictures, name)));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }
}

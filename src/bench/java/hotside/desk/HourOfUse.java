// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.bench.Failures;
import hotside.bench.Samples;
import hotside.bench.Scratch;
import hotside.course.Lesson;
import hotside.page.CalculatorState;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;

/**
 * What a person does in an hour, without the thinking between: an action every two seconds, in all
 * places. Tells how long places take to open, how long a slider's step keeps the screen busy, and
 * what memory is left in use.
 */
public final class HourOfUse {
    /** An action every two seconds. */
    public static final int ACTIONS = 1_800;

    private static final int SLIDER_STEPS = 12;

    /** Places and the id of the title that shows that one stands open. */
    private static final Map<String, String> TITLES = new LinkedHashMap<>();

    static {
        TITLES.put("practice", "practice-title");
        TITLES.put("mywork", "mywork-title");
        TITLES.put("cell", "place-title");
        TITLES.put("logs", "place-title");
        TITLES.put("relations", "lesson-title");
        TITLES.put("class", "place-title");
        TITLES.put("help", "help-title");
        TITLES.put("course", "lesson-title");
    }

    private final DeskWindow window;
    private final List<Double> openings = new ArrayList<>();
    private final List<Double> slides = new ArrayList<>();
    private int actions;

    private HourOfUse(DeskWindow window) {
        this.window = window;
    }

    public static void main(String[] args) throws IOException {
        Failures.endTheRun();
        Headless.install();
        NoNetwork.install();
        try (Scratch scratch = new Scratch()) {
            Library library = Libraries.read();
            Screen.start();
            AtomicLong seed = new AtomicLong();
            OpenDesk desk = OpenDesk.fresh(library, scratch.folder(), seed::incrementAndGet);
            Screen.run(() -> desk.window().openAtStart(Optional.empty()));
            new HourOfUse(desk.window()).use(library.course().lessons());
            desk.close();
        }
        Platform.exit();
    }

    private void use(List<Lesson> lessons) throws IOException {
        for (String place : TITLES.keySet()) {
            visit(place);
        }
        openings.clear(); // how long the first time takes is told by the start
        slides.clear();
        for (int round = 0; actions < ACTIONS; round++) {
            read(lessons.get(round % lessons.size()));
            for (String place : TITLES.keySet()) {
                visit(place);
            }
        }
        tell("hour-memory", Memory.residentMegabytes());
        told("hour-opening", openings);
        told("hour-slide", slides);
    }

    private static void told(String what, List<Double> times) {
        double[] all = times.stream().mapToDouble(Double::doubleValue).toArray();
        tell(what + "-median", Samples.median(all));
        tell(what + "-most", Samples.share(all, 0.95));
    }

    private static void tell(String name, double value) {
        System.out.println(name + " " + value);
    }

    /** Opens a place and waits until it stands there. */
    private void visit(String id) {
        Place place = Screen.on(() -> window.place(id).orElseThrow());
        long start = System.nanoTime();
        Screen.run(() -> window.open(place));
        Screen.until(() -> window.page().element(TITLES.get(id)).isPresent());
        openings.add((System.nanoTime() - start) / 1e6);
        actions++;
        switch (id) {
            case "practice" -> answer("p1");
            case "relations" -> slide();
            case "cell" -> type("cell-rig", "four-return-spring");
            default -> {}
        }
    }

    /**
     * Reads a lesson: moves its first calculator, and answers its first problem until it is told.
     */
    private void read(Lesson lesson) {
        Screen.run(() -> window.open(lesson));
        Screen.frames(1);
        actions++;
        slide();
        answer("p1");
    }

    private void slide() {
        Optional<CalculatorState> card = Screen.on(() -> window.lessonPlace().calculator("c1"));
        if (card.isEmpty() || card.get().over().isEmpty()) {
            return;
        }
        String slider = "c1-" + card.get().over().get().name() + "-slider";
        for (int i = 1; i <= SLIDER_STEPS; i++) {
            String at = String.valueOf(i * 60);
            slides.add(
                    Screen.on(
                            () -> {
                                long start = System.nanoTime();
                                window.page().type(slider, at);
                                return (System.nanoTime() - start) / 1e6;
                            }));
            Screen.frames(1);
        }
        actions++;
    }

    private void answer(String card) {
        type(card + "-answer-0", "1");
        for (String action : List.of("check", "hint", "solution", "another")) {
            Screen.run(() -> window.page().click(card + "-" + action));
            Screen.frames(1);
            actions++;
        }
    }

    private void type(String field, String value) {
        Screen.run(() -> window.page().type(field, value));
        Screen.frames(1);
        actions++;
    }
}

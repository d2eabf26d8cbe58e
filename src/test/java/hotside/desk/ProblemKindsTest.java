// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentReader;
import hotside.course.Lesson;
import hotside.course.LessonReader;
import hotside.page.ProblemState;
import hotside.page.ReadingCursor;
import hotside.problem.Answers;
import hotside.problem.Lettered;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;

/** Choosing, ordering and measuring in the real window, by mouse and keyboard. */
class ProblemKindsTest {
    private final FxRobot robot = new FxRobot();
    private DeskWindow window;
    private OpenDesk desk;

    @TempDir private Path data;

    @BeforeEach
    void openTheDesk() {
        NoNetwork.install();
        Screen.start();
        desk = OpenDesk.fresh(Libraries.read(), data, () -> 3);
        window = desk.window();
    }

    @AfterEach
    void close() {
        robot.release(new KeyCode[0]);
        desk.close();
    }

    @Test
    void anOptionIsTakenByMouseAndChecked() {
        open("what-back-pressure-does");
        String right = Answers.key(state().variant(), 0);
        String wrong = right.equals("A") ? "B" : "A";

        click("p1-option-" + wrong);
        check();
        assertTrue(verdict().startsWith("Not yet."), verdict());
        click("p1-option-" + right);
        check();
        assertTrue(verdict().startsWith("Right."), verdict());
    }

    @Test
    void optionsAreMovedThroughAndCheckedByKeys() {
        open("what-back-pressure-does");
        Screen.run(() -> window.page().focus("p1-option-A"));
        robot.push(KeyCode.SPACE);
        Screen.until(() -> state().typed().get(0).equals("A"));
        robot.push(KeyCode.DOWN);
        Screen.until(() -> state().typed().get(0).equals("B"));
        robot.push(KeyCode.ENTER);
        Screen.until(() -> !verdict().isEmpty());
    }

    @Test
    void severalOptionsAreTicked() {
        open("what-a-spring-can-promise");
        for (Lettered option : state().variant().lettered()) {
            click("p1-option-" + option.letter());
        }
        for (Lettered option : state().variant().lettered()) {
            if (!option.right()) {
                click("p1-option-" + option.letter());
            }
        }
        assertEquals(Answers.key(state().variant(), 0), state().typed().get(0));
        check();
        assertTrue(verdict().startsWith("Right."), verdict());
    }

    @Test
    void itemsAreMovedWithTheirButtons() {
        open("what-the-narrow-pipe-starts");
        List<String> right = List.of(Answers.key(state().variant(), 0).split(" "));
        for (int i = 0; i < right.size(); i++) {
            while (!state().typed().get(0).split(" ")[i].equals(right.get(i))) {
                click("p1-" + right.get(i) + "-up");
            }
        }
        check();
        assertTrue(verdict().startsWith("Right."), verdict());
    }

    @Test
    void aPlaceIsMeasuredWithTheArrowKeysAndTaken() {
        open("when-boost-arrives");
        click("p1-svg");
        Screen.until(() -> !Double.isNaN(state().cursor()));
        double target =
                state().variant()
                        .template()
                        .asks()
                        .get(0)
                        .siScale()
                        .fromSi(
                                state().variant().answers().get(0).value(),
                                hotside.unit.Quantity.ROTATION,
                                100e3);
        ReadingCursor line = ReadingCursor.of(state().variant(), 680).orElseThrow();
        double step = line.moved(line.middle(), 1) - line.middle();
        int presses = (int) Math.round((target - state().cursor()) / step);
        for (int i = 0; i < Math.abs(presses); i++) {
            robot.push(presses > 0 ? KeyCode.RIGHT : KeyCode.LEFT);
        }
        Screen.until(() -> Math.abs(state().cursor() - target) <= step);
        robot.push(KeyCode.ENTER);
        Screen.until(() -> window.page().value("p1-answer-0").orElse("").endsWith("rev/min"));
        check();
        assertTrue(verdict().startsWith("Right."), verdict());
    }

    @Test
    void aHeightIsMeasuredUpAndDown() {
        open("power-off-the-sheet");
        click("p1-svg");
        Screen.until(() -> !Double.isNaN(state().cursor()));
        double before = state().cursor();
        robot.push(KeyCode.UP);
        Screen.until(() -> state().cursor() > before);
        robot.push(KeyCode.DOWN);
        robot.push(KeyCode.DOWN);
        Screen.until(() -> state().cursor() < before);
        robot.push(KeyCode.ENTER);
        Screen.until(() -> window.page().value("p1-answer-0").orElse("").endsWith("kW"));
    }

    @Test
    void aFaultIsChosenUnderItsCharts() {
        open("engine-or-instrument");
        click("p1-option-" + Answers.key(state().variant(), 0));
        check();
        assertTrue(verdict().startsWith("Right."), verdict());
        click("p1-another");
        Screen.until(() -> verdict().isEmpty());
        assertEquals("", state().typed().get(0));
    }

    private ProblemState state() {
        return seen(() -> window.lessonPlace().problem("p1").orElseThrow());
    }

    private String verdict() {
        return seen(() -> window.page().text("p1-verdict-0").orElse(""));
    }

    /** Conditions that are waited for ask on the screen's own thread. */
    private static <T> T seen(Callable<T> what) {
        try {
            return Platform.isFxApplicationThread() ? what.call() : Screen.on(what);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private void check() {
        Screen.run(() -> window.page().replace("p1-verdict-0", ""));
        click("p1-check");
        Screen.until(() -> !verdict().isEmpty());
    }

    private void click(String id) {
        Screen.run(() -> window.page().reveal(id));
        Screen.frames(2);
        Point2D middle =
                Screen.on(
                        () -> {
                            double[] box = window.page().bounds(id).orElseThrow();
                            return window.page()
                                    .node()
                                    .localToScreen(
                                            box[0] + box[2] / 2,
                                            box[1] + Math.min(box[3], 200) / 2);
                        });
        robot.clickOn(middle.getX(), middle.getY());
        Screen.frames(2);
    }

    private void open(String problem) {
        ContentFile file =
                ContentReader.read(
                        "09-kinds/01-kinds.md",
                        """
                        ---
                        title: Kinds of problem
                        strand: Kinds
                        skills: kinds.none
                        minutes: 1
                        sources: none
                        ---
                        Work this.

                        ```problem %s
                        ```
                        """
                                .formatted(problem));
        Lesson lesson =
                LessonReader.read(file)
                        .orElseThrow(() -> new AssertionError(file.findings().list()));
        Screen.run(() -> window.open(lesson));
        Screen.until(() -> window.page().text().contains("Kinds of problem"));
        Screen.frames(4);
    }
}

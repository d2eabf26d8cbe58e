// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.ProblemState;
import hotside.problem.Answers;
import java.nio.file.Path;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;

/** Practice and My work through the real window, by mouse and keyboard. */
class PracticeWindowTest {
    private static Library library;

    private final FxRobot robot = new FxRobot();
    private OpenDesk desk;
    private DeskWindow window;
    private RecordKeeper keeper;

    @TempDir private Path data;

    @BeforeAll
    static void startTheToolkit() {
        NoNetwork.install();
        Screen.start();
        library = Libraries.read();
    }

    @AfterEach
    void closeTheWindow() {
        robot.release(new KeyCode[0]);
        desk.close();
    }

    @Test
    void aProblemIsPractisedFoundInMyWorkAndDeleted() {
        open();
        robot.clickOn("#place-practice");
        Screen.until(() -> window.practicePlace().problem().isPresent());
        Screen.until(() -> window.page().text().contains("Why this one:"));
        ProblemState state = Screen.on(() -> window.practicePlace().problem().orElseThrow());
        int asks = state.variant().answers().size();
        for (int ask = 0; ask < asks; ask++) {
            type("p1-answer-" + ask, Answers.told(state.variant(), ask));
        }
        robot.push(KeyCode.ENTER);
        Screen.until(() -> window.page().text("practice-after").orElse("").startsWith("Solved."));

        robot.clickOn("#place-mywork");
        String title = state.variant().template().title();
        Screen.until(() -> window.page().text().contains("What I did"));
        assertTrue(Screen.on(() -> window.page().text()).contains(title));
        assertEquals(asks, Screen.on(() -> window.myWorkPlace().view().orElseThrow().answers()));

        FakeChooser chooser = new FakeChooser();
        chooser.yes = true;
        Screen.run(
                () -> {
                    window.consent(chooser);
                    window.page().click("do-delete");
                });
        Screen.until(() -> window.page().text().contains("The record is deleted."));
        assertTrue(Screen.on(() -> window.page().text()).contains("Nothing is here yet."));
    }

    private void type(String field, String text) {
        Screen.run(() -> window.page().reveal(field));
        Screen.frames(2);
        Point2D middle =
                Screen.on(
                        () -> {
                            double[] box = window.page().bounds(field).orElseThrow();
                            return window.page()
                                    .node()
                                    .localToScreen(box[0] + box[2] / 2, box[1] + box[3] / 2);
                        });
        robot.clickOn(middle.getX(), middle.getY());
        robot.write(text);
        Screen.until(() -> window.page().value(field).orElse("").equals(text));
    }

    private void open() {
        desk = OpenDesk.open(library, data, record -> record.remembered("lesson"));
        window = desk.window();
        keeper = desk.keeper();
    }
}

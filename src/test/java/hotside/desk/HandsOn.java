// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;

/** Tests that use a real desk by mouse and keyboard, with a record that outlives the window. */
abstract class HandsOn {
    static Library library;

    final FxRobot robot = new FxRobot();
    DeskWindow window;
    RecordKeeper keeper;

    @TempDir Path data;
    private OpenDesk desk;

    @BeforeAll
    static void startTheToolkit() {
        NoNetwork.install();
        Screen.start();
        library = Libraries.read();
    }

    @AfterEach
    void letGo() {
        robot.release(new KeyCode[0]);
        close();
    }

    /** Opens the desk where the record left it. */
    void open() {
        open(record -> record.remembered("lesson"));
    }

    /** Opens the desk at a lesson. */
    void open(Function<RecordKeeper, Optional<String>> lesson) {
        desk = OpenDesk.open(library, data, lesson);
        window = desk.window();
        keeper = desk.keeper();
    }

    void close() {
        if (desk != null) {
            desk.close();
            desk = null;
        }
    }

    /** Presses keys together and waits until what they did is kept and painted. */
    void key(KeyCode... keys) {
        robot.push(keys);
        keeper.settle();
        Screen.frames(2);
    }

    Node focused() {
        return window.scene().getFocusOwner();
    }

    /** Clicks into the middle of an element of the page that is in sight. */
    void clickInPage(String id) {
        Point2D middle =
                Screen.on(
                        () -> {
                            double[] box = window.page().bounds(id).orElseThrow();
                            return window.page()
                                    .node()
                                    .localToScreen(box[0] + box[2] / 2, box[1] + box[3] / 2);
                        });
        robot.clickOn(middle.getX(), middle.getY());
    }
}

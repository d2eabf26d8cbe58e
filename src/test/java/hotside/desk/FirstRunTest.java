// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.GivePage;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first minute in an empty home: no questions, a lesson, and places that say what to do. */
class FirstRunTest {
    @TempDir private Path data;

    private DeskWindow window;
    private RecordKeeper keeper;

    @Test
    void theFirstLessonStandsThereAndEmptyPlacesSayWhatToDo() {
        NoNetwork.install();
        Screen.start();
        Library library = Libraries.read();
        OpenDesk desk = OpenDesk.open(library, data, record -> record.remembered("lesson"));
        window = desk.window();
        keeper = desk.keeper();
        assertEquals(1, Screen.on(() -> Window.getWindows().size()), "nothing asks anything");
        assertEquals(
                Optional.of(library.course().lessons().get(0).title()),
                Screen.on(() -> window.page().text("lesson-title")));

        place("practice");
        assertTrue(has("do-next"), "a problem waits, chosen already");
        place("mywork");
        assertTrue(has("do-practise"));
        place("logs");
        assertTrue(text("logs-sample").contains("invented"));
        assertTrue(text("logs-files").contains("Open one pull of each part"));
        place("cell");
        assertTrue(has("cell-run"));
        place("class");
        assertTrue(text("class-sample").contains("invented"));

        Screen.run(() -> window.page().click("class-sample"));
        Screen.until(() -> window.page().text("class-result").orElse("").length() > 100);
        assertTrue(text(GivePage.SET).contains("(invented)"), text(GivePage.SET));
        desk.close();
    }

    private void place(String id) {
        Screen.run(() -> window.open(window.place(id).orElseThrow()));
        for (int i = 0; i < 2; i++) {
            keeper.settle();
            Screen.frames(2);
        }
    }

    private boolean has(String id) {
        return Screen.on(() -> window.page().element(id).isPresent());
    }

    private String text(String id) {
        return Screen.on(() -> window.page().text(id).orElse(""));
    }
}

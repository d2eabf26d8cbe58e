// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.course.Lesson;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages are found again where they were left. */
class BookmarksTest {
    private static final double A_PIXEL = 1;

    private static Library library;

    @TempDir private Path data;

    private OpenDesk desk;
    private DeskWindow window;
    private List<Lesson> lessons;

    @BeforeAll
    static void startTheToolkit() {
        NoNetwork.install();
        Screen.start();
        library = Libraries.read();
    }

    @BeforeEach
    void open() {
        lessons = library.course().lessons();
        desk = OpenDesk.open(library, data, keeper -> Optional.empty());
        window = desk.window();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aLessonIsFoundWhereItWasLeftForAnotherPlace() {
        double left = scrollToScreen(3);
        place("cell");
        assertEquals(0, scrolled());
        place("course");
        assertEquals(left, scrolled(), A_PIXEL);
    }

    @Test
    void eachLessonHasAPlaceOfItsOwn() {
        double first = scrollToScreen(2);
        lesson(1);
        assertEquals(0, scrolled());
        double second = scrollToScreen(1);
        lesson(0);
        assertEquals(first, scrolled(), A_PIXEL);
        place("logs");
        lesson(1);
        assertEquals(second, scrolled(), A_PIXEL);
    }

    @Test
    void theOpenLessonChosenAgainBeginsAtItsTop() {
        scrollToScreen(2);
        lesson(0);
        assertEquals(0, scrolled());
    }

    /** What is read from the record comes later than the turn of the page. */
    @Test
    void myWorkIsFoundWhereItWasLeft() {
        place("mywork");
        Screen.run(() -> window.settings(window.settings().percent(200)));
        settled();
        double left = scrollToScreen(1);
        place("relations");
        place("mywork");
        settled();
        assertEquals(left, scrolled(), A_PIXEL);
    }

    @Test
    void largerTextStaysAtTheSameShareOfThePage() {
        scrollToScreen(3);
        double share = share();
        assertTrue(share > 0.05, () -> "share " + share);
        Screen.run(() -> window.settings(window.settings().percent(200)));
        Screen.frames(4);
        assertEquals(share, share(), 0.01);
        Screen.run(() -> window.settings(window.settings().dark(true)));
        assertEquals(share, share(), 0.01);
    }

    /** The record is asked twice: who there is, then what was done. */
    private void settled() {
        for (int i = 0; i < 2; i++) {
            desk.keeper().settle();
            Screen.frames(2);
        }
    }

    private double share() {
        return Screen.on(() -> window.page().scrolled() / window.page().length());
    }

    private double scrollToScreen(int screen) {
        Screen.run(() -> window.page().turnTo(screen));
        double at = scrolled();
        assertTrue(at > 0, "the page is long enough to be scrolled");
        return at;
    }

    private double scrolled() {
        return Screen.on(() -> window.page().scrolled());
    }

    private void place(String id) {
        Screen.run(() -> window.open(window.place(id).orElseThrow()));
    }

    private void lesson(int index) {
        Screen.run(() -> window.open(lessons.get(index)));
    }
}

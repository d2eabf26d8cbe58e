// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.HelpPage;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.web.WebView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The desk without a mouse. */
class KeyboardTest extends HandsOn {
    private static final int MOST_LINKS = 200;
    private static final String LESSON = "gate/what-opens-a-wastegate";

    @BeforeEach
    void openTheLesson() {
        open(record -> Optional.of(LESSON));
    }

    @Test
    void f6GoesRoundBarOutlineAndPageAndLeavesTheWebViewBothWays() {
        assertTrue(focused() instanceof WebView);
        key(KeyCode.F6);
        assertEquals("place-course", focused().getId());
        key(KeyCode.F6);
        assertEquals("lesson-" + LESSON.replace('/', '-'), focused().getId());
        key(KeyCode.F6);
        assertTrue(focused() instanceof WebView);
        key(KeyCode.SHIFT, KeyCode.F6);
        assertEquals("lesson-" + LESSON.replace('/', '-'), focused().getId());
    }

    @Test
    void f1ShowsEveryKeyOfTheTable() {
        key(KeyCode.F1);
        String text = Screen.on(() -> window.page().text());
        List<HelpPage.Key> rows = window.shortcuts().rows();
        for (HelpPage.Key row : rows) {
            assertTrue(text.contains(row.shown() + row.says()), row.shown());
        }
    }

    @Test
    void noTwoShortcutsShareAKey() {
        Set<KeyCombination> seen = new HashSet<>();
        window.shortcuts()
                .table()
                .forEach(
                        shortcut ->
                                shortcut.keys()
                                        .forEach(
                                                key ->
                                                        assertTrue(
                                                                seen.add(key),
                                                                key.getDisplayText())));
    }

    @Test
    void placesLessonsSizeThemeUnitsAndSearchAreUnderKeys() {
        key(KeyCode.CONTROL, KeyCode.DIGIT4);
        assertTrue(((ToggleButton) window.scene().lookup("#place-cell")).isSelected());
        key(KeyCode.CONTROL, KeyCode.F);
        assertEquals("search-course", focused().getId());
        key(KeyCode.ALT, KeyCode.RIGHT);
        String next =
                library.course()
                        .after(library.course().find(LESSON).orElseThrow())
                        .orElseThrow()
                        .id();
        assertEquals(next, Screen.on(() -> window.lessonPlace().lesson().orElseThrow().id()));
        key(KeyCode.ALT, KeyCode.LEFT);
        assertEquals(LESSON, Screen.on(() -> window.lessonPlace().lesson().orElseThrow().id()));
        key(KeyCode.CONTROL, KeyCode.PLUS);
        key(KeyCode.CONTROL, KeyCode.EQUALS);
        key(KeyCode.CONTROL, KeyCode.MINUS);
        key(KeyCode.CONTROL, KeyCode.D);
        key(KeyCode.CONTROL, KeyCode.U);
        assertEquals(new Settings(UnitSystem.US_SHOP, true, 120), Screen.on(window::settings));
        key(KeyCode.CONTROL, KeyCode.DIGIT6);
        key(KeyCode.CONTROL, KeyCode.F);
        assertEquals("search-relations", focused().getId());
    }

    @Test
    void theDeskOpensInThePlaceThatWasLeft() {
        key(KeyCode.CONTROL, KeyCode.DIGIT3);
        key(KeyCode.F1);
        close();
        openTheLesson();
        assertTrue(((ToggleButton) window.scene().lookup("#place-mywork")).isSelected());
    }

    /** WCAG 2.2, 2.5.8: 24 pixels each way. */
    @Test
    void everyTargetIsLargeEnough() {
        for (Node node : all(window.scene().getRoot())) {
            if (node instanceof ButtonBase || node instanceof TextField) {
                Bounds box = node.getLayoutBounds();
                assertTrue(
                        box.getWidth() >= 24 && box.getHeight() >= 24,
                        node.getId() + " " + box.getWidth() + " x " + box.getHeight());
            }
        }
        assertEquals("", Screen.on(() -> window.page().smallTargets()), LESSON);
        for (String id : List.of("practice", "mywork", "cell", "logs", "relations", "class")) {
            Screen.run(() -> window.open(window.place(id).orElseThrow()));
            keeper.settle();
            Screen.frames(3);
            assertEquals("", Screen.on(() -> window.page().smallTargets()), id);
        }
    }

    /**
     * Tab alone comes to every control of every place, which is seen and has a ring then, and goes
     * on out of the page at its end (WCAG 2.2: 2.1.1, 2.1.2, 2.4.7, 2.4.11).
     */
    @Test
    void tabComesToEveryControlOfEveryPlaceAndOutAgain() {
        for (String id :
                List.of(
                        "course",
                        "practice",
                        "mywork",
                        "cell",
                        "logs",
                        "relations",
                        "class",
                        "help")) {
            walk(id);
        }
    }

    private void walk(String id) {
        Screen.run(() -> window.open(window.place(id).orElseThrow()));
        for (int i = 0; i < 2; i++) {
            keeper.settle();
            Screen.frames(3);
        }
        Set<String> wanted = new LinkedHashSet<>(Screen.on(() -> window.page().stops()));
        Set<String> seen = new LinkedHashSet<>();
        Screen.run(() -> window.page().node().requestFocus());
        int most = 40 + 3 * wanted.size() + MOST_LINKS;
        for (int i = 0; i < most && focused() instanceof WebView; i++) {
            robot.push(KeyCode.TAB);
            Screen.frames(1);
            String at = Screen.on(() -> window.page().withKeyboard());
            if (focused() instanceof WebView && !at.isEmpty()) {
                assertFalse(at.endsWith(" without a ring"), at);
                assertFalse(at.endsWith(" out of sight"), at);
                seen.add(at);
            }
        }
        wanted.removeAll(seen);
        assertEquals(Set.of(), wanted, () -> "reached " + seen);
        assertFalse(focused() instanceof WebView, () -> "caught in " + id + " at " + seen);
    }

    /** A focused button or field of the bar has an edge in the colour of focus. */
    @Test
    void focusIsSeen() {
        for (String id : List.of("#place-practice", "#theme-dark", "#search-course")) {
            Screen.run(() -> window.scene().lookup(id).requestFocus());
            Screen.frames(2);
            javafx.scene.layout.Region region =
                    (javafx.scene.layout.Region) window.scene().lookup(id);
            assertEquals(
                    javafx.scene.paint.Color.web("#b4480f"),
                    region.getBorder().getStrokes().get(0).getTopStroke(),
                    id);
        }
    }

    private static List<Node> all(Node node) {
        List<Node> list = new ArrayList<>(List.of(node));
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> list.addAll(all(child)));
        }
        return list;
    }
}

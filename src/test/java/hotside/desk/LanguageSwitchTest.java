// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.speech.Language;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The language of the desk is changed in the real window, and remembered. */
class LanguageSwitchTest {
    @TempDir private static Path data;
    private static RecordKeeper keeper;
    private static DeskWindow window;
    private static OpenDesk desk;

    @BeforeAll
    static void openTheDesk() throws Exception {
        Screen.start();
        desk = OpenDesk.fresh(Libraries.read(), data, () -> 1L);
        keeper = desk.keeper();
        window = desk.window();
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
        Language.speak(Language.ENGLISH);
    }

    private static String title() {
        return Screen.on(LanguageSwitchTest::shown);
    }

    /** On the screen's thread. */
    private static String shown() {
        return window.lessonPlace().lesson().orElseThrow().title();
    }

    private static void press(String button) {
        Screen.run(() -> ((ToggleButton) window.scene().lookup(button)).fire());
    }

    private static String label(String button) {
        return Screen.on(() -> ((ToggleButton) window.scene().lookup(button)).getText());
    }

    private static String tool(String button) {
        return ((Button) window.scene().lookup(button)).getText();
    }

    @Test
    void aPersonChangesTheLanguageThereAndBack() {
        Screen.run(() -> window.openAtStart(Optional.of("ground/hot-cold-thin-dense")));
        String english = title();
        press("#language-de");
        Screen.until(() -> !shown().equals(english));
        assertEquals("Heiß, kalt, dünn und dicht", title());
        assertEquals("Kurs", label("#place-course"));
        assertEquals(Optional.of("de"), keeper.remembered("language"));
        assertEquals(Language.GERMAN, keeper.settings().language());
        assertTrue(Screen.on(() -> window.page().text()).contains("Platz für ein Kilogramm"));

        Screen.until(() -> tool("#open-glossary").equals("Glossar"));
        Screen.run(() -> ((Button) window.scene().lookup("#open-glossary")).fire());
        String glossary = Screen.on(() -> window.page().text());
        assertTrue(glossary.contains("Abgaskrümmer"), glossary);
        assertFalse(glossary.contains("exhaust manifold"), glossary);
        assertEquals("de", Screen.on(() -> window.page().root("lang")));
        press("#language-en");
        Screen.until(() -> shown().equals("Glossary"));
        press("#language-de");
        Screen.until(() -> shown().equals("Glossar"));
        Screen.run(() -> window.openAtStart(Optional.of("ground/hot-cold-thin-dense")));

        Screen.run(() -> window.openRelation("humid-air"));
        assertEquals("Was ein Kubikmeter Luft wiegt", title());
        press("#language-en");
        assertEquals("What a cubic metre of air weighs", title());
        assertEquals("Course", label("#place-course"));
        press("#place-course");
        Screen.until(() -> shown().equals(english));
    }
}

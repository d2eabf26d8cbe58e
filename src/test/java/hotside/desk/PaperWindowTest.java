// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.PaperPage;
import hotside.classroom.Regrader;
import hotside.classroom.SetFile;
import hotside.problem.Answers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;

/** Papers typed in through the real window by keyboard alone, on the page and in plain text. */
class PaperWindowTest {
    private static Library library;

    private final FxRobot robot = new FxRobot();
    private OpenDesk desk;
    private DeskWindow window;
    private SetFile set;

    @TempDir private Path data;

    @BeforeAll
    static void startTheToolkit() {
        NoNetwork.install();
        Screen.start();
        library = Libraries.read();
    }

    @BeforeEach
    void handOut() throws IOException {
        SampleClass sample = SampleClass.handedIn(data.resolve("sample"), library.bank());
        set = SetFile.read(sample.set());
        Files.writeString(
                data.resolve("class.csv"),
                "learner_id,display_name,group\r\nL50,Asta,\r\nL51,Bo,\r\n");
        open();
    }

    @AfterEach
    void close() {
        robot.release(new KeyCode[0]);
        if (desk != null) {
            desk.close();
            desk = null;
        }
    }

    private void open() {
        desk = OpenDesk.open(library, data.resolve("record"), record -> Optional.empty());
        window = desk.window();
        Screen.run(
                () -> {
                    ClassPlace place = (ClassPlace) window.place("class").orElseThrow();
                    window.open(place);
                    place.prepare(data.resolve("sample").resolve("sample" + SetFile.ENDING), csv());
                });
        Screen.frames(3);
    }

    private Path csv() {
        return data.resolve("class.csv");
    }

    private String key(String learner, int slot) {
        return Answers.key(new Regrader(set.set(), library.bank()).variant(learner, slot), 0);
    }

    private String code(String learner) {
        return set.set().paperCode(learner);
    }

    private String shown(String id) {
        return window.page().text(id).orElse("");
    }

    private void press(KeyCode... keys) {
        robot.push(keys);
        Screen.frames(2);
    }

    private String focusedInPage() {
        return Screen.on(() -> window.page().focusedId());
    }

    @Test
    void aPaperIsTypedInByKeysAloneAndIsThereAgainAfterTheWindowWasClosedHalfWay() {
        Screen.run(() -> window.page().node().requestFocus());
        Screen.run(() -> window.page().focus(PaperPage.CODE_FIELD));
        Screen.frames(2);
        robot.write(code("L50").toLowerCase(java.util.Locale.ROOT).replace("-", ""));
        press(KeyCode.ENTER);
        Screen.until(() -> shown(PaperPage.SHEET).contains("Asta"));
        assertEquals("class-paper-0-0", focusedInPage());
        String first = key("L50", 0);
        robot.write(first);
        press(KeyCode.ENTER);
        Screen.until(() -> shown("class-paper-0-0-read").equals("Read as " + first + "."));
        assertEquals(secondField(), focusedInPage(), "Enter goes on");
        robot.write("7");
        Screen.frames(2);
        close();
        open();
        Screen.until(() -> shown(PaperPage.LIST).contains("Asta"));
        Screen.run(() -> window.page().click("class-paper-again-L50"));
        Screen.until(() -> shown(PaperPage.SHEET).contains("Asta"));
        assertEquals(first, value("class-paper-0-0"));
        assertEquals("7", value(secondField()));
        press(KeyCode.CONTROL, KeyCode.ENTER);
        Screen.until(() -> shown(PaperPage.TOLD).startsWith("Stored: Asta (L50), 2 of"));
        assertEquals(PaperPage.CODE_FIELD, focusedInPage());
        assertEquals("", value(PaperPage.CODE_FIELD));
    }

    /** Id of the second field: the first problem's second question, or the second problem. */
    private String secondField() {
        boolean asksMore = Screen.on(() -> window.page().value("class-paper-0-1").isPresent());
        return asksMore ? "class-paper-0-1" : "class-paper-1-0";
    }

    private String value(String id) {
        return Screen.on(() -> window.page().value(id).orElse("?"));
    }

    @Test
    void inPlainTextTheSameKeysDoTheSame() {
        Screen.run(() -> window.plain(true));
        Screen.frames(2);
        type("plain-" + PaperPage.CODE_FIELD, code("L51"));
        press(KeyCode.ENTER);
        Screen.until(() -> "plain-class-paper-0-0".equals(focused().getId()));
        Screen.frames(3);
        assertEquals(
                Screen.on(() -> window.page().controls()),
                Screen.on(this::plainControls),
                "as many controls as the page has");
        String first = key("L51", 0);
        type("plain-class-paper-0-0", first);
        press(KeyCode.ENTER);
        Screen.until(() -> !"plain-class-paper-0-0".equals(focused().getId()));
        assertTrue(Screen.on(() -> focused() instanceof TextField));
        Screen.until(() -> shown("class-paper-0-0-read").equals("Read as " + first + "."));
        press(KeyCode.CONTROL, KeyCode.ENTER);
        Screen.until(() -> shown(PaperPage.TOLD).startsWith("Stored: Bo (L51), 1 of"));
        Screen.until(() -> ("plain-" + PaperPage.CODE_FIELD).equals(focused().getId()));
    }

    /** Texts and links aside. */
    private long plainControls() {
        return window.scene().getRoot().lookupAll(".plain-stop").stream()
                .filter(node -> node.getId() != null && node.getId().startsWith("plain-"))
                .filter(node -> !(node instanceof Label))
                .count();
    }

    private void type(String id, String text) {
        Screen.run(
                () -> {
                    TextField field = (TextField) window.scene().lookup("#" + id);
                    field.requestFocus();
                    field.setText(text);
                });
        Screen.frames(2);
    }

    private Node focused() {
        return window.scene().getFocusOwner();
    }
}

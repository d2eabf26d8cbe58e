// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.learner.Attempt;
import hotside.learner.LearnerRecord;
import hotside.page.CalculatorState;
import hotside.physics.gate.ValveForce;
import hotside.problem.Answers;
import hotside.problem.Variant;
import hotside.unit.Numbers;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.scene.web.WebView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The main job without the page, by native controls and keyboard alone. */
class PlainViewTest extends HandsOn {
    private static final String LESSON = "gate/what-opens-a-wastegate";

    @BeforeEach
    void openTheLesson() {
        open(record -> Optional.of(LESSON));
    }

    @Test
    void aLessonIsReadACalculatorMovedAndAProblemSolvedByKeyboardAlone() {
        key(KeyCode.CONTROL, KeyCode.T);
        assertTrue(find(WebView.class).isEmpty(), "nothing is left that cannot be read out");
        assertEquals("Gate, about 40 minutes", ((Label) focused()).getText());
        key(KeyCode.DOWN);
        assertEquals("What opens a wastegate", ((Label) focused()).getText());

        moveTheCalculator();

        Variant variant =
                Screen.on(() -> window.lessonPlace().problem("p1").orElseThrow().variant());
        Variant.Slipped slip =
                variant.slips().stream()
                        .filter(s -> s.mistake().id().startsWith("gauge-as-absolute"))
                        .findFirst()
                        .orElseThrow();
        String wrong = answer(Answers.told(variant, 0, slip.value()));
        assertTrue(wrong.contains("Not yet."), wrong);
        String said = region("plain-p1-verdict-0");
        assertTrue(said.contains("Your number is what you would get if"), said);

        press("plain-p1-hint");
        Screen.until(() -> focused() instanceof Label);
        assertFalse(region("plain-p1-hints").isEmpty());

        String right = answer(Answers.told(variant, 0));
        assertTrue(right.startsWith("Right."), right);

        press("plain-p1-solution");
        Screen.until(() -> !region("plain-p1-solution-text").isEmpty());
        assertTrue(region("plain-p1-solution-text").contains(Answers.told(variant, 0)));
        assertEquals("Hide working", label("plain-p1-solution").getText());

        press("plain-p1-another");
        Screen.until(() -> "plain-p1-answer-0".equals(focused().getId()));
        assertEquals("", field("plain-p1-answer-0").getText());

        close();
        try (LearnerRecord record = LearnerRecord.open(data)) {
            List<Attempt> attempts = record.attempts();
            assertEquals(List.of(false, true), attempts.stream().map(Attempt::correct).toList());
            assertEquals(slip.mistake().id(), attempts.get(0).mistake());
        }
    }

    @Test
    void everyControlOfEveryPlaceIsThereUnderItsOwnNameAndRemembersPlainText() {
        Screen.run(() -> window.plain(true));
        for (String id : List.of("practice", "mywork", "cell", "logs", "relations", "class")) {
            Screen.run(() -> window.open(window.place(id).orElseThrow()));
            keeper.settle();
            Screen.frames(3);
            for (Node control : find(javafx.scene.control.Control.class)) {
                if (control.getStyleClass().contains("plain-stop")) {
                    String spoken =
                            control instanceof Labeled labeled
                                            && control.getAccessibleText() == null
                                    ? labeled.getText()
                                    : control.getAccessibleText();
                    assertNotNull(spoken, id + ": " + control);
                    assertFalse(spoken.isBlank(), id + ": " + control);
                }
            }
            assertEquals(
                    Screen.on(() -> window.page().controls()),
                    (long)
                            Screen.on(
                                    () ->
                                            find(javafx.scene.control.Control.class).stream()
                                                    .filter(PlainViewTest::isControl)
                                                    .count()),
                    id + ": as many controls as the page has");
        }
        close();
        openTheLesson();
        assertTrue(find(WebView.class).isEmpty());
    }

    /** Texts, folds and links aside: what is pressed, filled in or chosen. */
    private static boolean isControl(Node node) {
        return node.getId() != null
                && node.getId().startsWith("plain-")
                && node.getStyleClass().contains("plain-stop")
                && !(node instanceof Label);
    }

    private void moveTheCalculator() {
        CalculatorState before =
                Screen.on(() -> window.lessonPlace().calculator("c1").orElseThrow());
        Screen.run(() -> window.plainView().focus("c1-seatDiameter"));
        robot.push(KeyCode.CONTROL, KeyCode.A);
        robot.write("52");
        Screen.until(() -> "52".equals(field("plain-c1-seatDiameter").getText()));
        double expected =
                ValveForce.of(
                        0.052,
                        before.values().number("upstream"),
                        before.values().number("downstream"));
        String force = Numbers.significant(expected, 4) + " N";
        Screen.until(() -> region("plain-c1-out").contains(force));
        assertEquals("plain-c1-seatDiameter", focused().getId(), "the keyboard stays in the field");
        assertEquals(
                0.052,
                Screen.on(() -> window.lessonPlace().calculator("c1").orElseThrow())
                        .values()
                        .number("seatDiameter"),
                1e-12);
    }

    /** A native slider moves the calculator, its field and its result. */
    @Test
    void aSliderIsMovedByArrowKeys() {
        key(KeyCode.CONTROL, KeyCode.T);
        Screen.run(() -> find(Slider.class, "plain-c1-seatDiameter-slider").requestFocus());
        String before = field("plain-c1-seatDiameter").getText();
        String force = region("plain-c1-out");
        for (int i = 0; i < 10; i++) {
            key(KeyCode.RIGHT);
        }
        String after = field("plain-c1-seatDiameter").getText();
        assertTrue(Double.parseDouble(after) > Double.parseDouble(before), after);
        assertFalse(force.equals(region("plain-c1-out")));
        assertEquals("plain-c1-seatDiameter-slider", focused().getId());
        assertEquals(
                Double.parseDouble(after) / 1000,
                Screen.on(() -> window.lessonPlace().calculator("c1").orElseThrow())
                        .values()
                        .number("seatDiameter"),
                1e-9);
        assertEquals(
                after,
                Screen.on(() -> window.page().value("c1-seatDiameter").orElseThrow()),
                "the page follows");
    }

    /** Types an answer, presses Enter, and tells what has the keyboard then: the verdict. */
    private String answer(String text) {
        Screen.run(() -> window.plainView().focus("p1-answer-0"));
        robot.push(KeyCode.CONTROL, KeyCode.A);
        robot.write(text);
        key(KeyCode.ENTER);
        Screen.until(() -> focused() instanceof Label);
        return ((Label) focused()).getText();
    }

    private void press(String id) {
        Screen.run(() -> find(Button.class, id).requestFocus());
        key(KeyCode.SPACE);
    }

    private TextField field(String id) {
        return find(TextField.class, id);
    }

    private Labeled label(String id) {
        return find(Labeled.class, id);
    }

    private String region(String id) {
        StringBuilder text = new StringBuilder();
        for (Node node : all(find(VBox.class, id))) {
            text.append(node instanceof Label label ? label.getText() + "\n" : "");
        }
        return text.toString();
    }

    private <T extends Node> T find(Class<T> kind, String id) {
        return find(kind).stream()
                .filter(node -> id.equals(node.getId()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id));
    }

    private <T extends Node> List<T> find(Class<T> kind) {
        return all(window.scene().getRoot()).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static List<Node> all(Node node) {
        List<Node> list = new java.util.ArrayList<>(List.of(node));
        if (node instanceof javafx.scene.control.TitledPane fold) {
            list.addAll(all(fold.getContent()));
        } else if (node instanceof javafx.scene.Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> list.addAll(all(child)));
        }
        return list;
    }
}

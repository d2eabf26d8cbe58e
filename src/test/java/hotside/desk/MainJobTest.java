// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.learner.Attempt;
import hotside.learner.LearnerRecord;
import hotside.page.CalculatorState;
import hotside.physics.gate.ValveForce;
import hotside.problem.Answers;
import hotside.problem.Variant;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** The main job through the real window, by mouse and keyboard. */
class MainJobTest extends HandsOn {
    private static final String LESSON = "gate/what-opens-a-wastegate";

    @Test
    void aLessonIsReadACalculatorMovedAProblemSolvedAndNothingForgotten() {
        open();
        click("#lesson-" + LESSON.replace('/', '-'));
        Screen.until(() -> window.page().text().contains("What opens a wastegate"));

        moveTheCalculator();
        Variant variant =
                Screen.on(() -> window.lessonPlace().problem("p1").orElseThrow().variant());
        Variant.Slipped slip =
                variant.slips().stream()
                        .filter(s -> s.mistake().id().startsWith("gauge-as-absolute"))
                        .findFirst()
                        .orElseThrow();

        answer(Answers.told(variant, 0, slip.value()));
        String wrong = Screen.on(() -> window.page().text("p1-verdict-0").orElseThrow());
        assertTrue(wrong.startsWith("Not yet. Your number is what you would get if"), wrong);

        answer(Answers.told(variant, 0));
        String right = Screen.on(() -> window.page().text("p1-verdict-0").orElseThrow());
        assertTrue(right.startsWith("Right."), right);

        close();
        try (LearnerRecord record = LearnerRecord.open(data)) {
            List<Attempt> attempts = record.attempts();
            assertEquals(List.of(false, true), attempts.stream().map(Attempt::correct).toList());
            assertEquals(slip.mistake().id(), attempts.get(0).mistake());
            assertEquals(LESSON, attempts.get(0).lesson());
        }

        open();
        assertTrue(
                robot.lookup(
                                (javafx.scene.Node node) ->
                                        node instanceof javafx.scene.control.Label label
                                                && label.getText().startsWith("1 of "))
                        .tryQuery()
                        .isPresent(),
                "the outline remembers the solved problem");
        assertTrue(
                Screen.on(() -> window.page().text()).contains("What opens a wastegate"),
                "the desk opens where it was left");
    }

    @Test
    void unitsThemeAndTextSizeAreChangedFromTheBarAndRemembered() {
        open();
        click("#units-us");
        click("#theme-dark");
        click("#text-larger");
        Settings chosen = Screen.on(window::settings);
        assertEquals("dark", chosen.theme());
        assertEquals(120, chosen.percent());
        assertTrue(Screen.on(() -> window.page().text()).contains("psi"));
        close();
        open();
        assertEquals(chosen, Screen.on(window::settings));
    }

    @Test
    void aRelationIsFoundBySearching() {
        open();
        click("#place-relations");
        click("#search-relations");
        robot.write("crack");
        click("#lesson-relation-crack-pressure");
        Screen.until(() -> window.page().text().contains("Boost at which the gate begins to open"));
        assertFalse(robot.lookup("#lesson-relation-humid-air").tryQuery().isPresent());
    }

    private void moveTheCalculator() {
        CalculatorState before =
                Screen.on(() -> window.lessonPlace().calculator("c1").orElseThrow());
        assertEquals(ValveForce.RELATION, before.relation());
        Screen.run(() -> window.page().reveal("c1"));
        Screen.frames(2);
        type("c1-seatDiameter", "52");
        double upstream = before.values().number("upstream");
        double downstream = before.values().number("downstream");
        double expected = ValveForce.of(0.052, upstream, downstream);
        String shown = Screen.on(() -> window.page().text("c1-out").orElseThrow());
        assertTrue(shown.contains(hotside.unit.Numbers.significant(expected, 4) + " N"), shown);
    }

    private void answer(String text) {
        Screen.run(() -> window.page().reveal("p1"));
        Screen.frames(2);
        type("p1-answer-0", text);
        Screen.run(() -> window.page().replace("p1-verdict-0", ""));
        clickInPage("p1-check");
        Screen.until(() -> !window.page().text("p1-verdict-0").orElse("").isEmpty());
    }

    private void type(String field, String text) {
        clickInPage(field);
        robot.push(KeyCode.CONTROL, KeyCode.A);
        robot.write(text);
        Screen.until(() -> window.page().value(field).orElse("").equals(text));
    }

    private void click(String query) {
        Screen.run(() -> scrollTo(window.scene().lookup(query)));
        Screen.frames(2);
        robot.clickOn(query);
    }

    /** As a person would with the wheel. */
    private static void scrollTo(Node node) {
        for (Node above = node; above != null; above = above.getParent()) {
            if (above instanceof ScrollPane pane) {
                double beyond =
                        pane.getContent().getBoundsInLocal().getHeight()
                                - pane.getViewportBounds().getHeight();
                pane.setVvalue(node.getBoundsInParent().getMinY() / Math.max(1, beyond));
            }
        }
    }
}

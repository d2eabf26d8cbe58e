// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.ProblemState;
import hotside.problem.Answers;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Practice and My work through the real window, by mouse and keyboard. */
class PracticeWindowTest extends HandsOn {

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
        clickInPage(field);
        robot.write(text);
        Screen.until(() -> window.page().value(field).orElse("").equals(text));
    }
}

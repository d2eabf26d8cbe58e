// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.Words;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;

/**
 * Windows that tell or ask something. Their buttons speak the language of the desk; the toolkit's
 * own would speak that of the machine.
 */
final class Dialogs {
    private Dialogs() {}

    /** Tells of something that went wrong, under a heading. */
    static Alert warning(String heading, String text) {
        Alert alert =
                new Alert(
                        Alert.AlertType.WARNING,
                        text,
                        new ButtonType(Words.of("dialog.ok"), ButtonBar.ButtonData.OK_DONE));
        alert.setTitle(heading);
        alert.setHeaderText(heading);
        return alert;
    }

    /** Asks for a yes and waits for the answer. */
    static boolean yes(Alert ask) {
        return ask.showAndWait()
                .filter(button -> button.getButtonData() == ButtonBar.ButtonData.YES)
                .isPresent();
    }

    /** A question with a yes and a no. */
    static Alert question(String title, String question) {
        Alert ask =
                new Alert(
                        Alert.AlertType.CONFIRMATION,
                        question,
                        new ButtonType(Words.of("dialog.yes"), ButtonBar.ButtonData.YES),
                        new ButtonType(Words.of("dialog.no"), ButtonBar.ButtonData.NO));
        ask.setTitle(title);
        ask.setHeaderText(null);
        return ask;
    }
}

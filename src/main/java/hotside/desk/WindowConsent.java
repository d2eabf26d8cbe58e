// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import javafx.scene.Scene;
import javafx.scene.control.Alert;
import javafx.scene.layout.Region;

/** Asks in a dialog over the window. */
final class WindowConsent implements Consent {
    private final Scene scene;

    WindowConsent(Scene scene) {
        this.scene = scene;
    }

    @Override
    public boolean to(String title, String question) {
        Alert ask = Dialogs.question(title, question);
        ask.initOwner(scene.getWindow());
        ask.setHeaderText(title);
        ask.getDialogPane().setMinHeight(Region.USE_PREF_SIZE);
        return Dialogs.yes(ask);
    }
}

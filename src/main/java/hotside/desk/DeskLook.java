// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.scene.text.Font;

/** How window and page look: typeface, theme and size of text, in both alike. */
final class DeskLook {
    private static final double BASE_FONT = 14;

    /**
     * From this size of text on, what stands beside the page gets narrower, for the page's sake.
     */
    private static final int LARGE_PERCENT = 150;

    private static final String LARGE = "large";

    private final BorderPane root;

    /**
     * @param root what the scene shows
     */
    DeskLook(Scene scene, BorderPane root) {
        this.root = root;
        root.getStyleClass().add("desk");
        scene.getStylesheets()
                .add(DeskLook.class.getResource("/hotside/desk/desk.css").toExternalForm());
        font("Roboto-Regular.ttf");
        font("Roboto-Bold.ttf");
    }

    private static void font(String file) {
        Font.loadFont(
                DeskLook.class.getResourceAsStream("/com/formdev/flatlaf/fonts/roboto/" + file),
                BASE_FONT);
    }

    void wear(Settings settings, PageView view) {
        Application.setUserAgentStylesheet(
                (settings.dark() ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet());
        root.getStyleClass().removeAll("light", "dark", LARGE);
        root.getStyleClass().add(settings.theme());
        if (settings.percent() >= LARGE_PERCENT) {
            root.getStyleClass().add(LARGE);
        }
        root.setStyle("-fx-font-size: " + BASE_FONT * settings.percent() / 100 + "px;");
        view.root("lang", settings.language().code());
        view.root("data-theme", settings.theme());
        view.paper(settings.paper());
        view.root("style", "font-size:" + settings.percent() + "%");
    }
}

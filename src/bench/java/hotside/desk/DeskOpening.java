// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.bench.Failures;
import java.util.List;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.web.WebView;
import javafx.stage.Window;
import org.w3c.dom.Document;

/**
 * Opens the desk as the program does, drawn into memory, tells how far it has come and ends as soon
 * as the first lesson has been painted.
 */
public final class DeskOpening {
    /** The stages on the way, in order. */
    public static final List<String> MARKS =
            List.of("main", "toolkit", "window-shown", "page-ready", "lesson-in-page");

    /** Two frames later. */
    public static final String PAINTED = "painted";

    private static final int FRAMES = 2;

    private DeskOpening() {}

    public static void main(String[] args) throws InterruptedException {
        mark(0);
        Failures.endTheRun();
        Headless.install();
        Thread desk = new Thread(() -> DeskApplication.open(Optional.empty()), "launcher");
        desk.start();
        while (!watching()) {
            Thread.sleep(1);
        }
    }

    private static boolean watching() {
        try {
            Platform.runLater(
                    () -> {
                        mark(1);
                        new Watch().start();
                    });
            return true;
        } catch (IllegalStateException e) {
            return false; // the toolkit has not come up yet
        }
    }

    private static void mark(int index) {
        tell(MARKS.get(index));
    }

    private static void tell(String mark) {
        System.out.println(mark + " 1");
    }

    /** Looks at every frame how far the desk has come. */
    private static final class Watch extends AnimationTimer {
        private int reached = 1;
        private int frames;

        @Override
        public void handle(long now) {
            if (reached == MARKS.size() - 1) {
                if (++frames == FRAMES) {
                    tell(PAINTED);
                    Platform.exit();
                }
            } else if (has(reached + 1)) {
                mark(++reached);
                handle(now);
            }
        }

        private static boolean has(int mark) {
            return switch (mark) {
                case 2 -> Window.getWindows().stream().anyMatch(Window::isShowing);
                case 3 -> document() != null && document().getElementById("page") != null;
                default -> document().getElementById("lesson-title") != null;
            };
        }

        private static Document document() {
            return Window.getWindows().get(0).getScene().lookup("WebView") instanceof WebView view
                    ? view.getEngine().getDocument()
                    : null;
        }
    }
}

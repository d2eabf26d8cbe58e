// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Scene;

/**
 * Where each page was left since the window was opened, so that it is found again there. A page is
 * known by a name: its place, and in it the lesson.
 */
final class Bookmarks {
    /** Of the window, until the page is laid out anew. */
    private static final int PULSES = 2;

    private final PageView view;
    private final Map<String, Double> left = new HashMap<>();
    private String awaited = "";

    Bookmarks(PageView view) {
        this.view = view;
    }

    /** The page is about to be turned. */
    void leave(String page) {
        left.put(page, view.scrolled());
    }

    /** The page will be shown next, at once or when what it shows was read. */
    void await(String page) {
        awaited = page;
    }

    /** The page is shown from its top: on to where it was left, if it was awaited. */
    void shown(String page) {
        if (page.equals(awaited)) {
            Optional.ofNullable(left.get(page)).ifPresent(view::scroll);
            awaited = "";
        }
    }

    /**
     * Draws the same page in another way and stays as far down in it as one was. The page gets its
     * new width with the window's next layout, so that it is scrolled once more after that.
     */
    void keep(Runnable drawing) {
        double length = view.length();
        double share = length > 0 ? view.scrolled() / length : 0;
        drawing.run();
        if (share > 0) {
            Runnable back = () -> view.scroll(share * view.length());
            view.whenReady(back);
            afterLayout(view.node().getScene(), back);
        }
    }

    private static void afterLayout(Scene scene, Runnable action) {
        if (scene == null) {
            return;
        }
        scene.addPostLayoutPulseListener(
                new Runnable() {
                    private int pulses;

                    @Override
                    public void run() {
                        action.run();
                        if (++pulses == PULSES) {
                            scene.removePostLayoutPulseListener(this);
                        }
                    }
                });
        Platform.requestNextPulse();
    }
}

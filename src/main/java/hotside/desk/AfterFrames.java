// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import javafx.animation.AnimationTimer;

/** Does something once a page has been painted, so that it does not hold the page up. */
final class AfterFrames extends AnimationTimer {
    private final Runnable task;
    private int left;

    private AfterFrames(int frames, Runnable task) {
        this.left = frames;
        this.task = task;
    }

    /** Waits for what the page shows now, and then for so many frames. */
    static void run(int frames, PageView page, Runnable task) {
        page.whenReady(() -> new AfterFrames(frames, task).start());
    }

    @Override
    public void handle(long now) {
        if (--left == 0) {
            stop();
            task.run();
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/** Calls something on the screen's thread every few seconds, while a test with a limit runs. */
final class Ticks {
    private static final int SECONDS = 5;

    private final Executor screen;
    private final ScheduledExecutorService clock =
            Executors.newSingleThreadScheduledExecutor(
                    task -> {
                        Thread thread = new Thread(task, "ticks");
                        thread.setDaemon(true);
                        return thread;
                    });
    private ScheduledFuture<?> running;

    Ticks(Executor screen) {
        this.screen = screen;
    }

    void start(Runnable each) {
        stop();
        running =
                clock.scheduleAtFixedRate(
                        () -> screen.execute(each), SECONDS, SECONDS, TimeUnit.SECONDS);
    }

    void stop() {
        if (running != null) {
            running.cancel(false);
            running = null;
        }
    }
}

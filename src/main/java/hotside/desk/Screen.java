// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;

/** Working with the screen's thread from another one: for the tour and for tests. */
final class Screen {
    /** Long after anything sensible has happened; only a hang meets it. */
    private static final long PATIENCE_SECONDS = 60;

    private Screen() {}

    /** Starts the toolkit, once. */
    static void start() {
        try {
            CountDownLatch started = new CountDownLatch(1);
            Platform.startup(started::countDown);
            await(started);
        } catch (IllegalStateException e) {
            // It runs already, which is as good.
        }
        Platform.setImplicitExit(false);
    }

    /** Does something on the screen's thread and waits for its result. */
    static <T> T on(Callable<T> action) {
        FutureTask<T> task = new FutureTask<>(action);
        Platform.runLater(task);
        try {
            return task.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException | java.util.concurrent.TimeoutException e) {
            throw new IllegalStateException("the screen did not answer", e);
        }
    }

    /** Does something on the screen's thread and waits until it is done. */
    static void run(Runnable action) {
        on(
                () -> {
                    action.run();
                    return null;
                });
    }

    /** Waits for so many frames to be drawn. */
    static void frames(int count) {
        CountDownLatch left = new CountDownLatch(count);
        run(
                () ->
                        new AnimationTimer() {
                            @Override
                            public void handle(long now) {
                                left.countDown();
                                if (left.getCount() == 0) {
                                    stop();
                                }
                                Platform.requestNextPulse();
                            }
                        }.start());
        await(left);
    }

    /** Waits, frame by frame, until a condition holds on the screen's thread. */
    static void until(BooleanSupplier condition) {
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (!on(condition::getAsBoolean)) {
            if (System.nanoTime() > deadline) {
                throw new IllegalStateException("what was waited for did not come");
            }
            frames(1);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            if (!latch.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("the screen did not answer");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Does long work beside the screen's thread, one thing after the other. */
final class Worker {
    private static final long LONGEST_WAIT_SECONDS = 20;

    private final Executor screen;
    private final Executor thread;

    /**
     * @param screen runs tasks on the screen's thread
     */
    Worker(Executor screen) {
        this(
                screen,
                Executors.newSingleThreadExecutor(
                        task -> {
                            Thread made = new Thread(task, "work");
                            made.setDaemon(true);
                            return made;
                        }));
    }

    /**
     * @param screen runs tasks on the screen's thread
     * @param thread runs the work
     */
    Worker(Executor screen, Executor thread) {
        this.screen = screen;
        this.thread = thread;
    }

    /**
     * Does something and tells of it on the screen's thread.
     *
     * @param failed told what the work threw
     */
    <T> void run(Supplier<T> work, Consumer<T> done, Consumer<RuntimeException> failed) {
        thread.execute(
                () -> {
                    try {
                        T result = work.get();
                        screen.execute(() -> done.accept(result));
                    } catch (RuntimeException e) {
                        screen.execute(() -> failed.accept(e));
                    }
                });
    }

    /** Tells something on the screen's thread. */
    void tell(Runnable news) {
        screen.execute(news);
    }

    /**
     * Ends what was handed over, such as answers that are still on their way to their file. Nothing
     * is taken any more; work that goes on for very long is left where it is.
     */
    void finish() {
        if (thread instanceof ExecutorService service) {
            service.shutdown();
            try {
                service.awaitTermination(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}

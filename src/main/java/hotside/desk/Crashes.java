// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * Hears of everything that no other part of the program caught, on whichever thread: keeps a
 * report, tells the person once, and lets the desk go on.
 */
final class Crashes implements Thread.UncaughtExceptionHandler {
    private final Path folder;
    private final DeskLog log;
    private final Clock clock;
    private final Executor screen;
    private final Consumer<String> tell;
    private final AtomicBoolean telling = new AtomicBoolean();

    /**
     * @param folder where reports are kept
     * @param screen runs tasks on the screen's thread
     * @param tell shows the person a text and returns when it was read
     */
    Crashes(Path folder, DeskLog log, Clock clock, Executor screen, Consumer<String> tell) {
        this.folder = folder;
        this.log = log;
        this.clock = clock;
        this.screen = screen;
        this.tell = tell;
    }

    /** Hears of every thread that has no hearer of its own, the screen's among them. */
    void install() {
        Thread.setDefaultUncaughtExceptionHandler(this);
    }

    /** A task that may fail without ending what calls it again and again. */
    Runnable guarded(Runnable task) {
        return () -> {
            try {
                task.run();
            } catch (RuntimeException | Error e) {
                uncaughtException(Thread.currentThread(), e);
            }
        };
    }

    @Override
    public void uncaughtException(Thread thread, Throwable fault) {
        log.note("crash on " + thread.getName() + ": " + fault.getClass().getName());
        String text = CrashReport.text(fault, thread.getName(), clock.instant());
        String said;
        try {
            Path file = CrashReport.keep(folder, text, clock.instant());
            said = Words.of("crash.text", file.toAbsolutePath());
        } catch (IOException e) {
            said = Words.of("crash.text-unkept", folder.toAbsolutePath());
        }
        // A fault that comes again with every frame must not bury the desk under messages.
        if (telling.compareAndSet(false, true)) {
            String words = said;
            screen.execute(
                    () -> {
                        try {
                            tell.accept(words);
                        } finally {
                            telling.set(false);
                        }
                    });
        }
    }
}

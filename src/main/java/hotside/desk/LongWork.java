// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.GivePage;
import hotside.classroom.RefusedException;
import hotside.classroom.StoppedException;
import hotside.page.Html;
import hotside.page.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Work on a whole class, one thing at a time, beside the screen: told of where the page tells what
 * came of things, and stopped when the person says so.
 */
final class LongWork {
    private static final int TOLD_EVERY = 10;

    private final Page page;
    private final Worker worker;
    private final AtomicBoolean stop = new AtomicBoolean();
    private boolean busy;

    LongWork(Page page, Worker worker) {
        this.page = page;
        this.worker = worker;
    }

    /** True while something is being done. */
    boolean isBusy() {
        return busy;
    }

    /** What is being done ends where it is. */
    void stop() {
        stop.set(true);
    }

    void told(String text) {
        page.replace(GivePage.STATUS, Html.element("p", "", text));
        page.reveal(GivePage.STATUS);
    }

    /** Long work beside the screen, which can be stopped; it is told at once that it has begun. */
    <T> void atLength(Supplier<T> work, Consumer<T> done) {
        page.replace(GivePage.STATUS, GivePage.working());
        page.reveal(GivePage.STATUS);
        run(work, done);
    }

    /** The same for what is soon done. */
    <T> void run(Supplier<T> work, Consumer<T> done) {
        busy = true;
        stop.set(false);
        worker.run(
                work,
                made -> {
                    busy = false;
                    done.accept(made);
                },
                e -> {
                    busy = false;
                    if (e instanceof StoppedException) {
                        told(Words.of("class.stopped"));
                    } else if (e instanceof RefusedException || e instanceof UncheckedIOException) {
                        told(e.getMessage());
                    } else {
                        throw e;
                    }
                });
    }

    /** Tells how far it is; false once it shall stop. */
    boolean progress(int done, int all) {
        if (done % TOLD_EVERY == 0 || done == 1) {
            worker.tell(
                    () -> {
                        if (busy) {
                            page.replace(GivePage.STATUS, GivePage.progress(done, all));
                        }
                    });
        }
        return !stop.get();
    }

    /** Something that may fail as files do. */
    interface Filing {
        void run() throws IOException;
    }

    /** Writes something that takes long, and tells where. */
    void saving(Path to, Filing filing) {
        atLength(
                () -> {
                    try {
                        filing.run();
                        return to;
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                where -> told(Words.of("class.saved", where)));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.function.LongSupplier;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * A real desk in a real window with a record of its own, for tests and the bench. Where nothing
 * else is said, problems are drawn from the seeds 7, 8, 9 …
 */
record OpenDesk(Stage stage, DeskWindow window, RecordKeeper keeper) {
    private static final long BEFORE_FIRST_SEED = 6;

    /**
     * Opens it and waits until its page stands.
     *
     * @param data where the record lies
     * @param lesson which lesson to open, by what the record remembers
     */
    static OpenDesk open(
            Library library, Path data, Function<RecordKeeper, Optional<String>> lesson) {
        AtomicLong seed = new AtomicLong(BEFORE_FIRST_SEED);
        RecordKeeper keeper = RecordKeeper.open(data, Platform::runLater);
        OpenDesk desk = open(library, data, keeper, keeper.settings(), seed::incrementAndGet);
        Screen.run(() -> desk.window.openAtStart(lesson.apply(keeper)));
        Screen.frames(2);
        return desk;
    }

    /**
     * Opens it as it is on the first day, in English, with no lesson yet, and waits until its page
     * stands.
     *
     * @param data where the record lies
     * @param seeds where problems are drawn from
     */
    static OpenDesk fresh(Library library, Path data, LongSupplier seeds) {
        RecordKeeper keeper = RecordKeeper.open(data, Platform::runLater);
        return open(library, data, keeper, Settings.USUAL, seeds);
    }

    private static OpenDesk open(
            Library library,
            Path data,
            RecordKeeper keeper,
            Settings settings,
            LongSupplier seeds) {
        OpenDesk desk =
                Screen.on(
                        () -> {
                            DeskWindow window =
                                    new DeskWindow(
                                            library,
                                            settings,
                                            keeper,
                                            seeds,
                                            data.resolve("page"),
                                            address -> {});
                            Stage stage = new Stage();
                            stage.setScene(window.scene());
                            stage.show();
                            return new OpenDesk(stage, window, keeper);
                        });
        Screen.until(() -> desk.window.page().ready().isDone());
        return desk;
    }

    /** Closes window and record. */
    void close() {
        Screen.run(stage::close);
        keeper.close();
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Backups;
import hotside.learner.OwnContent;
import hotside.learner.RecordFolder;
import hotside.page.Words;
import hotside.speech.Language;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The desk as a program with a window. */
public final class DeskApplication extends Application {
    /** So many frames after the first page is there, a person can read it. */
    private static final int FIRST_FRAMES = 5;

    private final ScheduledExecutorService watcher =
            Executors.newSingleThreadScheduledExecutor(
                    task -> {
                        Thread thread = new Thread(task, "content");
                        thread.setDaemon(true);
                        return thread;
                    });

    /** The toolkit makes the application, so there is no other way to hand it something. */
    private static CompletableFuture<Early> early;

    private static Optional<Path> file = Optional.empty();

    private RecordKeeper keeper;
    private DeskWindow window;
    private DeskLog log;
    private Crashes crashes;

    /** What needs no screen, and is there before the screen is. */
    private record Early(RecordKeeper keeper, Library library) {
        static Early begin() {
            RecordKeeper keeper = RecordKeeper.open(RecordFolder.usual(), Platform::runLater);
            Language language = keeper.settings().language();
            Language.speak(language);
            Library library = Libraries.read(language);
            keeper.syllabus(library.plan());
            return new Early(keeper, library);
        }
    }

    /** For the toolkit. */
    public DeskApplication() {}

    /**
     * Opens the desk and returns when it is closed.
     *
     * @param taken a set or a hand-in to open, if there is one
     */
    public static void open(Optional<Path> taken) {
        file = taken;
        NoNetwork.install();
        early = CompletableFuture.supplyAsync(Early::begin);
        Application.launch(DeskApplication.class);
    }

    @Override
    public void start(Stage stage) {
        // The engine of the page takes long to load; what needs no screen is read meanwhile.
        PageView.warmUp();
        Path data = RecordFolder.usual();
        log = DeskLog.open(data);
        log.note("start, version " + Notices.version().orElse("not packed"));
        crashes =
                new Crashes(
                        DeskLog.folder(data),
                        log,
                        Clock.systemUTC(),
                        Platform::runLater,
                        DeskApplication::regret);
        crashes.install();
        Early ready = early.join();
        keeper = ready.keeper();
        Library library = ready.library();
        Language.speak(keeper.settings().language());
        window =
                new DeskWindow(
                        library,
                        keeper.settings(),
                        keeper,
                        new Seeds(),
                        data.resolve("page"),
                        this::leave);
        stage.setTitle(Words.of("desk.title"));
        stage.setScene(window.scene());
        stage.setMinWidth(WindowPlace.LEAST_WIDTH);
        stage.setMinHeight(WindowPlace.LEAST_HEIGHT);
        restore(stage);
        stage.show();
        window.openAtStart(keeper.remembered("lesson"));
        file.ifPresent(window::take);
        keeper.onTrouble(DeskApplication::warn);
        keeper.notice().ifPresent(DeskApplication::warn);
        keeper.offered().ifPresent(copy -> offer(copy));
        AfterFrames.run(
                FIRST_FRAMES,
                window.page(),
                () -> {
                    keeper.housekeeping();
                    watcher.execute(crashes.guarded(library::readOn));
                    watch();
                });
    }

    /** A teacher who writes sees what was saved a moment later. */
    private void watch() {
        ContentWatch own = new ContentWatch(OwnContent.folder());
        watcher.scheduleWithFixedDelay(
                crashes.guarded(
                        () -> {
                            if (own.changed()) {
                                Language language = Language.spoken();
                                Library library = Libraries.read(window.maths(), language);
                                Platform.runLater(() -> take(library, language));
                                log.note("content read again");
                            }
                        }),
                1,
                1,
                TimeUnit.SECONDS);
    }

    /** What was read for a language that is no longer spoken comes too late. */
    private void take(Library library, Language language) {
        if (language == Language.spoken()) {
            window.library(library);
        }
    }

    /** The window stands where it stood, if that is still on a screen. */
    private void restore(Stage stage) {
        Optional<WindowPlace> before =
                keeper.remembered("window")
                        .flatMap(WindowPlace::read)
                        .filter(
                                place ->
                                        place.fits(
                                                Screen.getScreens().stream()
                                                        .map(Screen::getVisualBounds)
                                                        .toList()));
        before.ifPresent(
                place -> {
                    stage.setX(place.x());
                    stage.setY(place.y());
                    stage.setWidth(place.width());
                    stage.setHeight(place.height());
                    stage.setMaximized(place.full());
                });
        stage.setOnHiding(e -> keeper.remember("window", placeOf(stage, before).text()));
    }

    /** A window that fills its screen keeps the place it had before. */
    private static WindowPlace placeOf(Stage stage, Optional<WindowPlace> before) {
        boolean full = stage.isMaximized();
        if (full && before.isPresent()) {
            WindowPlace free = before.get();
            return new WindowPlace(free.x(), free.y(), free.width(), free.height(), true);
        }
        return new WindowPlace(
                (int) stage.getX(),
                (int) stage.getY(),
                (int) stage.getWidth(),
                (int) stage.getHeight(),
                full);
    }

    @Override
    public void stop() {
        watcher.shutdownNow();
        if (window != null) {
            window.close();
        }
        if (keeper != null) {
            keeper.close();
        }
        if (log != null) {
            log.note("end");
            log.close();
        }
    }

    private static void warn(String text) {
        Dialogs.warning(Words.of("dialog.warning"), text).show();
    }

    /** Something went wrong inside the program; it goes on. */
    private static void regret(String text) {
        Dialogs.warning(Words.of("crash.title"), text).showAndWait();
    }

    /** A copy of a damaged record is there. */
    private void offer(Backups.Copy copy) {
        String question = Words.of("record.offer", copy.made(), copy.answers());
        if (new WindowConsent(window.scene()).to(Words.of("record.offer-title"), question)) {
            keeper.putBack(copy, answers -> warn(Words.of("record.put-back", answers)));
        }
    }

    private void leave(String address) {
        if (Dialogs.yes(
                Dialogs.question(
                        Words.of("desk.link.title"), Words.of("desk.link.ask", address)))) {
            getHostServices().showDocument(address);
        }
    }
}

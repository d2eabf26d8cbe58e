// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.learner.LearnerRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the program does when something goes wrong, and what it tells of it. */
class TrustTest {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    private final List<String> told = new ArrayList<>();
    private final ArrayDeque<Runnable> screen = new ArrayDeque<>();

    @TempDir private Path data;

    @Test
    void aCrashIsKeptToldOnceAndHoldsNothingThatAPersonTyped() throws IOException {
        DeskLog log = DeskLog.open(data);
        Crashes crashes = crashes(log);
        IllegalStateException cause = new IllegalStateException("answer 42 of Kim Example");
        Throwable fault = new RuntimeException("in /home/kim/record", cause);
        Runnable guarded =
                crashes.guarded(
                        () -> {
                            throw new IllegalArgumentException("Kim again");
                        });

        crashes.uncaughtException(Thread.currentThread(), fault);
        guarded.run();
        screen.poll().run();
        log.close();

        assertTrue(screen.isEmpty(), "one message at a time");
        Path report = DeskLog.folder(data).resolve("crash-20261125-120000-000.txt");
        assertEquals(2, files("crash-").size(), "the second is kept, too");
        assertEquals(1, told.size());
        assertTrue(told.get(0).contains(report.toAbsolutePath().toString()), told.get(0));
        for (Path file : files("")) {
            String text = Files.readString(file);
            assertFalse(text.contains("Kim") || text.contains("kim"), text);
            assertFalse(text.contains("42 of"), text);
        }
        String text = Files.readString(report);
        assertTrue(text.contains("java.lang.RuntimeException"), text);
        assertTrue(text.contains("caused by java.lang.IllegalStateException"), text);
        assertTrue(text.contains("at hotside.desk.TrustTest"), text);

        crashes.uncaughtException(Thread.currentThread(), fault);
        screen.poll().run();
        assertEquals(2, told.size(), "what comes after it was read is told again");
    }

    @Test
    void aFaultWhoseCausesGoInACircleIsReported() {
        IllegalStateException a = new IllegalStateException("a");
        RuntimeException b = new RuntimeException("b", a);
        a.initCause(b);
        String text = CrashReport.text(b, "work", NOON);
        assertEquals(2, text.split("Exception\n", -1).length - 1, text);
    }

    @Test
    void whereNoReportCanBeWrittenThePersonIsToldSo() throws IOException {
        Files.writeString(data.resolve("log"), "a file where the folder should be");
        DeskLog log = DeskLog.open(data);
        crashes(log).uncaughtException(Thread.currentThread(), new StackOverflowError());
        screen.poll().run();
        assertTrue(told.get(0).contains("could not be written"), told.get(0));
    }

    @Test
    void onlyTheLastReportsAreKept() throws IOException {
        for (int i = 0; i < CrashReport.KEPT + 5; i++) {
            CrashReport.keep(DeskLog.folder(data), "x", NOON.plusSeconds(i));
        }
        List<Path> kept = files("crash-");
        assertEquals(CrashReport.KEPT, kept.size());
        assertTrue(kept.get(0).endsWith("crash-20261125-120005-000.txt"), kept.toString());
    }

    @Test
    void theLogGoesOnWhereItWasAndNeverGrowsBeyondItsLimit() throws IOException {
        for (int start = 0; start < 3; start++) {
            try (DeskLog log = DeskLog.open(data, 2_000)) {
                for (int i = 0; i < 60; i++) {
                    log.note("start " + start + ", line " + i);
                }
            }
        }
        List<Path> logs = files("hotside-");
        assertEquals(DeskLog.FILES, logs.size());
        long size = 0;
        for (Path file : logs) {
            size += Files.size(file);
        }
        // The handler turns to the next file after the line that reached the limit.
        assertTrue(size <= DeskLog.FILES * 2_100, "bytes: " + size);
        assertTrue(Files.readString(logs.get(0)).contains("start 2, line 59"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "\u0000", "999", "dark;", "-1", "NaN", "no/such/lesson", "{\"a\":1}"})
    void settingsThatAreNoSettingsGiveTheUsualDesk(String garbage) {
        try (LearnerRecord record = LearnerRecord.open(data)) {
            for (String key : List.of("units", "theme", "lesson", "plain", "place", "window")) {
                record.set(key, garbage);
            }
            record.set("text", garbage.equals("999") ? "12 %" : garbage);
        }
        RecordKeeper keeper = RecordKeeper.open(data, Runnable::run);
        assertEquals(Settings.USUAL, keeper.settings());
        assertEquals(Optional.empty(), keeper.remembered("window").flatMap(WindowPlace::read));
        keeper.close();
    }

    @Test
    void aTextSizeBeyondTheLargestIsTheLargest() {
        try (LearnerRecord record = LearnerRecord.open(data)) {
            record.set("text", "999");
        }
        RecordKeeper keeper = RecordKeeper.open(data, Runnable::run);
        assertEquals(200, keeper.settings().percent());
        keeper.close();
    }

    @ParameterizedTest
    @CsvSource({
        "100 50 1280 800 free, true",
        "-1900 10 1280 800 full, true",
        "0 0 1920 1080 free, true",
        "1000 50 1280 800 free, false",
        "100 50 799 800 free, false",
        "100 900 1280 800 free, false"
    })
    void aWindowComesBackOnlyWhereItIsWhollySeen(String text, boolean fits) {
        List<Rectangle2D> screens =
                List.of(new Rectangle2D(0, 0, 1920, 1080), new Rectangle2D(-1920, 0, 1920, 1080));
        WindowPlace place = WindowPlace.read(text).orElseThrow();
        assertEquals(text, place.text());
        assertEquals(fits, place.fits(screens));
    }

    @Test
    void theListOfLibrariesIsReadAndSorted() {
        String list =
                "\nLists of 2 third-party dependencies.\n"
                        + "     (MIT) zlib (a:b:1 - https://example.org)\n"
                        + "     (Apache-2.0) Alpha (c:d:2 - https://example.org)\n";
        assertEquals(
                List.of(
                        "(Apache-2.0) Alpha (c:d:2 - https://example.org)",
                        "(MIT) zlib (a:b:1 - https://example.org)"),
                Notices.libraries(new ByteArrayInputStream(list.getBytes(StandardCharsets.UTF_8))));
        assertEquals(List.of(), Notices.libraries(null));
    }

    @Test
    void anExceptionOnTheScreensThreadAndOnAWorkerIsHeardOf() {
        Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
        Screen.start();
        DeskLog log = DeskLog.open(data);
        Crashes crashes =
                new Crashes(
                        DeskLog.folder(data),
                        log,
                        Clock.systemUTC(),
                        Platform::runLater,
                        told::add);
        try {
            crashes.install();
            Platform.runLater(
                    () -> {
                        throw new IllegalStateException("on the screen");
                    });
            Screen.until(() -> told.size() == 1);
            new Worker(Platform::runLater)
                    .run(
                            () -> {
                                throw new StackOverflowError();
                            },
                            done -> {},
                            failed -> {});
            Screen.until(() -> told.size() == 2);
        } finally {
            Thread.setDefaultUncaughtExceptionHandler(before);
            log.close();
        }
    }

    private Crashes crashes(DeskLog log) {
        return new Crashes(
                DeskLog.folder(data),
                log,
                Clock.fixed(NOON, ZoneOffset.UTC),
                screen::add,
                told::add);
    }

    private List<Path> files(String begin) throws IOException {
        try (Stream<Path> all = Files.list(DeskLog.folder(data))) {
            return all.filter(f -> f.getFileName().toString().startsWith(begin)).sorted().toList();
        }
    }
}

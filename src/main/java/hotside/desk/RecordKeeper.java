// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Attempt;
import hotside.learner.LearnerRecord;
import hotside.learner.RecordException;
import hotside.page.Words;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/** Keeps tries and settings in the learner's record, on a thread of its own. */
final class RecordKeeper implements Keeper, AutoCloseable {
    private final LearnerRecord record;
    private final Executor screen;
    private final ExecutorService worker =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "record");
                        thread.setDaemon(true);
                        return thread;
                    });
    private final Map<String, String> settings = new ConcurrentHashMap<>();
    private final Map<String, Boolean> solved = new HashMap<>();
    private final List<String> notices = new ArrayList<>();
    private Consumer<String> trouble = text -> {};

    private RecordKeeper(LearnerRecord record, Executor screen) {
        this.record = record;
        this.screen = screen;
        record.notice().ifPresent(notices::add);
        for (String key : List.of("units", "theme", "text", "lesson", RunLogsPlace.REMEMBERED)) {
            record.setting(key).ifPresent(value -> settings.put(key, value));
        }
        record.progress().forEach((problem, progress) -> solved.put(problem, progress.right() > 0));
    }

    /**
     * Opens the record of a folder. If it cannot be opened, the desk works without one and a notice
     * says so.
     *
     * @param screen runs tasks on the screen's thread
     */
    static RecordKeeper open(Path folder, Executor screen) {
        try {
            return new RecordKeeper(LearnerRecord.open(folder), screen);
        } catch (RecordException e) {
            RecordKeeper keeper = new RecordKeeper(LearnerRecord.unsaved(), screen);
            keeper.notices.add(e.getMessage());
            return keeper;
        }
    }

    /** What the person must be told at the start, if anything. */
    Optional<String> notice() {
        return notices.isEmpty() ? Optional.empty() : Optional.of(String.join("\n\n", notices));
    }

    /** Who is told, on the screen's thread, when something cannot be kept. */
    void onTrouble(Consumer<String> listener) {
        trouble = listener;
    }

    /** How the person liked the desk the last time. */
    Settings settings() {
        UnitSystem system =
                remembered("units").map(UnitSystem.US_SHOP.name()::equals).orElse(false)
                        ? UnitSystem.US_SHOP
                        : UnitSystem.SI_SHOP;
        boolean dark = remembered("theme").map("dark"::equals).orElse(false);
        int percent =
                remembered("text")
                        .filter(t -> t.matches("\\d{3}"))
                        .map(Integer::parseInt)
                        .orElse(100);
        return new Settings(system, dark, percent);
    }

    @Override
    public void keep(List<Try> tries, Runnable then) {
        List<Attempt> attempts = tries.stream().map(this::attempt).toList();
        worker.execute(
                () -> {
                    try {
                        attempts.forEach(record::add);
                    } catch (RecordException e) {
                        tell(e);
                    }
                    screen.execute(then);
                });
    }

    @Override
    public void remember(String key, String value) {
        if (value.equals(settings.put(key, value))) {
            return;
        }
        worker.execute(
                () -> {
                    try {
                        record.set(key, value);
                    } catch (RecordException e) {
                        tell(e);
                    }
                });
    }

    @Override
    public Optional<String> remembered(String key) {
        return Optional.ofNullable(settings.get(key));
    }

    @Override
    public Map<String, Boolean> solved() {
        return Map.copyOf(solved);
    }

    /** Waits until everything handed over so far is kept. */
    void settle() {
        try {
            worker.submit(() -> {}).get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (java.util.concurrent.ExecutionException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        settle();
        worker.shutdown();
        record.close();
    }

    private void tell(RecordException e) {
        screen.execute(() -> trouble.accept(Words.of("record.trouble", e.getMessage())));
    }

    private Attempt attempt(Try t) {
        return new Attempt(
                t.variant().template().id(),
                String.valueOf(t.variant().seed()),
                String.valueOf(Variants.GENERATOR_VERSION),
                t.variant().template().fingerprint(),
                t.variant().system().name().toLowerCase(Locale.ROOT),
                t.ask(),
                t.answer(),
                t.verdict().kind().name().toLowerCase(Locale.ROOT),
                t.verdict().mistake().orElse(null),
                t.verdict().kind().good(),
                t.hints(),
                t.seconds(),
                Instant.now(),
                t.where());
    }
}

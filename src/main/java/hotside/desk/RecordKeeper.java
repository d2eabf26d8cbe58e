// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Attempt;
import hotside.learner.Backups;
import hotside.learner.LearnerRecord;
import hotside.learner.Learners;
import hotside.learner.RecordException;
import hotside.learner.RecordJson;
import hotside.learner.Syllabus;
import hotside.learner.Tutor;
import hotside.page.Words;
import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import hotside.problem.Variants;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Keeps tries and settings in the learner's record, on a thread of its own, and changes the record
 * when another learner sits down.
 */
final class RecordKeeper implements TutorKeeper, RecordCare, AutoCloseable {
    private static final List<String> REMEMBERED =
            List.of(
                    "units",
                    "theme",
                    "text",
                    "language",
                    "lesson",
                    "plain",
                    "place",
                    "window",
                    Habit.REMEMBERED,
                    RunLogsPlace.REMEMBERED);

    private final Learners learners;
    private final Executor screen;
    private final ExecutorService worker =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "record");
                        thread.setDaemon(true);
                        return thread;
                    });
    private final Map<String, String> settings = new ConcurrentHashMap<>();
    private final Map<String, Boolean> solved = new ConcurrentHashMap<>();
    private final List<String> notices = new ArrayList<>();
    private final List<Attempt> waiting = new ArrayList<>();
    private Consumer<String> trouble = text -> {};

    // Touched by the worker only, once the keeper is made.
    private LearnerRecord record;
    private Tutor tutor;
    private Supplier<Syllabus> syllabus;

    private RecordKeeper(Path folder, Executor screen, Supplier<Syllabus> syllabus) {
        this.learners = new Learners(folder);
        this.screen = screen;
        this.syllabus = syllabus;
        sitAt(learners.current()).ifPresent(notices::add);
    }

    /**
     * Opens the record of whoever worked last. If it cannot be opened, the desk works without one
     * and a notice says so.
     *
     * @param folder of the person who runs the program
     * @param screen runs tasks on the screen's thread
     * @param syllabus what there is to learn; asked for once, beside the screen
     */
    static RecordKeeper open(Path folder, Executor screen, Supplier<Syllabus> syllabus) {
        return new RecordKeeper(folder, screen, syllabus);
    }

    /** With the problems that come with the program. */
    static RecordKeeper open(Path folder, Executor screen) {
        return open(folder, screen, () -> Syllabus.of(SkillMap.shipped(), ProblemBank.shipped()));
    }

    /** Opens a record, or one in memory if that fails; then the message says so. */
    private Optional<String> sitAt(Path folder) {
        try {
            sit(LearnerRecord.open(folder));
            return Optional.empty();
        } catch (RecordException e) {
            sit(LearnerRecord.unsaved());
            return Optional.of(e.getMessage());
        }
    }

    private void sit(LearnerRecord opened) {
        record = opened;
        tutor = null;
        record.notice().ifPresent(notices::add);
        settings.clear();
        solved.clear();
        for (String key : REMEMBERED) {
            record.setting(key).ifPresent(value -> settings.put(key, value));
        }
        record.progress().forEach((problem, progress) -> solved.put(problem, progress.right() > 0));
    }

    /** There is other content to learn from. */
    void syllabus(Supplier<Syllabus> other) {
        run(
                () -> {
                    syllabus = other;
                    tutor = null;
                });
    }

    private Tutor tutor() {
        if (tutor == null) {
            tutor = new Tutor(record, syllabus.get(), ZoneId.systemDefault());
        }
        return tutor;
    }

    /** What the person must be told at the start, if anything. */
    Optional<String> notice() {
        return notices.isEmpty() ? Optional.empty() : Optional.of(String.join("\n\n", notices));
    }

    /** Who is told, on the screen's thread, when something cannot be kept. */
    void onTrouble(Consumer<String> listener) {
        trouble = listener;
    }

    /**
     * What is done once a day or once a start, when nobody waits for it: old answers go, a copy is
     * kept, a wrong clock is told of.
     */
    void housekeeping() {
        run(
                () -> {
                    tutor().tidy(Instant.now());
                    record.backUp(Instant.now());
                    tutor().clockBehind(Instant.now())
                            .ifPresent(ahead -> say(Words.of("record.clock", ahead.toDays())));
                });
    }

    /** A copy that can be put in the place of a damaged record, if one was found to be so. */
    Optional<Backups.Copy> offered() {
        return record.notice().isPresent() ? record.lastGoodBackup() : Optional.empty();
    }

    /** Puts the answers of a copy back. */
    void putBack(Backups.Copy copy, Consumer<Integer> then) {
        ask(tutor -> tutor.record().putBack(copy), then);
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
        Language language =
                remembered("language")
                        .flatMap(Language::find)
                        .orElseGet(() -> Language.of(Locale.getDefault()));
        return new Settings(system, dark, percent, language);
    }

    @Override
    public void keep(List<Try> tries, Attempt.Way way, Runnable then) {
        Instant now = Instant.now();
        List<Attempt> attempts = tries.stream().map(t -> attempt(t, way, now)).toList();
        worker.execute(
                () -> {
                    waiting.addAll(attempts);
                    try {
                        while (!waiting.isEmpty()) {
                            // What failed before goes first, once there is room again.
                            tutor().add(waiting.get(0));
                            waiting.remove(0);
                        }
                    } catch (RecordException e) {
                        say(Words.of("record.trouble", e.getMessage()));
                    }
                    screen.execute(then);
                });
    }

    @Override
    public <T> void ask(Function<Tutor, T> question, Consumer<T> then) {
        run(
                () -> {
                    T answer = question.apply(tutor());
                    screen.execute(() -> then.accept(answer));
                });
    }

    @Override
    public void remember(String key, String value) {
        // The window may go after the record.
        if (!worker.isShutdown() && !value.equals(settings.put(key, value))) {
            run(() -> record.set(key, value));
        }
    }

    @Override
    public Optional<String> remembered(String key) {
        return Optional.ofNullable(settings.get(key));
    }

    @Override
    public Map<String, Boolean> solved() {
        return Map.copyOf(solved);
    }

    @Override
    public void learners(Consumer<List<Learners.Seat>> then) {
        run(
                () -> {
                    List<Learners.Seat> all = learners.all();
                    screen.execute(() -> then.accept(all));
                });
    }

    @Override
    public void turnTo(Path folder, Runnable then) {
        run(() -> change(folder, then));
    }

    @Override
    public void another(Runnable then) {
        run(() -> change(learners.another(), then));
    }

    @Override
    public void take(Path file, Consumer<Learners.Imported> then) {
        run(
                () -> {
                    Learners.Imported imported = learners.take(RecordJson.read(file));
                    change(imported.folder(), () -> then.accept(imported));
                });
    }

    @Override
    public void delete(Runnable then) {
        run(
                () -> {
                    Path folder = learners.current();
                    leave();
                    try {
                        learners.delete(folder);
                    } finally {
                        List<Learners.Seat> others = learners.all();
                        Path next = others.isEmpty() ? learners.first() : others.get(0).folder();
                        learners.current(next);
                        sitAt(next).ifPresent(this::say);
                    }
                    screen.execute(then);
                });
    }

    private void change(Path folder, Runnable then) {
        LearnerRecord opened = LearnerRecord.open(folder);
        leave();
        learners.current(folder);
        sit(opened);
        screen.execute(then);
    }

    private void leave() {
        if (tutor != null) {
            tutor.keep();
        }
        waiting.clear();
        record.close();
    }

    /** Waits until everything handed over so far is kept. */
    void settle() {
        try {
            worker.submit(() -> {}).get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        run(this::leave);
        settle();
        worker.shutdown();
    }

    private void run(Runnable task) {
        worker.execute(
                () -> {
                    try {
                        task.run();
                    } catch (RecordException e) {
                        say(e.getMessage());
                    }
                });
    }

    private void say(String text) {
        screen.execute(() -> trouble.accept(text));
    }

    private static Attempt attempt(Try t, Attempt.Way way, Instant now) {
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
                now,
                t.where().equals(Try.PRACTICE) ? null : t.where(),
                way);
    }
}

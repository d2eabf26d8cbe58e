// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Attempt;
import hotside.learner.AttemptCsv;
import hotside.learner.Learners;
import hotside.learner.RecordJson;
import hotside.learner.Tutor;
import hotside.learner.Wish;
import hotside.page.CalculatorCard;
import hotside.page.MyWorkPage;
import hotside.page.Words;
import hotside.problem.ProblemBank;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** The place where a learner sees what was done and keeps, takes along or deletes the record. */
final class MyWorkPlace implements Place {
    private static final int LEAST_DAYS = 30;

    /** Ways out of this place. */
    interface Doors {
        /** Opens the practice with a wish. */
        void practise(Wish wish);

        /** Sets the problem of an answer once more. */
        void again(Attempt attempt);

        /** Another learner sits here now. */
        void changed();
    }

    private final Page page;
    private final TutorKeeper keeper;
    private final RecordCare care;
    private MyWorkReading reading;
    private final Chooser chooser;
    private final Consent consent;
    private final Doors doors;
    private final Clock clock;
    private final Map<String, String> typed = new HashMap<>();
    private List<Learners.Seat> seats = List.of();
    private MyWorkPage.View view;

    MyWorkPlace(
            Page page,
            TutorKeeper keeper,
            RecordCare care,
            MyWorkReading reading,
            Chooser chooser,
            Consent consent,
            Doors doors,
            Clock clock) {
        this.page = page;
        this.keeper = keeper;
        this.care = care;
        this.reading = reading;
        this.chooser = chooser;
        this.consent = consent;
        this.doors = doors;
        this.clock = clock;
    }

    /** Other problems to look titles and numbers up in. */
    void content(ProblemBank bank) {
        reading = reading.of(bank);
    }

    @Override
    public String id() {
        return "mywork";
    }

    @Override
    public void open() {
        show("");
    }

    private void show(String notice) {
        care.learners(
                all -> {
                    seats = all;
                    keeper.ask(
                            tutor -> reading.of(tutor, all, clock.instant(), notice), this::draw);
                });
    }

    private void draw(MyWorkPage.View read) {
        view = read;
        typed.put("nickname", read.nickname());
        typed.put("exam", read.exam());
        typed.put("retention", String.valueOf(read.retention()));
        page.show(MyWorkPage.html(read), MyWorkPage.text(read));
        page.focus("mywork-title");
    }

    /** What it shows, for tests and the tour. */
    Optional<MyWorkPage.View> view() {
        return Optional.ofNullable(view);
    }

    @Override
    public void edit(String part, String slot, String kind, String value) {
        if (slot.equals("learner")) {
            seats.stream()
                    .filter(seat -> seat.id().equals(value))
                    .findFirst()
                    .ifPresent(seat -> care.turnTo(seat.folder(), this::changed));
        } else {
            typed.put(slot, value);
        }
    }

    @Override
    public void act(String action, String part, String argument) {
        switch (action) {
            case "practise" -> doors.practise(Wish.BEST);
            case "skill", "review" -> doors.practise(new Wish(Wish.Kind.SKILL, argument));
            case "drill" -> doors.practise(new Wish(Wish.Kind.MISTAKE, argument));
            case "again" -> again(Long.parseLong(argument));
            case "another" -> care.another(this::changed);
            case "set-nickname" -> nickname(typed.get("nickname").strip());
            case "set-exam" -> exam(typed.get("exam").strip());
            case "set-retention" -> retention(typed.get("retention").strip());
            case "save-csv" -> save("csv", MyWorkPlace::csv);
            case "save-xapi" -> save("xapi.json", this::statements);
            case "save-report" -> save("html", this::report);
            case "save-all" -> save("json", MyWorkPlace::whole);
            case "take" ->
                    chooser.files(Words.of("mywork.take")).stream()
                            .findFirst()
                            .ifPresent(file -> care.take(file, this::taken));
            case "delete" -> delete();
            default -> {}
        }
    }

    private void changed() {
        doors.changed();
        show("");
    }

    private void again(long number) {
        keeper.ask(
                tutor -> tutor.record().find(number),
                found -> found.ifPresent(stored -> doors.again(stored.attempt())));
    }

    private void nickname(String name) {
        String plain = name.replaceAll("[\\p{Cc}\\p{Cf}]", "");
        if (plain.length() > Learners.LONGEST_NICKNAME) {
            fault("nickname", Words.of("mywork.nickname-fault", Learners.LONGEST_NICKNAME));
        } else {
            set(Learners.NICKNAME, plain);
        }
    }

    private void exam(String day) {
        try {
            set(Tutor.EXAM, day.isEmpty() ? "" : LocalDate.parse(day).toString());
        } catch (DateTimeException e) {
            fault("exam", Words.of("mywork.exam-fault", day));
        }
    }

    private void retention(String days) {
        if (days.matches("\\d{1,4}") && Integer.parseInt(days) >= LEAST_DAYS) {
            keeper.ask(
                    tutor -> tutor.record().olderThan(Integer.parseInt(days), clock.instant()),
                    gone -> {
                        if (gone == 0
                                || consent.to(
                                        Words.of("mywork.forget-title"),
                                        Words.of("mywork.forget-ask", gone, days))) {
                            keepFor(days);
                        } else {
                            show("");
                        }
                    });
        } else {
            fault("retention", Words.of("mywork.retention-fault", days));
        }
    }

    private void keepFor(String days) {
        keeper.ask(
                tutor -> {
                    tutor.record().set(Tutor.RETENTION, days);
                    return tutor.tidy(clock.instant());
                },
                gone -> show(gone == 0 ? "" : Words.of("mywork.forgotten", gone)));
    }

    private void set(String key, String value) {
        keeper.ask(
                tutor -> {
                    tutor.record().set(key, value);
                    return value;
                },
                done -> show(""));
    }

    private void fault(String field, String text) {
        page.replace("mywork-" + field + "-fault", CalculatorCard.fault(text));
    }

    private void taken(Learners.Imported imported) {
        doors.changed();
        show(
                Words.of(
                        imported.newLearner() ? "mywork.taken-new" : "mywork.taken",
                        imported.answers()));
    }

    private void delete() {
        String question = Words.of("mywork.delete-ask", view.learner(), view.answers());
        if (consent.to(Words.of("mywork.delete-title"), question)) {
            care.delete(
                    () -> {
                        doors.changed();
                        show(Words.of("mywork.deleted"));
                    });
        }
    }

    /** Writes what a file holds. */
    private interface Export {
        void write(Tutor tutor, Writer out) throws IOException;
    }

    private static void csv(Tutor tutor, Writer out) throws IOException {
        AttemptCsv.write(tutor.record().attempts(), out);
    }

    private static void whole(Tutor tutor, Writer out) throws IOException {
        RecordJson.write(tutor.record(), out);
    }

    private void statements(Tutor tutor, Writer out) throws IOException {
        reading.statements(tutor).write(tutor.record().attempts(), out);
    }

    private void report(Tutor tutor, Writer out) throws IOException {
        out.write(MyWorkPage.report(view));
    }

    private void save(String ending, Export export) {
        Optional<Path> file =
                chooser.save(Words.of("mywork.save"), "hotside-" + view.learner() + "." + ending);
        Function<Path, Function<Tutor, String>> written = to -> tutor -> written(to, tutor, export);
        Consumer<String> told = this::show;
        file.ifPresent(to -> keeper.ask(written.apply(to), told));
    }

    /** Written aside, then moved: the file is whole or as it was. */
    private static String written(Path file, Tutor tutor, Export export) {
        Path aside = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (Writer out = Files.newBufferedWriter(aside, StandardCharsets.UTF_8)) {
                export.write(tutor, out);
            }
            Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
            return Words.of("mywork.saved", file);
        } catch (IOException e) {
            return Words.of("mywork.not-saved", file, e);
        } finally {
            aside.toFile().delete();
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.ClassResult;
import hotside.classroom.GivePage;
import hotside.classroom.HandPage;
import hotside.classroom.HandPoints;
import hotside.classroom.Marking;
import hotside.classroom.PaperAnswers;
import hotside.classroom.Papers;
import hotside.classroom.ProblemSet;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.classroom.SetFile;
import hotside.classroom.SigningKey;
import hotside.classroom.Statements;
import hotside.classroom.TeachAgain;
import hotside.page.Html;
import hotside.page.Maths;
import hotside.page.Words;
import hotside.problem.ProblemBank;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Marks what a class handed in, keeps points set by hand, and saves what came of it. */
final class ClassMarking {
    private final Page page;
    private final LongWork work;
    private final Chooser chooser;
    private final Open open;
    private final PaperTyping typing;
    private final Map<String, String> typed;
    private final Maths maths;
    private final Path kept;
    private final Clock clock;
    private Optional<Marking.Result> worked = Optional.empty();
    private Optional<ClassResult> result = Optional.empty();

    /** What is open in the class's place. */
    interface Open {
        Optional<SetFile> set();

        Optional<Roster> roster();

        ProblemBank bank();

        /** The key that signs sets. */
        SigningKey key() throws IOException;

        /** What its page shows. */
        GivePage.State state();
    }

    /**
     * @param typed what stands in the fields of the page; those of points set by hand are its own
     * @param kept where points set by hand are kept
     */
    ClassMarking(
            Page page,
            LongWork work,
            Chooser chooser,
            Open open,
            PaperTyping typing,
            Map<String, String> typed,
            Maths maths,
            Path kept,
            Clock clock) {
        this.page = page;
        this.work = work;
        this.chooser = chooser;
        this.open = open;
        this.typing = typing;
        this.typed = typed;
        this.maths = maths;
        this.kept = kept;
        this.clock = clock;
    }

    Optional<ClassResult> result() {
        return result;
    }

    /** Another set was opened, whose work is not marked yet. */
    void forget() {
        result = Optional.empty();
        typed.keySet().removeAll(HandPage.FIELDS);
        page.replace(GivePage.RESULT, "");
    }

    void mark() {
        if (open.set().isEmpty()) {
            work.told(Words.of("class.mark-need"));
            return;
        }
        chooser.folder(Words.of("class.mark")).ifPresent(this::mark);
    }

    void markPaper() {
        if (open.set().isEmpty()) {
            work.told(Words.of("class.mark-need"));
        } else if (!Files.exists(typing.file(open.set().get().set()))) {
            work.told(Words.of("class.paper-none-typed"));
        } else {
            mark(Optional.empty());
        }
    }

    /** Marks a folder of work on the open set, and what was typed in from paper. */
    void mark(Path folder) {
        mark(Optional.of(folder));
    }

    private void mark(Optional<Path> folder) {
        Regrader regrader = new Regrader(open.set().get().set(), open.bank());
        Marking marking =
                new Marking(
                        open.set().get(),
                        regrader,
                        open.roster(),
                        "true".equals(typed.get("accept-late")));
        Path paper = typing.file(open.set().get().set());
        Path byHand = byHand();
        Optional<Roster> all = open.roster();
        work.atLength(
                () -> {
                    try {
                        Marking.Result taken =
                                folder.isEmpty()
                                        ? new Marking.Result(List.of(), List.of())
                                        : marking.mark(Marking.files(folder.get()), work::progress);
                        List<String> told = new ArrayList<>();
                        if (Files.exists(paper)) {
                            PaperAnswers answers = PaperAnswers.read(paper, regrader, all);
                            answers.findings().forEach(f -> told.add(f.oneLine()));
                            taken = answers.join(taken, regrader, clock.instant());
                        }
                        return marked(regrader, all, taken, byHand, told);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                this::marked);
    }

    /** What came of marking, before and after points set by hand, and what else is to be told. */
    private record Marked(Marking.Result worked, ClassResult result, List<String> told) {}

    private static Marked marked(
            Regrader regrader,
            Optional<Roster> roster,
            Marking.Result worked,
            Path byHand,
            List<String> told)
            throws IOException {
        HandPoints points = new HandPoints();
        if (Files.exists(byHand)) {
            points = HandPoints.read(byHand, regrader.set());
            points.findings().forEach(f -> told.add(f.oneLine()));
        }
        points.idle(worked).forEach(learner -> told.add(Words.of("class.hand-idle", learner)));
        return new Marked(
                worked, new ClassResult(regrader, roster, points.on(worked)), List.copyOf(told));
    }

    private void marked(Marked made) {
        shown(made);
        page.reveal(GivePage.RESULT);
    }

    private void shown(Marked made) {
        worked = Optional.of(made.worked);
        result = Optional.of(made.result);
        if (made.result.of(typed.getOrDefault(HandPage.LEARNER, "")).isEmpty()) {
            typed.remove(HandPage.LEARNER);
        }
        page.replace(
                GivePage.STATUS,
                made.told.stream()
                        .map(told -> Html.element("p", "", told))
                        .collect(Collectors.joining()));
        page.replace(GivePage.RESULT, GivePage.result(open.state()));
    }

    /** Where points set by hand are kept, whether there are any or not. */
    private Path byHand() {
        ProblemSet its = open.set().orElseThrow().set();
        return kept.resolve(its.id() + "-" + its.edition() + "-points.csv");
    }

    void pick(String argument) {
        String[] parts = argument.split("-", 3);
        typed.put(HandPage.SLOT, parts[0]);
        typed.put(HandPage.LEARNER, parts[2]);
        typed.put(HandPage.POINTS, "");
        typed.put(HandPage.REASON, "");
        page.replace(HandPage.PLACE, HandPage.html(result.orElseThrow(), typed));
        page.focus("class-" + HandPage.POINTS);
    }

    /** Sets the points that the form says, or takes them back; the marks follow at once. */
    void setByHand(boolean sets) {
        ClassResult made = result.orElseThrow();
        String learner = typed.getOrDefault(HandPage.LEARNER, made.marked().get(0).learner());
        int slot = Integer.parseInt(typed.getOrDefault(HandPage.SLOT, "0"));
        Path file = byHand();
        ProblemSet of = made.regrader().set();
        String reason = typed.getOrDefault(HandPage.REASON, "");
        try {
            Optional<Double> points =
                    sets
                            ? Optional.of(
                                    HandPoints.points(
                                            typed.getOrDefault(HandPage.POINTS, ""),
                                            of.items().get(slot).points()))
                            : Optional.empty();
            HandPoints.set(file, of, learner, slot, points, reason, clock.instant());
        } catch (IOException | IllegalArgumentException e) {
            page.replace(HandPage.TOLD, Html.element("p", "", e.getMessage()));
            return;
        }
        Optional<Roster> all = open.roster();
        Marking.Result before = worked.orElseThrow();
        work.run(
                () -> {
                    try {
                        return marked(made.regrader(), all, before, file, new ArrayList<>());
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                after -> {
                    typed.put(HandPage.POINTS, "");
                    typed.put(HandPage.REASON, "");
                    shown(after);
                    page.replace(
                            HandPage.TOLD,
                            Html.element(
                                    "p",
                                    "",
                                    Words.of(
                                            sets ? "class.hand-done" : "class.hand-undone",
                                            learner,
                                            slot + 1,
                                            file)));
                    page.reveal(HandPage.PLACE);
                });
    }

    void saveTables() {
        if (result.isPresent()) {
            ClassResult made = result.get();
            chooser.folder(Words.of("class.save-tables"))
                    .ifPresent(folder -> work.saving(folder, () -> made.tables(folder)));
        }
    }

    void saveReports() {
        if (result.isPresent()) {
            ClassResult made = result.get();
            chooser.folder(Words.of("class.save-reports"))
                    .ifPresent(
                            folder ->
                                    work.saving(
                                            folder,
                                            () ->
                                                    new Papers(made.regrader(), maths)
                                                            .reports(
                                                                    folder,
                                                                    made,
                                                                    EnumSet.of(Papers.Form.PDF),
                                                                    work::progress)));
        }
    }

    void saveDrill() throws IOException {
        if (result.isEmpty()) {
            return;
        }
        Optional<ProblemSet> drill =
                TeachAgain.drill(result.get().again(), result.get().regrader().set(), open.bank());
        if (drill.isEmpty()) {
            work.told(Words.of("class.again-none"));
            return;
        }
        Optional<Path> file =
                chooser.save(Words.of("class.save-drill"), drill.get().id() + SetFile.ENDING);
        if (file.isPresent()) {
            SetFile.write(file.get(), drill.get(), open.key());
            work.told(Words.of("class.saved", file.get()));
        }
    }

    void saveXapi() {
        if (result.isPresent()) {
            ClassResult made = result.get();
            chooser.save(Words.of("class.save-xapi"), "statements.json")
                    .ifPresent(
                            to ->
                                    work.saving(
                                            to,
                                            () ->
                                                    Statements.write(
                                                            to, made.regrader(), made.marked())));
        }
    }
}

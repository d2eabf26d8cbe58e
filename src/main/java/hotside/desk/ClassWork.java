// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.AtWork;
import hotside.classroom.Draft;
import hotside.classroom.GivePage;
import hotside.classroom.HandIn;
import hotside.classroom.Ids;
import hotside.classroom.KnownKeys;
import hotside.classroom.ProblemSet;
import hotside.classroom.RefusedException;
import hotside.classroom.Regrader;
import hotside.classroom.SetFile;
import hotside.classroom.SigningKey;
import hotside.classroom.WorkPage;
import hotside.page.Html;
import hotside.page.Maths;
import hotside.page.ProblemState;
import hotside.page.Words;
import hotside.problem.ProblemBank;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * What a learner does in the class's place. The draft is touched by the worker alone, one thing
 * after the other; the screen keeps what its fields hold.
 */
final class ClassWork {
    private final Page page;
    private final Worker worker;
    private final Chooser chooser;
    private final Supplier<ProblemBank> bank;
    private final Path data;
    private final Clock clock;
    private final WorkPage html;
    private final Map<String, String> typed = new LinkedHashMap<>();
    private final ProblemCards cards;
    private int count;
    private Optional<SetFile> file = Optional.empty();
    private AtWork work;
    private Optional<Path> offered = Optional.empty();
    private boolean newKey;

    ClassWork(
            Page page,
            Worker worker,
            Chooser chooser,
            Supplier<ProblemBank> bank,
            Maths maths,
            Path data,
            Clock clock) {
        this.page = page;
        this.worker = worker;
        this.chooser = chooser;
        this.bank = bank;
        this.data = data;
        this.clock = clock;
        this.html = new WorkPage(maths);
        this.cards = new ProblemCards(maths, page, (made, then) -> then.run(), () -> 0, clock);
    }

    /** From now on numbers are read by a habit that others share. */
    void habit(Habit shared) {
        cards.habit(shared);
    }

    void open() {
        String shown =
                html.html(
                        typed,
                        file.map(
                                f ->
                                        new WorkPage.Open(
                                                f.set(), states(), newKey, f.key().fingerprint())));
        page.show(shown, PlainText.of(shown));
    }

    /** Every key in an answer field is kept, so that nothing typed is ever lost. */
    void edit(String part, String name, String value) {
        if (part.equals(GivePage.PART)) {
            typed.put(name, value);
            return;
        }
        slot(part)
                .ifPresent(
                        slot -> {
                            cards.edit(part, name, value);
                            keep(slot);
                        });
    }

    private List<ProblemState> states() {
        return IntStream.range(0, count).mapToObj(this::state).toList();
    }

    private ProblemState state(int slot) {
        return cards.state(WorkPage.CARD + slot).orElseThrow();
    }

    private void keep(int slot) {
        List<String> fields = state(slot).typed();
        run(
                () -> {
                    work.draft().type(slot, fields, clock.instant());
                    return slot;
                },
                done -> {});
    }

    void point(String part, double across) {
        if (cards.draws(part)) {
            cards.point(part, across);
        }
    }

    void nudge(String part, int steps) {
        if (cards.draws(part)) {
            cards.nudge(part, steps);
        }
    }

    void chartWidth(int width) {
        cards.chartWidth(width);
    }

    private Optional<Integer> slot(String part) {
        return part.matches(WorkPage.CARD + "\\d{1,2}")
                ? Optional.of(Integer.parseInt(part.substring(WorkPage.CARD.length())))
                        .filter(slot -> slot < count)
                : Optional.empty();
    }

    void act(String action, String part) {
        if (part.equals(GivePage.PART)) {
            switch (action) {
                case "open-work" -> openWork();
                case "hand-in" -> askToHandIn();
                case "hand-in-no" -> page.replace(WorkPage.HAND_IN, "");
                case "hand-in-yes" -> handIn();
                default -> {}
            }
            return;
        }
        slot(part)
                .ifPresent(
                        slot -> {
                            switch (action) {
                                case "check" -> check(slot);
                                case "hint" -> hint(slot);
                                default -> {
                                    cards.act(action, part);
                                    keep(slot);
                                }
                            }
                        });
    }

    /** Something that may fail as files do. */
    private interface Filing<T> {
        T get() throws IOException;
    }

    private <T> void run(Filing<T> filing, Consumer<T> done) {
        worker.run(
                () -> {
                    try {
                        return filing.get();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                done,
                e -> {
                    if (e instanceof RefusedException || e instanceof UncheckedIOException) {
                        told(e.getMessage());
                    } else {
                        throw e;
                    }
                });
    }

    private void told(String text) {
        page.replace(GivePage.STATUS, Html.element("p", "", text));
        page.reveal(GivePage.STATUS);
    }

    private void openWork() {
        String learner = typed.getOrDefault("learner", "").strip();
        if (!Ids.isId(learner)) {
            told(Words.of("class.id-missing"));
            return;
        }
        offered.or(() -> chooser.files(Words.of("class.open-work")).stream().findFirst())
                .ifPresent(chosen -> openSet(chosen, learner));
    }

    /** A set that was opened outside: it only wants to know whose work it will be. */
    void offer(Path set) {
        offered = Optional.of(set);
        open();
        told(Words.of("class.offered", set.getFileName()));
    }

    /** Begins or goes on with a learner's work on a set. */
    void openSet(Path chosen, String learner) {
        offered = Optional.empty();
        typed.put("learner", learner);
        run(() -> opened(chosen, learner), this::shown);
    }

    /** A set opened by the worker, before the screen knows it. */
    private record Opened(SetFile file, AtWork work, boolean newKey, List<ProblemState> cards) {}

    private Opened opened(Path chosen, String learner) throws IOException {
        SetFile opened = SetFile.read(chosen);
        Regrader regrader = new Regrader(opened.set(), bank.get());
        ProblemSet set = opened.set();
        Path draft =
                data.resolve("work")
                        .resolve(set.id() + "-" + set.edition() + "-" + learner + ".work");
        AtWork begun =
                new AtWork(
                        Files.exists(draft)
                                ? Draft.resume(draft, opened)
                                : Draft.begin(
                                        draft,
                                        opened,
                                        learner,
                                        DecimalHabit.spoken(),
                                        clock.instant()),
                        regrader);
        KnownKeys known = KnownKeys.of(data.resolve("keys").resolve("known.txt"));
        boolean first = !known.knows(opened.key());
        known.note(opened.key(), set.title());
        List<ProblemState> states = new ArrayList<>();
        for (int slot = 0; slot < set.items().size(); slot++) {
            states.add(card(begun, slot));
        }
        return new Opened(opened, begun, first, states);
    }

    private ProblemState card(AtWork begun, int slot) {
        ProblemState state = ProblemState.fresh(WorkPage.CARD + slot, begun.variant(slot));
        List<String> fields = begun.typed(slot);
        for (int ask = 0; ask < fields.size(); ask++) {
            state = fields.get(ask).isBlank() ? state : state.typed(ask, fields.get(ask));
        }
        boolean answered = begun.draft().answers(slot).isPresent();
        return (answered ? state.judged(begun.told(slot, clock.instant()), 0) : state)
                .rung(begun.rung(slot));
    }

    private void shown(Opened opened) {
        file = Optional.of(opened.file);
        work = opened.work;
        newKey = opened.newKey;
        count = opened.cards.size();
        cards.clear(GivePage.PART);
        opened.cards.forEach(cards::put);
        open();
    }

    /** What came of a check. */
    private record Checked(List<Optional<Verdict>> verdicts, OptionalInt left, boolean tells) {}

    private void check(int slot) {
        List<String> fields = state(slot).typed();
        run(
                () -> {
                    OptionalInt left = work.triesLeft(slot);
                    return left.isPresent() && left.getAsInt() == 0
                            ? Optional.<Checked>empty()
                            : Optional.of(
                                    new Checked(
                                            work.answer(slot, fields, clock.instant()),
                                            work.triesLeft(slot),
                                            work.tells(clock.instant())));
                },
                checked -> checked(slot, checked));
    }

    private void checked(int slot, Optional<Checked> checked) {
        String id = WorkPage.told(slot);
        if (checked.isEmpty()) {
            page.replace(id, Html.element("p", "", Words.of("class.no-tries")));
            return;
        }
        ProblemState state = state(slot).judged(checked.get().verdicts, 0);
        cards.put(state);
        for (int ask = 0; ask < state.verdicts().size(); ask++) {
            page.replace(state.id() + "-verdict-" + ask, html.verdict(state, ask));
        }
        boolean asked = state.verdicts().stream().anyMatch(Optional::isPresent);
        String said =
                checked.get().tells || asked ? Words.of("class.kept") : Words.of("class.form-fine");
        String left =
                checked.get().left.isPresent()
                        ? " " + Words.of("class.tries-left", checked.get().left.getAsInt())
                        : "";
        page.replace(id, Html.element("p", "class=\"quiet\"", said + left));
    }

    private void hint(int slot) {
        run(
                () -> work.hint(slot, clock.instant()).map(h -> work.rung(slot)),
                rung -> {
                    if (rung.isEmpty()) {
                        page.replace(
                                WorkPage.told(slot),
                                Html.element("p", "", Words.of("class.no-more-hints")));
                        return;
                    }
                    ProblemState state = state(slot).rung(rung.get());
                    cards.put(state);
                    page.replace(state.id() + "-hints", html.hints(state));
                });
    }

    private void askToHandIn() {
        run(() -> work.open(), open -> page.replace(WorkPage.HAND_IN, WorkPage.ask(open)));
    }

    private void handIn() {
        ProblemSet set = file.orElseThrow().set();
        String learner = work.draft().learner();
        Optional<Path> to =
                chooser.save(
                        Words.of("class.hand-in-yes"), set.id() + "-" + learner + HandIn.ENDING);
        to.ifPresent(
                target ->
                        run(
                                () ->
                                        work.handIn(
                                                target,
                                                SigningKey.kept(
                                                        data.resolve("keys")
                                                                .resolve("learner.key")),
                                                clock.instant()),
                                receipt ->
                                        page.replace(
                                                WorkPage.HAND_IN,
                                                Html.element(
                                                        "p",
                                                        "",
                                                        Words.of(
                                                                "class.handed-in",
                                                                target,
                                                                receipt)))));
    }
}

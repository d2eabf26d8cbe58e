// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Attempt;
import hotside.learner.MockTest;
import hotside.learner.Syllabus;
import hotside.page.Maths;
import hotside.page.ProblemState;
import hotside.page.TestPage;
import hotside.page.Words;
import hotside.problem.NoVariantException;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Verdict;
import hotside.unit.UnitSystem;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/** A mock test: problems without help, perhaps with a limit of time, verdicts at the end. */
final class TestRun {
    private static final int PROBLEMS = 8;
    private static final Set<String> HELP = Set.of("check", "hint", "solution", "another");

    private enum Phase {
        NONE,
        RUNNING,
        OVER
    }

    private ProblemBank bank;
    private Supplier<Syllabus> syllabus;
    private final Page page;
    private final TutorKeeper keeper;
    private final LongSupplier seeds;
    private final Clock clock;
    private final Ticks ticks;
    private final ProblemCards cards;
    private final List<String> ids = new ArrayList<>();
    private Phase phase = Phase.NONE;
    private Optional<Instant> end = Optional.empty();
    private boolean timeUp;

    TestRun(
            ProblemBank bank,
            Supplier<Syllabus> syllabus,
            Maths maths,
            Page page,
            TutorKeeper keeper,
            LongSupplier seeds,
            Clock clock,
            Ticks ticks) {
        this.bank = bank;
        this.syllabus = syllabus;
        this.page = page;
        this.keeper = keeper;
        this.seeds = seeds;
        this.clock = clock;
        this.ticks = ticks;
        this.cards = new ProblemCards(maths, page, this::keep, seeds, clock);
    }

    /** From now on numbers are read by a habit that others share. */
    void habit(Habit shared) {
        cards.habit(shared);
    }

    /** Other problems, from the next test on. */
    void content(ProblemBank other, Supplier<Syllabus> itsSyllabus) {
        bank = other;
        syllabus = itsSyllabus;
    }

    private void keep(List<Try> tries, Runnable then) {
        if (!tries.isEmpty()) {
            keeper.keep(tries, Attempt.Way.TEST, then);
        }
    }

    /** True while its page is to be shown. */
    boolean isOn() {
        return phase != Phase.NONE;
    }

    /** Draws the problems and starts the clock; 0 minutes for no limit. */
    void begin(int minutes, UnitSystem system) {
        cards.clear(Try.PRACTICE);
        cards.units(system, "?");
        ids.clear();
        MockTest.draw(syllabus.get(), PROBLEMS, seeds.getAsLong()).stream()
                .flatMap(exercise -> bank.find(exercise.id()).stream())
                .forEach(this::add);
        phase = Phase.RUNNING;
        timeUp = false;
        end = Optional.empty();
        if (minutes > 0) {
            end = Optional.of(clock.instant().plus(Duration.ofMinutes(minutes)));
            ticks.start(this::tick);
        }
        show();
    }

    /** One problem more; one that has no numbers that fit it is left out. */
    private void add(Template template) {
        String id = "t" + (ids.size() + 1);
        try {
            cards.draw(id, template);
            ids.add(id);
        } catch (NoVariantException unsound) {
            // The check of content tells whoever wrote it; a test is no place for it.
        }
    }

    void show() {
        List<String> html = ids.stream().map(cards::html).toList();
        if (phase == Phase.OVER) {
            List<TestPage.Result> results = results();
            page.show(TestPage.over(html, results, timeUp), TestPage.text(results));
        } else {
            page.show(TestPage.running(html, minutesLeft()), Words.of("test.how", ids.size()));
        }
        page.focus("test-title");
    }

    private OptionalLong minutesLeft() {
        return end.map(
                        e ->
                                OptionalLong.of(
                                        Math.max(
                                                0,
                                                Duration.between(clock.instant(), e)
                                                        .plusSeconds(59)
                                                        .toMinutes())))
                .orElse(OptionalLong.empty());
    }

    /** Time has passed. */
    void tick() {
        if (phase != Phase.RUNNING || end.isEmpty()) {
            return;
        }
        if (clock.instant().isBefore(end.get())) {
            page.replace("test-left", TestPage.left(minutesLeft()));
        } else {
            timeUp = true;
            handIn();
        }
    }

    /** True if the action was the test's own. */
    boolean act(String action, String part, String argument) {
        if (action.equals("hand-in")) {
            handIn();
            return true;
        }
        if (action.equals("give-up")) {
            stop();
            return false;
        }
        if (cards.has(part)) {
            boolean allowed =
                    phase == Phase.RUNNING ? !HELP.contains(action) : action.equals("solution");
            if (allowed) {
                cards.act(action, part);
            }
            return true;
        }
        return false;
    }

    void edit(String part, String slot, String value) {
        if (phase == Phase.RUNNING && cards.has(part)) {
            cards.edit(part, slot, value);
        }
    }

    void point(String part, double along) {
        if (phase == Phase.RUNNING && cards.draws(part)) {
            cards.point(part, along);
        }
    }

    void nudge(String part, int steps) {
        if (phase == Phase.RUNNING && cards.draws(part)) {
            cards.nudge(part, steps);
        }
    }

    void chartWidth(int width) {
        cards.chartWidth(width);
    }

    void units(UnitSystem system) {
        // A test keeps the units it began with: other numbers would undo what is typed.
        if (phase == Phase.NONE) {
            cards.units(system, "?");
        }
    }

    private void handIn() {
        if (phase != Phase.RUNNING) {
            return;
        }
        phase = Phase.OVER;
        ticks.stop();
        ids.forEach(id -> cards.act("check", id));
        // Runs after all answers were kept.
        keeper.ask(tutor -> ids.size(), done -> show());
    }

    void stop() {
        phase = Phase.NONE;
        ticks.stop();
    }

    /** The problems, for tests and the tour. */
    List<ProblemState> problems() {
        return ids.stream().map(id -> cards.state(id).orElseThrow()).toList();
    }

    /** How many answers were right, by skill. */
    List<TestPage.Result> results() {
        Map<String, TestPage.Result> bySkill = new LinkedHashMap<>();
        for (ProblemState state : problems()) {
            String skill = syllabus.get().name(state.variant().template().skill());
            int asked = state.verdicts().size();
            int right =
                    (int)
                            state.verdicts().stream()
                                    .flatMap(Optional::stream)
                                    .map(Verdict::kind)
                                    .filter(Verdict.Kind::good)
                                    .count();
            bySkill.merge(
                    skill,
                    new TestPage.Result(skill, right, asked),
                    (a, b) ->
                            new TestPage.Result(
                                    skill, a.right() + b.right(), a.asked() + b.asked()));
        }
        return List.copyOf(bySkill.values());
    }
}

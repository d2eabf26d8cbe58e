// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.learner.Attempt;
import hotside.learner.Choice;
import hotside.learner.Exercise;
import hotside.learner.Reason;
import hotside.learner.SkillStanding;
import hotside.learner.Stage;
import hotside.learner.Syllabus;
import hotside.learner.Wish;
import hotside.page.ExampleCard;
import hotside.page.LessonText;
import hotside.page.Maths;
import hotside.page.PracticePage;
import hotside.page.ProblemState;
import hotside.page.Words;
import hotside.problem.NoVariantException;
import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * The place where a learner practises: the tutor chooses a problem and says why; where a skill is
 * new, an example goes before it. A mock test takes the whole page while it runs.
 */
final class PracticePlace implements Place {
    private static final String CARD = "p1";

    private ProblemBank bank;
    private Supplier<Syllabus> syllabus;
    private final Page page;
    private final TutorKeeper keeper;
    private final LongSupplier seeds;
    private final Clock clock;
    private final ProblemCards cards;
    private final ExampleCard examples;
    private final LessonText text;
    private final TestRun test;
    private Wish wish = Wish.BEST;
    private String minutes = "0";
    private UnitSystem system = UnitSystem.SI_SHOP;
    private Attempt.Way way = Attempt.Way.FULL;
    private Optional<Variant> example = Optional.empty();
    private String reason = "";
    private boolean asked;
    private int percent = Settings.SMALLEST;

    /**
     * @param solved told which problem is solved
     */
    PracticePlace(
            ProblemBank bank,
            Supplier<Syllabus> syllabus,
            Maths maths,
            Page page,
            TutorKeeper keeper,
            Consumer<String> solved,
            LongSupplier seeds,
            Clock clock,
            Ticks ticks) {
        this.bank = bank;
        this.syllabus = syllabus;
        this.page = page;
        this.keeper = keeper;
        this.seeds = seeds;
        this.clock = clock;
        this.cards = new ProblemCards(maths, page, new ToTutor(solved), seeds, clock);
        this.examples = new ExampleCard(maths);
        this.text = new LessonText(maths);
        this.test = new TestRun(bank, syllabus, maths, page, keeper, seeds, clock, ticks);
    }

    /** From now on numbers are read by a habit that others share. */
    void habit(Habit shared) {
        cards.habit(shared);
        test.habit(shared);
    }

    /** Other problems; the one that is open stays. */
    void content(ProblemBank other, Supplier<Syllabus> itsSyllabus) {
        bank = other;
        syllabus = itsSyllabus;
        test.content(other, itsSyllabus);
    }

    private static List<PracticePage.Option> options(Syllabus syllabus) {
        List<PracticePage.Option> all = new ArrayList<>();
        all.add(option(Wish.BEST, Words.of("practice.best"), ""));
        all.add(option(Wish.MISTAKES, Words.of("practice.mistakes"), ""));
        for (Map.Entry<String, String> strand : syllabus.skills().strands().entrySet()) {
            all.add(
                    option(
                            new Wish(Wish.Kind.STRAND, strand.getKey()),
                            strand.getValue(),
                            Words.of("practice.strands")));
        }
        for (SkillMap.Skill skill : syllabus.practised()) {
            all.add(
                    option(
                            new Wish(Wish.Kind.SKILL, skill.id()),
                            skill.name(),
                            Words.of("practice.skills")));
        }
        return List.copyOf(all);
    }

    private static PracticePage.Option option(Wish wish, String label, String group) {
        return new PracticePage.Option(value(wish), label, group);
    }

    private static String value(Wish wish) {
        return wish.kind() + ":" + wish.of();
    }

    private static Wish wish(String value) {
        int colon = value.indexOf(':');
        return new Wish(Wish.Kind.valueOf(value.substring(0, colon)), value.substring(colon + 1));
    }

    @Override
    public String id() {
        return "practice";
    }

    @Override
    public void open() {
        if (test.isOn()) {
            test.show();
        } else if (asked) {
            show();
        } else {
            next();
        }
    }

    /** Opens with a wish; the place itself must be open. */
    void open(Wish wanted) {
        test.stop();
        wish = wanted;
        next();
    }

    /** Sets a problem once more, with the numbers of an earlier answer where that can be done. */
    void again(Attempt attempt) {
        Optional<Template> template = bank.find(attempt.problem());
        if (template.isEmpty()) {
            return;
        }
        test.stop();
        boolean same = replays(attempt, template.get());
        begin(Words.of(same ? "practice.again" : "practice.again-fresh"));
        way = same ? Attempt.Way.AGAIN : Attempt.Way.FULL;
        drawn(() -> put(attempt, template.get(), same), template.get());
        show();
    }

    private void put(Attempt attempt, Template template, boolean same) {
        if (same) {
            UnitSystem shop = UnitSystem.valueOf(attempt.unitSystem().toUpperCase(Locale.ROOT));
            cards.put(CARD, Variants.draw(template, Long.parseLong(attempt.seed()), shop));
        } else {
            cards.draw(CARD, template);
        }
    }

    /** True if the numbers of an answer can be drawn again. */
    static boolean replays(Attempt attempt, Template template) {
        return attempt.fingerprint().equals(template.fingerprint())
                && attempt.generator().equals(String.valueOf(Variants.GENERATOR_VERSION))
                && attempt.seed().matches("-?\\d{1,19}")
                && attempt.unitSystem().matches("(?i)(si|us)_shop");
    }

    private void begin(String why) {
        cards.clear(Try.PRACTICE);
        example = Optional.empty();
        reason = why;
        asked = true;
    }

    private void next() {
        keeper.ask(tutor -> tutor.next(wish, clock.instant()), this::set);
    }

    private void set(Optional<Choice> choice) {
        Optional<Template> template = choice.flatMap(c -> bank.find(c.exercise().id()));
        begin(choice.map(Choice::reason).map(Reason::text).orElse(""));
        template.ifPresent(t -> set(choice.orElseThrow().stage(), t));
        show();
    }

    /** A problem that somebody wrote may have no numbers that fit it; then that is said. */
    private boolean drawn(Runnable drawing, Template template) {
        try {
            drawing.run();
            return true;
        } catch (NoVariantException e) {
            cards.clear(Try.PRACTICE);
            example = Optional.empty();
            reason = Words.of("practice.unsound", template.title(), e.getMessage());
            return false;
        }
    }

    private void set(Stage stage, Template template) {
        way = Attempt.Way.FULL;
        if (drawn(() -> cards.draw(CARD, template), template) && stage != Stage.FULL) {
            Variant shown = Variants.draw(template, seeds.getAsLong(), system);
            if (stage == Stage.WORKED ? ExampleCard.canShow(shown) : ExampleCard.canFade(shown)) {
                example = Optional.of(shown);
                way = stage == Stage.WORKED ? Attempt.Way.WORKED : Attempt.Way.FADED;
            }
        }
    }

    private void show() {
        Optional<ProblemState> state = cards.state(CARD);
        PracticePage.View view =
                new PracticePage.View(
                        options(syllabus.get()),
                        value(wish),
                        reason,
                        example.map(v -> examples.html("example", v, way == Attempt.Way.FADED)),
                        cards.html(CARD));
        page.show(
                PracticePage.html(view), PracticePage.text(view, state.map(this::told).orElse("")));
        page.focus("practice-title");
    }

    private String told(ProblemState state) {
        Variant variant = state.variant();
        return variant.template().title()
                + "\n"
                + text.of(
                        variant.template().prompt(),
                        name -> variant.shown().getOrDefault(name, name));
    }

    @Override
    public void act(String action, String part, String argument) {
        if (test.isOn() && test.act(action, part, argument)) {
            return;
        }
        switch (action) {
            case "next", "give-up" -> {
                test.stop();
                next();
            }
            case "test" -> test.begin(Integer.parseInt(minutes), system);
            case "alone" -> alone();
            case "another" -> {
                if (way == Attempt.Way.AGAIN) {
                    way = Attempt.Way.FULL;
                }
                cards.act(action, part);
                page.replace("practice-after", "");
            }
            default -> {
                if (cards.has(part)) {
                    cards.act(action, part);
                }
            }
        }
    }

    /** The learner wants to do without the example. */
    private void alone() {
        cards.state(CARD)
                .ifPresent(
                        state -> {
                            Template template = state.variant().template();
                            begin(reason);
                            set(Stage.FULL, template);
                            show();
                        });
    }

    @Override
    public void edit(String part, String slot, String kind, String value) {
        if (part.equals("practice") && slot.equals("wish")) {
            wish = wish(value);
            next();
        } else if (part.equals("practice") && slot.equals("minutes")) {
            minutes = value;
        } else if (test.isOn()) {
            test.edit(part, slot, value);
        } else if (cards.has(part)) {
            cards.edit(part, slot, value);
        }
    }

    @Override
    public void units(UnitSystem other) {
        if (system == other) {
            return;
        }
        system = other;
        cards.units(other, "?");
        example = example.map(v -> Variants.draw(v.template(), v.seed(), other));
        test.units(other);
        if (test.isOn()) {
            test.show();
        } else if (asked) {
            show();
        }
    }

    @Override
    public void textSize(int size) {
        if (percent == size) {
            return;
        }
        percent = size;
        cards.chartWidth(LessonPlace.chartWidth(percent));
        test.chartWidth(LessonPlace.chartWidth(percent));
        if (asked || test.isOn()) {
            open();
        }
    }

    @Override
    public void point(String part, double along) {
        if (test.isOn()) {
            test.point(part, along);
        } else if (cards.draws(part)) {
            cards.point(part, along);
        }
    }

    @Override
    public void nudge(String part, int steps) {
        if (test.isOn()) {
            test.nudge(part, steps);
        } else if (cards.draws(part)) {
            cards.nudge(part, steps);
        }
    }

    /** Somebody else sits here now. */
    void forget() {
        test.stop();
        cards.clear(Try.PRACTICE);
        wish = Wish.BEST;
        asked = false;
    }

    /** The card's present state, for tests and the tour. */
    Optional<ProblemState> problem() {
        return cards.state(CARD);
    }

    /** The running test, for tests and the tour. */
    TestRun test() {
        return test;
    }

    private void solved(String problem) {
        Optional<String> skill = syllabus.get().find(problem).map(Exercise::skill);
        if (skill.isEmpty() || way == Attempt.Way.AGAIN) {
            return;
        }
        keeper.ask(
                tutor -> tutor.skills(clock.instant()),
                all ->
                        all.stream()
                                .filter(s -> s.skill().equals(skill.get()))
                                .findFirst()
                                .ifPresent(this::showAfter));
    }

    private void showAfter(SkillStanding standing) {
        LocalDate today = LocalDate.now(clock);
        page.replace(
                "practice-after",
                PracticePage.after(SkillLines.of(standing, syllabus.get(), today)));
        page.focus("do-next");
    }

    /** Tries go to the record with the way in which the problem was set. */
    private final class ToTutor implements Tries {
        private final Consumer<String> listener;

        ToTutor(Consumer<String> listener) {
            this.listener = listener;
        }

        @Override
        public void keep(List<Try> tries, Runnable then) {
            if (tries.isEmpty()) {
                then.run();
            } else {
                keeper.keep(tries, way, then);
            }
        }

        @Override
        public void solved(String problem) {
            listener.accept(problem);
            PracticePlace.this.solved(problem);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Course;
import hotside.course.Lesson;
import hotside.course.Part;
import hotside.page.CalculatorCard;
import hotside.page.CalculatorState;
import hotside.page.Html;
import hotside.page.LessonPage;
import hotside.page.LessonText;
import hotside.page.Maths;
import hotside.page.ProblemState;
import hotside.page.TermNote;
import hotside.page.Words;
import hotside.problem.AskMe;
import hotside.problem.ProblemBank;
import hotside.problem.Variants;
import hotside.relation.Slot;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.time.Clock;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * The open lesson: what each of its cards shows, and what happens when a person touches one. Knows
 * the page by an interface only, so it can be tested without a window.
 */
final class LessonPlace {
    private static final String ASK_ME = "-q";

    /** Width of charts at 100 % text. */
    private static final int CHART_WIDTH = 680;

    /** Slider steps to an arrow key. */
    private static final int NUDGE = 10;

    private Course course;
    private ProblemBank bank;
    private final Page page;
    private final LongSupplier seeds;
    private final LessonPage lessons;
    private final CalculatorCard calculators;
    private final ProblemCards problems;
    private final LessonText text;
    private final LessonParts parts;
    private final TermNote notes;
    private Habit habit = new Habit();

    private final Map<Part, String> ids = new IdentityHashMap<>();
    private final Map<String, CalculatorState> calculator = new LinkedHashMap<>();
    private final Map<String, CalculatorState> calculatorStart = new LinkedHashMap<>();
    private final Map<String, CalculatorState> beforeReset = new LinkedHashMap<>();
    private final Figures figures;
    private Lesson lesson;
    private UnitSystem system = UnitSystem.SI_SHOP;
    private int chartWidth = CHART_WIDTH;

    LessonPlace(
            Course course,
            ProblemBank bank,
            Maths maths,
            Page page,
            Tries tries,
            LongSupplier seeds,
            Clock clock,
            Worker worker) {
        this.course = course;
        this.bank = bank;
        this.page = page;
        this.seeds = seeds;
        this.figures = new Figures(page);
        this.lessons = new LessonPage(maths);
        this.calculators = new CalculatorCard(maths);
        this.problems = new ProblemCards(maths, page, tries, seeds, clock);
        this.text = new LessonText(maths);
        this.notes = new TermNote(maths);
        this.parts = new LessonParts(maths, page, worker);
    }

    /** From now on numbers are read by a habit that others share. */
    LessonPlace habit(Habit shared) {
        habit = shared;
        problems.habit(shared);
        parts.habit(shared);
        return this;
    }

    Optional<Lesson> lesson() {
        return Optional.ofNullable(lesson);
    }

    /** Takes other content; the open lesson stays as it is until it is opened again. */
    void content(Course other, ProblemBank problems) {
        course = other;
        bank = problems;
    }

    /** Opens a lesson with fresh cards. */
    void open(Lesson opened) {
        lesson = opened;
        ids.clear();
        calculator.clear();
        calculatorStart.clear();
        problems.clear(opened.id());
        parts.open(opened, system);
        int charts = 0;
        int calculators = 0;
        int cards = 0;
        for (Part part : opened.parts()) {
            if (part instanceof Part.Calculator c) {
                String id = "c" + ++calculators;
                ids.put(part, id);
                CalculatorState state = start(id, c);
                calculator.put(id, state);
                calculatorStart.put(id, state);
            } else if (part instanceof Part.ChartFigure) {
                ids.put(part, "f" + ++charts);
            } else if (part instanceof Part.ProblemCard card) {
                String id = "p" + ++cards;
                ids.put(part, id);
                bank.find(card.problem()).ifPresent(t -> problems.draw(id, t));
            } else {
                parts.add(part).ifPresent(id -> ids.put(part, id));
            }
        }
        draw();
    }

    /** Width of a page's charts, in pixels at 100 %, at a size of text in percent. */
    static int chartWidth(int percent) {
        return CHART_WIDTH * 100 / percent;
    }

    /** Draws charts for another text size, so that their words grow with the rest. */
    void textSize(int percent) {
        int width = chartWidth(percent);
        if (width == chartWidth) {
            return;
        }
        chartWidth = width;
        calculator.replaceAll((id, state) -> state.chartWidth(width));
        calculatorStart.replaceAll((id, state) -> state.chartWidth(width));
        problems.chartWidth(width);
        if (lesson != null) {
            draw();
        }
    }

    /** Speaks another shop's units; problems get numbers that are round there. */
    void units(UnitSystem other) {
        if (system == other) {
            return;
        }
        system = other;
        problems.units(other, ASK_ME);
        parts.units(other);
        if (lesson == null) {
            return;
        }
        calculator.replaceAll((id, state) -> state.in(other));
        calculatorStart.replaceAll((id, state) -> state.in(other));
        draw();
    }

    /** Something was clicked. */
    void act(String action, String part) {
        if (calculator.containsKey(part)) {
            actOnCalculator(action, calculator.get(part));
        } else if (action.equals("another") && part.endsWith(ASK_ME)) {
            String id = part.substring(0, part.length() - ASK_ME.length());
            actOnCalculator("ask-me", calculator.get(id));
        } else if (problems.has(part)) {
            problems.act(action, part);
        } else {
            parts.act(action, part);
        }
    }

    /** A field got a new content. */
    void edit(String part, String slot, String kind, String value) {
        CalculatorState state = calculator.get(part);
        if (kind.equals("answer") && problems.has(part)) {
            problems.edit(part, slot, value);
        } else if (state != null && kind.equals("axis")) {
            Slot chosen = state.relation().slot(value).orElseThrow();
            CalculatorState turned = slot.equals("over") ? state.over(chosen) : state.curve(chosen);
            calculator.put(part, turned);
            page.replace(part + "-curve", calculators.curve(turned));
        } else if (state != null) {
            touched(part);
            state.relation().slot(slot).ifPresent(s -> set(state, s, kind, value));
        } else {
            parts.edit(part, slot, kind, value);
        }
    }

    /**
     * A chart was pointed at: a calculator takes the value there, a figure reads its curves there,
     * a problem measures there.
     *
     * @param across 0 at the left edge of the chart to 1 at its right edge
     */
    void point(String part, double across) {
        CalculatorState state = calculator.get(part);
        if (state != null && state.over().isPresent()) {
            Slot over = state.over().get();
            touched(part);
            moved(state, over, CalculatorCard.pointed(state, over, across));
        }
        figures.point(part, across);
        if (problems.draws(part)) {
            problems.point(part, across);
        }
    }

    /** An arrow key was pressed on a chart. */
    void nudge(String part, int steps) {
        CalculatorState state = calculator.get(part);
        if (state != null && state.over().isPresent()) {
            Slot over = state.over().get();
            touched(part);
            slide(state, over, CalculatorCard.sliderAt(state, over) + steps * NUDGE);
            page.focus(part + "-svg");
        }
        figures.nudge(part, steps);
        if (problems.draws(part)) {
            problems.nudge(part, steps);
        }
    }

    /** The card's present state, for tests and the tour. */
    Optional<CalculatorState> calculator(String id) {
        return Optional.ofNullable(calculator.get(id));
    }

    /** The card's present state, for tests and the tour. */
    Optional<ProblemState> problem(String id) {
        return problems.state(id);
    }

    /** Says what a term means, in a note; an unknown one puts the note away. */
    void explain(String slug) {
        page.replace(
                "term-note",
                course.glossary().find(slug).map(term -> notes.html(course, term)).orElse(""));
    }

    /** Faded examples, predictions and diagrams, for tests and the tour. */
    LessonParts parts() {
        return parts;
    }

    /** Shows the open lesson as it was left. */
    void again() {
        draw();
    }

    private void draw() {
        figures.clear();
        beforeReset.clear();
        for (Part part : lesson.parts()) {
            if (part instanceof Part.ChartFigure f) {
                figures.put(ids.get(part), LessonPage.figure(lesson, f, system, chartWidth));
            }
        }
        String html =
                lessons.html(
                        lesson,
                        system,
                        new LiveCards(),
                        course.before(lesson),
                        course.after(lesson));
        page.show(html, text.of(lesson, bank, system));
        calculator.values().forEach(state -> showAskMe(state.id()));
    }

    private final class LiveCards implements LessonPage.Cards {
        @Override
        public String id(Part part) {
            return ids.get(part);
        }

        @Override
        public String html(Part part) {
            String id = ids.get(part);
            if (part instanceof Part.Calculator) {
                return calculators.html(calculator.get(id));
            }
            return part instanceof Part.ProblemCard ? problems.html(id) : parts.html(part, id);
        }

        @Override
        public int chartWidth() {
            return chartWidth;
        }
    }

    private CalculatorState start(String id, Part.Calculator part) {
        return new CalculatorState(
                id,
                part.relation(),
                part.start(),
                Map.of(),
                part.over(),
                part.curve(),
                system,
                Units.STANDARD_ATMOSPHERE,
                chartWidth,
                false);
    }

    private void set(CalculatorState state, Slot slot, String kind, String value) {
        switch (kind) {
            case "slider" -> slide(state, slot, Double.parseDouble(value));
            case "choice" -> update(state.with(slot.name(), value));
            default -> typed(state, slot, value);
        }
    }

    private void slide(CalculatorState state, Slot slot, double place) {
        double within = Math.max(0, Math.min(CalculatorCard.SLIDER_STEPS, place));
        moved(state, slot, CalculatorCard.sliderValue(state, slot, within));
    }

    private void moved(CalculatorState state, Slot slot, double value) {
        CalculatorState moved = state.with(slot.name(), value);
        page.put(state.id() + "-" + slot.name(), CalculatorCard.fieldText(moved, slot));
        page.replace(state.id() + "-" + slot.name() + "-fault", "");
        page.put(
                state.id() + "-" + slot.name() + "-slider",
                String.valueOf(CalculatorCard.sliderAt(moved, slot)));
        update(moved);
    }

    private void typed(CalculatorState state, Slot slot, String value) {
        String faultId = state.id() + "-" + slot.name() + "-fault";
        SlotReading reading =
                SlotReading.of(slot, value, state.system(), state.ambient(), habit.of(value));
        if (reading.fault().isPresent()) {
            calculator.put(state.id(), state.withFault(slot.name(), reading.fault().get()));
            page.replace(faultId, CalculatorCard.fault(reading.fault().get()));
            return;
        }
        CalculatorState set = state.with(slot.name(), reading.value());
        page.replace(faultId, "");
        if (slot.kind() == Slot.Kind.NUMBER) {
            page.put(
                    state.id() + "-" + slot.name() + "-slider",
                    String.valueOf(CalculatorCard.sliderAt(set, slot)));
        }
        update(set);
    }

    private void update(CalculatorState state) {
        String id = state.id();
        calculator.put(id, state);
        lead(id, state);
        page.replace(id + "-out", calculators.outputs(state));
        page.replace(id + "-cautions", calculators.cautions(state));
        if (state.over().isPresent()) {
            page.replace(id + "-curve", calculators.curve(state));
        }
        if (state.working()) {
            page.replace(id + "-work", calculators.working(state));
        }
    }

    /** Diagrams that follow this calculator move with it. */
    private void lead(String id, CalculatorState state) {
        ids.forEach(
                (part, itsId) -> {
                    if (itsId.equals(id) && part instanceof Part.Calculator leader) {
                        parts.follow(leader, state.values());
                    }
                });
    }

    private void actOnCalculator(String action, CalculatorState state) {
        switch (action) {
            case "working" -> {
                CalculatorState turned = state.working(!state.working());
                calculator.put(state.id(), turned);
                page.replace(state.id() + "-work", calculators.working(turned));
                page.replace(
                        state.id() + "-working",
                        Html.escape(Words.of(turned.working() ? "working.hide" : "working.show")));
            }
            case "reset" -> {
                CalculatorState left = beforeReset.remove(state.id());
                CalculatorState start =
                        (left == null ? calculatorStart.get(state.id()) : left)
                                .working(state.working());
                if (left == null) {
                    beforeReset.put(state.id(), state);
                }
                labelReset(state.id());
                for (Slot slot : state.relation().inputs()) {
                    page.put(state.id() + "-" + slot.name(), CalculatorCard.fieldText(start, slot));
                    page.replace(state.id() + "-" + slot.name() + "-fault", "");
                    if (slot.kind() == Slot.Kind.NUMBER) {
                        page.put(
                                state.id() + "-" + slot.name() + "-slider",
                                String.valueOf(CalculatorCard.sliderAt(start, slot)));
                    }
                }
                update(start);
            }
            case "ask-me" -> {
                askMe(state);
                page.focus(state.id() + ASK_ME + "-answer-0");
            }
            default -> {}
        }
    }

    /** Start values have an undo, until something else is moved. */
    private void labelReset(String id) {
        String key = beforeReset.containsKey(id) ? "calculator.undo-reset" : "calculator.reset";
        page.replace(id + "-reset", Html.escape(Words.of(key)));
    }

    private void touched(String id) {
        if (beforeReset.remove(id) != null) {
            labelReset(id);
        }
    }

    /** The calculator hides one of its slots and asks for it. */
    private void askMe(CalculatorState state) {
        long seed = seeds.getAsLong();
        AskMe.template(state.relation(), seed, system)
                .ifPresent(
                        template -> {
                            String id = state.id() + ASK_ME;
                            problems.put(id, Variants.draw(template, seed, system));
                            showAskMe(state.id());
                        });
    }

    private void showAskMe(String id) {
        page.replace(id + "-ask", problems.html(id + ASK_ME));
    }
}

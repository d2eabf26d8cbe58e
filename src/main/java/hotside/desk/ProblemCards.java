// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.ChartData;
import hotside.page.Html;
import hotside.page.Maths;
import hotside.page.ProblemCard;
import hotside.page.ProblemState;
import hotside.page.ReadingCursor;
import hotside.page.Words;
import hotside.problem.Marker;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import hotside.unit.UnitSystem;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * The problem cards of a page: what each shows, and what happens when a person touches one. Every
 * place that has problems uses it.
 */
final class ProblemCards {
    /** Long enough to read a hint; a choice of ours. */
    private static final Duration HINT_WAIT = Duration.ofSeconds(8);

    /** Width of charts at 100 % text. */
    private static final int CHART_WIDTH = 680;

    /** Begins the action that moves an item, before its letter. */
    private static final String UP = "up:";

    private static final String DOWN = "down:";

    private final Page page;
    private final Tries tries;
    private final LongSupplier seeds;
    private final Clock clock;
    private final ProblemCard card;
    private Habit habit = new Habit();
    private final Map<String, ProblemState> states = new LinkedHashMap<>();
    private final Map<String, Instant> hintedAt = new HashMap<>();
    private final Map<Variant, Instant> drawnAt = new IdentityHashMap<>();
    private String where = "";
    private UnitSystem system = UnitSystem.SI_SHOP;
    private final Figures curves;
    private int chartWidth = CHART_WIDTH;

    /**
     * @param seeds where fresh numbers come from
     * @param tries where counted tries go
     */
    ProblemCards(Maths maths, Page page, Tries tries, LongSupplier seeds, Clock clock) {
        this.page = page;
        this.curves = new Figures(page);
        this.tries = tries;
        this.seeds = seeds;
        this.clock = clock;
        card = new ProblemCard(maths);
    }

    /** From now on numbers are read by a habit that others share. */
    void habit(Habit shared) {
        habit = shared;
    }

    /**
     * Forgets all cards.
     *
     * @param where the lesson or place that tries are filed under from now on
     */
    void clear(String where) {
        this.where = where;
        states.clear();
        curves.clear();
        drawnAt.clear();
    }

    /** A card with fresh numbers. */
    void draw(String id, Template template) {
        put(id, Variants.draw(template, seeds.getAsLong(), system));
    }

    /** A card with these numbers. */
    void put(String id, Variant variant) {
        curves.forget(id + "-");
        drawnAt.put(variant, clock.instant());
        states.put(id, ProblemState.fresh(id, variant).chartWidth(chartWidth));
    }

    /** A card as it is told. */
    void put(ProblemState state) {
        states.put(state.id(), state.chartWidth(chartWidth));
    }

    boolean has(String id) {
        return states.containsKey(id);
    }

    Optional<ProblemState> state(String id) {
        return Optional.ofNullable(states.get(id));
    }

    /** The whole card, or nothing if there is none. */
    String html(String id) {
        return has(id) ? card.html(states.get(id)) : "";
    }

    /**
     * Other units: the same seeds, with numbers that are round there.
     *
     * @param dropped ends of ids whose cards go instead
     */
    void units(UnitSystem other, String dropped) {
        system = other;
        states.keySet().removeIf(id -> id.endsWith(dropped));
        List.copyOf(states.values())
                .forEach(
                        state ->
                                put(
                                        state.id(),
                                        Variants.draw(
                                                state.variant().template(),
                                                state.variant().seed(),
                                                other)));
    }

    /** Draws charts for another text size from now on. */
    void chartWidth(int width) {
        chartWidth = width;
        states.replaceAll((id, state) -> state.chartWidth(width));
    }

    /**
     * An answer was typed, or an option taken or ticked.
     *
     * @param ask the number of the ask; for a tick, the letter of its option
     * @param value as typed; the letter taken; for a tick, {@code true} or {@code false}
     */
    void edit(String id, String ask, String value) {
        ProblemState state = states.get(id);
        boolean tick = !Character.isDigit(ask.charAt(0));
        states.put(
                id,
                tick
                        ? state.ticked(ask, Boolean.parseBoolean(value))
                        : state.typed(Integer.parseInt(ask), value));
    }

    /**
     * The chart of a card was pointed at.
     *
     * @param along 0 to 1: from left to right, or from top to bottom where heights are measured
     */
    void point(String id, double along) {
        if (!has(id)) {
            read(id).ifPresent(chart -> curves.point(id, along));
            return;
        }
        ProblemState state = states.get(id);
        cursor(state).ifPresent(line -> measure(state, line, line.pointed(along, along)));
    }

    /** An arrow key was pressed on the chart of a card. */
    void nudge(String id, int steps) {
        if (!has(id)) {
            read(id).ifPresent(chart -> curves.nudge(id, steps));
            return;
        }
        ProblemState state = states.get(id);
        cursor(state)
                .ifPresent(
                        line -> {
                            double from =
                                    Double.isNaN(state.cursor()) ? line.middle() : state.cursor();
                            measure(state, line, line.moved(from, steps));
                        });
    }

    /** True for a card, and for a chart of one. */
    boolean draws(String part) {
        return has(part) || read(part).isPresent();
    }

    /** The chart that this part is, as it is drawn now. */
    private Optional<ChartData> read(String part) {
        Optional<ChartData> chart =
                states.values().stream()
                        .filter(state -> part.startsWith(state.id() + "-"))
                        .map(state -> ProblemCard.charts(state).get(part))
                        .filter(Objects::nonNull)
                        .findFirst();
        chart.ifPresent(data -> curves.put(part, data));
        return chart;
    }

    private static Optional<ReadingCursor> cursor(ProblemState state) {
        return ReadingCursor.of(state.variant(), state.chartWidth());
    }

    private void measure(ProblemState state, ReadingCursor line, double at) {
        states.put(state.id(), state.cursor(at));
        page.cursor(state.id() + "-svg", line.pixel(at));
        page.replace(
                state.id() + "-reading", Html.escape(Words.of("chart.measured", line.answer(at))));
    }

    /** The point that the hair line stands at becomes the answer. */
    private void take(ProblemState state) {
        if (Double.isNaN(state.cursor())) {
            return;
        }
        String answer = cursor(state).map(line -> line.answer(state.cursor())).orElse("");
        states.put(state.id(), state.typed(0, answer));
        page.put(state.id() + "-answer-0", answer);
    }

    private void move(ProblemState state, String action) {
        boolean up = action.startsWith(UP);
        String letter = action.substring(action.indexOf(':') + 1);
        ProblemState moved = state.moved(letter, up ? -1 : 1);
        states.put(state.id(), moved);
        page.replace(state.id() + "-items", card.items(moved));
        page.focus(state.id() + "-" + letter + (up ? "-up" : "-down"));
    }

    /** A button of a card was pressed. */
    void act(String action, String id) {
        ProblemState state = states.get(id);
        if (action.startsWith(UP) || action.startsWith(DOWN)) {
            move(state, action);
            return;
        }
        switch (action) {
            case "check" -> check(state);
            case "take" -> take(state);
            case "hint" -> hint(state);
            case "solution" -> {
                ProblemState turned = state.working(!state.working());
                states.put(id, turned);
                page.replace(id + "-solution-text", card.solution(turned));
                page.replace(
                        id + "-solution",
                        Html.escape(
                                Words.of(turned.working() ? "working.hide" : "problem.solution")));
            }
            case "another" -> {
                draw(id, state.variant().template());
                page.replace(id, card.inside(states.get(id)));
                page.focus(ProblemCard.firstField(states.get(id)));
            }
            default -> {}
        }
    }

    /** Who runs through the hints reads none: the next one comes only after a while. */
    private void hint(ProblemState state) {
        String id = state.id();
        Instant now = clock.instant();
        Instant last = hintedAt.get(id);
        boolean soon =
                state.rung() > 0
                        && last != null
                        && Duration.between(last, now).compareTo(HINT_WAIT) < 0;
        if (soon) {
            page.replace(id + "-hints", card.hints(state) + ProblemCard.readFirst());
            return;
        }
        int most = state.variant().template().hints().size() + 1;
        ProblemState hinted = state.rung(Math.min(most, state.rung() + 1));
        states.put(id, hinted);
        hintedAt.put(id, now);
        page.replace(id + "-hints", card.hints(hinted));
    }

    private void check(ProblemState state) {
        List<Optional<Verdict>> verdicts =
                Marker.mark(state.variant(), state.typed(), habit.of(state.typed()));
        int counted = 0;
        List<Try> made = new ArrayList<>();
        for (int i = 0; i < verdicts.size(); i++) {
            Optional<Verdict> verdict = verdicts.get(i);
            boolean again = verdict.equals(state.verdicts().get(i));
            if (verdict.isPresent() && verdict.get().kind().counts() && !again) {
                counted++;
                made.add(
                        new Try(
                                where,
                                state.variant(),
                                i,
                                state.typed().get(i),
                                verdict.get(),
                                helped(state),
                                seconds(state)));
            }
        }
        ProblemState judged = state.judged(verdicts, counted);
        states.put(state.id(), judged);
        tries.keep(
                made,
                () -> {
                    showVerdicts(judged);
                    if (judged.solved()) {
                        tries.solved(judged.variant().template().id());
                    }
                });
    }

    private void showVerdicts(ProblemState judged) {
        for (int i = 0; i < judged.verdicts().size(); i++) {
            page.replace(judged.id() + "-verdict-" + i, card.verdict(judged, i));
        }
    }

    private int seconds(ProblemState state) {
        Instant drawn = drawnAt.getOrDefault(state.variant(), clock.instant());
        return (int)
                Math.max(
                        0,
                        Math.min(
                                Integer.MAX_VALUE,
                                Duration.between(drawn, clock.instant()).toSeconds()));
    }

    /** The full working counts as the last hint. */
    private static int helped(ProblemState state) {
        return state.working() ? state.variant().template().hints().size() + 1 : state.rung();
    }
}

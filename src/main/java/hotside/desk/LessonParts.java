// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.cell.RigException;
import hotside.course.Computed;
import hotside.course.Lesson;
import hotside.course.Part;
import hotside.page.CellAnswer;
import hotside.page.DiagramFigure;
import hotside.page.FadedCard;
import hotside.page.Html;
import hotside.page.LessonPage;
import hotside.page.Maths;
import hotside.page.PredictCard;
import hotside.page.PredictState;
import hotside.page.ProblemState;
import hotside.problem.Marker;
import hotside.problem.Verdict;
import hotside.relation.Values;
import hotside.unit.UnitSystem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The faded examples, diagrams and predictions of the open lesson: what each shows, and what
 * happens when a person touches one.
 */
final class LessonParts {
    private final Page page;
    private final Worker worker;
    private Habit habit = new Habit();
    private final FadedCard fadedCard;
    private final PredictCard predictCard;
    private final Map<String, Part.FadedExample> fadedPart = new LinkedHashMap<>();
    private final Map<String, ProblemState> faded = new LinkedHashMap<>();
    private final Map<String, PredictState> predicted = new LinkedHashMap<>();
    private final Map<String, Part.DiagramFigure> diagram = new LinkedHashMap<>();
    private final Map<String, Values> drawn = new LinkedHashMap<>();
    private Lesson lesson;
    private UnitSystem system = UnitSystem.SI_SHOP;

    LessonParts(Maths maths, Page page, Worker worker) {
        this.page = page;
        this.worker = worker;
        this.fadedCard = new FadedCard(maths);
        this.predictCard = new PredictCard(maths);
    }

    /** From now on numbers are read by a habit that others share. */
    void habit(Habit shared) {
        habit = shared;
    }

    /** Forgets the parts of the lesson before. */
    void open(Lesson opened, UnitSystem now) {
        lesson = opened;
        system = now;
        fadedPart.clear();
        faded.clear();
        predicted.clear();
        diagram.clear();
        drawn.clear();
    }

    /** Takes a part of the lesson, if it is of these kinds, and gives it an id. */
    Optional<String> add(Part part) {
        if (part instanceof Part.FadedExample f) {
            String id = "e" + (faded.size() + 1);
            fadedPart.put(id, f);
            faded.put(id, ProblemState.fresh(id, FadedCard.variant(f, system)));
            return Optional.of(id);
        }
        if (part instanceof Part.Prediction p) {
            String id = "r" + (predicted.size() + 1);
            predicted.put(id, PredictState.fresh(id, p));
            return Optional.of(id);
        }
        if (part instanceof Part.DiagramFigure d) {
            String id = "d" + (diagram.size() + 1);
            diagram.put(id, d);
            drawn.put(id, DiagramFigure.atRest(d));
            return Optional.of(id);
        }
        return Optional.empty();
    }

    /** Speaks another shop's units. Answers to faded examples go: the numbers are others. */
    void units(UnitSystem other) {
        system = other;
        faded.replaceAll(
                (id, state) -> ProblemState.fresh(id, FadedCard.variant(fadedPart.get(id), other)));
    }

    String html(Part part, String id) {
        if (faded.containsKey(id)) {
            return fadedCard.html(lesson, fadedPart.get(id), faded.get(id));
        }
        if (predicted.containsKey(id)) {
            return predictCard.html(predicted.get(id), system, values());
        }
        if (diagram.containsKey(id)) {
            return DiagramFigure.html(id, diagram.get(id), drawn.get(id), system, ambient());
        }
        return "";
    }

    /** Redraws the diagrams that follow a calculator. */
    void follow(Part.Calculator leader, Values values) {
        diagram.forEach(
                (id, part) -> {
                    if (part.follows().filter(c -> c == leader).isPresent()) {
                        drawn.put(id, DiagramFigure.following(part, values));
                        page.replace(
                                id,
                                DiagramFigure.inside(id, part, drawn.get(id), system, ambient()));
                    }
                });
    }

    void edit(String id, String slot, String kind, String value) {
        if (faded.containsKey(id)) {
            faded.put(id, faded.get(id).typed(0, value));
        } else if (predicted.containsKey(id)) {
            foretell(predicted.get(id), Integer.parseInt(slot), kind, value);
        }
    }

    void act(String action, String id) {
        if (faded.containsKey(id)) {
            actOnFaded(action, faded.get(id));
        } else if (predicted.containsKey(id)) {
            actOnPrediction(action, predicted.get(id));
        }
    }

    /** The state of a faded example, for tests and the tour. */
    Optional<ProblemState> faded(String id) {
        return Optional.ofNullable(faded.get(id));
    }

    /** The state of a prediction, for tests and the tour. */
    Optional<PredictState> predicted(String id) {
        return Optional.ofNullable(predicted.get(id));
    }

    private void actOnFaded(String action, ProblemState state) {
        if (action.equals("check")) {
            List<Optional<Verdict>> verdicts =
                    Marker.mark(state.variant(), state.typed(), habit.of(state.typed()));
            ProblemState judged = state.judged(verdicts, 0);
            page.replace(state.id() + "-verdict-0", fadedCard.verdict(judged));
            show(judged.solved() ? judged.working(true) : judged);
        } else if (action.equals("reveal")) {
            show(state.working(!state.working()));
        }
    }

    private void show(ProblemState state) {
        boolean turned = faded.get(state.id()).working() != state.working();
        faded.put(state.id(), state);
        if (turned) {
            String id = state.id();
            page.replace(id + "-steps", fadedCard.steps(fadedPart.get(id), state));
            page.replace(id + "-reveal", Html.escape(FadedCard.revealWord(state)));
        }
    }

    /** Before the cell has run, choices change; afterwards what was said stands. */
    private void foretell(PredictState state, int index, String kind, String value) {
        if (state.running() || state.answer().isPresent()) {
            return;
        }
        PredictState said =
                kind.equals("direction")
                        ? state.way(index, chosen(value, CellAnswer.Way::valueOf))
                        : state.extent(index, chosen(value, CellAnswer.Extent::valueOf));
        predicted.put(state.id(), said);
        if (said.complete() != state.complete()) {
            page.replace(state.id() + "-run", predictCard.run(said));
        }
    }

    private static <T> Optional<T> chosen(String value, Function<String, T> named) {
        return value.isEmpty() ? Optional.empty() : Optional.of(named.apply(value));
    }

    private void actOnPrediction(String action, PredictState state) {
        if (action.equals("again")) {
            PredictState fresh = PredictState.fresh(state.id(), state.part());
            predicted.put(state.id(), fresh);
            page.replace(state.id(), predictCard.inside(fresh, system, values()));
        } else if (action.equals("run") && state.complete() && !state.running()) {
            PredictState started = state.started();
            predicted.put(state.id(), started);
            page.replace(state.id() + "-run", predictCard.run(started));
            worker.run(
                    solving(started),
                    finished -> finished(started, finished),
                    fault -> finished(started, started.failed(String.valueOf(fault.getMessage()))));
        }
    }

    private static Supplier<PredictState> solving(PredictState started) {
        return () -> {
            try {
                return started.answered(CellAnswer.of(started.part()));
            } catch (RigException e) {
                return started.failed(e.getMessage());
            }
        };
    }

    /** The lesson may have been left, or opened afresh, while the cell ran. */
    private void finished(PredictState started, PredictState finished) {
        if (predicted.get(started.id()) == started) {
            predicted.put(started.id(), finished);
            page.replace(started.id() + "-run", predictCard.run(finished));
            page.replace(started.id() + "-result", predictCard.result(finished, system, values()));
        }
    }

    private Function<String, String> values() {
        return LessonPage.values(lesson, system);
    }

    private double ambient() {
        return new Computed(lesson, system).ambient();
    }
}

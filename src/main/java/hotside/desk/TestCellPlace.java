// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.cell.Channel;
import hotside.cell.Rig;
import hotside.cell.RigException;
import hotside.cell.Stock;
import hotside.content.WholeFile;
import hotside.page.ComparisonView;
import hotside.page.Html;
import hotside.page.TestCellPage;
import hotside.page.TestCellState;
import hotside.page.Words;
import hotside.runlog.ComparisonException;
import hotside.speech.Language;
import hotside.trial.Conclusion;
import hotside.trial.Judgement;
import hotside.trial.Plan;
import hotside.trial.PlanText;
import hotside.trial.Prediction;
import hotside.trial.Trial;
import hotside.trial.Watched;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/** The test cell: a plan is written, run beside the screen, read and judged. */
final class TestCellPlace implements Place {
    /** Width of charts at 100 % text. */
    private static final int CHART_WIDTH = 680;

    private final Page page;
    private final Figures figures;
    private final Worker worker;
    private final LongSupplier seeds;
    private final Chooser chooser;
    private final Consumer<Trial> openLogs;
    private final AtomicBoolean stop = new AtomicBoolean();
    private TestCellState state;
    private UnitSystem system = UnitSystem.SI_SHOP;
    private Optional<Trial> trial = Optional.empty();
    private Optional<Prediction> prediction = Optional.empty();
    private Optional<Conclusion> concluded = Optional.empty();
    private Language drawn = Language.spoken();
    private String band = Words.of("cell.band-hint");
    private int chartWidth = CHART_WIDTH;

    /**
     * @param openLogs shows a trial's logs in their own place
     */
    TestCellPlace(
            Page page,
            Worker worker,
            LongSupplier seeds,
            Chooser chooser,
            Consumer<Trial> openLogs) {
        this.page = page;
        this.figures = new Figures(page);
        this.worker = worker;
        this.seeds = seeds;
        this.chooser = chooser;
        this.openLogs = openLogs;
    }

    /** Made when it is first wanted, since that takes reading the rigs. */
    TestCellState state() {
        if (state == null) {
            state = TestCellState.fresh(Stock.shipped(), system);
        }
        return state;
    }

    @Override
    public String id() {
        return "cell";
    }

    @Override
    public void open() {
        boolean other = drawn != Language.spoken();
        if (other) {
            translate();
        }
        page.show(TestCellPage.html(state()), TestCellPage.text(state()));
        if (other) {
            concluded.ifPresent(this::judge);
        }
    }

    /** What was said in another language is said anew; a field that nobody changed, too. */
    private void translate() {
        drawn = Language.spoken();
        if (state().field("band").equals(band)) {
            state = state().typed("band", Words.of("cell.band-hint"));
        }
        band = Words.of("cell.band-hint");
        state = state().running(state().running()).unjudged();
        state = state().in(state().system(), trial.map(this::view));
    }

    @Override
    public void edit(String part, String slot, String kind, String value) {
        if (part.equals(TestCellPage.PART)) {
            state = state().typed(slot, value);
        }
    }

    @Override
    public void act(String action, String part, String argument) {
        if (!part.equals(TestCellPage.PART)) {
            return;
        }
        switch (action) {
            case "run" -> run();
            case "stop" -> stop.set(true);
            case "judge" -> judge();
            case "save" -> trial.ifPresent(this::save);
            case "logs" -> trial.ifPresent(openLogs);
            default -> {}
        }
    }

    @Override
    public void point(String part, double across) {
        figures.point(part, across);
    }

    @Override
    public void nudge(String part, int steps) {
        figures.nudge(part, steps);
    }

    @Override
    public void units(UnitSystem system) {
        this.system = system;
        if (state != null && state.system() != system) {
            state = state().in(system, state().result());
            redraw();
        }
    }

    @Override
    public void textSize(int percent) {
        int width = CHART_WIDTH * 100 / percent;
        if (width != chartWidth) {
            chartWidth = width;
            redraw();
        }
    }

    private void redraw() {
        state = state().in(state().system(), trial.map(this::view));
        open();
    }

    private ComparisonView view(Trial made) {
        ComparisonView view =
                new ComparisonView(
                        made.comparison(), state().system(), TestCellPage.PART, chartWidth);
        figures.clear();
        figures.putAll(view.figures());
        return view;
    }

    private void run() {
        if (state().running()) {
            return;
        }
        Plan plan;
        try {
            prediction = Optional.of(prediction());
            plan = plan();
        } catch (RigException e) {
            fault(e.getMessage());
            return;
        }
        stop.set(false);
        state = state().running(true);
        showStatus(TestCellPage.status(state()));
        long seed = seeds.getAsLong();
        worker.run(
                () -> Trial.run(plan, seed, this::progress, stop::get), this::done, this::failed);
    }

    private void progress(double share) {
        worker.tell(
                () -> {
                    if (state().running()) {
                        showStatus(TestCellPage.progress(TestCellPage.PART, share));
                    }
                });
    }

    private void done(Trial made) {
        trial = Optional.of(made);
        concluded = Optional.empty();
        try {
            state = state().result(view(made));
        } catch (ComparisonException e) {
            trial = Optional.empty();
            fault(e.getMessage());
            return;
        }
        showStatus("");
        page.replace(TestCellPage.RESULT, TestCellPage.result(state()));
        page.reveal("cell-pulls");
    }

    private void failed(RuntimeException e) {
        if (e instanceof CancellationException) {
            fault(Words.of("cell.stopped"));
        } else if (e instanceof RigException) {
            fault(e.getMessage());
        } else {
            throw e;
        }
    }

    private void fault(String text) {
        state = state().fault(text.endsWith(".") ? text : text + ".");
        showStatus(TestCellPage.status(state()));
    }

    private void showStatus(String html) {
        page.replace(TestCellPage.STATUS, html);
    }

    private Plan plan() {
        Rig rig = state().stock().rig(state().field("rig")).orElseThrow();
        double[] band = PlanText.band(state().field("band"));
        Set<Channel> logged = EnumSet.of(Channel.AMBIENT_PRESSURE);
        TestCellPage.LOGGABLE.stream()
                .filter(channel -> state().field("log-" + channel.label()).equals("true"))
                .forEach(logged::add);
        return new Plan(
                List.of(
                        PlanText.contestant(rig, state().stock(), state().field("a")),
                        PlanText.contestant(rig, state().stock(), state().field("b"))),
                state().field("order"),
                warmUp(),
                PlanText.interval(state().field("interval")),
                hold(rig),
                logged,
                band[0],
                band[1]);
    }

    private OptionalDouble hold(Rig rig) {
        return PlanText.boost(state().field("hold"), state().system(), rig.ambient().pressure());
    }

    private int warmUp() {
        String text = state().field("warm-up").strip();
        if (!text.matches("\\d{1,2}")) {
            throw new RigException(Words.of("cell.warm-up-unclear", text), "");
        }
        return Integer.parseInt(text);
    }

    private Prediction prediction() {
        Map<Watched, Prediction.Guess> guesses = new EnumMap<>(Watched.class);
        for (Watched watched : Watched.values()) {
            String way = state().field("way-" + watched.id());
            if (way.isEmpty()) {
                throw new RigException(Words.of("cell.predict-missing", watched.words()), "");
            }
            guesses.put(
                    watched,
                    PlanText.guess(
                            watched, way, state().field("size-" + watched.id()), state().system()));
        }
        return new Prediction(guesses);
    }

    private void judge() {
        if (trial.isEmpty() || state().running()) {
            return;
        }
        Conclusion conclusion;
        try {
            if (state().field("claim").isEmpty()) {
                throw new RigException(Words.of("cell.claim-missing"), "");
            }
            conclusion =
                    new Conclusion(
                            PlanText.power(state().field("gain"), state().system()),
                            PlanText.power(state().field("part"), state().system()),
                            PlanText.claim(state().field("claim")));
        } catch (RigException e) {
            state = state().unjudged().fault(e.getMessage());
            page.replace(TestCellPage.JUDGED, TestCellPage.judged(state()));
            return;
        }
        judge(conclusion);
    }

    private void judge(Conclusion conclusion) {
        concluded = Optional.of(conclusion);
        Plan plan = trial.orElseThrow().plan();
        UnitSystem system = state().system();
        worker.run(
                () -> Judgement.of(plan, prediction.orElseThrow(), conclusion, system),
                told -> {
                    state = state().judged(told);
                    page.replace(TestCellPage.JUDGED, TestCellPage.judged(state()));
                },
                this::failed);
    }

    private void save(Trial made) {
        Optional<Path> folder = chooser.folder(Words.of("cell.save"));
        if (folder.isEmpty()) {
            return;
        }
        try {
            for (int i = 0; i < made.logs().size(); i++) {
                WholeFile.write(
                        folder.get().resolve(made.logName(i)),
                        made.logs().get(i).getBytes(StandardCharsets.UTF_8));
            }
            String told = Words.of("cell.saved", made.logs().size(), folder.get());
            showStatus("<p class=\"quiet\">" + Html.escape(told) + "</p>");
        } catch (IOException e) {
            fault(Words.of("desk.cannot-write", folder.get(), e.getMessage()));
        }
    }
}

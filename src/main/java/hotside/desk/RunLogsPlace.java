// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.ComparisonView;
import hotside.page.RunLogsPage;
import hotside.page.RunLogsState;
import hotside.page.RunLogsState.LogFile;
import hotside.page.TestCellPage;
import hotside.page.Words;
import hotside.runlog.LogReader;
import hotside.runlog.LogReading;
import hotside.runlog.Mapping;
import hotside.runlog.ReadOptions;
import hotside.speech.Language;
import hotside.trial.Trial;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;

/** The run logs: files of any bench are opened, told apart, compared and split. */
final class RunLogsPlace implements Place {
    /** The remembered meanings of columns, one a line. */
    static final String REMEMBERED = "columns";

    /** Width of charts at 100 % text. */
    private static final int CHART_WIDTH = 680;

    private static final String MAP = "map-";

    private final Page page;
    private final Figures figures;
    private final Worker worker;
    private final Chooser chooser;
    private final Keeper keeper;
    private final Supplier<Trial> sample;
    private final AtomicBoolean stop = new AtomicBoolean();
    private final Map<String, LogSource> sources = new LinkedHashMap<>();
    private final Map<String, Written> written = new LinkedHashMap<>();
    private Language drawn = Language.spoken();
    private RunLogsState state = RunLogsState.fresh(UnitSystem.SI_SHOP);
    private int chartWidth = CHART_WIDTH;
    private int opened;

    /**
     * @param keeper remembers what columns were told to be
     * @param sample makes the logs of an invented comparison; may take a while
     */
    RunLogsPlace(Page page, Worker worker, Chooser chooser, Keeper keeper, Supplier<Trial> sample) {
        this.page = page;
        this.figures = new Figures(page);
        this.worker = worker;
        this.chooser = chooser;
        this.keeper = keeper;
        this.sample = sample;
        keeper.remembered(REMEMBERED)
                .ifPresent(
                        text ->
                                text.lines()
                                        .filter(line -> line.contains("="))
                                        .forEach(
                                                line -> {
                                                    int sign = line.lastIndexOf('=');
                                                    state =
                                                            state.typed(
                                                                    MAP + line.substring(0, sign),
                                                                    line.substring(sign + 1));
                                                }));
    }

    RunLogsState state() {
        return state;
    }

    @Override
    public String id() {
        return "logs";
    }

    @Override
    public void open() {
        page.show(RunLogsPage.html(state), RunLogsPage.text(state));
        if (drawn != Language.spoken() && !state.busy()) {
            drawn = Language.spoken();
            translate();
        }
    }

    /** What was said of the files in another language is said anew. */
    private void translate() {
        written.replaceAll(this::rewritten);
        boolean compared = state.result().isPresent();
        if (!sources.isEmpty()) {
            readAll(Map.copyOf(sources), compared ? this::compare : () -> {});
        }
    }

    /**
     * What the place itself has written into a field.
     *
     * @param words in the language spoken
     * @param text as it was written
     */
    private record Written(Supplier<String> words, String text) {}

    private void write(String field, Supplier<String> words) {
        written.put(field, new Written(words, words.get()));
        state = state.typed(field, words.get());
    }

    /** In the language spoken, unless somebody has typed something else since. */
    private Written rewritten(String field, Written old) {
        if (!state.field(field).equals(old.text)) {
            return old;
        }
        Written now = new Written(old.words, old.words.get());
        state = state.typed(field, now.text);
        return now;
    }

    @Override
    public void edit(String part, String slot, String kind, String value) {
        if (part.equals(RunLogsPage.PART)) {
            state = state.typed(slot, value);
        }
    }

    @Override
    public void act(String action, String part, String argument) {
        if (!part.equals(RunLogsPage.PART)) {
            return;
        }
        switch (action) {
            case "open" -> openFiles(chooser.files(Words.of("logs.open")));
            case "sample" -> openSample();
            case "stop" -> stop.set(true);
            case "remove" -> {
                sources.remove(argument);
                state = state.without(argument);
                open();
            }
            case "reread" -> reread();
            case "compare" -> compare();
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
        if (state.system() != system) {
            state = state.in(system);
            again();
        }
    }

    @Override
    public void textSize(int percent) {
        int width = CHART_WIDTH * 100 / percent;
        if (width != chartWidth) {
            chartWidth = width;
            again();
        }
    }

    private void again() {
        boolean compared = state.result().isPresent();
        open();
        if (compared) {
            compare();
        }
    }

    /** The logs of a trial, each as a file of its own, in place of what was open. */
    void openTrial(Trial trial) {
        state.files().forEach(file -> state = state.without(file.key()));
        sources.clear();
        written.clear();
        List<LogSource> more = new ArrayList<>();
        double ambient = trial.plan().parts().get(0).rig().ambient().pressure();
        for (int i = 0; i < trial.logs().size(); i++) {
            String key = "f" + (opened + 1 + i);
            more.add(LogSource.of(trial.logName(i), trial.logs().get(i)));
            int pull = i;
            UnitSystem system = state.system();
            write(key + "-label", () -> trial.partOf(pull));
            write(key + "-barometer", () -> Shown.of(ambient, Quantity.PRESSURE, system, 5).text());
        }
        read(more);
    }

    private void openSample() {
        if (state.busy()) {
            return;
        }
        state = state.busy(true);
        worker.run(
                sample,
                trial -> {
                    state = state.busy(false);
                    openTrial(trial);
                },
                this::failed);
    }

    void openFiles(List<Path> files) {
        List<LogSource> more = new ArrayList<>();
        for (Path file : files) {
            try {
                more.add(LogSource.of(file));
            } catch (IOException e) {
                fault(Words.of("logs.unreadable", file, e.getMessage()));
                return;
            }
        }
        read(more);
    }

    private void read(List<LogSource> more) {
        if (more.isEmpty() || state.busy()) {
            return;
        }
        Map<String, LogSource> keyed = new LinkedHashMap<>();
        more.forEach(source -> keyed.put("f" + ++opened, source));
        sources.putAll(keyed);
        readAll(keyed);
    }

    private void reread() {
        StringBuilder kept = new StringBuilder();
        state.typed()
                .forEach(
                        (name, value) -> {
                            if (name.startsWith(MAP) && !value.isBlank()) {
                                kept.append(name.substring(MAP.length()))
                                        .append('=')
                                        .append(value.strip())
                                        .append('\n');
                            }
                        });
        keeper.remember(REMEMBERED, kept.toString());
        readAll(Map.copyOf(sources));
    }

    private void readAll(Map<String, LogSource> keyed) {
        readAll(keyed, () -> {});
    }

    private void readAll(Map<String, LogSource> keyed, Runnable then) {
        if (state.busy()) {
            return;
        }
        Map<String, ReadOptions> options = new LinkedHashMap<>();
        try {
            for (String key : keyed.keySet()) {
                options.put(key, options(key));
            }
        } catch (IllegalArgumentException e) {
            fault(e.getMessage());
            return;
        }
        stop.set(false);
        state = state.busy(true);
        page.replace(RunLogsPage.STATUS, TestCellPage.progress(RunLogsPage.PART, 0));
        worker.run(
                () -> {
                    List<LogFile> read = new ArrayList<>();
                    keyed.forEach((key, source) -> read.add(read(key, source, options.get(key))));
                    return read;
                },
                read -> {
                    state = state.busy(false);
                    read.forEach(file -> state = state.with(file));
                    open();
                    then.run();
                },
                this::failed);
    }

    private ReadOptions options(String key) {
        String barometer = state.field(key + "-barometer");
        double ambient =
                barometer.isBlank()
                        ? Units.STANDARD_ATMOSPHERE
                        : LogSettings.number(
                                Words.of("logs.barometer"),
                                barometer,
                                Quantity.PRESSURE,
                                state.system());
        List<Mapping> mappings = new ArrayList<>();
        state.typed()
                .forEach(
                        (name, value) -> {
                            if (name.startsWith(MAP) && !value.isBlank()) {
                                mappings.add(
                                        Mapping.parse(
                                                name.substring(MAP.length())
                                                        + "="
                                                        + value.strip()));
                            }
                        });
        return ReadOptions.PLAIN.withAmbient(ambient).withMappings(mappings);
    }

    private LogFile read(String key, LogSource source, ReadOptions options) {
        double size = Math.max(1, source.size());
        try (WatchedStream in =
                new WatchedStream(
                        source.opener().open(),
                        count -> worker.tell(() -> progress(count / size)),
                        stop::get)) {
            // A column that this file does not have is no fault of the file: other files have it.
            LogReading plain =
                    new LogReader(options.withMappings(List.of())).read(source.name(), in);
            List<Mapping> fitting =
                    options.mappings().stream().filter(m -> hasColumn(plain, m.header())).toList();
            return new LogFile(
                    key,
                    source.name(),
                    fitting.isEmpty() ? plain : again(source, options.withMappings(fitting)),
                    source.invented());
        } catch (IOException e) {
            throw new UncheckedIOException(source.name(), e);
        }
    }

    private static LogReading again(LogSource source, ReadOptions options) throws IOException {
        try (var in = source.opener().open()) {
            return new LogReader(options).read(source.name(), in);
        }
    }

    private static boolean hasColumn(LogReading reading, String header) {
        return reading.log()
                .map(
                        log ->
                                log.columns().stream()
                                        .anyMatch(c -> c.header().equalsIgnoreCase(header)))
                .orElse(false);
    }

    private void progress(double share) {
        if (state.busy()) {
            page.replace(
                    RunLogsPage.STATUS,
                    TestCellPage.progress(RunLogsPage.PART, Math.min(1, share)));
        }
    }

    private void failed(RuntimeException e) {
        if (e instanceof CancellationException) {
            fault(Words.of("logs.stopped"));
        } else if (e instanceof UncheckedIOException io) {
            fault(Words.of("logs.unreadable", io.getMessage(), io.getCause().getMessage()));
        } else if (e instanceof IllegalArgumentException
                || e instanceof hotside.runlog.ComparisonException
                || e instanceof hotside.relation.RelationException) {
            fault(e.getMessage());
        } else {
            throw e;
        }
    }

    private void fault(String text) {
        state = state.fault(text);
        page.replace(RunLogsPage.STATUS, RunLogsPage.status(state));
        page.focus("place-title");
    }

    private void compare() {
        if (state.busy()) {
            return;
        }
        RunLogsState now = state;
        int width = chartWidth;
        worker.run(
                () ->
                        new ComparisonView(
                                LogSettings.comparison(now),
                                now.system(),
                                RunLogsPage.PART,
                                width,
                                LogSettings.smoothing(now),
                                LogSettings.notes(now)),
                view -> {
                    figures.clear();
                    figures.putAll(view.figures());
                    state = state.result(java.util.Optional.of(view));
                    page.replace(RunLogsPage.STATUS, "");
                    page.replace(RunLogsPage.RESULT, RunLogsPage.result(state));
                    page.reveal("logs-result-title");
                },
                this::failed);
    }
}

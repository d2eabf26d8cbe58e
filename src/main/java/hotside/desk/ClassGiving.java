// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.ClassResult;
import hotside.classroom.Composer;
import hotside.classroom.GivePage;
import hotside.classroom.HandPage;
import hotside.classroom.HandPoints;
import hotside.classroom.Ids;
import hotside.classroom.Marking;
import hotside.classroom.PaperAnswers;
import hotside.classroom.Papers;
import hotside.classroom.ProblemSet;
import hotside.classroom.QtiPackage;
import hotside.classroom.RefusedException;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.classroom.SetFile;
import hotside.classroom.SigningKey;
import hotside.classroom.Statements;
import hotside.classroom.StoppedException;
import hotside.classroom.TeachAgain;
import hotside.content.WholeFile;
import hotside.page.Html;
import hotside.page.Maths;
import hotside.page.PaperSheet;
import hotside.page.Words;
import hotside.problem.NoVariantException;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** What an instructor does in the class's place. */
final class ClassGiving {
    private static final int TOLD_EVERY = 10;
    private static final long PREVIEW_SEED = 1;

    /** Of each problem in a package for other programs. */
    private static final int VARIANTS = 10;

    private final Page page;
    private final Worker worker;
    private final Chooser chooser;
    private final Supplier<ProblemBank> bank;
    private final Maths maths;
    private final Path data;
    private final Clock clock;
    private final AtomicBoolean stop = new AtomicBoolean();
    private final Map<String, String> typed = new LinkedHashMap<>(GivePage.fresh());
    private final List<Template> chosen = new ArrayList<>();
    private Optional<Roster> roster = Optional.empty();
    private String rosterFrom = "";
    private Optional<SetFile> set = Optional.empty();
    private Optional<Marking.Result> worked = Optional.empty();
    private Optional<ClassResult> result = Optional.empty();
    private final PaperTyping typing;
    private long previewSeed = PREVIEW_SEED;
    private boolean busy;

    ClassGiving(
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
        this.maths = maths;
        this.data = data;
        this.clock = clock;
        this.typing = new PaperTyping(page, worker, data.resolve("class"));
    }

    void open() {
        String html = GivePage.html(state());
        page.show(html, PlainText.of(html));
    }

    private GivePage.State state() {
        TreeSet<String> skills = new TreeSet<>();
        Map<String, String> problems = new LinkedHashMap<>();
        for (Template t : bank.get().all()) {
            skills.add(t.skill());
            skills.add(t.skill().replaceFirst("\\..*", ""));
            problems.put(t.id(), t.title());
        }
        return new GivePage.State(
                Map.copyOf(typed),
                List.copyOf(skills),
                problems,
                List.copyOf(chosen),
                roster,
                rosterFrom,
                set,
                typing.html(),
                result);
    }

    void edit(String name, String value) {
        if (!typing.edit(name, value)) {
            typed.put(name, value);
        }
    }

    /** What is being typed in is done. */
    void finish() {
        typing.store();
    }

    /** Long work ends where it is. */
    void stop() {
        stop.set(true);
    }

    void act(String action, String argument) {
        if (action.equals("stop")) {
            stop();
            return;
        }
        if (action.startsWith("paper-")) {
            typing.act(action, argument);
            return;
        }
        if (busy) {
            return;
        }
        try {
            doing(action, argument);
        } catch (RefusedException | IllegalArgumentException | NoVariantException e) {
            told(e.getMessage());
        } catch (IOException | UncheckedIOException e) {
            told(Words.of("desk.cannot-write", "", e.getMessage()));
        }
    }

    private void doing(String action, String argument) throws IOException {
        switch (action) {
            case "roster-open" -> first(Words.of("class.roster-open")).ifPresent(this::roster);
            case "roster-fresh" -> freshRoster();
            case "choose" -> choose();
            case "add" ->
                    bank.get()
                            .find(typed.getOrDefault("problem", firstProblem()))
                            .ifPresent(this::add);
            case "take-out" -> {
                chosen.remove(Integer.parseInt(argument));
                showChosen();
            }
            case "up" -> {
                int at = Integer.parseInt(argument);
                chosen.add(Math.max(0, at - 1), chosen.remove(at));
                showChosen();
            }
            case "estimate" -> showChosen();
            case "preview" -> preview(Integer.parseInt(argument), PREVIEW_SEED);
            case "preview-other" -> preview(Integer.parseInt(argument), previewSeed + 1);
            case "save-set" -> saveSet();
            case "open-set" -> first(Words.of("class.open-set")).ifPresent(this::openSet);
            case "papers" -> papers();
            case "save-qti" -> saveQti();
            case "save-xapi" -> saveXapi();
            case "mark" -> mark();
            case "mark-paper" -> markPaper();
            case "hand-pick" -> pick(argument);
            case "hand-set" -> setByHand(true);
            case "hand-back" -> setByHand(false);
            case "save-tables" -> saveTables();
            case "save-reports" -> saveReports();
            case "save-drill" -> saveDrill();
            default -> {}
        }
    }

    private String firstProblem() {
        return bank.get().all().get(0).id();
    }

    private Optional<Path> first(String title) {
        return chooser.files(title).stream().findFirst();
    }

    /** True if this desk's own key has signed a set. */
    boolean signed(Path set) throws IOException {
        return Files.exists(keyFile()) && SetFile.read(set).key().equals(key().open());
    }

    void told(String text) {
        page.replace(GivePage.STATUS, Html.element("p", "", text));
        page.reveal(GivePage.STATUS);
    }

    void roster(Path file) {
        try {
            roster = Optional.of(Roster.read(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        rosterFrom = file.getFileName().toString();
        turnPapers();
        page.replace(GivePage.ROSTER, GivePage.roster(state()));
    }

    private void turnPapers() {
        typing.turnTo(set.map(file -> new Regrader(file.set(), bank.get())), roster);
    }

    private void freshRoster() throws IOException {
        int count = whole("fresh", 1, 10_000);
        Optional<Path> file = chooser.save(Words.of("class.roster-fresh"), "class.csv");
        if (file.isPresent()) {
            Roster made = Roster.fresh(count);
            WholeFile.write(file.get(), made.csv().getBytes(StandardCharsets.UTF_8));
            roster(file.get());
        }
    }

    private int whole(String name, int least, int most) {
        String text = typed.getOrDefault(name, "").strip();
        if (!text.matches("\\d{1,5}")
                || Integer.parseInt(text) < least
                || Integer.parseInt(text) > most) {
            throw new IllegalArgumentException(Words.of("class.whole-unclear", text, least, most));
        }
        return Integer.parseInt(text);
    }

    private void choose() {
        String levels = typed.getOrDefault("levels", "").strip();
        if (!levels.matches("[1-4](-[1-4])?")) {
            throw new IllegalArgumentException(Words.of("class.levels-unclear", levels));
        }
        int least = levels.charAt(0) - '0';
        int most = levels.charAt(levels.length() - 1) - '0';
        String skill = typed.getOrDefault("skill", "");
        chosen.clear();
        chosen.addAll(
                Composer.choose(
                        bank.get(),
                        skill.isEmpty() ? List.of() : List.of(skill),
                        least,
                        most,
                        whole("count", 1, ProblemSet.MOST_ITEMS)));
        showChosen();
    }

    private void add(Template template) {
        chosen.add(template);
        showChosen();
    }

    private void showChosen() {
        page.replace(GivePage.CHOSEN, GivePage.chosen(state()));
        page.replace(GivePage.PREVIEW, "");
    }

    private void preview(int number, long seed) {
        previewSeed = seed;
        Template template = chosen.get(number);
        Variant variant = Variants.draw(template, seed, units());
        PaperSheet sheet = new PaperSheet(maths);
        int points = GivePage.points(typed, template.id());
        page.replace(
                GivePage.PREVIEW,
                GivePage.preview(
                        template.title(),
                        sheet.toAnswer(number + 1, points, variant),
                        sheet.key(number + 1, points, variant),
                        number));
        page.reveal(GivePage.PREVIEW);
    }

    private UnitSystem units() {
        return typed.get("units").equals("us") ? UnitSystem.US_SHOP : UnitSystem.SI_SHOP;
    }

    private void saveSet() throws IOException {
        ProblemSet made = composed();
        Optional<Path> file = chooser.save(Words.of("class.save-set"), made.id() + SetFile.ENDING);
        if (file.isPresent()) {
            opened(SetFile.write(file.get(), made, key()));
        }
    }

    private SigningKey key() throws IOException {
        return SigningKey.kept(keyFile());
    }

    private Path keyFile() {
        return data.resolve("keys").resolve("instructor.key");
    }

    private ProblemSet composed() {
        return new ProblemSet(
                Ids.fresh(),
                1,
                typed.getOrDefault("title", "").strip(),
                Variants.GENERATOR_VERSION,
                new ProblemSet.Rules(
                        units(),
                        typed.get("numbers").equals("same")
                                ? ProblemSet.Numbers.SAME
                                : ProblemSet.Numbers.OWN,
                        whole("tries", 0, 100),
                        typed.get("hints").equals("true"),
                        typed.get("feedback").equals("now")
                                ? ProblemSet.Feedback.NOW
                                : ProblemSet.Feedback.AFTER_DUE,
                        due()),
                chosen.stream()
                        .map(t -> Composer.item(t, GivePage.points(typed, t.id())))
                        .toList());
    }

    private Optional<Instant> due() {
        String text = typed.getOrDefault("due", "").strip().replace(' ', 'T');
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDateTime due =
                    text.contains("T")
                            ? LocalDateTime.parse(text)
                            : LocalDate.parse(text).atTime(23, 59, 59);
            return Optional.of(due.atZone(clock.getZone()).toInstant());
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(Words.of("class.due") + ": \"" + text + "\"?");
        }
    }

    void openSet(Path file) {
        opened(SetFile.read(file));
    }

    private void opened(SetFile file) {
        new Regrader(file.set(), bank.get());
        set = Optional.of(file);
        result = Optional.empty();
        typed.keySet().removeAll(HandPage.FIELDS);
        turnPapers();
        page.replace(GivePage.SET, GivePage.set(state()));
        page.replace(GivePage.RESULT, "");
        page.replace(GivePage.STATUS, "");
    }

    /** Long work beside the screen, which can be stopped; it is told at once that it has begun. */
    private <T> void atLength(Supplier<T> work, Consumer<T> done) {
        page.replace(GivePage.STATUS, GivePage.working());
        page.reveal(GivePage.STATUS);
        run(work, done);
    }

    private <T> void run(Supplier<T> work, Consumer<T> done) {
        busy = true;
        stop.set(false);
        worker.run(
                work,
                made -> {
                    busy = false;
                    done.accept(made);
                },
                e -> {
                    busy = false;
                    if (e instanceof StoppedException) {
                        told(Words.of("class.stopped"));
                    } else if (e instanceof RefusedException || e instanceof UncheckedIOException) {
                        told(e.getMessage());
                    } else {
                        throw e;
                    }
                });
    }

    private boolean progress(int done, int all) {
        if (done % TOLD_EVERY == 0 || done == 1) {
            worker.tell(
                    () -> {
                        if (busy) {
                            page.replace(GivePage.STATUS, GivePage.progress(done, all));
                        }
                    });
        }
        return !stop.get();
    }

    private void papers() {
        if (set.isEmpty() || roster.isEmpty()) {
            told(Words.of("class.papers-need"));
            return;
        }
        Optional<Path> folder = chooser.folder(Words.of("class.papers"));
        if (folder.isEmpty()) {
            return;
        }
        Regrader regrader = new Regrader(set.get().set(), bank.get());
        Roster all = roster.get();
        atLength(
                () -> {
                    try {
                        new Papers(regrader, maths)
                                .write(
                                        folder.get(),
                                        all,
                                        EnumSet.of(Papers.Form.PDF),
                                        this::progress);
                        return all.all().size();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                count -> told(Words.of("class.papers-done", count, folder.get())));
    }

    private void mark() {
        if (set.isEmpty()) {
            told(Words.of("class.mark-need"));
            return;
        }
        chooser.folder(Words.of("class.mark")).ifPresent(this::mark);
    }

    private void markPaper() {
        if (set.isEmpty()) {
            told(Words.of("class.mark-need"));
        } else if (!Files.exists(typing.file(set.get().set()))) {
            told(Words.of("class.paper-none-typed"));
        } else {
            mark(Optional.empty());
        }
    }

    /** Marks a folder of work on the open set, and what was typed in from paper. */
    void mark(Path folder) {
        mark(Optional.of(folder));
    }

    private void mark(Optional<Path> folder) {
        Regrader regrader = new Regrader(set.get().set(), bank.get());
        Marking marking =
                new Marking(set.get(), regrader, roster, "true".equals(typed.get("accept-late")));
        Path paper = typing.file(set.get().set());
        Path byHand = byHand();
        Optional<Roster> all = roster;
        atLength(
                () -> {
                    try {
                        Marking.Result taken =
                                folder.isEmpty()
                                        ? new Marking.Result(List.of(), List.of())
                                        : marking.mark(Marking.files(folder.get()), this::progress);
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
        page.replace(GivePage.RESULT, GivePage.result(state()));
    }

    /** Where points set by hand are kept, whether there are any or not. */
    private Path byHand() {
        ProblemSet open = set.orElseThrow().set();
        return data.resolve("class").resolve(open.id() + "-" + open.edition() + "-points.csv");
    }

    private void pick(String argument) {
        String[] parts = argument.split("-", 3);
        typed.put(HandPage.SLOT, parts[0]);
        typed.put(HandPage.LEARNER, parts[2]);
        typed.put(HandPage.POINTS, "");
        typed.put(HandPage.REASON, "");
        page.replace(HandPage.PLACE, HandPage.html(result.orElseThrow(), typed));
        page.focus("class-" + HandPage.POINTS);
    }

    /** Sets the points that the form says, or takes them back; the marks follow at once. */
    private void setByHand(boolean sets) {
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
        Optional<Roster> all = roster;
        Marking.Result before = worked.orElseThrow();
        run(
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

    private void saveTables() {
        if (result.isPresent()) {
            ClassResult made = result.get();
            chooser.folder(Words.of("class.save-tables"))
                    .ifPresent(folder -> saving(folder, () -> made.tables(folder)));
        }
    }

    /** Something that may fail as files do. */
    private interface Filing {
        void run() throws IOException;
    }

    private void saving(Path to, Filing filing) {
        atLength(
                () -> {
                    try {
                        filing.run();
                        return to;
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                where -> told(Words.of("class.saved", where)));
    }

    private void saveReports() {
        if (result.isPresent()) {
            ClassResult made = result.get();
            chooser.folder(Words.of("class.save-reports"))
                    .ifPresent(
                            folder ->
                                    saving(
                                            folder,
                                            () ->
                                                    new Papers(made.regrader(), maths)
                                                            .reports(
                                                                    folder,
                                                                    made,
                                                                    EnumSet.of(Papers.Form.PDF),
                                                                    this::progress)));
        }
    }

    private void saveDrill() throws IOException {
        if (result.isEmpty()) {
            return;
        }
        Optional<ProblemSet> drill =
                TeachAgain.drill(result.get().again(), result.get().regrader().set(), bank.get());
        if (drill.isEmpty()) {
            told(Words.of("class.again-none"));
            return;
        }
        Optional<Path> file =
                chooser.save(Words.of("class.save-drill"), drill.get().id() + SetFile.ENDING);
        if (file.isPresent()) {
            SetFile.write(file.get(), drill.get(), key());
            told(Words.of("class.saved", file.get()));
        }
    }

    private void saveQti() {
        if (set.isEmpty()) {
            told(Words.of("class.mark-need"));
            return;
        }
        ProblemSet open = set.get().set();
        chooser.save(Words.of("class.save-qti"), open.id() + ".zip")
                .ifPresent(
                        to ->
                                saving(
                                        to,
                                        () ->
                                                new QtiPackage(
                                                                new Regrader(open, bank.get()),
                                                                VARIANTS,
                                                                maths)
                                                        .write(to)));
    }

    private void saveXapi() {
        if (result.isPresent()) {
            ClassResult made = result.get();
            chooser.save(Words.of("class.save-xapi"), "statements.json")
                    .ifPresent(
                            to ->
                                    saving(
                                            to,
                                            () ->
                                                    Statements.write(
                                                            to, made.regrader(), made.marked())));
        }
    }
}

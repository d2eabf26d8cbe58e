// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.Composer;
import hotside.classroom.GivePage;
import hotside.classroom.Ids;
import hotside.classroom.Papers;
import hotside.classroom.ProblemSet;
import hotside.classroom.QtiPackage;
import hotside.classroom.RefusedException;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.classroom.SetFile;
import hotside.classroom.SigningKey;
import hotside.content.WholeFile;
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
import java.util.function.Supplier;

/** What an instructor does in the class's place: composes, prints and hands out sets. */
final class ClassGiving {
    private static final long PREVIEW_SEED = 1;

    /** Of each problem in a package for other programs. */
    private static final int VARIANTS = 10;

    private final Page page;
    private final Chooser chooser;
    private final Supplier<ProblemBank> bank;
    private final Maths maths;
    private final Path data;
    private final Clock clock;
    private final Map<String, String> typed = new LinkedHashMap<>(GivePage.fresh());
    private final List<Template> chosen = new ArrayList<>();
    private Optional<Roster> roster = Optional.empty();
    private String rosterFrom = "";
    private Optional<SetFile> set = Optional.empty();
    private final PaperTyping typing;
    private final LongWork work;
    private final ClassMarking marking;
    private long previewSeed = PREVIEW_SEED;

    ClassGiving(
            Page page,
            Worker worker,
            Chooser chooser,
            Supplier<ProblemBank> bank,
            Maths maths,
            Path data,
            Clock clock) {
        this.page = page;
        this.chooser = chooser;
        this.bank = bank;
        this.maths = maths;
        this.data = data;
        this.clock = clock;
        Path kept = data.resolve("class");
        this.typing = new PaperTyping(page, worker, kept);
        this.work = new LongWork(page, worker);
        this.marking =
                new ClassMarking(
                        page, work, chooser, new WhatIsOpen(), typing, typed, maths, kept, clock);
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
                marking.result());
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
        work.stop();
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
        if (work.isBusy()) {
            return;
        }
        try {
            doing(action, argument);
        } catch (RefusedException | IllegalArgumentException | NoVariantException e) {
            work.told(e.getMessage());
        } catch (IOException | UncheckedIOException e) {
            work.told(Words.of("desk.cannot-write", "", e.getMessage()));
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
            case "save-xapi" -> marking.saveXapi();
            case "mark" -> marking.mark();
            case "mark-paper" -> marking.markPaper();
            case "hand-pick" -> marking.pick(argument);
            case "hand-set" -> marking.setByHand(true);
            case "hand-back" -> marking.setByHand(false);
            case "save-tables" -> marking.saveTables();
            case "save-reports" -> marking.saveReports();
            case "save-drill" -> marking.saveDrill();
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
        work.told(text);
    }

    /** Marks a folder of work on the open set, and what was typed in from paper. */
    void mark(Path folder) {
        marking.mark(folder);
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
        marking.forget();
        turnPapers();
        page.replace(GivePage.SET, GivePage.set(state()));
        page.replace(GivePage.STATUS, "");
    }

    private void papers() {
        if (set.isEmpty() || roster.isEmpty()) {
            work.told(Words.of("class.papers-need"));
            return;
        }
        Optional<Path> folder = chooser.folder(Words.of("class.papers"));
        if (folder.isEmpty()) {
            return;
        }
        Regrader regrader = new Regrader(set.get().set(), bank.get());
        Roster all = roster.get();
        work.atLength(
                () -> {
                    try {
                        new Papers(regrader, maths)
                                .write(
                                        folder.get(),
                                        all,
                                        EnumSet.of(Papers.Form.PDF),
                                        work::progress);
                        return all.all().size();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                count -> work.told(Words.of("class.papers-done", count, folder.get())));
    }

    private void saveQti() {
        if (set.isEmpty()) {
            work.told(Words.of("class.mark-need"));
            return;
        }
        ProblemSet open = set.get().set();
        chooser.save(Words.of("class.save-qti"), open.id() + ".zip")
                .ifPresent(
                        to ->
                                work.saving(
                                        to,
                                        () ->
                                                new QtiPackage(
                                                                new Regrader(open, bank.get()),
                                                                VARIANTS,
                                                                maths)
                                                        .write(to)));
    }

    private final class WhatIsOpen implements ClassMarking.Open {
        @Override
        public Optional<SetFile> set() {
            return set;
        }

        @Override
        public Optional<Roster> roster() {
            return roster;
        }

        @Override
        public ProblemBank bank() {
            return bank.get();
        }

        @Override
        public SigningKey key() throws IOException {
            return ClassGiving.this.key();
        }

        @Override
        public GivePage.State state() {
            return ClassGiving.this.state();
        }
    }
}

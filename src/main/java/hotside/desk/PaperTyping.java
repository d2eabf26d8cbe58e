// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.classroom.PaperAnswers;
import hotside.classroom.PaperCode;
import hotside.classroom.PaperPage;
import hotside.classroom.PaperQuestion;
import hotside.classroom.PaperReading;
import hotside.classroom.ProblemSet;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.content.Finding;
import hotside.page.Html;
import hotside.page.Words;
import hotside.problem.Variant;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Typing in answers from paper. Every key goes into a file at once; the file is read once, before
 * anything is written, and written by the worker alone, one thing after the other. What the screen
 * shows is kept beside it.
 */
final class PaperTyping {
    private final Page page;
    private final Worker worker;
    private final Path folder;
    private final Map<Path, PaperAnswers> read = new HashMap<>();
    private final Map<String, String> typed = new HashMap<>();
    private final Map<Integer, Variant> variants = new HashMap<>();
    private Optional<Regrader> regrader = Optional.empty();
    private Optional<Roster> roster = Optional.empty();
    private Optional<Roster.Learner> open = Optional.empty();

    /**
     * @param folder where the answers are kept, a file for each set
     */
    PaperTyping(Page page, Worker worker, Path folder) {
        this.page = page;
        this.worker = worker;
        this.folder = folder;
    }

    /** Another set or another list of learners was opened. */
    void turnTo(Optional<Regrader> set, Optional<Roster> learners) {
        regrader = set;
        roster = learners;
        turn(Optional.empty());
        page.replace(PaperPage.SHEET, "");
        page.replace(PaperPage.TOLD, "");
        page.replace(PaperPage.LIST, state().map(PaperPage::list).orElse(""));
    }

    String html() {
        return PaperPage.html(typed, state());
    }

    private Optional<PaperPage.State> state() {
        if (regrader.isEmpty() || roster.isEmpty()) {
            return Optional.empty();
        }
        Path file = file(regrader.get().set());
        return Optional.of(
                new PaperPage.State(
                        regrader.get(), roster.get(), answers(), file.toString(), open));
    }

    /** Where the answers to a set are kept, whether there are any or not. */
    Path file(ProblemSet set) {
        return folder.resolve(set.id() + "-" + set.edition() + "-paper.csv");
    }

    private PaperAnswers answers() {
        Path file = file(regrader.orElseThrow().set());
        return read.computeIfAbsent(file, this::readFrom);
    }

    private PaperAnswers readFrom(Path file) {
        if (!Files.exists(file)) {
            return new PaperAnswers();
        }
        try {
            PaperAnswers answers =
                    PaperAnswers.read(file, regrader.orElseThrow(), Optional.empty());
            if (!answers.findings().isEmpty()) {
                told(
                        answers.findings().stream()
                                .map(Finding::oneLine)
                                .collect(Collectors.joining(" ")));
            }
            return answers;
        } catch (IOException e) {
            // Each key will say once more that it cannot be kept there.
            told(Words.of("class.paper-not-kept", e.getMessage()));
            return new PaperAnswers();
        }
    }

    private void turn(Optional<Roster.Learner> learner) {
        open = learner;
        variants.clear();
    }

    /** A field got another content; false if it is none of these. */
    boolean edit(String name, String value) {
        if (name.equals(PaperPage.CODE)) {
            typed.put(name, value);
            return true;
        }
        Optional<PaperQuestion> question = PaperQuestion.of(name);
        if (open.isPresent()) {
            question.ifPresent(q -> type(q, value));
        }
        return question.isPresent();
    }

    private void type(PaperQuestion question, String value) {
        String text = value.strip();
        String before = given(question).get(question.ask());
        // Leaving a field tells its content once more: then even half a number is spoken of.
        echo(question, text, text.equals(before));
        if (!text.equals(before)) {
            keep(question, text);
        }
    }

    private void keep(PaperQuestion question, String text) {
        String learner = open.orElseThrow().id();
        answers().type(regrader.orElseThrow(), learner, question, text);
        Path file = file(regrader.orElseThrow().set());
        file(() -> PaperAnswers.add(file, learner, question.slot(), question.ask(), text));
    }

    private List<String> given(PaperQuestion question) {
        int asks = regrader.orElseThrow().template(question.slot()).asks().size();
        return answers().of(open.orElseThrow().id(), question.slot(), asks);
    }

    private void echo(PaperQuestion question, String text, boolean whole) {
        List<String> all = new ArrayList<>(given(question));
        all.set(question.ask(), text);
        Variant variant =
                variants.computeIfAbsent(
                        question.slot(),
                        slot -> regrader.orElseThrow().variant(open.orElseThrow().id(), slot));
        PaperReading reading = PaperReading.of(variant, all, question.ask(), DecimalHabit.spoken());
        page.replace(
                PaperPage.readId(question),
                whole || reading.understood() ? Html.escape(reading.words()) : "");
    }

    /** Something that may fail as files do. */
    private interface Filing {
        void run() throws IOException;
    }

    private void file(Filing filing) {
        worker.run(
                () -> {
                    try {
                        filing.run();
                        return true;
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                done -> {},
                e -> told(Words.of("class.paper-not-kept", e.getMessage())));
    }

    private void told(String text) {
        page.replace(PaperPage.TOLD, Html.element("p", "", text));
    }

    /** A button was pressed or Enter in a field. */
    void act(String action, String argument) {
        if (state().isEmpty()) {
            told(Words.of("class.paper-need"));
            return;
        }
        switch (action) {
            case "paper-open" -> openByCode();
            case "paper-again" -> roster.orElseThrow().find(argument).ifPresent(this::open);
            case "paper-store" -> store();
            default ->
                    PaperQuestion.of(action.replaceFirst("^paper-next", "paper"))
                            .filter(q -> open.isPresent())
                            .ifPresent(this::next);
        }
    }

    private void openByCode() {
        String code = typed.getOrDefault(PaperPage.CODE, "");
        if (code.isBlank()) {
            page.focus(PaperPage.CODE_FIELD);
            return;
        }
        PaperCode meant = PaperCode.read(regrader.orElseThrow().set(), roster.orElseThrow(), code);
        if (meant.whose().isEmpty()) {
            told(meant.said());
            page.focus(PaperPage.CODE_FIELD);
        } else {
            open(meant.whose().get());
        }
    }

    private void open(Roster.Learner learner) {
        turn(Optional.of(learner));
        page.replace(PaperPage.TOLD, "");
        page.replace(PaperPage.SHEET, PaperPage.sheet(state().orElseThrow()));
        List<PaperQuestion> questions = PaperQuestion.all(regrader.orElseThrow());
        for (PaperQuestion question : questions) {
            String answer = given(question).get(question.ask());
            if (!answer.isBlank()) {
                echo(question, answer, true);
            }
        }
        page.reveal(PaperPage.SHEET);
        focus(questions.get(0));
    }

    private void focus(PaperQuestion question) {
        page.focus("class-" + question.field());
    }

    private void next(PaperQuestion question) {
        List<PaperQuestion> questions = PaperQuestion.all(regrader.orElseThrow());
        echo(question, given(question).get(question.ask()), true);
        int after = questions.indexOf(question) + 1;
        if (after < questions.size()) {
            focus(questions.get(after));
        } else {
            store();
        }
    }

    /** Puts the open paper to the others and asks for the next code. Without one, nothing. */
    void store() {
        if (open.isEmpty()) {
            return;
        }
        Roster.Learner learner = open.get();
        if (!answers().learners().contains(learner.id())) {
            // An empty paper was handed in all the same.
            keep(new PaperQuestion(0, 0), "");
        }
        Regrader set = regrader.orElseThrow();
        Path file = file(set.set());
        file(() -> PaperAnswers.tidy(file, set));
        turn(Optional.empty());
        typed.put(PaperPage.CODE, "");
        page.put(PaperPage.CODE_FIELD, "");
        page.replace(PaperPage.SHEET, "");
        page.replace(PaperPage.LIST, PaperPage.list(state().orElseThrow()));
        told(
                Words.of(
                        "class.paper-stored",
                        learner.shown(),
                        answers().answered(learner.id()),
                        PaperQuestion.all(set).size()));
        page.focus(PaperPage.CODE_FIELD);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Finding;
import hotside.content.WholeFile;
import hotside.problem.Template;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;

/**
 * Answers typed in from paper: a CSV file with a line for each answer, of which the last to a
 * question counts. It grows line by line, so that nothing typed is lost.
 */
public final class PaperAnswers {
    private static final List<String> HEAD =
            List.of("learner_id", "problem_number", "question_number", "answer");

    private final Map<String, Map<Integer, List<String>>> byLearner = new TreeMap<>();
    private final CsvLines lines = CsvLines.under(HEAD);

    /** None yet. */
    public PaperAnswers() {}

    /** Whose papers were typed in, by id. */
    public List<String> learners() {
        return List.copyOf(byLearner.keySet());
    }

    /** A learner's answers to a problem, one for each question; blank for none. */
    public List<String> of(String learner, int slot, int asks) {
        return List.copyOf(
                byLearner
                        .getOrDefault(learner, Map.of())
                        .getOrDefault(slot, Collections.nCopies(asks, "")));
    }

    /** To how many questions a learner's paper has an answer. */
    public int answered(String learner) {
        return (int)
                byLearner.getOrDefault(learner, Map.of()).values().stream()
                        .flatMap(List::stream)
                        .filter(answer -> !answer.isBlank())
                        .count();
    }

    /** Takes an answer, in place of the one before. */
    public void type(Regrader regrader, String learner, PaperQuestion question, String answer) {
        int asks = regrader.template(question.slot()).asks().size();
        put(learner, question.slot(), question.ask(), asks, answer.strip());
    }

    /**
     * Writes a file anew with the last answer to each question only. What it holds besides, such as
     * lines that do not fit the set, is never thrown away: then it stays as it is.
     */
    public static void tidy(Path file, Regrader regrader) throws IOException {
        PaperAnswers answers = read(file, regrader, Optional.empty());
        if (answers.findings().isEmpty()) {
            WholeFile.write(file, answers.csv().getBytes(StandardCharsets.UTF_8));
        }
    }

    private String csv() {
        StringBuilder text = new StringBuilder();
        CsvText csv = new CsvText(text);
        csv.row(HEAD);
        byLearner.forEach(
                (learner, slots) ->
                        new TreeMap<>(slots)
                                .forEach(
                                        (slot, given) -> {
                                            for (int ask = 0; ask < given.size(); ask++) {
                                                csv.row(
                                                        List.of(
                                                                learner,
                                                                slot + 1,
                                                                ask + 1,
                                                                given.get(ask)));
                                            }
                                        }));
        return text.toString();
    }

    /**
     * Whose paper bears a code.
     *
     * @param typed the code or the learner's id, in any case and with or without hyphen
     */
    public static Optional<Roster.Learner> whose(ProblemSet set, Roster roster, String typed) {
        String code = Hashes.readable(typed);
        return roster.all().stream()
                .filter(
                        l ->
                                l.id().equals(typed.strip())
                                        || set.paperCode(l.id()).replace("-", "").equals(code))
                .findFirst();
    }

    /** Adds one answer to a file, with a head if the file is new. */
    public static void add(Path file, String learner, int slot, int ask, String answer)
            throws IOException {
        GrowingFile.add(file, row(HEAD), row(List.of(learner, slot + 1, ask + 1, answer)));
    }

    private static String row(List<?> cells) {
        StringBuilder text = new StringBuilder();
        new CsvText(text).row(cells);
        return text.toString();
    }

    /** Reads such a file. Lines that do not fit the set or the roster become findings. */
    public static PaperAnswers read(Path file, Regrader regrader, Optional<Roster> roster)
            throws IOException {
        PaperAnswers answers = new PaperAnswers();
        answers.lines.read(
                file,
                ClassWords.of("answers.large", file),
                (line, row) -> answers.add(line, row, regrader, roster));
        return answers;
    }

    private void add(long line, CSVRecord row, Regrader regrader, Optional<Roster> roster) {
        String learner = row.get(0).strip();
        int slot = number(row.get(1)) - 1;
        int ask = number(row.get(2)) - 1;
        int slots = regrader.set().items().size();
        if (!Ids.isId(learner) || roster.isPresent() && roster.get().find(learner).isEmpty()) {
            lines.wrong(
                    line,
                    ClassWords.of("answers.stranger", learner),
                    ClassWords.of("answers.learner"));
        } else if (byLearner.size() >= Roster.MOST && !byLearner.containsKey(learner)) {
            lines.wrong(line, ClassWords.of("roster.many", Roster.MOST), "");
        } else if (slot < 0 || slot >= slots) {
            lines.wrong(
                    line,
                    ClassWords.of("answers.no-problem", row.get(1)),
                    ClassWords.of("answers.range", slots));
        } else {
            Template template = regrader.template(slot);
            int asks = template.asks().size();
            if (ask < 0 || ask >= asks) {
                lines.wrong(
                        line,
                        ClassWords.of("answers.no-question", row.get(1)),
                        ClassWords.of("answers.range", asks));
            } else {
                put(learner, slot, ask, asks, CsvText.unguarded(row.get(3)));
            }
        }
    }

    private void put(String learner, int slot, int ask, int asks, String answer) {
        byLearner
                .computeIfAbsent(learner, l -> new LinkedHashMap<>())
                .computeIfAbsent(slot, s -> new ArrayList<>(Collections.nCopies(asks, "")))
                .set(ask, answer.substring(0, Math.min(answer.length(), WorkLines.LONGEST_ANSWER)));
    }

    private static int number(String text) {
        return text.strip().matches("\\d{1,3}") ? Integer.parseInt(text.strip()) : 0;
    }

    public List<Finding> findings() {
        return lines.findings();
    }

    /** Marks them, and joins them with what was handed in as files, which goes before paper. */
    public Marking.Result join(Marking.Result files, Regrader regrader, Instant now) {
        List<MarkedHandIn> marked = new ArrayList<>(files.marked());
        List<Marking.SetAside> aside = new ArrayList<>(files.aside());
        byLearner.forEach(
                (learner, answers) -> {
                    if (files.marked().stream().anyMatch(m -> m.learner().equals(learner))) {
                        aside.add(
                                new Marking.SetAside(
                                        "paper",
                                        learner,
                                        Reason.DUPLICATE,
                                        ClassWords.of("answers.twice")));
                    } else {
                        marked.add(
                                regrader.mark(
                                        "paper", learner, answers, DecimalHabit.spoken(), now));
                    }
                });
        marked.sort(Comparator.comparing(MarkedHandIn::learner));
        return new Marking.Result(marked, aside);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.WholeFile;
import hotside.page.Words;
import hotside.problem.Answers;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What a class did with a set: marks, analysis, mistakes, what to teach again, and their tables.
 */
public final class ClassResult {
    private final Regrader regrader;
    private final Roster roster;
    private final Marking.Result result;
    private final ItemAnalysis analysis;
    private final List<MistakeCount> mistakes;
    private final List<TeachAgain> again;
    private final Map<String, MarkedHandIn> byLearner = new LinkedHashMap<>();
    private final Map<String, List<String>> likeness;

    /**
     * @param roster who belongs to the class; if there is none, those who handed in
     */
    public ClassResult(Regrader regrader, Optional<Roster> roster, Marking.Result result) {
        this.regrader = regrader;
        this.result = result;
        this.roster = roster.orElseGet(() -> whoHandedIn(result));
        result.marked().forEach(m -> byLearner.put(m.learner(), m));
        ProblemSet set = regrader.set();
        double[][] scores =
                result.marked().stream()
                        .map(m -> m.items().stream().mapToDouble(MarkedItem::reached).toArray())
                        .toArray(double[][]::new);
        double[] most = set.items().stream().mapToDouble(ProblemSet.Item::points).toArray();
        this.analysis = ItemAnalysis.of(scores, most);
        this.mistakes = MistakeCount.of(result.marked(), set.items().size());
        this.again = TeachAgain.of(regrader, result.marked(), mistakes);
        this.likeness =
                set.rules().numbers() == ProblemSet.Numbers.OWN
                        ? Likeness.remarks(result.marked(), set.items().size())
                        : Map.of();
    }

    private static Roster whoHandedIn(Marking.Result result) {
        return Roster.of(
                result.marked().stream()
                        .map(m -> new Roster.Learner(m.learner(), m.learner(), ""))
                        .toList());
    }

    public Regrader regrader() {
        return regrader;
    }

    public Roster roster() {
        return roster;
    }

    public List<MarkedHandIn> marked() {
        return result.marked();
    }

    public List<Marking.SetAside> aside() {
        return result.aside();
    }

    public ItemAnalysis analysis() {
        return analysis;
    }

    public List<MistakeCount> mistakes() {
        return mistakes;
    }

    public List<TeachAgain> again() {
        return again;
    }

    /** A learner's work, if it was marked. */
    public Optional<MarkedHandIn> of(String learner) {
        return Optional.ofNullable(byLearner.get(learner));
    }

    /**
     * True if so few were marked that no share or index is told of the class, but how many of how
     * many.
     */
    public boolean isSmall() {
        return marked().size() < Discrimination.FEWEST;
    }

    /** How many have all points of a problem. */
    public int full(int slot) {
        return (int)
                marked().stream()
                        .map(m -> m.items().get(slot))
                        .filter(item -> item.reached() > item.points() - 1e-9)
                        .count();
    }

    /**
     * An answer that cannot be judged as it stands.
     *
     * @param in whose
     * @param slot of which problem
     * @param ask to which question
     */
    public record Unsettled(MarkedHandIn in, int slot, int ask) {
        /** As typed. */
        public String answer() {
            return in.items().get(slot).answers().get(ask);
        }

        /** What stands in the way. */
        public String why() {
            return in.items().get(slot).verdicts().get(ask).orElseThrow().feedback();
        }
    }

    /** All answers that a person should look at. */
    public List<Unsettled> unsettled() {
        List<Unsettled> all = new ArrayList<>();
        for (MarkedHandIn in : marked()) {
            for (int slot = 0; slot < in.items().size(); slot++) {
                MarkedItem item = in.items().get(slot);
                for (int ask = 0; item.unsettled() && ask < item.verdicts().size(); ask++) {
                    if (item.verdicts().get(ask).map(v -> !v.kind().counts()).orElse(false)) {
                        all.add(new Unsettled(in, slot, ask));
                    }
                }
            }
        }
        return all;
    }

    /** What was set by hand in a learner's work, for people: {@code problem 3: 2 in place of 0}. */
    public List<String> byHand(MarkedHandIn in) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < in.items().size(); i++) {
            MarkedItem item = in.items().get(i);
            int number = i + 1;
            item.byHand()
                    .ifPresent(
                            hand ->
                                    told.add(
                                            Words.of(
                                                    "class.by-hand",
                                                    number,
                                                    number(hand.points()),
                                                    number(item.worked()),
                                                    hand.reason())));
        }
        return told;
    }

    /** What the instructor may want to know of a learner's work. */
    public List<String> remarks(MarkedHandIn in) {
        List<String> remarks = new ArrayList<>(in.remarks());
        remarks.addAll(likeness.getOrDefault(in.learner(), List.of()));
        List<String> unsettled =
                IntStream.range(0, in.items().size())
                        .filter(i -> in.items().get(i).unsettled())
                        .mapToObj(i -> String.valueOf(i + 1))
                        .toList();
        if (!unsettled.isEmpty()) {
            remarks.add(
                    ClassWords.of(
                            unsettled.size() == 1 ? "remark.unsettled" : "remark.unsettled-more",
                            String.join(", ", unsettled)));
        }
        return remarks;
    }

    /** A row for each learner of the roster: points for each problem and their sum. */
    public void marksCsv(Writer out) {
        CsvText csv = new CsvText(out);
        List<Object> head = new ArrayList<>(List.of("learner_id", "display_name", "group"));
        List<ProblemSet.Item> items = regrader.set().items();
        for (int i = 0; i < items.size(); i++) {
            head.add("p" + (i + 1) + " " + items.get(i).problem());
        }
        head.addAll(
                List.of(
                        "points",
                        "of",
                        "percent",
                        "state",
                        "finished",
                        "receipt",
                        "remarks",
                        "by_hand"));
        csv.row(head);
        roster.all().forEach(learner -> csv.row(row(learner)));
    }

    private List<Object> row(Roster.Learner learner) {
        List<Object> row = new ArrayList<>(List.of(learner.id(), learner.name(), learner.group()));
        MarkedHandIn in = byLearner.get(learner.id());
        int of = regrader.set().points();
        for (int i = 0; i < regrader.set().items().size(); i++) {
            row.add(in == null ? "" : number(in.items().get(i).reached()));
        }
        row.add(in == null ? "" : number(in.reached()));
        row.add(of);
        row.add(in == null ? "" : number(100 * in.reached() / of));
        row.add(
                in == null
                        ? state(learner)
                        : in.fromPaper()
                                ? ClassWords.of("state.marked-paper")
                                : ClassWords.of("state.marked"));
        row.add(in == null || in.fromPaper() ? "" : in.finished());
        row.add(in == null ? "" : in.receipt());
        row.add(in == null ? "" : String.join("; ", remarks(in)));
        row.add(in == null ? "" : String.join("; ", byHand(in)));
        return row;
    }

    private String state(Roster.Learner learner) {
        return aside(learner)
                .map(a -> ClassWords.of("state.aside", a.reason().word()))
                .orElse(ClassWords.of("state.nothing"));
    }

    /**
     * A file of this learner that was set aside: by what it says of itself, or, where it cannot
     * say, by its name.
     */
    public Optional<Marking.SetAside> aside(Roster.Learner learner) {
        return result.aside().stream()
                .filter(
                        a ->
                                a.learner().equals(learner.id())
                                        || a.learner().isEmpty()
                                                && a.source().contains(learner.id()))
                .findFirst();
    }

    /** A row for each answer. */
    public void answersCsv(Writer out) {
        CsvText csv = new CsvText(out);
        csv.row(
                List.of(
                        "learner_id",
                        "problem_number",
                        "problem",
                        "seed",
                        "asked",
                        "answer",
                        "right_answer",
                        "verdict",
                        "mistake",
                        "tries",
                        "hints",
                        "minutes"));
        result.marked().forEach(in -> answers(in, csv));
    }

    private void answers(MarkedHandIn in, CsvText csv) {
        for (int slot = 0; slot < in.items().size(); slot++) {
            MarkedItem item = in.items().get(slot);
            Variant variant = regrader.variant(in.learner(), slot);
            Template template = variant.template();
            for (int ask = 0; ask < template.asks().size(); ask++) {
                Optional<Verdict> verdict = item.verdicts().get(ask);
                csv.row(
                        List.of(
                                in.learner(),
                                slot + 1,
                                template.id(),
                                // As text: a spreadsheet would round its last digits away.
                                "s" + Long.toUnsignedString(variant.seed()),
                                template.asks().get(ask).phrase(),
                                item.answers().get(ask),
                                Answers.written(variant, ask),
                                verdict.map(v -> Names.of(v.kind())).orElse("not-answered"),
                                verdict.flatMap(Verdict::mistake).orElse(""),
                                item.tries(),
                                item.rung(),
                                number(item.minutes())));
            }
        }
    }

    /** A row for each problem. */
    public void itemsCsv(Writer out) {
        CsvText csv = new CsvText(out);
        csv.row(
                List.of(
                        "problem_number",
                        "problem",
                        "learners",
                        "all_points",
                        "difficulty",
                        "standard_error",
                        "discrimination",
                        "discrimination_low",
                        "discrimination_high",
                        "trust",
                        "median_minutes",
                        "median_tries",
                        "median_hints",
                        "flags"));
        for (int i = 0; i < analysis.items().size(); i++) {
            ItemAnalysis.Item item = analysis.items().get(i);
            Discrimination d = item.discrimination();
            csv.row(
                    List.of(
                            i + 1,
                            regrader.template(i).id(),
                            analysis.learners(),
                            full(i),
                            isSmall() ? "" : number(item.difficulty()),
                            isSmall() ? "" : number(item.standardError()),
                            number(d.value()),
                            number(d.low()),
                            number(d.high()),
                            Names.of(d.trust()),
                            number(medianMinutes(i)),
                            number(medianTries(i)),
                            number(medianHints(i)),
                            String.join(" ", item.flags().stream().map(Names::of).toList())));
        }
    }

    public double medianMinutes(int slot) {
        return median(slot, MarkedItem::minutes);
    }

    public double medianTries(int slot) {
        return median(slot, MarkedItem::tries);
    }

    public double medianHints(int slot) {
        return median(slot, MarkedItem::rung);
    }

    /** Of work in files: of paper nothing of the kind is known. */
    private double median(int slot, ToDoubleFunction<MarkedItem> of) {
        return Moments.median(
                marked().stream()
                        .filter(m -> !m.fromPaper())
                        .map(m -> m.items().get(slot))
                        .mapToDouble(of)
                        .toArray());
    }

    /** A row for each problem whose points were set by hand. */
    public void byHandCsv(Writer out) {
        CsvText csv = new CsvText(out);
        csv.row(
                List.of(
                        "learner_id",
                        "problem_number",
                        "problem",
                        "points",
                        "worked_out",
                        "of",
                        "reason",
                        "set_at"));
        for (MarkedHandIn in : marked()) {
            for (int i = 0; i < in.items().size(); i++) {
                MarkedItem item = in.items().get(i);
                if (item.byHand().isPresent()) {
                    ByHand hand = item.byHand().get();
                    csv.row(
                            List.of(
                                    in.learner(),
                                    i + 1,
                                    regrader.template(i).id(),
                                    number(hand.points()),
                                    number(item.worked()),
                                    item.points(),
                                    hand.reason(),
                                    hand.at()));
                }
            }
        }
    }

    /** Files that were set aside, a row each. */
    public void asideCsv(Writer out) {
        CsvText csv = new CsvText(out);
        csv.row(List.of("number", "file", "learner_id", "reason", "why"));
        for (int i = 0; i < aside().size(); i++) {
            Marking.SetAside a = aside().get(i);
            csv.row(List.of(i + 1, a.source(), a.learner(), a.reason().word(), a.why()));
        }
    }

    /** Writes all tables into a folder. */
    public void tables(Path folder) throws IOException {
        table(folder.resolve("marks.csv"), this::marksCsv);
        table(folder.resolve("answers.csv"), this::answersCsv);
        table(folder.resolve("problems.csv"), this::itemsCsv);
        table(folder.resolve("set-aside.csv"), this::asideCsv);
        table(folder.resolve("points-by-hand.csv"), this::byHandCsv);
    }

    private static void table(Path file, Consumer<Writer> writing) throws IOException {
        WholeFile.stream(
                file,
                out -> {
                    Writer writer =
                            new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
                    writing.accept(writer);
                    writer.flush();
                });
    }

    /** Empty where there is no number: a table never says NaN. */
    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return "";
        }
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
    }
}

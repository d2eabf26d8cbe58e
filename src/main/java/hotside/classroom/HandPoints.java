// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Finding;
import hotside.content.Visible;
import hotside.page.Words;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;

/**
 * Points that the instructor set, kept in a CSV file that grows line by line: the last for a
 * learner and a problem counts, and what was thought before can still be read. They replace what
 * was worked out, which stays to be seen.
 */
public final class HandPoints {
    /** A reason fits on a line of the report. */
    public static final int LONGEST_REASON = 200;

    private static final List<String> HEAD =
            List.of("learner_id", "set", "problem_number", "points", "reason", "set_at");
    private static final String WHAT =
            """
            # Points that the instructor set by hand, in place of those worked out from the answers.\r
            # The last line for a learner and a problem counts; one without points takes them back.\r
            # Not sealed: whoever can write to this file can change it.\r
            """;

    private final Map<String, Map<Integer, ByHand>> byLearner = new TreeMap<>();
    private final CsvLines lines = CsvLines.withRemarks(HEAD);

    /** None. */
    public HandPoints() {}

    /**
     * Reads points that somebody typed.
     *
     * @param most what the problem is worth
     * @throws IllegalArgumentException if they are none; the message says what was expected
     */
    public static double points(String typed, int most) {
        String text = typed.strip().replace(',', '.');
        if (text.matches("\\d{1,3}(\\.\\d{1,3})?")) {
            double points = Double.parseDouble(text);
            if (points <= most) {
                return points;
            }
        }
        throw new IllegalArgumentException(
                Words.of("class.hand-points-range", Visible.cut(typed, LONGEST_REASON), most));
    }

    /**
     * Adds a line to a file, with a head if the file is new.
     *
     * @param points empty to take back what was set
     * @throws IllegalArgumentException if there is no reason, or too long a one
     */
    public static void set(
            Path file,
            ProblemSet set,
            String learner,
            int slot,
            Optional<Double> points,
            String reason,
            Instant at)
            throws IOException {
        String why = reason.strip();
        if (points.isPresent() && why.isEmpty() || why.length() > LONGEST_REASON) {
            throw new IllegalArgumentException(Words.of("class.hand-no-reason", LONGEST_REASON));
        }
        StringBuilder head = new StringBuilder(WHAT);
        new CsvText(head).row(HEAD);
        StringBuilder line = new StringBuilder();
        new CsvText(line)
                .row(
                        List.of(
                                learner,
                                of(set),
                                slot + 1,
                                points.map(p -> BigDecimal.valueOf(p).toPlainString()).orElse(""),
                                Visible.of(why),
                                at.truncatedTo(ChronoUnit.SECONDS)));
        GrowingFile.add(file, head.toString(), line.toString());
    }

    private static String of(ProblemSet set) {
        return set.id() + "/" + set.edition();
    }

    /** Reads such a file. Lines that do not fit the set become findings and are left out. */
    public static HandPoints read(Path file, ProblemSet set) throws IOException {
        HandPoints points = new HandPoints();
        points.lines.read(
                file,
                ClassWords.of("points.large", file),
                (line, row) -> points.add(line, row, set));
        return points;
    }

    private void add(long line, CSVRecord row, ProblemSet set) {
        String number = row.get(2).strip();
        int slot = number.matches("\\d{1,3}") ? Integer.parseInt(number) - 1 : -1;
        if (!row.get(1).equals(of(set))) {
            lines.wrong(
                    line,
                    ClassWords.of("points.other-set", row.get(1)),
                    ClassWords.of("points.of-set", of(set)));
        } else if (slot < 0 || slot >= set.items().size()) {
            lines.wrong(
                    line,
                    ClassWords.of("answers.no-problem", number),
                    ClassWords.of("answers.range", set.items().size()));
        } else if (byLearner.size() >= Roster.MOST && !byLearner.containsKey(row.get(0))) {
            lines.wrong(line, ClassWords.of("roster.many", Roster.MOST), "");
        } else if (!Ids.isId(row.get(0))) {
            lines.wrong(
                    line, ClassWords.of("points.no-id", row.get(0)), ClassWords.of("points.id"));
        } else {
            add(line, row, slot, set.items().get(slot).points());
        }
    }

    private void add(long line, CSVRecord row, int slot, int most) {
        Map<Integer, ByHand> its = byLearner.computeIfAbsent(row.get(0), l -> new TreeMap<>());
        if (row.get(3).isBlank()) {
            its.remove(slot);
            return;
        }
        try {
            its.put(
                    slot,
                    new ByHand(
                            points(row.get(3), most),
                            Visible.cut(CsvText.unguarded(row.get(4)), LONGEST_REASON),
                            Instant.parse(row.get(5).strip())));
        } catch (DateTimeException e) {
            lines.wrong(line, ClassWords.of("points.no-time", row.get(5)), "2026-12-01T17:00:00Z");
        } catch (IllegalArgumentException e) {
            lines.wrong(line, e.getMessage(), ClassWords.of("points.range", most));
        }
    }

    public List<Finding> findings() {
        return lines.findings();
    }

    /** Whose points were set without any work of theirs having been marked. */
    public List<String> idle(Marking.Result result) {
        List<String> marked = result.marked().stream().map(MarkedHandIn::learner).toList();
        return byLearner.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty() && !marked.contains(e.getKey()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The same result with these points in place of those worked out. */
    public Marking.Result on(Marking.Result result) {
        return new Marking.Result(result.marked().stream().map(this::on).toList(), result.aside());
    }

    private MarkedHandIn on(MarkedHandIn in) {
        Map<Integer, ByHand> its = byLearner.getOrDefault(in.learner(), Map.of());
        List<MarkedItem> items = new ArrayList<>();
        for (int slot = 0; slot < in.items().size(); slot++) {
            items.add(in.items().get(slot).with(Optional.ofNullable(its.get(slot))));
        }
        return in.with(items);
    }
}

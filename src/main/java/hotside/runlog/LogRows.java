// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.runlog.Dialect.SampleRow;
import hotside.runlog.RunLog.Stretch;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/** The rows of a log as they stream in: checked, turned into SI and kept in primitive columns. */
final class LogRows {
    /** What loggers write where a sensor gave nothing; a gap, not a fault. */
    private static final Set<String> NOTHING =
            Set.of("-", "--", "nan", "n/a", "na", "null", "none", "#n/a");

    private static final int LONGEST_NOTHING = 4;
    private static final int MOST_SECTIONS = 10_000;

    private final Dialect dialect;
    private final List<ColumnPlan> plans;
    private final double ambient;
    private final int mostReadings;
    private final LogFindings findings;
    private final DoubleColumn[] columns;
    private final LineNumbers lines = new LineNumbers();
    private final List<Stretch> sections = new ArrayList<>();
    private final int pullColumn;
    private String pullLabel = "";
    private final boolean[] wordsTold;
    private int sectionStart;
    private int rows;

    LogRows(
            Dialect dialect,
            List<ColumnPlan> plans,
            double ambient,
            int mostReadings,
            LogFindings findings) {
        this.dialect = dialect;
        this.plans = plans;
        this.ambient = ambient;
        this.mostReadings = mostReadings;
        this.findings = findings;
        this.wordsTold = new boolean[plans.size()];
        this.columns = plans.stream().map(p -> new DoubleColumn()).toArray(DoubleColumn[]::new);
        this.pullColumn =
                IntStream.range(0, plans.size())
                        .filter(i -> plans.get(i).channel() == Channel.PULL)
                        .findFirst()
                        .orElse(-1);
    }

    void read(RowSplitter in) throws IOException {
        while (in.next()) {
            if (in.line() < dialect.firstData() || in.blankRow() && !in.tooLong()) {
                continue;
            }
            if ((rows + 1L) * columns.length > mostReadings) {
                findings.add(
                        LogWords.of("row.full.kind"),
                        in.line(),
                        1,
                        in.text(),
                        LogWords.of("row.full", mostReadings),
                        LogWords.of("row.full.wanted"),
                        LogWords.of("row.full.mend"));
                break;
            }
            row(in);
        }
        endSection(pullLabel);
    }

    private void row(RowSplitter in) {
        if (in.tooLong()) {
            findings.add(
                    LogWords.of("row.wide.kind"),
                    in.line(),
                    1,
                    in.text(),
                    LogWords.of("row.wide", RowSplitter.LONGEST_ROW),
                    LogWords.of("row.wide.wanted"),
                    LogWords.of("row.wide.mend"));
        } else if (isHeaderAgain(in)) {
            if (mayEnd(in)) {
                endSection(pullLabel);
            }
        } else {
            checkShape(in);
            checkPull(in);
            lines.put(rows, in.line());
            for (int i = 0; i < columns.length; i++) {
                columns[i].add(i == pullColumn ? sections.size() + 1 : reading(in, i));
            }
            rows++;
        }
    }

    private boolean isHeaderAgain(RowSplitter in) {
        return same(dialect.header(), in) || same(dialect.units(), in);
    }

    private static boolean same(SampleRow row, RowSplitter in) {
        return row != null
                && row.cells().size() == in.cells()
                && in.to(0) - in.from(0) == row.cells().get(0).length()
                && row.text().equals(in.text());
    }

    private void checkShape(RowSplitter in) {
        int cells = in.cells();
        if (in.openQuote()) {
            report(
                    LogWords.of("row.quote.kind"),
                    in,
                    cells - 1,
                    LogWords.of("row.quote"),
                    LogWords.of("row.quote.wanted"),
                    LogWords.of("row.quote.mend"));
        }
        if (cells < columns.length) {
            report(
                    LogWords.of("row.short.kind"),
                    in,
                    cells - 1,
                    LogWords.of("row.short", cells, columns.length),
                    "",
                    "");
        }
        for (int i = columns.length; i < cells; i++) {
            if (!in.blank(i)) {
                report(
                        LogWords.of("row.long.kind"),
                        in,
                        i,
                        LogWords.of("row.long", columns.length),
                        LogWords.of("row.long.wanted"),
                        decimalHint());
                break;
            }
        }
    }

    private String decimalHint() {
        return LogWords.of(dialect.delimiter() == ',' ? "row.long.decimal" : "row.long.mend");
    }

    private void checkPull(RowSplitter in) {
        if (pullColumn < 0 || in.blank(pullColumn)) {
            return;
        }
        int from = in.from(pullColumn);
        int length = in.to(pullColumn) - from;
        boolean same =
                length == pullLabel.length()
                        && IntStream.range(0, length)
                                .allMatch(i -> in.row()[from + i] == pullLabel.charAt(i));
        if (!same && mayEnd(in)) {
            String next = in.cell(pullColumn);
            endSection(pullLabel);
            pullLabel = next;
        }
    }

    private void endSection(String label) {
        if (rows > sectionStart) {
            sections.add(new Stretch(label, sectionStart, rows));
            sectionStart = rows;
        }
    }

    /** Whether another pull may begin; a column that is no pull number changes in every row. */
    private boolean mayEnd(RowSplitter in) {
        if (sections.size() < MOST_SECTIONS) {
            return true;
        }
        report(
                LogWords.of("row.pulls.kind"),
                in,
                Math.max(0, pullColumn),
                LogWords.of("row.pulls", MOST_SECTIONS),
                LogWords.of("row.pulls.wanted"),
                LogWords.of("row.pulls.mend"));
        return false;
    }

    private double reading(RowSplitter in, int column) {
        if (in.blank(column)) {
            return Double.NaN;
        }
        int from = in.from(column);
        int to = in.to(column);
        double value = CellNumber.of(in.row(), from, to, dialect.habit());
        if (Double.isNaN(value)) {
            bad(in, column);
            return value;
        }
        return plans.get(column).toSi(value, ambient);
    }

    private void bad(RowSplitter in, int column) {
        boolean nothing =
                in.to(column) - in.from(column) <= LONGEST_NOTHING
                        && NOTHING.contains(in.cell(column).toLowerCase(Locale.ROOT));
        if (nothing) {
            return;
        }
        Column about = plans.get(column).column();
        if (about.channel() == Channel.UNKNOWN) {
            badUnknown(in, column, about);
            return;
        }
        String kind = LogWords.of("cell.bad.kind", about.header());
        if (!findings.onlyCounted(kind, in.line())) {
            String mark = dialect.habit() == DecimalHabit.COMMA ? "12,5" : "12.5";
            report(
                    kind,
                    in,
                    column,
                    LogWords.of("cell.bad", in.cell(column), about.header()),
                    LogWords.of("cell.bad.wanted", mark),
                    "");
        }
    }

    /** Once a column: nobody waits for its numbers. */
    private void badUnknown(RowSplitter in, int column, Column about) {
        if (!wordsTold[column]) {
            wordsTold[column] = true;
            report(
                    LogWords.of("cell.words.kind"),
                    in,
                    column,
                    LogWords.of("cell.words", in.cell(column), about.header()),
                    "",
                    "");
        }
    }

    private void report(
            String kind, RowSplitter in, int cell, String what, String expected, String mend) {
        if (!findings.onlyCounted(kind, in.line())) {
            int place = 1 + in.from(Math.max(0, cell));
            findings.add(kind, in.line(), place, in.text(), what, expected, mend);
        }
    }

    /** The log; the columns are empty afterwards. */
    RunLog log(String name, List<String> notes) {
        double[][] values = new double[columns.length][];
        for (int i = 0; i < columns.length; i++) {
            values[i] = columns[i].drain();
        }
        List<Column> heads = plans.stream().map(ColumnPlan::column).toList();
        RunLog whole = new RunLog(name, heads, values, List.of());
        int speed = whole.indexOf(Channel.SPEED);
        if (speed < 0) {
            findings.about(
                    LogWords.of("file.no-speed"),
                    LogWords.of("file.no-speed.wanted"),
                    LogWords.of("file.no-speed.mend"));
            return new RunLog(name, heads, values, List.of(new Stretch("1", 0, rows)));
        }
        PullSplitter.Split split = new PullSplitter(values[speed]).split(sections);
        split.aside().forEach(s -> notes.add(aside(s, values[speed])));
        backwards(whole, split.pulls());
        return new RunLog(name, heads, values, split.pulls());
    }

    private String aside(Stretch s, double[] speed) {
        return LogWords.of(
                "aside",
                lines.line(s.from()),
                lines.line(s.to() - 1),
                rpm(speed[s.from()]),
                rpm(speed[s.to() - 1]));
    }

    private static String rpm(double speed) {
        return Double.isNaN(speed) ? LogWords.of("gap") : Speeds.rpm(speed);
    }

    /** Time that goes back inside a pull: two pulls run into one, or a clock that was set. */
    private void backwards(RunLog log, List<Stretch> pulls) {
        int time = log.indexOf(Channel.TIME);
        for (Stretch pull : time < 0 ? List.<Stretch>of() : pulls) {
            for (int i = pull.from() + 1; i < pull.to(); i++) {
                if (log.value(time, i) < log.value(time, i - 1)) {
                    findings.add(
                            LogWords.of("time.back.kind"),
                            lines.line(i),
                            1,
                            "",
                            LogWords.of("time.back", pull.label()),
                            LogWords.of("time.back.wanted"),
                            LogWords.of("time.back.mend"));
                    break;
                }
            }
        }
    }
}

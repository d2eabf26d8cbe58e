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
                        "full logs",
                        in.line(),
                        1,
                        in.text(),
                        "reading stopped here: a log may hold " + mostReadings + " readings",
                        "a log of a few pulls",
                        "cut the file into several");
                break;
            }
            row(in);
        }
        endSection(pullLabel);
    }

    private void row(RowSplitter in) {
        if (in.tooLong()) {
            findings.add(
                    "rows too long",
                    in.line(),
                    1,
                    in.text(),
                    "this row is longer than "
                            + RowSplitter.LONGEST_ROW
                            + " characters; it is left out",
                    "a row of readings",
                    "export the log again");
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
                    "open quotes",
                    in,
                    cells - 1,
                    "this quote is not closed in its line",
                    "a second quote",
                    "close it, or take it out");
        }
        if (cells < columns.length) {
            report(
                    "short rows",
                    in,
                    cells - 1,
                    "this row has "
                            + cells
                            + " cells, the row of names "
                            + columns.length
                            + "; the missing ones are gaps",
                    "",
                    "");
        }
        for (int i = columns.length; i < cells; i++) {
            if (!in.blank(i)) {
                report(
                        "long rows",
                        in,
                        i,
                        "this row has more cells than the "
                                + columns.length
                                + " of the row of names; the rest is not kept",
                        "one cell for each name",
                        decimalHint());
                break;
            }
        }
    }

    private String decimalHint() {
        return dialect.delimiter() == ','
                ? "where commas are decimal marks, put semicolons between the cells"
                : "name the column, or take the cell out";
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
                "changes of the pull that were not followed",
                in,
                Math.max(0, pullColumn),
                "there are more than " + MOST_SECTIONS + " pulls; the rest is taken as one",
                "a log of a few pulls",
                "check the pull column");
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
        String kind = "cells in \"" + about.header() + "\" that are no numbers";
        if (!findings.onlyCounted(kind, in.line())) {
            String mark = dialect.habit() == DecimalHabit.COMMA ? "12,5" : "12.5";
            report(
                    kind,
                    in,
                    column,
                    "\""
                            + in.cell(column)
                            + "\" in column \""
                            + about.header()
                            + "\" is no number; it is a gap",
                    "a number such as " + mark + ", or an empty cell",
                    "");
        }
    }

    /** Once a column: nobody waits for its numbers. */
    private void badUnknown(RowSplitter in, int column, Column about) {
        if (!wordsTold[column]) {
            wordsTold[column] = true;
            report(
                    "columns of words",
                    in,
                    column,
                    "\""
                            + in.cell(column)
                            + "\" in the unknown column \""
                            + about.header()
                            + "\" is no number; its words are not kept",
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
                    "there is no column for engine speed",
                    "a column such as \"Speed [rpm]\"",
                    "say which it is: --map \"NAME=speed rpm\"");
            return new RunLog(name, heads, values, List.of(new Stretch("1", 0, rows)));
        }
        PullSplitter.Split split = new PullSplitter(values[speed]).split(sections);
        split.aside().forEach(s -> notes.add(aside(s, values[speed])));
        backwards(whole, split.pulls());
        return new RunLog(name, heads, values, split.pulls());
    }

    private String aside(Stretch s, double[] speed) {
        return "Lines "
                + lines.line(s.from())
                + " to "
                + lines.line(s.to() - 1)
                + " belong to no pull: there speed runs the other way, from "
                + rpm(speed[s.from()])
                + " to "
                + rpm(speed[s.to() - 1])
                + " rev/min.";
    }

    private static String rpm(double speed) {
        return Double.isNaN(speed) ? "a gap" : Speeds.rpm(speed);
    }

    /** Time that goes back inside a pull: two pulls run into one, or a clock that was set. */
    private void backwards(RunLog log, List<Stretch> pulls) {
        int time = log.indexOf(Channel.TIME);
        for (Stretch pull : time < 0 ? List.<Stretch>of() : pulls) {
            for (int i = pull.from() + 1; i < pull.to(); i++) {
                if (log.value(time, i) < log.value(time, i - 1)) {
                    findings.add(
                            "places where time goes back",
                            lines.line(i),
                            1,
                            "",
                            "time goes back inside pull " + pull.label(),
                            "one clock from the first row of a pull to its last",
                            "put a pull column into the file if two pulls meet here");
                    break;
                }
            }
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.runlog.Dialect.SampleRow;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a log from any bench or logger: CSV with comma, semicolon, tab or bar between cells,
 * decimal point or comma, names and units recognised by {@code channels.txt} or told by a {@link
 * Mapping}. Several pulls in one file are told apart by a pull column, by the header coming again,
 * and by engine speed turning back.
 *
 * <p>Rows stream through one at a time; what is kept is eight bytes for each reading, in chunks of
 * doubles that are joined a column at a time, and at most fifty million readings. Nothing in a file
 * makes reading throw, and nothing is dropped without a finding or a note.
 */
public final class LogReader {
    private static final int MOST_READINGS = 50_000_000;

    private final ReadOptions options;
    private final int mostReadings;
    private final ChannelNames names = new ChannelNames();

    public LogReader(ReadOptions options) {
        this(options, MOST_READINGS);
    }

    LogReader(ReadOptions options, int mostReadings) {
        this.options = options;
        this.mostReadings = mostReadings;
    }

    /**
     * Reads a file.
     *
     * @throws IOException if it cannot be opened or read
     */
    public LogReading read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return read(file.toString(), in);
        }
    }

    /**
     * Reads a stream; does not close it.
     *
     * @param name for findings
     */
    public LogReading read(String name, InputStream in) throws IOException {
        LogText text = LogText.open(in);
        LogFindings findings = new LogFindings(name);
        List<String> notes = new ArrayList<>();
        String sample = text.sample();
        if (sample.indexOf('\0') >= 0) {
            findings.about(
                    LogWords.of("file.nul"),
                    LogWords.of("file.nul.wanted"),
                    LogWords.of("file.export"));
        }
        Dialect dialect = Dialect.of(sample, options.habit(), names);
        if (dialect.firstData() == 0) {
            noReadings(dialect, findings);
            return new LogReading(Optional.empty(), findings.list(), notes);
        }
        tell(dialect, text, findings, notes);
        List<ColumnPlan> plans =
                new HeaderReader(names, options.mappings(), findings, notes)
                        .plan(dialect.header(), dialect.units(), columns(sample, dialect));
        LogRows rows = new LogRows(dialect, plans, options.ambient(), mostReadings, findings);
        rows.read(new RowSplitter(text.reader(), dialect.delimiter()));
        RunLog log = rows.log(name, notes);
        return new LogReading(Optional.of(log), findings.list(), notes);
    }

    private static int columns(String sample, Dialect dialect) throws IOException {
        RowSplitter splitter = new RowSplitter(new StringReader(sample), dialect.delimiter());
        while (splitter.next() && splitter.line() < dialect.firstData()) {
            continue;
        }
        return splitter.cells();
    }

    private static void noReadings(Dialect dialect, LogFindings findings) {
        SampleRow header = dialect.header();
        String expected = LogWords.of("file.wanted");
        String mend = LogWords.of("file.export");
        if (header == null) {
            findings.about(LogWords.of("file.empty"), expected, mend);
            return;
        }
        String what =
                header.cells().size() > RowSplitter.MOST_CELLS
                        ? LogWords.of("file.wide", RowSplitter.MOST_CELLS)
                        : LogWords.of("file.no-numbers");
        findings.add("", header.line(), 1, header.text(), what, expected, mend);
    }

    private static void tell(
            Dialect dialect, LogText text, LogFindings findings, List<String> notes) {
        SampleRow header = dialect.header();
        if (header == null) {
            findings.about(
                    LogWords.of("file.no-names"),
                    LogWords.of("file.no-names.wanted"),
                    LogWords.of("file.no-names.mend"));
        } else if (header.line() > 1) {
            notes.add(LogWords.of("file.above", header.line()));
        }
        if (!text.charset().name().startsWith("UTF")) {
            notes.add(LogWords.of("file.charset", text.charset().name()));
        }
        if (dialect.doubtful()) {
            boolean comma = dialect.habit() == DecimalHabit.COMMA;
            findings.about(
                    LogWords.of(comma ? "file.doubt.decimal" : "file.doubt.thousands"),
                    LogWords.of("file.doubt.wanted"),
                    LogWords.of("file.doubt.mend"));
        }
    }
}

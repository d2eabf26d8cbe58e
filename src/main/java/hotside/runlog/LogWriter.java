// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Writes a log as CSV in SI: pressures absolute, temperatures in kelvin, a gap as an empty cell,
 * and in front a column that names the pull. {@link LogReader} reads the same numbers back, to the
 * last bit. Rows that belong to no pull are not written.
 */
public final class LogWriter {
    private static final String END = "\r\n";

    private LogWriter() {}

    public static void write(RunLog log, Appendable out) throws IOException {
        int[] columns =
                IntStream.range(0, log.columns().size())
                        .filter(i -> log.columns().get(i).channel() != Channel.PULL)
                        .toArray();
        out.append(Channel.PULL.heading());
        for (int column : columns) {
            out.append(',').append(quoted(name(log.columns().get(column))));
        }
        out.append(END);
        for (Pull pull : log.pulls()) {
            rows(log, pull, columns, out);
        }
    }

    private static void rows(RunLog log, Pull pull, int[] columns, Appendable out)
            throws IOException {
        String label = quoted(pull.label());
        for (int row = pull.from(); row < pull.to(); row++) {
            out.append(label);
            for (int column : columns) {
                double value = log.value(column, row);
                out.append(',').append(Double.isNaN(value) ? "" : Double.toString(value));
            }
            out.append(END);
        }
    }

    private static String name(Column column) {
        if (column.channel() == Channel.UNKNOWN) {
            return column.header();
        }
        String unit = column.channel().quantity().siScale().label();
        String words = column.channel().heading();
        return unit.isEmpty() ? words : words + " [" + unit + "]";
    }

    private static String quoted(String cell) {
        boolean needs = List.of(",", "\"", ";", "\t", "|").stream().anyMatch(cell::contains);
        return needs ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/**
 * Cuts a text into rows and cells, one row in memory at a time. A cell may stand in double quotes,
 * in which two quotes mean one. A line end ends a row even inside quotes, so that one forgotten
 * quote costs one row. Rows and cells have a longest; what goes beyond is skipped and told of.
 */
final class RowSplitter {
    /** Wider than any logger's row, narrow enough that a file without line ends does no harm. */
    static final int LONGEST_ROW = 1 << 18;

    static final int MOST_CELLS = 1024;

    private final Reader in;
    private final char delimiter;
    private final char[] chunk = new char[1 << 16];
    private int at;
    private int end;
    private boolean afterReturn;

    private char[] row = new char[512];
    private int length;
    private int[] from = new int[32];
    private int[] to = new int[32];
    private int cells;
    private int line;
    private boolean tooLong;
    private boolean openQuote;

    RowSplitter(Reader in, char delimiter) {
        this.in = in;
        this.delimiter = delimiter;
    }

    /** Goes to the next row; false at the end of the text. */
    boolean next() throws IOException {
        if (!readLine()) {
            return false;
        }
        line++;
        split();
        return true;
    }

    /** Line of the row in the file, from 1. */
    int line() {
        return line;
    }

    /** How many cells the row has, at most {@link #MOST_CELLS} and one. */
    int cells() {
        return cells;
    }

    /** The row's characters; those of a cell stand from {@link #from} to {@link #to}. */
    char[] row() {
        return row;
    }

    int from(int cell) {
        return from[cell];
    }

    int to(int cell) {
        return to[cell];
    }

    boolean blank(int cell) {
        return cell >= cells || from[cell] == to[cell];
    }

    /** The cell's text, blanks at its ends left out, doubled quotes made one. */
    String cell(int cell) {
        return new String(row, from[cell], to[cell] - from[cell]).replace("\"\"", "\"");
    }

    /** The row as it stands in the file, cut if it is too long. */
    String text() {
        return new String(row, 0, length);
    }

    boolean blankRow() {
        for (int i = 0; i < cells; i++) {
            if (!blank(i)) {
                return false;
            }
        }
        return true;
    }

    boolean tooLong() {
        return tooLong;
    }

    boolean openQuote() {
        return openQuote;
    }

    private boolean readLine() throws IOException {
        length = 0;
        tooLong = false;
        boolean any = false;
        while (at < end || fill()) {
            char c = chunk[at++];
            boolean secondHalf = afterReturn && c == '\n';
            afterReturn = c == '\r';
            if (secondHalf) {
                continue;
            }
            any = true;
            if (c == '\n' || c == '\r') {
                return true;
            }
            if (length == LONGEST_ROW) {
                tooLong = true;
            } else {
                if (length == row.length) {
                    row = Arrays.copyOf(row, 2 * length);
                }
                row[length++] = c;
            }
        }
        return any;
    }

    private boolean fill() throws IOException {
        at = 0;
        end = Math.max(0, in.read(chunk, 0, chunk.length));
        return end > 0;
    }

    private void split() {
        cells = 0;
        openQuote = false;
        int i = 0;
        while (i <= length && cells <= MOST_CELLS) {
            i = take(skipBlanks(i, length)) + 1;
        }
    }

    /** Takes in the cell that starts here; gives the place of the delimiter after it. */
    private int take(int start) {
        if (start < length && row[start] == '"') {
            return quotedCell(start + 1);
        }
        int stop = start;
        while (stop < length && row[stop] != delimiter) {
            stop++;
        }
        add(start, stop);
        return stop;
    }

    private int quotedCell(int start) {
        int stop = start;
        while (stop < length && (row[stop] != '"' || stop + 1 < length && row[stop + 1] == '"')) {
            stop += row[stop] == '"' ? 2 : 1;
        }
        openQuote |= stop >= length;
        add(start, Math.min(stop, length));
        int next = Math.min(stop, length);
        while (next < length && row[next] != delimiter) {
            next++;
        }
        return next;
    }

    private void add(int start, int stop) {
        if (cells == from.length) {
            from = Arrays.copyOf(from, 2 * cells);
            to = Arrays.copyOf(to, 2 * cells);
        }
        int first = skipBlanks(start, stop);
        int last = stop;
        while (last > first && blank(row[last - 1])) {
            last--;
        }
        from[cells] = first;
        to[cells++] = last;
    }

    private int skipBlanks(int i, int stop) {
        int first = i;
        while (first < stop && blank(row[first]) && row[first] != delimiter) {
            first++;
        }
        return first;
    }

    private static boolean blank(char c) {
        return c == ' ' || c == '\t' || c == '\u00A0';
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a bench or a logger wrote down: columns of readings in SI, and the pulls that they fall
 * into. A reading that is missing is NaN. Immutable.
 */
public final class RunLog {
    private final String name;
    private final List<Column> columns;
    private final double[][] values;
    private final List<Pull> pulls;

    /**
     * A stretch of rows.
     *
     * @param label the pull's name
     * @param from first row
     * @param to row after the last
     */
    record Stretch(String label, int from, int to) {}

    /** Keeps the arrays: for those who hand them over for good. */
    RunLog(String name, List<Column> columns, double[][] values, List<Stretch> pulls) {
        this.name = name;
        this.columns = List.copyOf(columns);
        this.values = values;
        this.pulls = pulls.stream().map(s -> new Pull(this, s.label, s.from, s.to)).toList();
    }

    /**
     * A log of one pull.
     *
     * @param name for people, such as a file's name
     * @param columns at most one for each known channel
     * @param values an array for each column, all of one length, in SI; copied
     */
    public static RunLog of(String name, List<Column> columns, double[]... values) {
        return of(name, columns, new int[] {0}, values);
    }

    /**
     * A log of several pulls.
     *
     * @param starts first row of each pull, ascending, the first 0; a pull ends where the next
     *     starts
     * @throws IllegalArgumentException if lengths differ or the starts are not such
     */
    public static RunLog of(String name, List<Column> columns, int[] starts, double[]... values) {
        int rows = values.length == 0 ? 0 : values[0].length;
        if (values.length != columns.size()
                || Arrays.stream(values).anyMatch(v -> v.length != rows)) {
            throw new IllegalArgumentException("columns of different lengths");
        }
        List<Stretch> pulls = new ArrayList<>();
        for (int i = 0; i < starts.length; i++) {
            int to = i + 1 < starts.length ? starts[i + 1] : rows;
            if (starts[i] > to || i == 0 && starts[i] != 0) {
                throw new IllegalArgumentException("pulls start at " + Arrays.toString(starts));
            }
            pulls.add(new Stretch(Integer.toString(i + 1), starts[i], to));
        }
        double[][] copies = Arrays.stream(values).map(double[]::clone).toArray(double[][]::new);
        return new RunLog(name, columns, copies, pulls);
    }

    public String name() {
        return name;
    }

    public List<Column> columns() {
        return columns;
    }

    /** The pulls in the order of the file. Rows that belong to none are still in the columns. */
    public List<Pull> pulls() {
        return pulls;
    }

    public int rows() {
        return values.length == 0 ? 0 : values[0].length;
    }

    /** One reading, in SI; NaN if missing. */
    public double value(int column, int row) {
        return values[column][row];
    }

    /** Where a channel stands; −1 if the log has none. */
    public int indexOf(Channel channel) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).channel() == channel) {
                return i;
            }
        }
        return -1;
    }

    double[] copy(int column, int from, int to) {
        return Arrays.copyOfRange(values[column], from, to);
    }
}

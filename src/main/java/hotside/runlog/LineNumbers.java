// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.util.Arrays;

/** Which line of the file a row of the log came from; kept only where a line was skipped. */
final class LineNumbers {
    private int[] rows = new int[8];
    private int[] ahead = new int[8];
    private int count;

    /** Rows must come in order. */
    void put(int row, int line) {
        if (count > 0 && ahead[count - 1] == line - row) {
            return;
        }
        if (count == rows.length) {
            rows = Arrays.copyOf(rows, 2 * count);
            ahead = Arrays.copyOf(ahead, 2 * count);
        }
        rows[count] = row;
        ahead[count++] = line - row;
    }

    int line(int row) {
        int found = Arrays.binarySearch(rows, 0, count, row);
        int at = found >= 0 ? found : -found - 2;
        return at < 0 ? 1 : row + ahead[at];
    }
}

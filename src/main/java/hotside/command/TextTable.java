// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import java.io.PrintWriter;
import java.util.List;

/** A table for the terminal. */
final class TextTable {
    private TextTable() {}

    /** Prints rows of equal length, the first of them the head. */
    static void print(List<List<String>> rows, PrintWriter out) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        rows.forEach(
                row -> {
                    for (int i = 0; i < columns; i++) {
                        widths[i] = Math.max(widths[i], row.get(i).length());
                    }
                });
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
            }
            out.println(line.toString().stripTrailing());
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.content.Excerpt;
import hotside.content.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Findings about a log while it streams past: the first few of a kind in full, then how many more
 * there were and where the last of them stands.
 */
final class LogFindings {
    private static final int FEW = 5;

    private final String path;
    private final List<Finding> found = new ArrayList<>();
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Map<String, Integer> lastLines = new LinkedHashMap<>();

    LogFindings(String path) {
        this.path = path;
    }

    /** About a place in a row. */
    void add(
            String kind,
            int line,
            int column,
            String row,
            String what,
            String expected,
            String mend) {
        if (room(kind, line)) {
            Excerpt excerpt = Excerpt.of(row, column);
            found.add(new Finding(path, line, column, what, excerpt, expected, mend));
        }
    }

    /** About the file as a whole. */
    void about(String what, String expected, String mend) {
        found.add(Finding.about(path, what, expected, mend));
    }

    /** Whether the next of this kind would be shown; counts it. */
    private boolean room(String kind, int line) {
        lastLines.put(kind, line);
        return counts.merge(kind, 1, Integer::sum) <= FEW;
    }

    /** Counts one more of a kind that is no longer shown; false if it should be added in full. */
    boolean onlyCounted(String kind, int line) {
        if (counts.getOrDefault(kind, 0) < FEW) {
            return false;
        }
        room(kind, line);
        return true;
    }

    List<Finding> list() {
        List<Finding> all = new ArrayList<>(found);
        counts.forEach(
                (kind, count) -> {
                    if (count > FEW) {
                        int line = lastLines.get(kind);
                        String what = LogWords.of("more", count - FEW, kind);
                        all.add(new Finding(path, line, 1, what, Excerpt.NONE, "", ""));
                    }
                });
        all.sort(Comparator.comparing(Finding::place));
        return all;
    }
}

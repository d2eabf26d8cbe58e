// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.ChartCursor;
import hotside.page.ChartData;
import hotside.page.Html;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The charts of a page that are read by a cursor, with pointer or arrow keys. */
final class Figures {
    private final Page page;
    private final Map<String, ChartData> figures = new HashMap<>();
    private final Map<String, Integer> cursors = new HashMap<>();

    Figures(Page page) {
        this.page = page;
    }

    /** Forgets all figures. */
    void clear() {
        figures.clear();
        cursors.clear();
    }

    /** Forgets the figures whose parts begin so. */
    void forget(String prefix) {
        figures.keySet().removeIf(part -> part.startsWith(prefix));
        cursors.keySet().removeIf(part -> part.startsWith(prefix));
    }

    void put(String part, ChartData figure) {
        figures.put(part, figure);
    }

    void putAll(Map<String, ChartData> more) {
        figures.putAll(more);
    }

    /**
     * A figure was pointed at.
     *
     * @param across 0 at its left edge to 1 at its right edge
     */
    void point(String part, double across) {
        if (figures.containsKey(part)) {
            read(part, new ChartCursor(figures.get(part)).nearPointer(across));
        }
    }

    /** An arrow key was pressed on a figure. */
    void nudge(String part, int steps) {
        if (figures.containsKey(part)) {
            int from = cursors.getOrDefault(part, steps > 0 ? -1 : 1);
            read(part, new ChartCursor(figures.get(part)).step(from, steps));
        }
    }

    private void read(String part, Optional<ChartCursor.Reading> reading) {
        reading.ifPresent(
                r -> {
                    cursors.put(part, r.index());
                    page.cursor(part + "-svg", r.at());
                    page.replace(part + "-reading", Html.escape(r.text()));
                });
    }
}

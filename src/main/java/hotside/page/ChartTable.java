// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Point;
import hotside.page.ChartData.Series;
import java.util.ArrayList;
import java.util.List;

/**
 * The numbers of a chart as an HTML table behind a fold. Curves over the same places stand side by
 * side; others one below the other. Only readings are shown, nothing in between.
 */
public final class ChartTable {
    static final int MOST_ROWS = 25;
    private static final String NONE = "–";

    private ChartTable() {}

    /** A {@code details} element, closed, of {@value #MOST_ROWS} rows at most. */
    public static String html(ChartData data) {
        List<Series> shown = data.series().stream().limit(MOST_ROWS).toList();
        boolean sideBySide = samePlaces(shown);
        List<List<String>> rows = sideBySide ? wide(shown) : tall(shown);
        StringBuilder out =
                new StringBuilder("<details class=\"chart-data\"><summary>Data table</summary>");
        out.append("<div class=\"scroll\"><table>");
        caption(out, data, rows.size());
        out.append("<thead><tr>");
        headings(data, shown, sideBySide)
                .forEach(
                        h ->
                                out.append("<th scope=\"col\">")
                                        .append(Xml.escape(h))
                                        .append("</th>"));
        out.append("</tr></thead><tbody>");
        for (List<String> row : rows) {
            out.append("<tr>");
            row.forEach(cell -> out.append("<td>").append(Xml.escape(cell)).append("</td>"));
            out.append("</tr>");
        }
        return out.append("</tbody></table></div></details>").toString();
    }

    private static void caption(StringBuilder out, ChartData data, int rows) {
        String title = data.title().isBlank() ? data.y().heading() : data.title();
        int readings = data.series().stream().mapToInt(s -> s.points().size()).sum();
        boolean thinned = rows == MOST_ROWS && readings > MOST_ROWS;
        out.append("<caption>").append(Xml.escape(title));
        out.append(thinned ? " (some of the readings)" : "").append("</caption>");
    }

    private static List<String> headings(ChartData data, List<Series> shown, boolean sideBySide) {
        List<String> list = new ArrayList<>();
        if (sideBySide) {
            list.add(data.x().heading());
            shown.forEach(series -> list.add(series.label() + ": " + data.y().heading()));
        } else {
            list.addAll(List.of("Curve", data.x().heading(), data.y().heading()));
        }
        return list;
    }

    private static boolean samePlaces(List<Series> shown) {
        return shown.stream()
                        .map(series -> series.points().stream().map(Point::x).toList())
                        .distinct()
                        .count()
                <= 1;
    }

    private static List<List<String>> wide(List<Series> shown) {
        List<List<String>> rows = new ArrayList<>();
        if (shown.isEmpty()) {
            return rows;
        }
        for (int i : picked(shown.get(0).points().size(), MOST_ROWS)) {
            List<String> row = new ArrayList<>();
            row.add(cell(shown.get(0).points().get(i).x()));
            shown.forEach(series -> row.add(cell(series.points().get(i).y())));
            rows.add(row);
        }
        return rows;
    }

    private static List<List<String>> tall(List<Series> shown) {
        List<List<String>> rows = new ArrayList<>();
        for (Series series : shown) {
            for (int i : picked(series.points().size(), MOST_ROWS / shown.size())) {
                Point p = series.points().get(i);
                rows.add(List.of(series.label(), cell(p.x()), cell(p.y())));
            }
        }
        return rows;
    }

    /** So many of so many, evenly, the first and the last among them. */
    private static List<Integer> picked(int of, int most) {
        List<Integer> list = new ArrayList<>();
        int count = Math.min(of, most);
        for (int i = 0; i < count; i++) {
            list.add(count == 1 ? of - 1 : (int) ((long) i * (of - 1) / (count - 1)));
        }
        return list;
    }

    private static String cell(double value) {
        return new Point(value, 0).isGap() ? NONE : ChartSummary.number(value);
    }
}

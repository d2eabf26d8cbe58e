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

    private ChartTable() {}

    /**
     * A row of the table.
     *
     * @param name the curve, where each row has its own; else empty
     */
    private record Row(String name, List<Double> values) {}

    /** A {@code details} element, closed, of {@value #MOST_ROWS} rows at most. */
    public static String html(ChartData data) {
        List<Series> shown = data.series().stream().limit(MOST_ROWS).toList();
        boolean sideBySide = samePlaces(shown);
        List<Row> rows = sideBySide ? wide(shown) : tall(shown);
        StringBuilder out =
                new StringBuilder("<details class=\"chart-data\">")
                        .append(Html.element("summary", "", Words.of("chart.data-table")));
        out.append("<div class=\"scroll\"><table>");
        caption(out, data, rows.size());
        out.append("<thead><tr>")
                .append(
                        sideBySide
                                ? ""
                                : Html.element(
                                        "th", "scope=\"col\"", Words.of("chart.curve-column")));
        headings(data, shown, sideBySide)
                .forEach(h -> out.append(cell("th scope=\"col\" class=\"number\"", h)));
        out.append("</tr></thead><tbody>");
        List<TableColumn> columns = columns(rows);
        for (Row row : rows) {
            out.append("<tr>").append(row.name.isEmpty() ? "" : cell("th scope=\"row\"", row.name));
            for (int i = 0; i < columns.size(); i++) {
                out.append(cell("td class=\"number\"", columns.get(i).shown(row.values.get(i))));
            }
            out.append("</tr>");
        }
        return out.append("</tbody></table></div></details>").toString();
    }

    private static String cell(String tag, String text) {
        return "<" + tag + ">" + Xml.escape(text) + "</" + tag.substring(0, 2) + ">";
    }

    private static List<TableColumn> columns(List<Row> rows) {
        int count = rows.isEmpty() ? 0 : rows.get(0).values.size();
        List<TableColumn> columns = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int column = i;
            columns.add(TableColumn.of(rows.stream().map(row -> row.values.get(column)).toList()));
        }
        return columns;
    }

    private static void caption(StringBuilder out, ChartData data, int rows) {
        String title = data.title().isBlank() ? data.y().heading() : data.title();
        int readings = data.series().stream().mapToInt(s -> s.points().size()).sum();
        boolean thinned = rows == MOST_ROWS && readings > MOST_ROWS;
        String caption = thinned ? Words.of("chart.some", title) : title;
        out.append("<caption>").append(Xml.escape(caption)).append("</caption>");
    }

    private static List<String> headings(ChartData data, List<Series> shown, boolean sideBySide) {
        if (!sideBySide) {
            return List.of(data.x().heading(), data.y().heading());
        }
        List<String> list = new ArrayList<>(List.of(data.x().heading()));
        shown.forEach(series -> list.add(series.label() + ": " + data.y().heading()));
        return list;
    }

    private static boolean samePlaces(List<Series> shown) {
        return shown.stream()
                        .map(series -> series.points().stream().map(Point::x).toList())
                        .distinct()
                        .count()
                <= 1;
    }

    private static List<Row> wide(List<Series> shown) {
        List<Row> rows = new ArrayList<>();
        int count = shown.isEmpty() ? 0 : shown.get(0).points().size();
        for (int i : picked(count, MOST_ROWS)) {
            List<Double> values = new ArrayList<>(List.of(shown.get(0).points().get(i).x()));
            shown.forEach(series -> values.add(series.points().get(i).y()));
            rows.add(new Row("", values));
        }
        return rows;
    }

    private static List<Row> tall(List<Series> shown) {
        List<Row> rows = new ArrayList<>();
        for (Series series : shown) {
            for (int i : picked(series.points().size(), MOST_ROWS / shown.size())) {
                Point p = series.points().get(i);
                rows.add(new Row(series.label(), List.of(p.x(), p.y())));
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
}

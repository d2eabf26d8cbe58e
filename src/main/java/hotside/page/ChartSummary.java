// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Axis;
import hotside.page.ChartData.Point;
import hotside.page.ChartData.Present;
import hotside.page.ChartData.Series;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import java.util.Comparator;
import java.util.List;
import java.util.StringJoiner;

/** A chart in words. */
final class ChartSummary {
    private static final int DIGITS = 4;

    private ChartSummary() {}

    static String of(ChartData data) {
        StringJoiner text = new StringJoiner(" ");
        List<Point> all = data.series().stream().flatMap(s -> s.drawable().stream()).toList();
        if (all.isEmpty()) {
            text.add(Words.of("chart.no-readings", data.y().label(), data.x().label()));
        } else {
            double from = all.stream().mapToDouble(Point::x).min().orElseThrow();
            double to = all.stream().mapToDouble(Point::x).max().orElseThrow();
            text.add(
                    from == to
                            ? Words.of(
                                    "chart.range-at",
                                    data.y().label(),
                                    data.x().label(),
                                    quantity(to, data.x()))
                            : Words.of(
                                    "chart.range",
                                    data.y().label(),
                                    data.x().label(),
                                    number(from),
                                    quantity(to, data.x())));
        }
        data.series().forEach(series -> text.add(curve(series, data)));
        data.lines().stream()
                .filter(ChartData.Line::isDrawable)
                .forEach(
                        line ->
                                text.add(
                                        Words.of(
                                                "chart.line",
                                                line.label(),
                                                quantity(
                                                        line.at(),
                                                        line.upright() ? data.x() : data.y()))));
        data.present()
                .filter(present -> !present.point().isGap())
                .ifPresent(present -> text.add(present(present, data)));
        return text.toString();
    }

    private static String curve(Series series, ChartData data) {
        List<Point> points = series.drawable();
        if (points.isEmpty()) {
            return Words.of("chart.curve-none", series.label());
        }
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        if (points.size() == 1) {
            return series.label() + ": " + place(first, data) + ".";
        }
        Point top = points.stream().max(Comparator.comparingDouble(Point::y)).orElseThrow();
        return Words.of(
                "chart.curve",
                series.label(),
                quantity(first.y(), data.y()),
                quantity(last.y(), data.y()),
                place(top, data));
    }

    private static String present(Present present, ChartData data) {
        return present.label() + ": " + place(present.point(), data) + ".";
    }

    private static String place(Point p, ChartData data) {
        return Words.of("chart.point", quantity(p.y(), data.y()), quantity(p.x(), data.x()));
    }

    static String quantity(double value, Axis axis) {
        boolean pure = axis.unit().isEmpty() || axis.unit().equals("1");
        return number(value) + (pure ? "" : " " + axis.unit());
    }

    static String number(double value) {
        return DecimalHabit.spoken().write(Numbers.plain(Numbers.rounded(value, DIGITS)));
    }
}

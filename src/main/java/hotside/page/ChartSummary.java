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
            text.add(data.y().label() + " over " + data.x().label() + ": no readings.");
        } else {
            double from = all.stream().mapToDouble(Point::x).min().orElseThrow();
            double to = all.stream().mapToDouble(Point::x).max().orElseThrow();
            text.add(
                    data.y().label()
                            + " over "
                            + data.x().label()
                            + (from == to ? " at " : " from " + number(from) + " to ")
                            + quantity(to, data.x())
                            + ".");
        }
        data.series().forEach(series -> text.add(curve(series, data)));
        data.lines().stream()
                .filter(ChartData.Line::isDrawable)
                .forEach(
                        line ->
                                text.add(
                                        line.label()
                                                + ": line at "
                                                + quantity(
                                                        line.at(),
                                                        line.upright() ? data.x() : data.y())
                                                + "."));
        data.present()
                .filter(present -> !present.point().isGap())
                .ifPresent(present -> text.add(present(present, data)));
        return text.toString();
    }

    private static String curve(Series series, ChartData data) {
        List<Point> points = series.drawable();
        if (points.isEmpty()) {
            return series.label() + " has no readings.";
        }
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        if (points.size() == 1) {
            return series.label() + ": " + place(first, data) + ".";
        }
        Point top = points.stream().max(Comparator.comparingDouble(Point::y)).orElseThrow();
        return series.label()
                + " starts at "
                + quantity(first.y(), data.y())
                + ", ends at "
                + quantity(last.y(), data.y())
                + ", highest "
                + place(top, data)
                + ".";
    }

    private static String present(Present present, ChartData data) {
        return present.label() + ": " + place(present.point(), data) + ".";
    }

    private static String place(Point p, ChartData data) {
        return quantity(p.y(), data.y()) + " at " + quantity(p.x(), data.x());
    }

    static String quantity(double value, Axis axis) {
        boolean pure = axis.unit().isEmpty() || axis.unit().equals("1");
        return number(value) + (pure ? "" : " " + axis.unit());
    }

    static String number(double value) {
        return DecimalHabit.spoken().write(Numbers.plain(Numbers.rounded(value, DIGITS)));
    }
}

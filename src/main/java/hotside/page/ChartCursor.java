// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Point;
import hotside.page.ChartData.Series;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * What a chart reads where a pointer or the arrow keys stand. Whoever shows the chart moves its
 * {@code line.cursor} to {@link Reading#at} and prints {@link Reading#text}.
 */
public final class ChartCursor {
    /** Readings this part of the axis apart count as taken at one place. */
    private static final double TOGETHER = 0.01;

    /**
     * @param index which stop, from 0
     * @param at along the chart's own horizontal coordinate
     * @param text place, and the value of each curve there
     */
    public record Reading(int index, double at, String text) {}

    private final ChartData data;
    private final ChartLayout layout;
    private final List<Double> stops;

    public ChartCursor(ChartData data) {
        this.data = data;
        this.layout = new ChartLayout(data);
        this.stops =
                data.series().stream()
                        .flatMap(series -> Thinned.of(series.points()).stream())
                        .filter(point -> !point.isGap())
                        .map(Point::x)
                        .distinct()
                        .sorted()
                        .toList();
    }

    /**
     * The reading nearest to a place; none if the chart has no readings.
     *
     * @param at along the chart's own horizontal coordinate, 0 to its width
     */
    public Optional<Reading> near(double at) {
        double x = layout.xAt(at);
        return stops.stream()
                .min(Comparator.comparingDouble(stop -> Math.abs(stop - x)))
                .map(stop -> reading(stops.indexOf(stop)));
    }

    /**
     * The place on the horizontal axis, in its unit.
     *
     * @param across 0 at the left edge of the chart to 1 at its right edge
     */
    public double axisAt(double across) {
        return layout.xAt(across * data.width());
    }

    /** As {@link #near}, for a pointer. */
    public Optional<Reading> nearPointer(double across) {
        return near(across * data.width());
    }

    /** The reading so many stops further, or the last on the way; none if there are no readings. */
    public Optional<Reading> step(int from, int by) {
        return stops.isEmpty()
                ? Optional.empty()
                : Optional.of(reading(Math.max(0, Math.min(stops.size() - 1, from + by))));
    }

    private Reading reading(int index) {
        double stop = stops.get(index);
        StringJoiner values = new StringJoiner(", ");
        for (Series series : data.series()) {
            nearest(series, stop)
                    .ifPresent(
                            point ->
                                    values.add(
                                            series.label()
                                                    + " "
                                                    + ChartSummary.quantity(point.y(), data.y())));
        }
        return new Reading(
                index, layout.px(stop), ChartSummary.quantity(stop, data.x()) + ": " + values);
    }

    private Optional<Point> nearest(Series series, double stop) {
        double reach = TOGETHER * (layout.x.high() - layout.x.low());
        return series.drawable().stream()
                .filter(point -> Math.abs(point.x() - stop) <= reach)
                .min(Comparator.comparingDouble(point -> Math.abs(point.x() - stop)));
    }
}

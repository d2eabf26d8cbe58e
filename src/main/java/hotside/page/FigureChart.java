// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.problem.Figure;
import java.util.List;
import java.util.Optional;

/** The chart of a problem, with the marks that its answers are read by. */
final class FigureChart {
    private FigureChart() {}

    /**
     * @param width in pixels at 100 % text size
     */
    static ChartData of(Figure figure, int width) {
        List<ChartData.Series> series = figure.curves().stream().map(FigureChart::curve).toList();
        // Several curves of different units stand on one row of numbers, so the label has the unit.
        return new ChartData(
                "",
                ChartData.Axis.marked(
                        figure.x().label(), figure.x().scale().told(), figure.x().marks()),
                ChartData.Axis.marked(figure.y().label(), unit(figure), figure.y().marks()),
                series,
                Optional.empty(),
                List.of(),
                width,
                Math.max(320, width * 10 / 17));
    }

    /** The one unit of the upright axis; empty if curves of several units stand on it. */
    private static String unit(Figure figure) {
        List<String> units =
                figure.curves().stream().map(c -> c.scale().told()).distinct().toList();
        return units.size() == 1 ? units.get(0) : "";
    }

    private static ChartData.Series curve(Figure.Curve curve) {
        double[] xs = curve.xs().stream().mapToDouble(d -> d).toArray();
        double[] ys = curve.ys().stream().mapToDouble(d -> d).toArray();
        return ChartData.Series.of(curve.name(), xs, ys);
    }
}

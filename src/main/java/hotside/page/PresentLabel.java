// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Point;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The box of the label beside the present point, where it covers least of the curves. */
record PresentLabel(List<String> lines, double x, double y, double width, double height) {
    private static final double AWAY = 11;
    private static final double PADDING = 5;
    private static final double WIDEST_PART = 0.45;
    private static final int STEPS = 16;

    static PresentLabel beside(Point p, String text, ChartLayout at) {
        double most = WIDEST_PART * (at.right - at.left);
        List<String> lines = TextWidth.wrap(text, most, ChartLayout.FONT);
        double width = ChartLayout.widest(lines) + 2 * PADDING;
        double height = lines.size() * ChartLayout.LINE + 4;
        return places(p, width, height)
                .map(
                        corner ->
                                new PresentLabel(
                                        lines,
                                        clamp(corner.x(), at.left + 2, at.right - width),
                                        clamp(corner.y(), at.top, at.bottom - height - 2),
                                        width,
                                        height))
                .min(Comparator.comparingInt(label -> label.covered(at, p)))
                .orElseThrow();
    }

    /** Upper left corners to try, the nearest first. */
    private static Stream<Point> places(Point p, double width, double height) {
        double right = p.x() + AWAY;
        double left = p.x() - AWAY - width;
        return Stream.of(1, 3, 5)
                .flatMap(
                        far ->
                                Stream.of(
                                        new Point(right, p.y() - far * AWAY - height),
                                        new Point(left, p.y() - far * AWAY - height),
                                        new Point(right, p.y() + far * AWAY),
                                        new Point(left, p.y() + far * AWAY)));
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }

    /** How much of the curves lies under the box; the point itself counts for all of it. */
    private int covered(ChartLayout at, Point point) {
        int count = holds(point.x(), point.y()) ? 10_000 : 0;
        for (ChartData.Line line : at.data.lines()) {
            boolean level = !line.upright() && line.isDrawable();
            count += level && holds(x, at.py(line.at())) ? STEPS : 0;
        }
        for (ChartData.Series series : at.data.series()) {
            List<Point> points = Thinned.of(series.points());
            for (int i = 1; i < points.size(); i++) {
                count += onSegment(at, points.get(i - 1), points.get(i));
            }
        }
        return count;
    }

    private int onSegment(ChartLayout at, Point a, Point b) {
        if (a.isGap() || b.isGap()) {
            return 0;
        }
        Point from = at.pixel(a);
        Point to = at.pixel(b);
        int count = 0;
        for (int s = 0; s <= STEPS; s++) {
            double t = (double) s / STEPS;
            if (holds(from.x() + t * (to.x() - from.x()), from.y() + t * (to.y() - from.y()))) {
                count++;
            }
        }
        return count;
    }

    private boolean holds(double px, double py) {
        return px >= x && px <= x + width && py >= y && py <= y + height;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Line;
import hotside.page.ChartData.Point;
import hotside.page.ChartData.Series;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Where everything of a chart goes, in pixels from the upper left corner. Room is made for whole
 * labels first; what is left is the plot.
 */
final class ChartLayout {
    static final double FONT = 14;
    static final double TITLE_FONT = 16;
    static final double LINE = 18;
    static final double TITLE_LINE = 21;
    static final double EDGE = 8;

    /** From a curve's end to its label. */
    static final double LEADER = 20;

    private static final double TICK = 8;
    private static final double MOST_OF_THE_WIDTH = 0.36;
    private static final double PIXELS_TO_A_Y_TICK = 70;
    private static final double PIXELS_TO_AN_X_TICK = 45;
    private static final double BETWEEN_X_LABELS = 16;

    /**
     * A label at the right-hand edge.
     *
     * @param lines its text, broken to fit
     * @param series the curve it names, or −1 for a straight line
     * @param from where the curve or line ends
     * @param middle the centre of the label
     */
    record EndLabel(List<String> lines, int series, Point from, double middle) {}

    /** A label over an upright line: its text, its centre and its first baseline. */
    record TopLabel(List<String> lines, double centre, double baseline, double lineAt) {}

    final ChartData data;
    final Ticks x;
    final Ticks y;
    final List<String> title;
    final List<String> yHeading;
    final List<String> xHeading;
    final List<EndLabel> endLabels;
    final List<TopLabel> topLabels;
    final double left;
    final double right;
    final double top;
    final double bottom;
    final double height;

    ChartLayout(ChartData data) {
        this.data = data;
        y = ticks(data.y(), ys(data), Math.max(2, (int) (data.height() / PIXELS_TO_A_Y_TICK)));
        double inside = data.width() - 2 * EDGE;
        title = data.title().isBlank() ? List.of() : wrap(data.title(), inside, TITLE_FONT);
        yHeading = wrap(data.y().heading() + breakNote(), inside, FONT);
        xHeading = wrap(data.x().heading(), inside, FONT);
        left = EDGE + widest(y.labels()) + TICK;
        List<List<String>> names = endNames(data);
        right = data.width() - EDGE - endRoom(names);
        x = xTicks(data, right - left);
        double above = EDGE + title.size() * TITLE_LINE + yHeading.size() * LINE;
        List<TopLabel> tops = new ArrayList<>();
        top = above + placeTops(tops, above) + LINE / 2;
        topLabels = tops;
        double below = TICK + LINE + xHeading.size() * LINE + EDGE;
        double needed = names.stream().mapToDouble(name -> name.size() * LINE).sum();
        height = Math.max(data.height(), top + Math.max(needed, 90) + below);
        bottom = height - below;
        endLabels = placeEnds(names);
    }

    double px(double value) {
        return left + (right - left) * part(value, x);
    }

    double py(double value) {
        return bottom - (bottom - top) * part(value, y);
    }

    /** The number at this place along the horizontal axis. */
    double xAt(double pixel) {
        double part = (pixel - left) / (right - left);
        return x.low() + part * (x.high() - x.low());
    }

    /** The number at this place along the upright axis. */
    double yAt(double pixel) {
        double part = (bottom - pixel) / (bottom - top);
        return y.low() + part * (y.high() - y.low());
    }

    Point pixel(Point p) {
        return new Point(px(p.x()), py(p.y()));
    }

    private static double part(double value, Ticks ticks) {
        return (value - ticks.low()) / (ticks.high() - ticks.low());
    }

    private String breakNote() {
        return y.isBroken() ? Words.of("chart.broken") : "";
    }

    private static Ticks ticks(ChartData.Axis axis, DoubleStream values, int about) {
        double[] all = values.toArray();
        double min = DoubleStream.of(all).min().orElse(0);
        double max = DoubleStream.of(all).max().orElse(0);
        return axis.marks()
                .map(Ticks::of)
                .orElseGet(() -> Ticks.covering(min, max, axis.fromZero(), about));
    }

    private static DoubleStream ys(ChartData data) {
        return DoubleStream.concat(points(data).mapToDouble(Point::y), lines(data, false));
    }

    private static DoubleStream xs(ChartData data) {
        return DoubleStream.concat(points(data).mapToDouble(Point::x), lines(data, true));
    }

    private static Stream<Point> points(ChartData data) {
        return Stream.concat(
                data.series().stream().flatMap(series -> series.drawable().stream()),
                data.present().stream().map(p -> p.point()).filter(p -> !p.isGap()));
    }

    private static DoubleStream lines(ChartData data, boolean upright) {
        return data.lines().stream()
                .filter(line -> line.upright() == upright && line.isDrawable())
                .mapToDouble(Line::at);
    }

    /** As many marks as leave their labels apart. */
    private static Ticks xTicks(ChartData data, double width) {
        int about = Math.max(1, (int) (width / PIXELS_TO_AN_X_TICK));
        Ticks ticks = ticks(data.x(), xs(data), about);
        while (about > 1 && !fits(ticks, width)) {
            about--;
            ticks = ticks(data.x(), xs(data), about);
        }
        return ticks;
    }

    private static boolean fits(Ticks ticks, double width) {
        return fits(ticks, width, 1);
    }

    private static boolean fits(Ticks ticks, double width, int every) {
        double spacing = every * width / (ticks.last() - ticks.first());
        return widest(ticks.labels()) + BETWEEN_X_LABELS <= spacing;
    }

    /**
     * Marks that must stay may be too many to number: every one, every second or every fifth is.
     */
    boolean isNumbered(int mark) {
        double width = right - left;
        int every = fits(x, width, 1) ? 1 : fits(x, width, 2) ? 2 : 5;
        return Math.floorMod(x.first() + mark, every) == 0;
    }

    private List<List<String>> endNames(ChartData data) {
        List<List<String>> names = new ArrayList<>();
        double most = MOST_OF_THE_WIDTH * data.width();
        for (Series series : data.series()) {
            if (!series.drawable().isEmpty()) {
                names.add(wrap(series.label(), most, FONT));
            }
        }
        for (Line line : level(data)) {
            names.add(wrap(line.label(), most, FONT));
        }
        return names;
    }

    private double endRoom(List<List<String>> names) {
        double room = names.stream().mapToDouble(ChartLayout::widest).max().orElse(0) + LEADER;
        // The last mark's label is centred under the plot's edge.
        return Math.max(room, 30);
    }

    private static List<Line> level(ChartData data) {
        return data.lines().stream().filter(l -> !l.upright() && l.isDrawable()).toList();
    }

    private List<EndLabel> placeEnds(List<List<String>> names) {
        List<Point> from = new ArrayList<>();
        List<Integer> series = new ArrayList<>();
        for (int i = 0; i < data.series().size(); i++) {
            List<Point> drawable = data.series().get(i).drawable();
            if (!drawable.isEmpty()) {
                from.add(pixel(drawable.get(drawable.size() - 1)));
                series.add(i);
            }
        }
        for (Line line : level(data)) {
            from.add(new Point(right, py(line.at())));
            series.add(-1);
        }
        double[] middles =
                Spread.apart(
                        from.stream().mapToDouble(Point::y).toArray(),
                        names.stream().mapToDouble(name -> name.size() * LINE).toArray(),
                        top - LINE / 2,
                        bottom + LINE / 2);
        List<EndLabel> labels = new ArrayList<>();
        for (int i = 0; i < middles.length; i++) {
            labels.add(new EndLabel(names.get(i), series.get(i), from.get(i), middles[i]));
        }
        return labels;
    }

    /** Labels of upright lines in rows over the plot; gives the height of the rows. */
    private double placeTops(List<TopLabel> placed, double from) {
        List<Double> rowEnds = new ArrayList<>();
        List<Line> upright =
                new ArrayList<>(
                        data.lines().stream().filter(l -> l.upright() && l.isDrawable()).toList());
        upright.sort(Comparator.comparingDouble(Line::at));
        double deepest = 0;
        for (Line line : upright) {
            List<String> text = wrap(line.label(), data.width() / 2.0, FONT);
            double half = widest(text) / 2;
            double at = px(line.at());
            double centre = Math.max(EDGE + half, Math.min(data.width() - EDGE - half, at));
            int row = freeRow(rowEnds, centre - half);
            rowEnds.set(row, centre + half);
            double offset = row * LINE * tallestTop();
            placed.add(new TopLabel(text, centre, from + offset + LINE - 4, at));
            deepest = Math.max(deepest, offset + text.size() * LINE);
        }
        return deepest;
    }

    private int tallestTop() {
        return data.lines().stream()
                .filter(line -> line.upright() && line.isDrawable())
                .mapToInt(line -> wrap(line.label(), data.width() / 2.0, FONT).size())
                .max()
                .orElse(1);
    }

    private static int freeRow(List<Double> rowEnds, double start) {
        for (int row = 0; row < rowEnds.size(); row++) {
            if (rowEnds.get(row) + EDGE <= start) {
                return row;
            }
        }
        rowEnds.add(0.0);
        return rowEnds.size() - 1;
    }

    private static List<String> wrap(String text, double width, double size) {
        return TextWidth.wrap(text, width, size);
    }

    static double widest(List<String> lines) {
        return lines.stream().mapToDouble(line -> TextWidth.of(line, FONT)).max().orElse(0);
    }
}

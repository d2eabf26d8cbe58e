// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.problem.AxisMarks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a line chart shows. Numbers come in the unit shown; a point with a number that is not
 * finite, or beyond ±10³⁰⁰, is a gap that breaks its line.
 *
 * @param title what the chart is of; empty for none
 * @param x the horizontal axis
 * @param y the vertical axis
 * @param series the curves
 * @param present where the reader's own settings stand, if that means something
 * @param lines straight lines to compare with
 * @param width in pixels at 100 % text size, {@value #SMALLEST} at least
 * @param height in pixels, {@value #SMALLEST} at least; more is taken where labels need it
 */
public record ChartData(
        String title,
        Axis x,
        Axis y,
        List<Series> series,
        Optional<Present> present,
        List<Line> lines,
        int width,
        int height) {
    static final int SMALLEST = 200;
    private static final double FURTHEST = 1e300;

    public ChartData {
        if (width < SMALLEST || height < SMALLEST) {
            throw new IllegalArgumentException(
                    "a chart of " + width + " by " + height + " has no room for its labels");
        }
        series = List.copyOf(series);
        lines = List.copyOf(lines);
    }

    /** Curves alone, in the usual size. */
    public static ChartData of(String title, Axis x, Axis y, List<Series> series) {
        return new ChartData(title, x, y, series, Optional.empty(), List.of(), 620, 380);
    }

    public ChartData with(Present present) {
        return new ChartData(title, x, y, series, Optional.of(present), lines, width, height);
    }

    public ChartData with(Line line) {
        List<Line> more = new ArrayList<>(lines);
        more.add(line);
        return new ChartData(title, x, y, series, present, more, width, height);
    }

    public ChartData sized(int width, int height) {
        return new ChartData(title, x, y, series, present, lines, width, height);
    }

    /**
     * One axis.
     *
     * @param label what is counted along it
     * @param unit as printed, with its zero: {@code kPa gauge}; empty or {@code 1} for a pure
     *     number
     * @param fromZero true if zero must be on it; otherwise it may start elsewhere, with a break
     *     mark
     * @param marks where answers are read off it: its marks, with small ones between; otherwise
     *     they follow from the data and the room
     */
    public record Axis(String label, String unit, boolean fromZero, Optional<AxisMarks> marks) {
        public Axis(String label, String unit, boolean fromZero) {
            this(label, unit, fromZero, Optional.empty());
        }

        /** An axis with marks of its own. */
        public static Axis marked(String label, String unit, AxisMarks marks) {
            return new Axis(label, unit, false, Optional.of(marks));
        }

        public static Axis fromZero(String label, String unit) {
            return new Axis(label, unit, true);
        }

        public static Axis aroundData(String label, String unit) {
            return new Axis(label, unit, false);
        }

        /** Label and unit, as beside the axis and over a column. */
        public String heading() {
            return unit.isEmpty() || unit.equals("1") ? label : label + ", " + unit;
        }
    }

    /**
     * A point of a curve.
     *
     * @param x in the unit of the horizontal axis
     * @param y in the unit of the vertical axis
     */
    public record Point(double x, double y) {
        boolean isGap() {
            // A comparison with NaN is false.
            return !(Math.abs(x) <= FURTHEST && Math.abs(y) <= FURTHEST);
        }
    }

    /**
     * A curve.
     *
     * @param label printed at its end
     * @param points in the order in which the line runs
     * @param dash how its line is broken; empty for the next in turn
     * @param marker what sits on it; empty for the next in turn
     * @param tone the curve whose colour it has; empty for a colour of its own
     */
    public record Series(
            String label,
            List<Point> points,
            Optional<Dash> dash,
            Optional<Marker> marker,
            Optional<Integer> tone) {
        public Series {
            points = List.copyOf(points);
        }

        /**
         * @throws IllegalArgumentException if the arrays differ in length
         */
        public static Series of(String label, double[] x, double[] y) {
            if (x.length != y.length) {
                throw new IllegalArgumentException(
                        label + ": " + x.length + " places and " + y.length + " values");
            }
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < x.length; i++) {
                points.add(new Point(x[i], y[i]));
            }
            return new Series(label, points, Optional.empty(), Optional.empty(), Optional.empty());
        }

        public Series drawn(Dash dash, Marker marker) {
            return new Series(label, points, Optional.of(dash), Optional.of(marker), tone);
        }

        /** In the colour of another curve of the chart, because it belongs to that one. */
        public Series toned(int other) {
            return new Series(label, points, dash, marker, Optional.of(other));
        }

        /** The points that can be drawn. */
        List<Point> drawable() {
            return points.stream().filter(point -> !point.isGap()).toList();
        }
    }

    /**
     * Where the reader's settings stand.
     *
     * @param label printed beside it
     */
    public record Present(double x, double y, String label) {
        Point point() {
            return new Point(x, y);
        }
    }

    /**
     * A straight line across the chart.
     *
     * @param upright true for a vertical line
     * @param at where it crosses the other axis
     * @param label printed at its end
     */
    public record Line(boolean upright, double at, String label) {
        public static Line upright(double atX, String label) {
            return new Line(true, atX, label);
        }

        public static Line level(double atY, String label) {
            return new Line(false, atY, label);
        }

        boolean isDrawable() {
            return Math.abs(at) <= FURTHEST;
        }
    }

    /** How a line is broken, so that curves differ without colour. */
    public enum Dash {
        SOLID(""),
        DASHED("9 4"),
        DOTTED("2 4"),
        DASH_DOT("11 4 2 4"),
        LONG("18 5"),
        DASH_DOT_DOT("11 4 2 4 2 4");

        private final String lengths;

        Dash(String lengths) {
            this.lengths = lengths;
        }

        String lengths() {
            return lengths;
        }
    }

    /** What sits on a curve, so that curves differ without colour. */
    public enum Marker {
        CIRCLE,
        SQUARE,
        TRIANGLE,
        DIAMOND,
        CROSS,
        PLUS,
        NONE
    }
}

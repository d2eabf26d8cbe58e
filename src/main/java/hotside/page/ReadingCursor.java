// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.problem.AxisMarks;
import hotside.problem.Figure;
import hotside.problem.Reading;
import hotside.problem.Task;
import hotside.problem.Variant;
import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import hotside.unit.Scale;
import java.util.Optional;

/**
 * The hair line with which a learner measures in a problem's chart: upright for a place on the
 * horizontal axis, level for a height. It tells where it stands and never what a curve does there.
 */
public final class ReadingCursor {
    /** Stops to a small division. */
    private static final int STOPS = 4;

    private final Figure.Axis axis;
    private final boolean upright;
    private final Scale scale;
    private final ChartData data;
    private final ChartLayout layout;

    private ReadingCursor(Figure figure, Reading reading, int width) {
        this.upright = reading.sort().alongX();
        this.axis = upright ? figure.x() : figure.y();
        // Curves of several units may stand on one axis.
        this.scale = upright ? axis.scale() : figure.curve(reading.of()).orElseThrow().scale();
        this.data = FigureChart.of(figure, width);
        this.layout = new ChartLayout(data);
    }

    /**
     * The hair line of a variant; none if its answer is no point of an axis.
     *
     * @param width of the chart, in pixels at 100 % text size
     */
    public static Optional<ReadingCursor> of(Variant variant, int width) {
        if (!(variant.template().task() instanceof Task.Read read)) {
            return Optional.empty();
        }
        Figure figure = variant.figures().get(0);
        Reading.Sort sort = read.reading().sort();
        boolean level = sort == Reading.Sort.VALUE || sort == Reading.Sort.PEAK;
        return sort.alongX() || level
                ? Optional.of(new ReadingCursor(figure, read.reading(), width))
                : Optional.empty();
    }

    /** True if it stands upright and moves left and right; false if it moves up and down. */
    public boolean isUpright() {
        return upright;
    }

    /** Where it begins: the middle of its axis. */
    public double middle() {
        return stop((axis.marks().low() + axis.marks().high()) / 2);
    }

    /**
     * The stop nearest to a pointer.
     *
     * @param across 0 at the left edge of the chart to 1 at its right edge
     * @param down 0 at the upper edge to 1 at the lower edge
     * @return in the unit of the axis
     */
    public double pointed(double across, double down) {
        return stop(upright ? layout.xAt(across * data.width()) : layout.yAt(down * layout.height));
    }

    /** So many stops further. */
    public double moved(double from, int stops) {
        return stop(from + stops * width());
    }

    /** Along the chart's own coordinate: from the left if it is upright, else from the top. */
    public double pixel(double value) {
        return upright ? layout.px(value) : layout.py(value);
    }

    /** What it measures, as an answer is typed: {@code 4150 rev/min}. */
    public String answer(double value) {
        return (DecimalHabit.spoken().write(Numbers.plain(value)) + " " + scale.told()).strip();
    }

    private double width() {
        return axis.marks().minor() / STOPS;
    }

    private double stop(double value) {
        AxisMarks marks = axis.marks();
        double within = Math.max(marks.low(), Math.min(marks.high(), value));
        return Math.rint(within / width()) * width();
    }
}

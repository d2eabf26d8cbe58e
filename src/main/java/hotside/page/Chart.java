// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Line;
import hotside.page.ChartData.Point;
import hotside.page.ChartData.Present;
import hotside.problem.AxisMarks;
import java.util.List;

/**
 * A line chart as SVG text. Curves carry their names at their ends and differ by dash and marker as
 * well as by colour; an axis without zero shows a break; a summary in words goes with it.
 *
 * <p>Colours stand as attributes, for paper, and as classes, so that a page's style sheet can put
 * those of its theme in their place: {@code curve c1} to {@code c6}, {@code axis}, {@code grid},
 * {@code tick}, {@code line}, {@code present}, {@code plate}.
 */
public final class Chart {
    static final List<String> COLOURS =
            List.of("#1b5a9c", "#a3420f", "#1f6b3a", "#6f3fa3", "#7a5b00", "#0a6a75");
    private static final double SMALL_MARK = 5;
    private static final String INK = "#22262b";
    private static final String QUIET = "#50565e";
    private static final String GRID = "#dcd8cf";
    static final String PAPER = "#ffffff";

    private final ChartLayout at;
    private final ChartData data;
    private final SvgWriter out = new SvgWriter();

    private Chart(ChartData data) {
        this.data = data;
        this.at = new ChartLayout(data);
    }

    /** The chart alone. */
    public static String svg(ChartData data) {
        return new Chart(data).draw();
    }

    /** The chart and, folded beneath it, its numbers. */
    public static String figure(ChartData data) {
        return "<figure class=\"chart\">" + svg(data) + ChartTable.html(data) + "</figure>";
    }

    /** What the chart shows, in sentences: range, and start, end and top of each curve. */
    public static String summary(ChartData data) {
        return ChartSummary.of(data);
    }

    /** One class name and one colour to each curve, over again after the sixth. */
    static String curveClass(int series) {
        return "c" + (series % COLOURS.size() + 1);
    }

    private String draw() {
        String summary = summary(data);
        String name = data.title().isBlank() ? data.y().heading() : data.title();
        out.add(
                "<svg xmlns='http://www.w3.org/2000/svg' class='chart' role='img' aria-label='{}'"
                        + " viewBox='0 0 {} {}' width='{}' height='{}'"
                        + " font-family='Roboto, sans-serif' font-size='{}'>",
                name + ". " + summary,
                data.width(),
                at.height,
                data.width(),
                at.height,
                ChartLayout.FONT);
        out.add("<title>{}</title><desc>{}</desc>", name, summary);
        headings();
        grid();
        uprightLines();
        levelLines();
        presentGuides();
        ChartCurves curves = new ChartCurves(at, out);
        for (int i = 0; i < data.series().size(); i++) {
            curves.draw(i);
        }
        present();
        endLabels();
        if (at.endLabels.isEmpty()) {
            words(
                    List.of(Words.of("chart.empty")),
                    middleX(),
                    middleY() - ChartLayout.LINE,
                    "middle",
                    "tick",
                    QUIET);
        }
        cursor();
        return out.add("</svg>").toString();
    }

    private void headings() {
        double y = ChartLayout.EDGE + ChartLayout.TITLE_FONT - 2;
        for (String line : at.title) {
            out.add(
                    "<text class='title' x='{}' y='{}' fill='{}' font-size='{}'"
                            + " font-weight='bold'>{}</text>",
                    ChartLayout.EDGE,
                    y,
                    INK,
                    ChartLayout.TITLE_FONT,
                    line);
            y += ChartLayout.TITLE_LINE;
        }
        words(at.yHeading, ChartLayout.EDGE, y, "start", "axis-title", QUIET);
        double below = at.bottom + 2 * ChartLayout.LINE + 6;
        words(at.xHeading, middleX(), below, "middle", "axis-title", QUIET);
    }

    private double middleX() {
        return (at.left + at.right) / 2;
    }

    private double middleY() {
        return (at.top + at.bottom) / 2;
    }

    private void grid() {
        List<Double> ys = at.y.values();
        for (int i = 0; i < ys.size(); i++) {
            double y = at.py(ys.get(i));
            segment(at.left, y, at.right, y, "grid", GRID, 1, "");
            words(List.of(at.y.labels().get(i)), at.left - 7, y + 4.5, "end", "tick", QUIET);
        }
        List<Double> xs = at.x.values();
        for (int i = 0; i < xs.size(); i++) {
            double x = at.px(xs.get(i));
            segment(x, at.bottom, x, at.bottom + 5, "axis", QUIET, 1, "");
            double baseline = at.bottom + ChartLayout.LINE + 4;
            if (at.isNumbered(i)) {
                words(List.of(at.x.labels().get(i)), x, baseline, "middle", "tick", QUIET);
            }
        }
        data.x().marks().ifPresent(this::smallMarksAlong);
        data.y().marks().ifPresent(this::smallMarksUp);
        axes();
    }

    private void smallMarksAlong(AxisMarks marks) {
        for (int i = 1; i < smallMarks(marks); i++) {
            double x = at.px(marks.low() + i * marks.minor());
            segment(x, at.bottom, x, at.bottom - SMALL_MARK, "axis", QUIET, 0.8, "");
        }
    }

    private void smallMarksUp(AxisMarks marks) {
        for (int i = 1; i < smallMarks(marks); i++) {
            double y = at.py(marks.low() + i * marks.minor());
            segment(at.left, y, at.left + SMALL_MARK, y, "axis", QUIET, 0.8, "");
        }
    }

    private static long smallMarks(AxisMarks marks) {
        return (marks.last() - marks.first()) * marks.parts();
    }

    private void axes() {
        boolean zeroInside = at.y.first() < 0 && at.y.last() > 0;
        if (zeroInside) {
            segment(at.left, at.py(0), at.right, at.py(0), "axis", QUIET, 1, "");
        }
        if (at.y.isBroken()) {
            double end = at.y.first() > 0 ? at.bottom : at.top;
            double way = at.y.first() > 0 ? -1 : 1;
            broken(at.left, end, 0, way, at.left, at.y.first() > 0 ? at.top : at.bottom);
        } else {
            segment(at.left, at.top, at.left, at.bottom, "axis", QUIET, 1.2, "");
        }
        if (at.x.isBroken()) {
            double end = at.x.first() > 0 ? at.left : at.right;
            double way = at.x.first() > 0 ? 1 : -1;
            broken(end, at.bottom, way, 0, at.x.first() > 0 ? at.right : at.left, at.bottom);
        } else {
            segment(at.left, at.bottom, at.right, at.bottom, "axis", QUIET, 1.2, "");
        }
    }

    /** An axis with a jag near the end where zero would lie. */
    private void broken(double x, double y, double dx, double dy, double toX, double toY) {
        double[][] jag = {{4, 0}, {7, -6}, {11, 6}, {14, 0}};
        StringBuilder d = new StringBuilder("M").append(pair(x, y));
        for (double[] step : jag) {
            double along = step[0];
            double across = step[1];
            d.append('L').append(pair(x + dx * along - dy * across, y + dy * along + dx * across));
        }
        d.append('L').append(pair(toX, toY));
        out.add(
                "<path class='axis break' d='{}' fill='none' stroke='{}' stroke-width='1.2'/>",
                d,
                QUIET);
    }

    private void uprightLines() {
        for (ChartLayout.TopLabel label : at.topLabels) {
            segment(
                    label.lineAt(),
                    at.top - 4,
                    label.lineAt(),
                    at.bottom,
                    "line",
                    QUIET,
                    1.2,
                    "5 3");
            words(label.lines(), label.centre(), label.baseline(), "middle", "line-label", QUIET);
        }
    }

    private void levelLines() {
        for (Line line : data.lines()) {
            if (!line.upright() && line.isDrawable()) {
                double y = at.py(line.at());
                segment(at.left, y, at.right, y, "line", QUIET, 1.2, "5 3");
            }
        }
    }

    private void endLabels() {
        double x = at.right + ChartLayout.LEADER;
        for (ChartLayout.EndLabel label : at.endLabels) {
            boolean curve = label.series() >= 0;
            int tone = curve ? data.series().get(label.series()).tone().orElse(label.series()) : 0;
            String colour = curve ? COLOURS.get(tone % COLOURS.size()) : QUIET;
            String name = curve ? "end-label " + curveClass(tone) : "line-label";
            String way =
                    "M"
                            + pair(label.from().x() + 5, label.from().y())
                            + "L"
                            + pair(at.right + 6, label.from().y())
                            + "L"
                            + pair(x - 4, label.middle());
            out.add(
                    "<path class='leader {}' d='{}' fill='none' stroke='{}' stroke-width='0.8'/>",
                    curve ? curveClass(tone) : "line",
                    way,
                    colour);
            double half = (label.lines().size() - 1) * ChartLayout.LINE / 2;
            words(label.lines(), x, label.middle() - half + 4.5, "start", name, colour);
        }
    }

    private void presentGuides() {
        data.present()
                .map(Present::point)
                .filter(p -> !p.isGap())
                .map(at::pixel)
                .ifPresent(
                        p -> {
                            segment(at.left, p.y(), p.x(), p.y(), "present guide", INK, 1, "2 3");
                            segment(p.x(), p.y(), p.x(), at.bottom, "present guide", INK, 1, "2 3");
                        });
    }

    private void present() {
        if (data.present().isEmpty() || data.present().get().point().isGap()) {
            return;
        }
        Point p = at.pixel(data.present().get().point());
        out.add(
                "<circle class='present dot' cx='{}' cy='{}' r='6' fill='{}' stroke='{}'"
                        + " stroke-width='2'/>",
                p.x(),
                p.y(),
                INK,
                PAPER);
        PresentLabel label = PresentLabel.beside(p, data.present().get().label(), at);
        out.add(
                "<rect class='plate' x='{}' y='{}' width='{}' height='{}' rx='3' fill='{}'"
                        + " fill-opacity='0.88'/>",
                label.x(),
                label.y(),
                label.width(),
                label.height(),
                PAPER);
        double baseline = label.y() + ChartLayout.LINE - 2;
        words(label.lines(), label.x() + 5, baseline, "start", "present-label", INK);
    }

    /** A hair line for the reader's pointer, out of sight until it is moved. */
    private void cursor() {
        out.add(
                "<line class='cursor' x1='{}' y1='{}' x2='{}' y2='{}' stroke='{}'"
                        + " visibility='hidden'/>",
                at.left,
                at.top,
                at.left,
                at.bottom,
                INK);
        if (data.y().marks().isPresent()) {
            out.add(
                    "<line class='ruler' x1='{}' y1='{}' x2='{}' y2='{}' stroke='{}'"
                            + " visibility='hidden'/>",
                    at.left,
                    at.bottom,
                    at.right,
                    at.bottom,
                    INK);
        }
    }

    private void segment(
            double x1,
            double y1,
            double x2,
            double y2,
            String name,
            String colour,
            double width,
            String dash) {
        out.add(
                "<path class='{}' d='{}' fill='none' stroke='{}' stroke-width='{}'"
                        + " stroke-dasharray='{}'/>",
                name,
                "M" + pair(x1, y1) + "L" + pair(x2, y2),
                colour,
                width,
                dash.isEmpty() ? "none" : dash);
    }

    private void words(
            List<String> lines, double x, double y, String anchor, String name, String colour) {
        for (int i = 0; i < lines.size(); i++) {
            out.add(
                    "<text class='{}' x='{}' y='{}' text-anchor='{}' fill='{}'>{}</text>",
                    name,
                    x,
                    y + i * ChartLayout.LINE,
                    anchor,
                    colour,
                    lines.get(i));
        }
    }

    static String pair(double x, double y) {
        return SvgWriter.number(x) + "," + SvgWriter.number(y);
    }
}

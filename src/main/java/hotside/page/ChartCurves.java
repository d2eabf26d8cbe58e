// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Dash;
import hotside.page.ChartData.Marker;
import hotside.page.ChartData.Point;
import hotside.page.ChartData.Series;
import java.util.ArrayList;
import java.util.List;

/** Draws the curves of a chart with their dashes and markers. */
final class ChartCurves {
    private static final int FEW = 12;
    private static final int MARKERS = 7;

    private final ChartLayout at;
    private final SvgWriter out;

    ChartCurves(ChartLayout at, SvgWriter out) {
        this.at = at;
        this.out = out;
    }

    void draw(int index) {
        Series series = at.data.series().get(index);
        List<List<Point>> runs = runs(Thinned.of(series.points()));
        StringBuilder path = new StringBuilder();
        for (List<Point> run : runs) {
            for (int i = 0; i < run.size(); i++) {
                path.append(i == 0 ? 'M' : 'L').append(Chart.pair(run.get(i).x(), run.get(i).y()));
            }
        }
        if (path.isEmpty()) {
            return;
        }
        int tone = series.tone().orElse(index);
        String colour = Chart.COLOURS.get(tone % Chart.COLOURS.size());
        Dash[] dashes = Dash.values();
        Dash dash = series.dash().orElse(dashes[index % dashes.length]);
        out.add(
                "<g class='curve {}' stroke='{}' fill='{}'>",
                Chart.curveClass(tone),
                colour,
                colour);
        out.add(
                "<path class='way' d='{}' fill='none' stroke-width='2.2' stroke-linejoin='round'"
                        + " stroke-dasharray='{}'/>",
                path,
                dash == Dash.SOLID ? "none" : dash.lengths());
        Marker[] markers = Marker.values();
        Marker marker = series.marker().orElse(markers[index % (markers.length - 1)]);
        markers(runs, marker, index);
        out.add("</g>");
    }

    /** Stretches without a gap, in pixels. */
    private List<List<Point>> runs(List<Point> points) {
        List<List<Point>> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        for (Point point : points) {
            if (!point.isGap()) {
                run.add(at.pixel(point));
            } else if (!run.isEmpty()) {
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        if (!run.isEmpty()) {
            runs.add(run);
        }
        return runs;
    }

    /** On every point of a short curve, on some of a long one; a lone point is always seen. */
    private void markers(List<List<Point>> runs, Marker marker, int index) {
        List<Point> all = runs.stream().flatMap(List::stream).toList();
        int every = all.size() <= FEW ? 1 : Math.max(1, all.size() / MARKERS);
        int first = every == 1 ? 0 : every * (index % 3 + 1) / 4;
        for (int i = first; i < all.size() && marker != Marker.NONE; i += every) {
            marker(marker, all.get(i));
        }
        for (List<Point> run : runs) {
            if (run.size() == 1) {
                Point p = run.get(0);
                out.add("<circle cx='{}' cy='{}' r='2.5'/>", p.x(), p.y());
            }
        }
    }

    private void marker(Marker marker, Point p) {
        double r = 4;
        String outline =
                switch (marker) {
                    case CIRCLE, NONE -> "";
                    case SQUARE -> shape(p, -r, -r, r, -r, r, r, -r, r) + "Z";
                    case TRIANGLE -> shape(p, 0, -r - 1, r + 1, r, -r - 1, r) + "Z";
                    case DIAMOND -> shape(p, 0, -r - 1, r + 1, 0, 0, r + 1, -r - 1, 0) + "Z";
                    case CROSS -> shape(p, -r, -r, r, r) + shape(p, -r, r, r, -r);
                    case PLUS -> shape(p, 0, -r - 1, 0, r + 1) + shape(p, -r - 1, 0, r + 1, 0);
                };
        if (marker == Marker.CIRCLE) {
            out.add(
                    "<circle class='marker' cx='{}' cy='{}' r='{}' fill='{}' stroke-width='1.8'/>",
                    p.x(),
                    p.y(),
                    r,
                    Chart.PAPER);
        } else {
            out.add(
                    "<path class='marker' d='{}' fill='{}' stroke-width='1.8'/>",
                    outline,
                    Chart.PAPER);
        }
    }

    private static String shape(Point p, double... offsets) {
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < offsets.length; i += 2) {
            d.append(i == 0 ? 'M' : 'L')
                    .append(Chart.pair(p.x() + offsets[i], p.y() + offsets[i + 1]));
        }
        return d.toString();
    }
}

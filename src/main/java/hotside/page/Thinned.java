// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.page.ChartData.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Fewer points of the same look: of each stretch the lowest, the highest and a gap if it has one.
 */
final class Thinned {
    /** The most points that a curve is drawn with; about one to a pixel. */
    static final int MOST = 500;

    private static final int KEPT_OF_A_STRETCH = 3;

    private Thinned() {}

    static List<Point> of(List<Point> points) {
        if (points.size() <= MOST) {
            return points;
        }
        int stretches = (MOST - 2) / KEPT_OF_A_STRETCH;
        TreeSet<Integer> kept = new TreeSet<>(List.of(0, points.size() - 1));
        for (int s = 0; s < stretches; s++) {
            int from = (int) ((long) points.size() * s / stretches);
            int to = (int) ((long) points.size() * (s + 1) / stretches);
            keep(points, from, to, kept);
        }
        List<Point> list = new ArrayList<>();
        kept.forEach(i -> list.add(points.get(i)));
        return list;
    }

    private static void keep(List<Point> points, int from, int to, TreeSet<Integer> kept) {
        int lowest = -1;
        int highest = -1;
        int gap = -1;
        for (int i = from; i < to; i++) {
            Point p = points.get(i);
            if (p.isGap()) {
                gap = i;
                continue;
            }
            lowest = lowest < 0 || p.y() < points.get(lowest).y() ? i : lowest;
            highest = highest < 0 || p.y() > points.get(highest).y() ? i : highest;
        }
        for (int i : new int[] {lowest, highest, gap}) {
            if (i >= 0) {
                kept.add(i);
            }
        }
    }
}

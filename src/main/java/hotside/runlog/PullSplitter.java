// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.runlog.RunLog.Stretch;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the pulls in a row of engine speeds: stretches over which speed runs one way. A turn counts
 * once speed has come back by a seventh of what the file covers, and by 200 rev/min at least, so
 * that jitter and a slipping roller split nothing. Which way a pull runs is the way that most rows
 * go; stretches the other way, such as coasting down, belong to no pull.
 */
final class PullSplitter {
    private static final double LEAST_TURN = 200 / 60.0;
    private static final double SHARE = 1 / 7.0;

    private final double[] speed;
    private final double turn;

    PullSplitter(double[] speed) {
        this.speed = speed;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double s : speed) {
            if (!Double.isNaN(s)) {
                low = Math.min(low, s);
                high = Math.max(high, s);
            }
        }
        this.turn = Math.max(LEAST_TURN, SHARE * (high - low));
    }

    /**
     * A stretch that runs one way.
     *
     * @param way 1 up, −1 down, 0 neither
     */
    private record Leg(int from, int to, int way) {}

    /**
     * What a section splits into.
     *
     * @param pulls in order
     * @param aside the stretches between them, which run the other way
     */
    record Split(List<Stretch> pulls, List<Stretch> aside) {}

    /**
     * Splits sections that the file itself keeps apart, each with its label; an empty label is
     * numbered.
     */
    Split split(List<Stretch> sections) {
        List<List<Leg>> all = sections.stream().map(s -> legs(s.from(), s.to())).toList();
        long balance =
                all.stream()
                        .flatMap(List::stream)
                        .mapToLong(leg -> (long) leg.way * (leg.to - leg.from))
                        .sum();
        int way = balance < 0 ? -1 : 1;
        List<Stretch> pulls = new ArrayList<>();
        List<Stretch> aside = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            List<Leg> legs = all.get(i);
            long here = legs.stream().filter(leg -> leg.way != -way).count();
            int part = 0;
            int free = sections.get(i).from();
            for (int j = 0; j < legs.size(); j++) {
                Leg leg = legs.get(j);
                boolean last = j == legs.size() - 1;
                if (leg.way == -way) {
                    int to = last ? leg.to : leg.to - 1;
                    addIfAny(aside, "", free, to);
                    free = to;
                } else {
                    part++;
                    int to = last ? leg.to : end(leg, legs.get(j + 1));
                    String label = label(sections.get(i).label(), pulls.size() + 1, here, part);
                    addIfAny(pulls, label, free, to);
                    free = to;
                }
            }
        }
        return new Split(pulls, aside);
    }

    /**
     * Where a pull ends that is followed by a stretch the other way. If speed comes back row by
     * row, the throttle was closed at the top, and of several rows at the top speed only the first
     * is surely the pull's; if it jumps back, all are.
     */
    private int end(Leg leg, Leg next) {
        int to = leg.to;
        boolean jumps = next.to - next.from <= 2;
        while (!jumps && to - 2 > leg.from && speed[to - 2] == speed[to - 1]) {
            to--;
        }
        return to;
    }

    private static String label(String said, int number, long parts, int part) {
        return said.isEmpty() ? Integer.toString(number) : parts > 1 ? said + "." + part : said;
    }

    private static void addIfAny(List<Stretch> list, String label, int from, int to) {
        if (to > from) {
            list.add(new Stretch(label, from, to));
        }
    }

    /** Legs share the row at which they turn. */
    private List<Leg> legs(int from, int to) {
        List<Leg> legs = new ArrayList<>();
        int start = from;
        int way = 0;
        int low = -1;
        int high = -1;
        for (int i = from; i < to; i++) {
            if (Double.isNaN(speed[i])) {
                continue;
            }
            low = low < 0 || speed[i] < speed[low] || way < 0 && speed[i] == speed[low] ? i : low;
            high =
                    high < 0 || speed[i] > speed[high] || way > 0 && speed[i] == speed[high]
                            ? i
                            : high;
            boolean up = way <= 0 && speed[i] - speed[low] >= turn;
            boolean down = way >= 0 && speed[high] - speed[i] >= turn;
            if (up || down) {
                int corner = up ? low : high;
                if (way != 0) {
                    legs.add(new Leg(start, corner + 1, way));
                    start = corner;
                }
                way = up ? 1 : -1;
                low = i;
                high = i;
            }
        }
        legs.add(new Leg(start, to, way));
        return legs;
    }
}

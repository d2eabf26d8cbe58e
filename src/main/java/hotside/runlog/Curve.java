// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One channel against engine speed: straight between neighbours, nothing beyond the ends, and
 * nothing across a gap. Ascending speeds, turns per second; values in SI, NaN in a gap. Immutable.
 */
public final class Curve {
    /** So far apart readings may always be joined: 100 rev/min. */
    private static final double ALWAYS_JOINED = Speeds.of(100);

    private static final double TIMES_USUAL = 2;

    /** An end that is missed by rounding alone, turns per second. */
    private static final double HAIR = 1e-9;

    private final double[] speed;
    private final double[] value;

    /** Readings at least so far apart leave a gap between them. */
    private final double gap;

    private Curve(double[] speed, double[] value, double gap) {
        this.speed = speed;
        this.value = value;
        this.gap = gap;
    }

    /**
     * A point of a curve.
     *
     * @param speed turns per second
     * @param value SI
     */
    public record Point(double speed, double value) {}

    /**
     * The curve through readings in any order. Rows in which either is missing, or speed is
     * negative, are left out, readings at one speed averaged. Where neighbours are 100 rev/min
     * apart or more, and twice as far as three quarters of the others or more, there is a gap.
     *
     * @param speeds turns per second
     * @param values as many, SI
     */
    public static Curve through(double[] speeds, double[] values) {
        int[] order = Order.ascending(speeds, values);
        double[] s = new double[order.length];
        double[] v = new double[order.length];
        int n = 0;
        for (int i = 0; i < order.length; ) {
            double at = speeds[order[i]];
            double sum = 0;
            int alike = 0;
            for (; i < order.length && (float) speeds[order[i]] == (float) at; i++) {
                sum += values[order[i]];
                alike++;
            }
            s[n] = at;
            v[n++] = sum / alike;
        }
        return new Curve(Arrays.copyOf(s, n), Arrays.copyOf(v, n), gap(s, n));
    }

    private static double gap(double[] speed, int n) {
        double[] apart = new double[Math.max(0, n - 1)];
        for (int i = 0; i < apart.length; i++) {
            apart[i] = speed[i + 1] - speed[i];
        }
        Arrays.sort(apart);
        double usual = apart.length == 0 ? 0 : apart[(3 * (apart.length - 1)) / 4];
        // A hair less than twice: with readings every 500 rev/min, one that is missing is a gap.
        return Math.max(ALWAYS_JOINED, TIMES_USUAL * usual) * (1 - 1e-6);
    }

    /**
     * A curve on even speeds.
     *
     * @param values one for each speed of the grid, NaN in gaps; copied
     */
    public static Curve on(Grid grid, double[] values) {
        double[] speed = new double[grid.count()];
        Arrays.setAll(speed, grid::speed);
        return new Curve(speed, Arrays.copyOf(values, grid.count()), Double.POSITIVE_INFINITY);
    }

    public int size() {
        return speed.length;
    }

    public double speed(int i) {
        return speed[i];
    }

    public double value(int i) {
        return value[i];
    }

    /** The band from the first speed to the last; null if there are not two. */
    public Band reach() {
        int last = speed.length - 1;
        return last < 1 || speed[last] <= speed[0] ? null : new Band(speed[0], speed[last]);
    }

    /** The widest band without a gap, the first of equals; null if no two readings are joined. */
    public Band widest() {
        Band best = null;
        int first = 0;
        for (int i = 1; i < size(); i++) {
            if (speed[i] - speed[i - 1] >= gap) {
                first = i;
            } else if (best == null || speed[i] - speed[first] > best.width()) {
                best = new Band(speed[first], speed[i]);
            }
        }
        return best;
    }

    /** The value at a speed; NaN outside the readings and in a gap. */
    public double at(double where) {
        int found = Arrays.binarySearch(speed, where);
        if (found >= 0) {
            return value[found];
        }
        int right = -found - 1;
        if (right == speed.length && right > 0 && where - speed[right - 1] < HAIR) {
            return value[right - 1];
        }
        if (right == 0 && right < speed.length && speed[0] - where < HAIR) {
            return value[0];
        }
        if (right == 0 || right == speed.length || speed[right] - speed[right - 1] >= gap) {
            return Double.NaN;
        }
        double share = (where - speed[right - 1]) / (speed[right] - speed[right - 1]);
        return value[right - 1] + share * (value[right] - value[right - 1]);
    }

    /** The same curve on even speeds. */
    public Curve on(Grid grid) {
        double[] values = new double[grid.count()];
        Arrays.setAll(values, i -> at(grid.speed(i)));
        return on(grid, values);
    }

    /** The same curve with every value multiplied. */
    public Curve times(double factor) {
        return new Curve(speed, Arrays.stream(value).map(v -> v * factor).toArray(), gap);
    }

    /** The highest reading, the first of equals; NaN if there is none. */
    public Point peak() {
        Point best = new Point(Double.NaN, Double.NaN);
        for (int i = 0; i < size(); i++) {
            if (value[i] > best.value || Double.isNaN(best.value) && !Double.isNaN(value[i])) {
                best = new Point(speed[i], value[i]);
            }
        }
        return best;
    }

    /**
     * Area under the curve over a band, exact for straight pieces.
     *
     * @return value times turns per second; NaN if the band holds a gap or reaches beyond the curve
     */
    public double area(Band band) {
        double left = band.low();
        double atLeft = at(left);
        double sum = 0;
        int first = Arrays.binarySearch(speed, left);
        for (int i = first >= 0 ? first + 1 : -first - 1;
                i < size() && speed[i] < band.high();
                i++) {
            if (speed[i] - speed[Math.max(0, i - 1)] >= gap) {
                return Double.NaN;
            }
            sum += (speed[i] - left) * (value[i] + atLeft) / 2;
            left = speed[i];
            atLeft = value[i];
        }
        return sum + (band.high() - left) * (at(band.high()) + atLeft) / 2;
    }

    /** Mean over a band, each speed counting alike; NaN if the band holds a gap. */
    public double mean(Band band) {
        return area(band) / band.width();
    }

    /**
     * Speeds at which two curves cross, ascending; where they run together for a while, the first
     * speed of it. Nothing is looked for in the gaps of either.
     */
    public List<Double> crossings(Curve other) {
        double[] speeds = union(speed, other.speed);
        List<Double> found = new ArrayList<>();
        double before = Double.NaN;
        for (int i = 0; i < speeds.length; i++) {
            double difference = at(speeds[i]) - other.at(speeds[i]);
            if (difference == 0 && before != 0) {
                found.add(speeds[i]);
            } else if (difference * before < 0) {
                double share = before / (before - difference);
                found.add(speeds[i - 1] + share * (speeds[i] - speeds[i - 1]));
            }
            before = difference;
        }
        return found;
    }

    private static double[] union(double[] a, double[] b) {
        double[] all = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, all, a.length, b.length);
        return Arrays.stream(all).sorted().distinct().toArray();
    }

    /**
     * The lowest speed at which the curve comes up to a level from below.
     *
     * @return turns per second; NaN if it never does, or lies above the level from the start
     */
    public double reaches(double level) {
        for (int i = 1; i < size(); i++) {
            boolean joined = speed[i] - speed[i - 1] < gap;
            if (joined && value[i - 1] < level && value[i] >= level) {
                double share = (level - value[i - 1]) / (value[i] - value[i - 1]);
                return speed[i - 1] + share * (speed[i] - speed[i - 1]);
            }
        }
        return Double.NaN;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.runlog.Curve.Point;
import hotside.statistics.LeastSquares;
import hotside.statistics.reading.SmoothingBias;
import java.util.Arrays;

/**
 * A curve smoothed by a moving average, and what that took off its peak.
 *
 * @param curve the smoothed one; NaN where the window does not fit or holds a gap
 * @param rawPeak peak of the curve before, noise and all
 * @param peak peak of the smoothed curve
 * @param foreseenBias what the window takes off a parabola that bends like this curve at its peak:
 *     0 or negative; NaN if there is too little about the peak to tell
 */
public record Smoothing(Curve curve, Point rawPeak, Point peak, double foreseenBias) {
    private static final int FEWEST = 5;

    /**
     * Smooths a curve on even speeds.
     *
     * @param raw what was read
     * @param grid the even speeds it is laid on first
     * @param points readings in one average; odd, 1 at least
     */
    public static Smoothing of(Curve raw, Grid grid, int points) {
        if (points < 1 || points % 2 == 0) {
            throw new IllegalArgumentException(
                    "an average over " + points + " points has no middle");
        }
        Curve even = raw.on(grid);
        double[] smooth = new double[grid.count()];
        Arrays.setAll(smooth, i -> average(even, i, points / 2));
        Curve curve = Curve.on(grid, smooth);
        return new Smoothing(curve, even.peak(), curve.peak(), bias(even, grid, points));
    }

    private static double average(Curve even, int middle, int reach) {
        if (middle < reach || middle + reach >= even.size()) {
            return Double.NaN;
        }
        double sum = 0;
        for (int i = middle - reach; i <= middle + reach; i++) {
            sum += even.value(i);
        }
        return sum / (2 * reach + 1);
    }

    /** By a parabola through the readings about the peak, as many as the window holds. */
    private static double bias(Curve even, Grid grid, int points) {
        int reach = Math.max(FEWEST, points) / 2;
        int peak = (int) Math.round((even.peak().speed() - grid.first()) / grid.step());
        int from = Math.max(0, peak - reach);
        int to = Math.min(even.size(), peak + reach + 1);
        double[] x = new double[Math.max(0, to - from)];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = from + i - peak;
            y[i] = even.value(from + i);
        }
        if (x.length < FEWEST || Arrays.stream(y).anyMatch(Double::isNaN)) {
            return Double.NaN;
        }
        double[] ones = new double[x.length];
        Arrays.fill(ones, 1);
        double[] squares = Arrays.stream(x).map(v -> v * v).toArray();
        double bend = LeastSquares.fit(y, ones, x, squares).coefficients()[2];
        return SmoothingBias.of(Math.max(0, -bend), 1, 1, points);
    }
}

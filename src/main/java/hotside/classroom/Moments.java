// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.util.Arrays;

/** Means, sample variances and correlations of rows of marks. */
final class Moments {
    private Moments() {}

    static double mean(double[] x) {
        return Arrays.stream(x).average().orElse(Double.NaN);
    }

    /** Sample variance; NaN for fewer than two. */
    static double variance(double[] x) {
        double mean = mean(x);
        return x.length < 2
                ? Double.NaN
                : Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum() / (x.length - 1);
    }

    /** Pearson's; NaN if one of them does not vary. */
    static double correlation(double[] x, double[] y) {
        double mx = mean(x);
        double my = mean(y);
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - mx) * (y[i] - my);
            xx += (x[i] - mx) * (x[i] - mx);
            yy += (y[i] - my) * (y[i] - my);
        }
        // Rounding leaves dust where nothing varies.
        boolean flat = xx < 1e-12 * x.length || yy < 1e-12 * x.length;
        return flat ? Double.NaN : xy / Math.sqrt(xx * yy);
    }

    /** NaN for none. */
    static double median(double[] x) {
        double[] sorted = x.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        if (n == 0) {
            return Double.NaN;
        }
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import java.util.Arrays;

/** What is said of repeated timings. */
public final class Samples {
    private Samples() {}

    /** The middle one, or the lower of two. */
    public static double median(double[] times) {
        return share(times, 0.5);
    }

    /** The one that this share of them does not exceed. */
    public static double share(double[] times, double share) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(share * sorted.length) - 1];
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.util.Arrays;

/** The order of rows by speed. */
final class Order {
    private static final int LOW = 32;

    private Order() {}

    /**
     * The rows in which both numbers are there, by ascending speed, equals in their own order. A
     * million rows are sorted as plain numbers: speed, which is not negative, in the upper half of
     * a long as a float, the row in the lower. Speeds that differ by less than a float can tell,
     * under 0.001 rev/min, count as equal.
     */
    static int[] ascending(double[] speeds, double[] values) {
        long[] keys = new long[speeds.length];
        int n = 0;
        boolean sorted = true;
        for (int i = 0; i < speeds.length; i++) {
            if (speeds[i] >= 0 && !Double.isNaN(values[i])) {
                keys[n] = (long) Float.floatToIntBits((float) speeds[i] + 0f) << LOW | i;
                sorted &= n == 0 || keys[n - 1] < keys[n];
                n++;
            }
        }
        if (!sorted) {
            Arrays.sort(keys, 0, n);
        }
        int[] rows = new int[n];
        for (int i = 0; i < n; i++) {
            rows[i] = (int) keys[i];
        }
        return rows;
    }
}

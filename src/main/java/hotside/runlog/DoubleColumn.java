// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.util.ArrayList;
import java.util.List;

/** Doubles that come one by one: eight bytes each and no copying while they grow. */
final class DoubleColumn {
    private static final int CHUNK = 1 << 14;

    private final List<double[]> chunks = new ArrayList<>();
    private int size;

    void add(double value) {
        int at = size % CHUNK;
        if (at == 0) {
            chunks.add(new double[CHUNK]);
        }
        chunks.get(chunks.size() - 1)[at] = value;
        size++;
    }

    int size() {
        return size;
    }

    /** All of them in one array; the column is empty afterwards. */
    double[] drain() {
        double[] all = new double[size];
        for (int i = 0; i < chunks.size(); i++) {
            int from = i * CHUNK;
            System.arraycopy(chunks.get(i), 0, all, from, Math.min(CHUNK, size - from));
            chunks.set(i, null);
        }
        chunks.clear();
        size = 0;
        return all;
    }
}

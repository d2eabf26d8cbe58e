// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import hotside.command.LongTable;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** How fast a long table of a relation is worked, in a small heap. */
final class TableRows {
    private static final int HEAP_MEGABYTES = 64;
    private static final double AIM_A_SECOND = 200_000;

    private TableRows() {}

    static List<Measure> measure(JarRun jar) throws IOException {
        JarRun.Told told = jar.run(LongTable.class, List.of("-Xmx" + HEAP_MEGABYTES + "m"));
        return List.of(
                Measure.atLeast(
                        String.format(
                                Locale.ROOT,
                                "Table of pipe-friction-drop, %,d rows, rows a second",
                                LongTable.ROWS),
                        told.get("rows-a-second"),
                        AIM_A_SECOND,
                        "%,.0f"),
                Measure.atMost(
                        "    heap at its peak",
                        told.get("peak-megabytes"),
                        HEAP_MEGABYTES,
                        "%.0f MB"));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import hotside.classroom.ClassOfThousands;
import java.io.IOException;
import java.util.List;

/** How long a class's hand-ins take to mark, in a small heap. */
final class MarkingTime {
    private static final int HEAP_MEGABYTES = 512;
    private static final double AIM_SECONDS = 30;

    private MarkingTime() {}

    static List<Measure> measure(JarRun jar) throws IOException {
        JarRun.Told told =
                jar.run(
                        ClassOfThousands.class,
                        List.of("-Xmx" + HEAP_MEGABYTES + "m", "-XX:ActiveProcessorCount=2"));
        return List.of(
                Measure.told(
                        "Marking 100 hand-ins of 10 problems", told.get("seconds-100"), "%.2f s"),
                Measure.told("    1,000 hand-ins", told.get("seconds-1000"), "%.2f s"),
                Measure.atMost(
                        "    10,000 hand-ins", told.get("seconds-10000"), AIM_SECONDS, "%.1f s"),
                Measure.atMost(
                        "    heap at its peak",
                        told.get("peak-megabytes"),
                        HEAP_MEGABYTES,
                        "%.0f MB"));
    }
}

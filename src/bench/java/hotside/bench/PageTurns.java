// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import hotside.desk.PageTurning;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** How long a page takes to turn, and what memory many turns take. */
final class PageTurns {
    private static final double AIM_FRAMES = 1;
    private static final double AIM_MEGABYTES = 300;

    private PageTurns() {}

    static List<Measure> measure(JarRun jar, List<String> options) throws IOException {
        JarRun.Told told = jar.run(PageTurning.class, options);
        return List.of(
                frames(told, "again-", "Page turn to a lesson seen before"),
                busy(told, "again-"),
                frames(told, "first-", "Page turn to a lesson not seen before"),
                busy(told, "first-"),
                Measure.atMost(
                                "Memory after " + PageTurning.TURNS + " page turns",
                                told.get("memory-after"),
                                AIM_MEGABYTES,
                                "%.0f MB")
                        .also(
                                String.format(
                                        Locale.ROOT,
                                        " (%.0f before, %.0f after a collection)",
                                        told.get("memory-before"),
                                        told.get("memory-collected"))));
    }

    private static Measure frames(JarRun.Told told, String which, String what) throws IOException {
        return Measure.atMost(
                        what + ", median",
                        told.get(which + "frames-median"),
                        AIM_FRAMES,
                        "frame %.0f")
                .also(
                        String.format(
                                Locale.ROOT,
                                " (19 of 20 by frame %.0f), painted after %.0f ms",
                                told.get(which + "frames-most"),
                                told.get(which + "painted-median")));
    }

    private static Measure busy(JarRun.Told told, String which) throws IOException {
        return Measure.told(
                "    of which work before that frame",
                String.format(
                        Locale.ROOT,
                        "%.1f ms (19 of 20 within %.1f)",
                        told.get(which + "busy-median"),
                        told.get(which + "busy-most")));
    }
}

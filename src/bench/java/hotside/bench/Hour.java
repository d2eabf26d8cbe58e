// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import hotside.desk.HourOfUse;
import java.io.IOException;
import java.util.List;

/** An hour of use, without the thinking between. */
final class Hour {
    private static final double AIM_MEGABYTES = 350;
    private static final double AIM_OPENING = 100;
    private static final double AIM_SLIDE = 16;

    private Hour() {}

    static List<Measure> measure(JarRun jar, List<String> options) throws IOException {
        JarRun.Told told = jar.run(HourOfUse.class, options);
        return List.of(
                Measure.atMost(
                        "Memory after an hour's " + HourOfUse.ACTIONS + " actions in all places",
                        told.get("hour-memory"),
                        AIM_MEGABYTES,
                        "%.0f MB"),
                Measure.atMost(
                        "    opening a place, 19 of 20 within",
                        told.get("hour-opening-most"),
                        AIM_OPENING,
                        "%.0f ms"),
                Measure.told("    median", told.get("hour-opening-median"), "%.0f ms"),
                Measure.atMost(
                        "    a step of a slider, number and curve, 19 of 20 within",
                        told.get("hour-slide-most"),
                        AIM_SLIDE,
                        "%.1f ms"),
                Measure.told("    median", told.get("hour-slide-median"), "%.1f ms"));
    }
}

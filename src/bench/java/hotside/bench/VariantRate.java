// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** How fast problems get their numbers. */
final class VariantRate {
    private static final double AIM_A_SECOND = 5_000;

    private VariantRate() {}

    static List<Measure> measure(JarRun jar) throws IOException {
        JarRun.Told told = jar.run(VariantDrawing.class, List.of());
        return List.of(
                Measure.atLeast(
                        String.format(
                                Locale.ROOT,
                                "Variants of %.0f problems, %.0f steps each, a second",
                                told.get("problems"),
                                told.get("steps-a-variant")),
                        told.get("variants-a-second"),
                        AIM_A_SECOND,
                        "%,.0f"));
    }
}

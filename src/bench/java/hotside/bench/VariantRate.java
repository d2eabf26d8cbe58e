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
                        what(told, "number-", "Variants of %.0f problems worked to one number"),
                        told.get("number-variants-a-second"),
                        AIM_A_SECOND,
                        "%,.0f"),
                Measure.told(
                        what(told, "", "    of all %.0f problems"),
                        told.get("variants-a-second"),
                        "%,.0f"));
    }

    private static String what(JarRun.Told told, String which, String problems) throws IOException {
        return String.format(
                Locale.ROOT,
                problems + ", %.0f steps each, a second",
                told.get(which + "problems"),
                told.get(which + "steps-a-variant"));
    }
}

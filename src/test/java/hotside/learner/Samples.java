// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.time.Instant;

/** Attempts for tests. */
final class Samples {
    private Samples() {}

    /** The attempt of this number; every field that can differ does. */
    static Attempt attempt(long number) {
        boolean right = number % 3 == 0;
        return new Attempt(
                "gate/valve-force-" + number % 5,
                Long.toUnsignedString(-1 - number),
                "1",
                "f00d" + number,
                number % 2 == 0 ? "SI_SHOP" : "US_SHOP",
                (int) (number % 4),
                number + ",5 kPa gauge “½” 🔧",
                right ? "RIGHT" : "MISTAKE",
                right ? null : "G" + number,
                right,
                (int) (number % 5),
                number / 8.0,
                Instant.ofEpochMilli(1_764_000_000_000L + number),
                number % 2 == 0 ? null : "gates/forces");
    }
}

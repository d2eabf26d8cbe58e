// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.security.SecureRandom;
import java.util.function.LongSupplier;

/** Fresh seeds, short enough to be read out and typed again. */
final class Seeds implements LongSupplier {
    private static final int MOST = 1_000_000;

    private final SecureRandom random = new SecureRandom();

    @Override
    public long getAsLong() {
        return random.nextInt(MOST);
    }
}

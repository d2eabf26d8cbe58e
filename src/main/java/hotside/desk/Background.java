// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.function.Consumer;
import java.util.function.Supplier;

/** Work that the screen does not wait for. */
@FunctionalInterface
interface Background {
    /**
     * Does a piece of work elsewhere.
     *
     * @param work must not touch the screen
     * @param then told the result on the screen's thread
     * @param <T> what comes out
     */
    <T> void run(Supplier<T> work, Consumer<T> then);
}

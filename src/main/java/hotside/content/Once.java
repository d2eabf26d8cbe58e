// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.Objects;
import java.util.function.Supplier;

/**
 * A value that is made when it is first asked for, once, whichever thread asks. What is read before
 * anybody wants it makes everybody wait.
 */
public final class Once<T> implements Supplier<T> {
    private Supplier<? extends T> maker;
    private T made;

    /**
     * @param maker makes the value, never null; if it fails, the next who asks tries again
     */
    public Once(Supplier<? extends T> maker) {
        this.maker = Objects.requireNonNull(maker);
    }

    /** A value that is there already. */
    public static <T> Once<T> of(T value) {
        return new Once<>(() -> value);
    }

    @Override
    public synchronized T get() {
        if (made == null) {
            made = Objects.requireNonNull(maker.get());
            maker = null; // what it held on to may go
        }
        return made;
    }
}

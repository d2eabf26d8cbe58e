// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class OnceTest {
    private final AtomicInteger made = new AtomicInteger();
    private final Once<Object> once =
            new Once<>(
                    () -> {
                        made.incrementAndGet();
                        return new Object();
                    });

    @Test
    void nothingIsMadeBeforeSomebodyAsks() {
        assertEquals(0, made.get());
        assertSame(once.get(), once.get());
        assertEquals(1, made.get());
    }

    @Test
    void whoeverAsksAtTheSameTimeGetsTheSame() {
        Set<Object> got = ConcurrentHashMap.newKeySet();
        IntStream.range(0, 64).parallel().forEach(i -> got.add(once.get()));
        assertEquals(1, got.size());
        assertEquals(1, made.get());
    }

    @Test
    void whatFailedIsTriedAgain() {
        Once<Integer> failing =
                new Once<>(
                        () -> {
                            if (made.incrementAndGet() == 1) {
                                throw new IllegalStateException("not yet");
                            }
                            return made.get();
                        });
        assertThrows(IllegalStateException.class, failing::get);
        assertEquals(2, failing.get());
        assertEquals(2, failing.get());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WorkerTest {
    private final List<Integer> done = new ArrayList<>();
    private final Worker worker = new Worker(Runnable::run);

    private void add(int number) {
        worker.run(() -> done.add(number), added -> {}, fault -> {});
    }

    /** Answers typed while papers were being printed are kept when the window goes. */
    @Test
    void whatWaitsBehindLongWorkIsDoneBeforeTheEnd() {
        CountDownLatch printed = new CountDownLatch(1);
        worker.run(
                () -> {
                    await(printed);
                    return 0;
                },
                zero -> {},
                fault -> {});
        List<Integer> typed = IntStream.range(0, 100).boxed().toList();
        typed.forEach(this::add);
        assertEquals(List.of(), done);
        printed.countDown();
        worker.finish();
        assertEquals(typed, done);
        assertThrows(RejectedExecutionException.class, () -> add(100));
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

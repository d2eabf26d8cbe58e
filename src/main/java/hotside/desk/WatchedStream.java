// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;

/** A stream that tells how much of it was read, and ends when it is told to. */
final class WatchedStream extends FilterInputStream {
    private static final long EVERY = 1 << 20;

    private final LongConsumer progress;
    private final BooleanSupplier stop;
    private long count;
    private long told;

    WatchedStream(InputStream in, LongConsumer progress, BooleanSupplier stop) {
        super(in);
        this.progress = progress;
        this.stop = stop;
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        count(one < 0 ? 0 : 1);
        return one;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int read = super.read(bytes, from, length);
        count(Math.max(0, read));
        return read;
    }

    private void count(int more) {
        if (stop.getAsBoolean()) {
            throw new CancellationException("reading was stopped");
        }
        count += more;
        if (count - told >= EVERY) {
            told = count;
            progress.accept(count);
        }
    }
}

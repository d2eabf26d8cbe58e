// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.catalogue.Catalogue;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Reader;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;

/** Works a table of pipes that is far longer than its heap. */
public final class LongTable {
    /** At some sixty characters a row, twice the heap that it is given. */
    public static final int ROWS = 2_000_000;

    private LongTable() {}

    public static void main(String[] args) throws IOException {
        TableWork work =
                new TableWork(
                        Catalogue.find("pipe-friction-drop").orElseThrow(),
                        InputStream.nullInputStream());
        PrintWriter out =
                new PrintWriter(
                        new OutputStreamWriter(
                                OutputStream.nullOutputStream(), StandardCharsets.UTF_8));
        PrintWriter err = new PrintWriter(System.err, true);
        long start = System.nanoTime();
        int code = work.run(new Rows(ROWS), out, err);
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.println("rows-a-second " + ROWS / seconds);
        System.out.println("peak-megabytes " + peak() / (1 << 20));
        System.exit(code);
    }

    private static double peak() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(java.lang.management.MemoryUsage::getUsed)
                .sum();
    }

    /** A header, then the same thousand different rows over and over. */
    private static final class Rows extends Reader {
        private static final int DIFFERENT = 1000;

        private final char[] block;
        private char[] now =
                "massFlow,pressure,temperature,diameter,length,lossSum\n".toCharArray();
        private int at;
        private int left;

        Rows(int rows) {
            StringBuilder text = new StringBuilder();
            Random random = new Random(1);
            for (int i = 0; i < DIFFERENT; i++) {
                text.append(
                        String.format(
                                Locale.ROOT,
                                "%.4f,%.0f,%.1f,%.4f,%.3f,%.2f%n",
                                0.02 + 0.2 * random.nextDouble(),
                                95e3 + 30e3 * random.nextDouble(),
                                600 + 600 * random.nextDouble(),
                                0.05 + 0.05 * random.nextDouble(),
                                0.5 + 3 * random.nextDouble(),
                                2 * random.nextDouble()));
            }
            block = text.toString().toCharArray();
            left = rows / DIFFERENT;
        }

        @Override
        public int read(char[] to, int offset, int length) {
            if (at == now.length) {
                if (left-- == 0) {
                    return -1;
                }
                now = block;
                at = 0;
            }
            int count = Math.min(length, now.length - at);
            System.arraycopy(now, at, to, offset, count);
            at += count;
            return count;
        }

        @Override
        public void close() {
            left = 0;
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.content.Finding;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Short ways to logs for tests. Every log in these tests is invented. */
final class Logs {
    private Logs() {}

    static LogReading read(String text, ReadOptions options) {
        return read(text.getBytes(StandardCharsets.UTF_8), options);
    }

    static LogReading read(byte[] bytes, ReadOptions options) {
        try {
            return new LogReader(options).read("invented.csv", new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static LogReading read(String text) {
        return read(text, ReadOptions.PLAIN);
    }

    static List<String> texts(LogReading reading) {
        return reading.findings().stream().map(Finding::text).toList();
    }

    /** All readings of a channel in the whole log. */
    static double[] column(LogReading reading, Channel channel) {
        RunLog log = reading.log().orElseThrow();
        int column = log.indexOf(channel);
        return log.copy(column, 0, log.rows());
    }

    static double[] rpm(double... values) {
        return Arrays.stream(values).map(v -> v / 60).toArray();
    }

    /** A pull at even power and manifold pressure from 3000 to 6000 rev/min. */
    static Run flat(double power, double manifold) {
        return flat(power, manifold, 200e3);
    }

    static Run flat(double power, double manifold, double turbineInlet) {
        RunLog log =
                RunLog.of(
                        "invented",
                        List.of(
                                Column.of(Channel.SPEED),
                                Column.of(Channel.POWER),
                                Column.of(Channel.MANIFOLD_PRESSURE),
                                Column.of(Channel.TURBINE_INLET_PRESSURE)),
                        rpm(3000, 4500, 6000),
                        new double[] {power, power, power},
                        new double[] {manifold, manifold, manifold},
                        new double[] {turbineInlet, turbineInlet, turbineInlet});
        return new Run(log.pulls().get(0), 1);
    }
}

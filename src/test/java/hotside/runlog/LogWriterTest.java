// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is written is read back; the log is invented. */
class LogWriterTest {
    private static final List<Channel> CHANNELS =
            Arrays.stream(Channel.values())
                    .filter(c -> c != Channel.PULL && c != Channel.UNKNOWN)
                    .toList();

    private static RunLog everyChannel() {
        double[][] values = new double[CHANNELS.size()][];
        for (int i = 0; i < values.length; i++) {
            double third = 100 * (i + 1) / 3.0;
            values[i] = new double[] {third, third * 1.1, third, third * Math.PI};
        }
        values[0] = new double[] {50, 100, 50, 100};
        values[1][2] = Double.NaN;
        return RunLog.of(
                "invented", CHANNELS.stream().map(Column::of).toList(), new int[] {0, 2}, values);
    }

    @Test
    void writesInSiWithTheZeroOfEachPressureNamed() throws IOException {
        RunLog log =
                RunLog.of(
                        "invented",
                        List.of(Column.of(Channel.SPEED), Column.of(Channel.MANIFOLD_PRESSURE)),
                        new double[] {50, 60},
                        new double[] {150e3, Double.NaN});
        StringBuilder out = new StringBuilder();
        LogWriter.write(log, out);
        assertEquals(
                "pull,engine speed [1/s],manifold pressure [Pa abs]\r\n1,50.0,150000.0\r\n1,60.0,\r\n",
                out.toString());
    }

    @Test
    void readsBackEveryChannelToTheLastBit() throws IOException {
        RunLog log = everyChannel();
        StringBuilder out = new StringBuilder();
        LogWriter.write(log, out);
        LogReading reading = Logs.read(out.toString());
        assertEquals(List.of(), Logs.texts(reading));
        assertEquals(List.of(), reading.notes());
        for (int i = 0; i < CHANNELS.size(); i++) {
            assertArrayEquals(
                    log.copy(i, 0, 4), Logs.column(reading, CHANNELS.get(i)), CHANNELS.get(i).id());
        }
        assertEquals(
                List.of("1", "2"),
                reading.log().orElseThrow().pulls().stream().map(Pull::label).toList());
    }
}

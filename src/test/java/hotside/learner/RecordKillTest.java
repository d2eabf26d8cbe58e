// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program killed while it stores. That the answers survive a cut of power rests on SQLite's full
 * synchronisation and is not tried here.
 */
class RecordKillTest {
    /** {@code -Dhotside.kills=300} for a long try. */
    private static final int ROUNDS = Integer.getInteger("hotside.kills", 10);

    @TempDir Path folder;

    @Test
    void everyAcknowledgedAnswerSurvivesAKill() throws Exception {
        SplittableRandom random = new SplittableRandom(20261125);
        List<Long> acknowledged = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            acknowledged.addAll(writeUntilKilled(round * 1_000_000L, 1 + random.nextInt(150)));
            assertEverythingIsThere(acknowledged);
        }
    }

    @Test
    void aProgramBesideTheKilledOneLosesNothingEither() throws Exception {
        SplittableRandom random = new SplittableRandom(20261126);
        List<Long> acknowledged = new ArrayList<>();
        try (LearnerRecord beside = LearnerRecord.open(folder)) {
            for (int round = 0; round < 2; round++) {
                long from = round * 1_000_000L;
                acknowledged.addAll(writeUntilKilled(from, 20 + random.nextInt(60)));
                for (long number = from + 500_000; number < from + 500_020; number++) {
                    beside.add(Samples.attempt(number));
                    acknowledged.add(number);
                }
            }
            assertEverythingIsThere(acknowledged);
        }
    }

    private List<Long> writeUntilKilled(long from, int acknowledgements) throws Exception {
        Process writer =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-cp",
                                System.getProperty("java.class.path"),
                                RecordWriter.class.getName(),
                                folder.toString(),
                                Long.toString(from))
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        List<Long> numbers = new ArrayList<>();
        try (BufferedReader out = writer.inputReader()) {
            while (numbers.size() < acknowledgements) {
                String line = out.readLine();
                assertNotNull(line, "the writer goes on until it is killed");
                numbers.add(Long.valueOf(line));
            }
            // The handle, because the process itself would close its output.
            writer.toHandle().destroyForcibly();
            numbers.addAll(wholeLines(out));
        } finally {
            writer.destroyForcibly().waitFor();
        }
        return numbers;
    }

    /** What the writer said before it died counts too, but for a last line that is cut. */
    private static List<Long> wholeLines(Reader out) throws IOException {
        StringWriter rest = new StringWriter();
        out.transferTo(rest);
        String whole = rest.toString().substring(0, rest.toString().lastIndexOf('\n') + 1);
        return whole.lines().map(Long::valueOf).toList();
    }

    private void assertEverythingIsThere(List<Long> acknowledged) throws Exception {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertEquals(Optional.empty(), record.notice());
            List<Attempt> stored = record.attempts();
            assertTrue(
                    stored.containsAll(acknowledged.stream().map(Samples::attempt).toList()),
                    "every acknowledged answer");
            assertTrue(
                    stored.size() <= acknowledged.size() + 3 * ROUNDS,
                    "and at most the few that were on their way");
        }
        assertEquals("ok", integrity());
    }

    private String integrity() throws Exception {
        try (var c = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(RecordFile.NAME));
                var s = c.createStatement();
                var row = s.executeQuery("PRAGMA integrity_check")) {
            row.next();
            return row.getString(1);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a killed program leaves on the disk is the record and its log as far as they were written:
 * so every such state is made and opened, hundreds of them, without starting a program for each.
 * Real kills are in {@link RecordKillTest}.
 */
class RecordCrashTest {
    private static final int ANSWERS = 120;
    private static final int CUTS = 250;
    private static final int MIXES = 100;
    private static final int PAGE = 4096;

    @TempDir Path folder;

    private byte[] file;
    private byte[] log;

    /** Length of the log when the answer of this number had been acknowledged. */
    private final List<Integer> acknowledged = new ArrayList<>();

    @BeforeEach
    void work() throws IOException {
        Path original = folder.resolve("original");
        try (LearnerRecord record = LearnerRecord.open(original)) {
            for (int number = 0; number < ANSWERS; number++) {
                record.add(Samples.attempt(number));
                acknowledged.add((int) Files.size(original.resolve("record.sqlite-wal")));
            }
            file = Files.readAllBytes(original.resolve("record.sqlite"));
            log = Files.readAllBytes(original.resolve("record.sqlite-wal"));
        }
        assertEquals(log.length, acknowledged.get(ANSWERS - 1), "the log was never folded in");
    }

    @Test
    void aLogCutAnywhereHoldsEveryAcknowledgedAnswer() throws IOException {
        SplittableRandom random = new SplittableRandom(20261125);
        int from = acknowledged.get(0);
        for (int cut = 0; cut < CUTS; cut++) {
            int length = from + random.nextInt(log.length - from + 1);
            leave(file, Arrays.copyOf(log, length));
            int safe = (int) acknowledged.stream().filter(end -> end <= length).count();
            assertHolds(safe, safe + 1);
        }
    }

    @Test
    void rubbishAtTheEndOfTheLogHarmsNothing() throws IOException {
        SplittableRandom random = new SplittableRandom(20261126);
        for (int cut = 0; cut < 50; cut++) {
            int number = random.nextInt(ANSWERS);
            byte[] torn = Arrays.copyOf(log, acknowledged.get(number) + 3 * PAGE);
            byte[] rubbish = new byte[3 * PAGE];
            random.nextBytes(rubbish);
            System.arraycopy(rubbish, 0, torn, acknowledged.get(number), rubbish.length);
            leave(file, torn);
            assertHolds(number + 1, number + 1);
        }
    }

    @Test
    void aKillWhileTheLogIsFoldedInLosesNothing() throws IOException {
        byte[] folded = folded();
        SplittableRandom random = new SplittableRandom(20261127);
        for (int mix = 0; mix < MIXES; mix++) {
            byte[] mixed = Arrays.copyOf(file, folded.length);
            for (int page = 0; page < folded.length / PAGE; page++) {
                if (random.nextBoolean()) {
                    System.arraycopy(folded, page * PAGE, mixed, page * PAGE, PAGE);
                }
            }
            // SQLite lengthens the file only as pages are written, so it may also be shorter.
            int pages =
                    file.length / PAGE + random.nextInt((folded.length - file.length) / PAGE + 1);
            leave(Arrays.copyOf(mixed, pages * PAGE), log);
            assertHolds(ANSWERS, ANSWERS);
        }
    }

    /** The file after the log was folded into it. */
    private byte[] folded() throws IOException {
        leave(file, log);
        try (LearnerRecord record = LearnerRecord.open(left())) {
            assertEquals(ANSWERS, record.count());
        }
        return Files.readAllBytes(left().resolve("record.sqlite"));
    }

    private Path left() {
        return folder.resolve("left");
    }

    private void leave(byte[] record, byte[] itsLog) throws IOException {
        Files.createDirectories(left());
        for (String old : List.of("record.sqlite", "record.sqlite-wal", "record.sqlite-shm")) {
            Files.deleteIfExists(left().resolve(old));
        }
        Files.write(left().resolve("record.sqlite"), record);
        Files.write(left().resolve("record.sqlite-wal"), itsLog);
    }

    private void assertHolds(int least, int most) {
        try (LearnerRecord record = LearnerRecord.open(left())) {
            assertEquals(Optional.empty(), record.notice());
            List<Attempt> stored = record.attempts();
            assertTrue(least <= stored.size() && stored.size() <= most, stored.size() + " answers");
            for (int i = 0; i < stored.size(); i++) {
                assertEquals(Samples.attempt(i), stored.get(i));
            }
        }
    }
}

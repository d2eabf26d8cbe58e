// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Updates, copies, a full disk, a wrong clock, forgetting. */
class RecordCareTest {
    private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");

    @TempDir Path folder;

    static IntStream earlierVersions() {
        return IntStream.range(1, Schema.NOW.version());
    }

    @ParameterizedTest
    @MethodSource("earlierVersions")
    void aRecordOfEveryEarlierVersionIsBroughtUpToDateAndACopyKept(int version) throws Exception {
        OldRecords.write(folder, version, 20);
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertEquals(samples(0, 20), record.attempts());
            assertEquals("0123456789", record.learner());
            assertEquals(Map.of("units", "US_SHOP"), record.settings());
            assertEquals(Optional.empty(), record.notice());
            record.add(Samples.attempt(20));
        }
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertEquals(samples(0, 21), record.attempts());
        }
        List<Path> copies = named(Backups.PREFIX + "v" + version + "-");
        assertEquals(1, copies.size());
        try (var copy = Backups.readOnly(copies.get(0));
                Statement sql = copy.createStatement()) {
            assertEquals(version, Schema.number(sql, "user_version"));
        }
    }

    @ParameterizedTest
    @MethodSource("earlierVersions")
    void theStepsStillLeadToWhatEarlierVersionsWrote(int version) throws Exception {
        Path kept = folder.resolve("kept");
        Path made = folder.resolve("made");
        OldRecords.write(kept, version, 0);
        new RecordFile(made, Schema.NOW.upTo(version)).open().close();
        assertEquals(tables(kept), tables(made));
    }

    private static List<String> tables(Path folder) throws Exception {
        try (var c = Backups.readOnly(folder.resolve(RecordFile.NAME))) {
            return new Rows(c)
                    .query(
                            "SELECT m.name || '.' || i.name || ' ' || i.type || i.\"notnull\""
                                    + " FROM sqlite_schema m, pragma_table_info(m.name) i"
                                    + " WHERE m.type = 'table' ORDER BY m.name, i.cid",
                            row -> row.getString(1));
        }
    }

    @Test
    void everyDayACopyIsKeptAndThreeOfThemStay() throws IOException {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            record.backUp(NOW);
            assertEquals(0, named(Backups.PREFIX).size(), "nothing to copy yet");
            record.add(Samples.attempt(0));
            for (int day = 0; day < 5; day++) {
                Instant now = NOW.plus(Duration.ofDays(day));
                record.backUp(now);
                record.backUp(now.plusSeconds(60));
                age(now);
            }
            assertEquals(3, named(Backups.PREFIX).size());
        }
    }

    /** Copies carry the time of the disk; the test's days are put in its place. */
    private void age(Instant now) throws IOException {
        for (Path copy : named(Backups.PREFIX)) {
            if (copy.getFileName().toString().contains(Backups.STAMP.format(now))) {
                Files.setLastModifiedTime(copy, java.nio.file.attribute.FileTime.from(now));
            }
        }
    }

    @Test
    void theLastGoodCopyIsOfferedWhenTheRecordIsDamaged() throws IOException {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            samples(0, 9).forEach(record::add);
            record.backUp(Instant.now());
            record.add(Samples.attempt(9));
        }
        Files.writeString(folder.resolve(Backups.PREFIX + "20990101T000000Z.sqlite"), "rubbish");
        damage();
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            Backups.Copy copy = record.lastGoodBackup().orElseThrow();
            assertEquals(9, copy.answers());
            assertTrue(record.notice().orElseThrow().contains("with 9 answers can be put back"));
            record.add(Samples.attempt(10));
            assertEquals(9, record.putBack(copy));
            assertEquals(0, record.putBack(copy), "twice brings nothing twice");
            assertEquals(10, record.count());
            assertTrue(record.attempts().containsAll(samples(0, 9)));
        }
    }

    @Test
    void withoutACopyNothingIsOffered() throws IOException {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            samples(0, 9).forEach(record::add);
        }
        damage();
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertEquals(Optional.empty(), record.lastGoodBackup());
            assertFalse(record.notice().orElseThrow().contains("put back"));
        }
    }

    private void damage() throws IOException {
        Path file = folder.resolve(RecordFile.NAME);
        byte[] bytes = Files.readAllBytes(file);
        Arrays.fill(bytes, 4096, bytes.length, (byte) 0x5A);
        Files.write(file, bytes);
    }

    @Test
    void aFullDiskIsSaidInWordsAndLosesNothing() throws Exception {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            samples(0, 30).forEach(record::add);
            fill(record, 1);
            RecordException e = assertThrows(RecordException.class, () -> addUntilFull(record, 30));
            assertEquals(
                    "Your answer could not be stored: the disk is full. Make room on it and try"
                            + " again; all that was stored before is safe.",
                    e.getMessage());
            long stored = record.count();
            assertThrows(RecordException.class, () -> record.addMissing(samples(10_000, 10_400)));
            assertEquals(stored, record.count(), "all of them or none");
            fill(record, 100_000);
            record.add(Samples.attempt(20_000));
            assertEquals(stored + 1, record.count());
        }
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertEquals(Optional.empty(), record.notice());
            assertTrue(record.attempts().containsAll(samples(0, 30)));
        }
    }

    private static void addUntilFull(LearnerRecord record, long from) {
        for (long number = from; number < from + 1_000; number++) {
            record.add(Samples.attempt(number));
        }
    }

    /** SQLite then says what it says when a disk is full. */
    private static void fill(LearnerRecord record, int pages) throws Exception {
        try (Statement sql = record.connection().createStatement()) {
            sql.execute("PRAGMA max_page_count = " + pages);
        }
    }

    @Test
    void whatIsOlderThanWantedIsForgottenAndGoneFromTheFile() throws IOException {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            record.add(at(NOW.minus(Duration.ofDays(500)), "OLDSECRET kPa"));
            for (int day = 3; day >= 0; day--) {
                record.add(at(NOW.minus(Duration.ofDays(day)), "1 kPa"));
            }
            record.backUp(Instant.now());
            assertTrue(anyFileHolds("OLDSECRET"));
            assertEquals(1, record.forgetOlderThan(400, NOW));
            assertEquals(4, record.count());
            assertFalse(anyFileHolds("OLDSECRET"));
        }
        assertFalse(anyFileHolds("OLDSECRET"));
    }

    @Test
    void aClockThatRanFarAheadForADayDeletesNothing() {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            for (int day = 5; day >= 0; day--) {
                record.add(at(NOW.minus(Duration.ofDays(day)), "1 kPa"));
            }
            Instant wrong = NOW.plus(Duration.ofDays(4_000));
            assertEquals(0, record.forgetOlderThan(400, wrong));
            record.add(at(wrong, "1 kPa"));
            assertEquals(0, record.forgetOlderThan(400, wrong));
            record.add(at(wrong.plus(Duration.ofDays(1)), "1 kPa"));
            assertEquals(0, record.forgetOlderThan(400, wrong.plus(Duration.ofDays(1))));
            assertEquals(8, record.count());
        }
    }

    @Test
    void aClockSetBackIsNoticedAndAnswersKeepTheirOrder() {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            Tutor tutor = new Tutor(record, SmallSchool.SYLLABUS, SmallSchool.ZONE);
            tutor.add(at(NOW, "1 kPa"));
            Instant back = NOW.minus(Duration.ofDays(300));
            assertEquals(Duration.ofDays(300), tutor.clockBehind(back).orElseThrow());
            assertEquals(Optional.empty(), tutor.clockBehind(NOW.minusSeconds(3600)));
            tutor.add(at(back, "2 kPa"));
            assertEquals("2 kPa", record.latest(1).get(0).attempt().answer());
            assertTrue(tutor.next(Wish.BEST, back).isPresent());
        }
    }

    @Test
    void aTutorGoesOnWhereTheLastOneStoodAndSeesWhatAnotherWindowStored() {
        try (LearnerRecord one = LearnerRecord.open(folder);
                LearnerRecord two = LearnerRecord.open(folder)) {
            Tutor first = new Tutor(one, SmallSchool.SYLLABUS, SmallSchool.ZONE);
            Tutor second = new Tutor(two, SmallSchool.SYLLABUS, SmallSchool.ZONE);
            for (int i = 0; i < 130; i++) {
                (i % 3 == 0 ? first : second)
                        .add(seeded(NOW.plus(Duration.ofHours(i)), "a.one-p", i, i % 4 != 0));
            }
            first.keep();
            assertEquals(first.skills(NOW), second.skills(NOW));
            Tutor third = new Tutor(one, SmallSchool.SYLLABUS, SmallSchool.ZONE);
            assertEquals(first.skills(NOW), third.skills(NOW));
            assertEquals(130, one.snapshot().orElseThrow().upTo());
        }
    }

    @Test
    void mistakesAreFoundByTheirSort() {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            for (String mistake : List.of("left-out@a", "left-out-twice@a", "left@a", "left-out")) {
                Attempt a = Samples.attempt(1);
                record.add(
                        new Attempt(
                                a.problem(),
                                a.seed(),
                                a.generator(),
                                a.fingerprint(),
                                a.unitSystem(),
                                a.ask(),
                                a.answer(),
                                a.verdict(),
                                mistake,
                                false,
                                0,
                                1,
                                a.time(),
                                null));
            }
            assertEquals(
                    List.of("left-out", "left-out@a"),
                    record.withSlip("left-out", 9).stream()
                            .map(s -> s.attempt().mistake())
                            .toList());
        }
    }

    private static List<Attempt> samples(long from, long to) {
        return LongStream.range(from, to).mapToObj(Samples::attempt).toList();
    }

    private static Attempt at(Instant time, String answer) {
        return new Attempt(
                "a.one-p", "1", "1", "f", "si_shop", 0, answer, "right", null, true, 0, 1, time,
                null);
    }

    private static Attempt seeded(Instant time, String problem, long seed, boolean right) {
        return new Attempt(
                problem,
                String.valueOf(seed),
                "1",
                "f",
                "si_shop",
                0,
                "1",
                right ? "right" : "wrong",
                null,
                right,
                0,
                1,
                time,
                null);
    }

    private List<Path> named(String prefix) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().startsWith(prefix)).toList();
        }
    }

    private boolean anyFileHolds(String text) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                if (bytes.contains(text)) {
                    return true;
                }
            }
            return false;
        }
    }
}

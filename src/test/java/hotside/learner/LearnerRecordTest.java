// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LearnerRecordTest {
    @TempDir Path folder;

    private Path file() {
        return folder.resolve(RecordFile.NAME);
    }

    private static List<Attempt> samples(long from, long to) {
        return LongStream.range(from, to).mapToObj(Samples::attempt).toList();
    }

    private LearnerRecord openWith(long from, long to) {
        LearnerRecord record = LearnerRecord.open(folder);
        samples(from, to).forEach(record::add);
        return record;
    }

    private List<Path> setAside() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().startsWith("record-set-aside-"))
                    .sorted()
                    .toList();
        }
    }

    private long recordsSetAside() throws IOException {
        return setAside().stream().filter(f -> f.toString().endsWith(".sqlite")).count();
    }

    @Test
    void whatWasStoredIsThereAfterARestart() {
        String learner;
        try (LearnerRecord record = openWith(0, 7)) {
            learner = record.learner();
            record.set("decimal", "COMMA");
            record.set("decimal", "POINT");
        }
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertEquals(samples(0, 7), record.attempts());
            assertEquals(learner, record.learner());
            assertEquals(Optional.of("POINT"), record.setting("decimal"));
            assertEquals(Optional.empty(), record.setting("theme"));
            assertEquals(Optional.empty(), record.notice());
        }
    }

    @Test
    void aNewRecordIsEmptyAndItsLearnerHasNoName() {
        try (LearnerRecord record = LearnerRecord.open(folder.resolve("not").resolve("yet"))) {
            assertEquals(List.of(), record.attempts());
            assertEquals(Map.of(), record.progress());
            assertTrue(record.learner().matches("[0-9A-HJKMNP-TV-Z]{10}"), record.learner());
        }
    }

    @Test
    void progressCountsTriesByProblem() {
        try (LearnerRecord record = openWith(0, 10)) {
            // Samples 2 and 7 are of this problem; every third sample is right.
            Progress two = record.progress().get("gate/valve-force-2");
            assertEquals(new Progress("gate/valve-force-2", 2, 0, Samples.attempt(7).time()), two);
            assertEquals(1, record.progress().get("gate/valve-force-0").right());
            assertEquals(5, record.progress().size());
            assertEquals(
                    List.of(Samples.attempt(2), Samples.attempt(7)),
                    record.attempts("gate/valve-force-2"));
        }
    }

    @Test
    void aFolderMayHaveAnyName() {
        Path odd = folder.resolve("Ünsere Klasse #1? 100% & 'so'");
        try (LearnerRecord record = LearnerRecord.open(odd)) {
            record.add(Samples.attempt(1));
        }
        assertTrue(Files.exists(odd.resolve(RecordFile.NAME)));
        try (LearnerRecord record = LearnerRecord.open(odd)) {
            assertEquals(samples(1, 2), record.attempts());
        }
    }

    @Test
    void twoProgramsOnOneRecordBothStore() throws Exception {
        try (LearnerRecord one = LearnerRecord.open(folder);
                LearnerRecord two = LearnerRecord.open(folder)) {
            assertEquals(one.learner(), two.learner());
            var both = Executors.newFixedThreadPool(2);
            Callable<Integer> first = () -> addAll(one, 0, 60);
            Callable<Integer> second = () -> addAll(two, 60, 120);
            for (var done : both.invokeAll(List.of(first, second))) {
                assertEquals(60, done.get());
            }
            both.shutdown();
            assertEquals(two.attempts(), one.attempts());
            assertEquals(120, one.attempts().size());
            assertTrue(one.attempts().containsAll(samples(0, 120)));
        }
    }

    private static int addAll(LearnerRecord record, long from, long to) {
        samples(from, to).forEach(record::add);
        return (int) (to - from);
    }

    @Test
    void oneRecordServesSeveralThreads() throws Exception {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            var threads = Executors.newFixedThreadPool(4);
            var numbers =
                    threads.invokeAll(
                            LongStream.range(0, 80)
                                    .<Callable<Long>>mapToObj(
                                            n -> () -> record.add(Samples.attempt(n)))
                                    .toList());
            threads.shutdown();
            List<Attempt> stored = record.attempts();
            for (int n = 0; n < numbers.size(); n++) {
                assertEquals(Samples.attempt(n), stored.get((int) (numbers.get(n).get() - 1)));
            }
        }
    }

    @Test
    void aRecordThatIsNoDatabaseIsSetAsideByteForByte() throws Exception {
        byte[] rubbish = "This was a record once.".repeat(500).getBytes("UTF-8");
        Files.write(file(), rubbish);
        Files.write(folder.resolve(RecordFile.NAME + "-wal"), new byte[] {1, 2, 3});
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            String notice = record.notice().orElseThrow();
            Path kept = setAside().get(0);
            assertTrue(notice.startsWith("Your record could not be read: "), notice);
            assertTrue(notice.contains(kept.toString()), notice);
            assertArrayEquals(rubbish, Files.readAllBytes(kept));
            assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(beside(kept, "-wal")));
            record.add(Samples.attempt(1));
        }
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertEquals(Optional.empty(), record.notice());
            assertEquals(samples(1, 2), record.attempts());
        }
    }

    private static Path beside(Path kept, String ending) {
        return kept.resolveSibling(kept.getFileName() + ending);
    }

    @Test
    void aRecordWithDamagedPagesIsSetAsideAndNothingIsOverwritten() throws Exception {
        for (int round = 1; round <= 3; round++) {
            openWith(0, 200).close();
            byte[] bytes = Files.readAllBytes(file());
            Arrays.fill(bytes, 4096, bytes.length, (byte) 0x5A);
            Files.write(file(), bytes);
            try (LearnerRecord record = LearnerRecord.open(folder)) {
                assertTrue(record.notice().isPresent());
                assertEquals(List.of(), record.attempts());
            }
            assertEquals(round, recordsSetAside());
            assertTrue(
                    setAside().stream().anyMatch(kept -> holds(kept, bytes)),
                    "the damaged file is kept as it was");
        }
    }

    private static boolean holds(Path kept, byte[] bytes) {
        try {
            return Arrays.equals(bytes, Files.readAllBytes(kept));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void oneDamagedPageAmongManyIsNoticedAtTheStart() throws Exception {
        openWith(0, 200).close();
        byte[] bytes = Files.readAllBytes(file());
        Arrays.fill(bytes, bytes.length - 4096, bytes.length, (byte) 0x5A);
        Files.write(file(), bytes);
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertTrue(record.notice().isPresent());
            assertEquals(List.of(), record.attempts());
        }
        assertEquals(1, recordsSetAside());
    }

    @Test
    void aRecordCutShortIsSetAside() throws Exception {
        openWith(0, 200).close();
        byte[] bytes = Files.readAllBytes(file());
        Files.write(file(), Arrays.copyOf(bytes, bytes.length / 2));
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertTrue(record.notice().isPresent());
        }
        assertEquals(1, recordsSetAside());
    }

    @Test
    void answersInTheLogAreKeptWhenTheRecordItselfIsLost() throws Exception {
        byte[] log = new byte[5000];
        Arrays.fill(log, (byte) 7);
        Files.write(folder.resolve(RecordFile.NAME + "-wal"), log);
        Files.createFile(file());
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertTrue(record.notice().orElseThrow().contains("its log is not"));
        }
        assertTrue(setAside().stream().anyMatch(kept -> holds(kept, log)));
    }

    @Test
    void anotherProgramsDatabaseIsSetAside() throws Exception {
        sql("CREATE TABLE contacts (name TEXT)");
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertTrue(record.notice().orElseThrow().contains("another program's database"));
        }
        assertEquals(1, recordsSetAside());
    }

    @Test
    void aRecordWithoutItsTablesIsSetAside() throws Exception {
        openWith(0, 3).close();
        sql("DROP TABLE attempt");
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertTrue(record.notice().orElseThrow().contains("no such table: attempt"));
            assertEquals(List.of(), record.attempts());
        }
    }

    @Test
    void anOlderRecordIsBroughtUpToDateAndKeepsItsAnswers() throws Exception {
        openWith(0, 5).close();
        Schema next =
                Schema.NOW.then(
                        "ALTER TABLE attempt ADD COLUMN confidence REAL",
                        "CREATE TABLE review (problem TEXT PRIMARY KEY, due INTEGER) STRICT");
        try (LearnerRecord record = new RecordFile(folder, next).open()) {
            assertEquals(samples(0, 5), record.attempts());
            record.add(Samples.attempt(5));
            assertEquals(samples(0, 6), record.attempts());
        }
        assertEquals(Schema.NOW.version() + 1, number("PRAGMA user_version"));
        assertEquals(0, number("SELECT count(*) FROM review"));
    }

    @Test
    void anUpdateThatFailsHalfwayChangesNothing() throws Exception {
        openWith(0, 5).close();
        Schema broken =
                Schema.NOW.then("ALTER TABLE attempt ADD COLUMN confidence REAL", "NO SUCH WORDS");
        var e = assertThrows(RecordException.class, () -> new RecordFile(folder, broken).open());
        assertTrue(e.getMessage().contains(" cannot be opened: "), e.getMessage());
        assertEquals(List.of(), setAside());
        assertEquals(Schema.NOW.version(), number("PRAGMA user_version"));
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            assertEquals(samples(0, 5), record.attempts());
        }
    }

    @Test
    void aNewerRecordIsRefusedAndNotTouched() throws Exception {
        Schema next = Schema.NOW.then("ALTER TABLE attempt ADD COLUMN confidence REAL");
        try (LearnerRecord record = new RecordFile(folder, next).open()) {
            record.add(Samples.attempt(0));
        }
        byte[] before = Files.readAllBytes(file());
        var e = assertThrows(RecordException.class, () -> LearnerRecord.open(folder));
        assertEquals(
                "Your record was written by a newer version of Hotside (it has format 3, this one"
                        + " reads up to 2). It was left as it is. Start the newer version, or name"
                        + " another folder with -Dhotside.data=FOLDER. The record: "
                        + file().toAbsolutePath(),
                e.getMessage());
        assertArrayEquals(before, Files.readAllBytes(file()));
        assertEquals(List.of(), setAside());
    }

    @Test
    void aNewerRecordThatIsStillInItsLogIsRefusedToo() throws Exception {
        openWith(0, 2).close();
        Schema next = Schema.NOW.then("ALTER TABLE attempt ADD COLUMN confidence REAL");
        try (LearnerRecord newer = new RecordFile(folder, next).open()) {
            assertThrows(RecordException.class, () -> LearnerRecord.open(folder));
            newer.add(Samples.attempt(2));
            assertEquals(samples(0, 3), newer.attempts());
        }
    }

    @Test
    void aNewerRecordOfACrashedProgramKeepsItsLogAsItIs() throws Exception {
        Schema next = Schema.NOW.then("ALTER TABLE attempt ADD COLUMN confidence REAL");
        new RecordFile(folder, next).open().close();
        Path crashed = Files.createDirectory(folder.resolve("copy"));
        Path log = crashed.resolve(RecordFile.NAME + "-wal");
        try (LearnerRecord newer = new RecordFile(folder, next).open()) {
            newer.add(Samples.attempt(0));
            Files.copy(file(), crashed.resolve(RecordFile.NAME));
            Files.copy(folder.resolve(RecordFile.NAME + "-wal"), log);
        }
        byte[] before = Files.readAllBytes(log);
        assertThrows(RecordException.class, () -> LearnerRecord.open(crashed));
        assertArrayEquals(before, Files.readAllBytes(log));
    }

    @Test
    void aFolderThatCannotBeUsedIsNamedWithAWayOut() throws Exception {
        Path blocked = Files.createFile(folder.resolve("file"));
        var e =
                assertThrows(
                        RecordException.class, () -> LearnerRecord.open(blocked.resolve("sub")));
        assertTrue(e.getMessage().contains(blocked.resolve("sub").toString()), e.getMessage());
        assertTrue(e.getMessage().contains("-Dhotside.data=FOLDER"), e.getMessage());
    }

    @Test
    void aLogOfACrashedProgramIsTakenIn() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("copy"));
        try (LearnerRecord record = openWith(0, 20)) {
            // A copy taken while the record is open is what a crash leaves behind.
            for (String ending : List.of("", "-wal")) {
                String name = RecordFile.NAME + ending;
                Files.copy(folder.resolve(name), elsewhere.resolve(name));
            }
            assertFalse(record.attempts().isEmpty());
        }
        try (LearnerRecord copy = LearnerRecord.open(elsewhere)) {
            assertEquals(Optional.empty(), copy.notice());
            assertEquals(samples(0, 20), copy.attempts());
        }
    }

    @Test
    void aTornEndOfTheLogLosesOnlyWhatWasNotAcknowledged() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("copy"));
        Path log = elsewhere.resolve(RecordFile.NAME + "-wal");
        try (LearnerRecord record = openWith(0, 20)) {
            Files.copy(file(), elsewhere.resolve(RecordFile.NAME));
            Files.copy(folder.resolve(RecordFile.NAME + "-wal"), log);
            assertEquals(20, record.attempts().size());
        }
        Files.write(log, new byte[2000], StandardOpenOption.APPEND);
        try (LearnerRecord copy = LearnerRecord.open(elsewhere)) {
            assertEquals(Optional.empty(), copy.notice());
            assertEquals(samples(0, 20), copy.attempts());
        }
    }

    @Test
    void anUnsavedRecordWorksAndLeavesNothing() {
        try (LearnerRecord record = LearnerRecord.unsaved();
                LearnerRecord other = LearnerRecord.unsaved()) {
            assertEquals(1, record.add(Samples.attempt(4)));
            assertEquals(samples(4, 5), record.attempts());
            assertEquals(List.of(), other.attempts());
            assertNotEquals(record.learner(), other.learner());
        }
    }

    @Test
    void anAttemptWithImpossibleNumbersIsTheProgrammersError() {
        Attempt a = Samples.attempt(1);
        for (double seconds : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(
                    IllegalArgumentException.class,
                    () ->
                            new Attempt(
                                    a.problem(),
                                    a.seed(),
                                    a.generator(),
                                    a.fingerprint(),
                                    a.unitSystem(),
                                    a.ask(),
                                    a.answer(),
                                    a.verdict(),
                                    a.mistake(),
                                    a.correct(),
                                    a.hints(),
                                    seconds,
                                    a.time(),
                                    a.lesson()));
        }
    }

    private void sql(String statement) throws SQLException {
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement s = c.createStatement()) {
            s.execute(statement);
        }
    }

    private int number(String query) throws SQLException {
        try (Connection c = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement s = c.createStatement();
                var row = s.executeQuery(query)) {
            row.next();
            return row.getInt(1);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LearnersTest {
    @TempDir Path root;

    private static List<Attempt> samples(long from, long to) {
        return LongStream.range(from, to).mapToObj(Samples::attempt).toList();
    }

    private String fill(Path folder, long from, long to, String nickname) {
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            samples(from, to).forEach(record::add);
            record.set(Learners.NICKNAME, nickname);
            record.set("a-file-to-open", "/etc/passwd");
            return record.learner();
        }
    }

    @Test
    void severalLearnersShareAMachineAndNothingElse() {
        Learners learners = new Learners(root);
        assertEquals(List.of(), learners.all());
        assertEquals(root.toAbsolutePath(), learners.current());
        String first = fill(root, 0, 5, "");
        Path folder = learners.another();
        String second = fill(folder, 5, 8, "Blue locker");
        learners.current(folder);
        assertEquals(folder, learners.current());
        assertEquals(
                List.of(first, "Blue locker"),
                learners.all().stream().map(Learners.Seat::told).toList());
        assertEquals(second, learners.all().get(1).id());
        learners.current(root.toAbsolutePath());
        assertEquals(root.toAbsolutePath(), learners.current());
    }

    @Test
    void aNoteOfAnyOtherFolderIsNotFollowed() throws IOException {
        Files.writeString(root.resolve("learner.txt"), "../../elsewhere\n");
        assertEquals(root.toAbsolutePath(), new Learners(root).current());
    }

    @Test
    void deletedIsDeletedWithCopiesAndLogsAndTheOthersStay() throws IOException {
        Learners learners = new Learners(root);
        fill(root, 0, 5, "First");
        Path folder = learners.another();
        fill(folder, 5, 50, "TOPSECRET");
        try (LearnerRecord record = LearnerRecord.open(folder)) {
            record.backUp(Instant.now());
        }
        Files.writeString(folder.resolve("record-set-aside-20260101T000000Z.sqlite"), "TOPSECRET");
        assertTrue(anyFileHolds("TOPSECRET"));
        learners.delete(folder);
        assertFalse(Files.exists(folder));
        assertFalse(anyFileHolds("TOPSECRET"));
        assertEquals(1, learners.all().size());

        learners.delete(root);
        assertEquals(List.of(), learners.all());
        assertFalse(anyFileHolds("First"));
        try (LearnerRecord fresh = LearnerRecord.open(root)) {
            assertEquals(List.of(), fresh.attempts());
        }
    }

    @Test
    void aWindowThatStillHasADeletedRecordOpenCanAddNothing() {
        Learners learners = new Learners(root);
        try (LearnerRecord open = LearnerRecord.open(root)) {
            open.add(Samples.attempt(1));
            learners.delete(root);
            RecordException e =
                    assertThrows(RecordException.class, () -> open.add(Samples.attempt(2)));
            assertTrue(e.getMessage().contains("deleted in another window"), e.getMessage());
        }
        assertEquals(List.of(), learners.all());
    }

    @Test
    void anExportedRecordComesBackWhole() throws IOException {
        Learners learners = new Learners(root);
        String id = fill(root, 0, 40, "Blue locker");
        Path file = export(root);
        learners.delete(root);

        Learners.Imported brought = learners.take(RecordJson.read(file));
        assertTrue(brought.newLearner());
        assertEquals(40, brought.answers());
        try (LearnerRecord record = LearnerRecord.open(brought.folder())) {
            assertEquals(samples(0, 40), record.attempts());
            assertEquals(id, record.learner());
            assertEquals(Map.of(Learners.NICKNAME, "Blue locker"), record.settings());
        }
        Learners.Imported again = learners.take(RecordJson.read(file));
        assertFalse(again.newLearner());
        assertEquals(0, again.answers(), "what is here is not brought twice");
        assertEquals(1, learners.all().size());
    }

    private Path export(Path folder) throws IOException {
        Path file = root.resolve("export.json");
        try (LearnerRecord record = LearnerRecord.open(folder);
                var out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            RecordJson.write(record, out);
        }
        return file;
    }

    @Test
    void aHostileFileIsRefusedWithItsFaultAndPlace() throws IOException {
        fill(root, 0, 2, "");
        String good = Files.readString(export(root));
        assertRefused("[]", "an object was expected");
        assertRefused("", "an object was expected");
        assertRefused(good.replace("hotside-record", "other"), "\"format\" is not");
        assertRefused(good.replace("\"version\" : 1", "\"version\" : 2"), "\"version\" is not 1");
        assertRefused(good.replace("\"ask\"", "\"aks\""), "\"ask\" of an answer is missing");
        assertRefused(good.replace("\"way\"", "\"x\" : 1, \"way\""), "field \"x\" is not known");
        assertRefused(good.replace("\"hints\"", "\"seed\" : \"1\", \"hints\""), "Duplicate");
        assertRefused(good.replace("\"seconds\" : 0.0", "\"seconds\" : NaN"), "NaN");
        assertRefused(good.replace("\"seconds\" : 0.0", "\"seconds\" : -1"), "seconds -1");
        assertRefused(good.replace("\"seconds\" : 0.0", "\"seconds\" : 1e400"), "seconds");
        assertRefused(good.replace("\"hints\" : 0", "\"hints\" : 9999999999999"), "hints");
        assertRefused(good.replace("\"hints\" : 0", "\"hints\" : [[[[[[1]]]]]]"), "list");
        assertRefused(good.replace("\"settings\" : {", "\"settings\" : {\"a\" : 1,"), "a text");
        assertRefused(good + "[1]", "the end of the file");
        assertRefused(good.replaceFirst("\"learner\" : \"..", "\"learner\" : \"/"), "id of a");
        assertRefused("{\"format\":" + "[".repeat(10_000), "");
        assertRefused(
                good.replace("\"answer\" : \"", "\"answer\" : \"" + "x".repeat(5_000)), "length");
        assertRefused(good.replaceFirst("\"time\" : \"....", "\"time\" : \"soon"), "");
        assertEquals(1, new Learners(root).all().size());
    }

    private void assertRefused(String text, String why) throws IOException {
        Path file = root.resolve("hostile.json");
        Files.writeString(file, text);
        RecordException e = assertThrows(RecordException.class, () -> RecordJson.read(file));
        assertTrue(e.getMessage().contains(why), e.getMessage());
        assertTrue(e.getMessage().contains("hostile.json"), e.getMessage());
    }

    // CWE-1236 names the first characters; RFC 4180 the quotes and line ends.
    @Test
    void noAnswerBecomesAFormulaInASpreadsheet() throws IOException {
        StringWriter out = new StringWriter();
        List<String> answers =
                List.of("=1+1", "+cmd", "-3.2", "-3.2 kPa", "@x", "\tx", "a,\"b\"\nc", "1.5e-3");
        AttemptCsv.write(answers.stream().map(LearnersTest::answered).toList(), out);
        List<String> lines = List.of(out.toString().split("\r\n"));
        assertEquals(
                "time,problem,seed,units,question,answer,verdict,mistake,right,hints,seconds,lesson,way",
                lines.get(0));
        String head = "2025-11-24T16:00:00.001Z,gate/valve-force-1,18446744073709551614,US_SHOP,2,";
        String tail = ",MISTAKE,G1,false,1,0.125,gates/forces,full";
        assertEquals(head + "'=1+1" + tail, lines.get(1));
        assertEquals(head + "'+cmd" + tail, lines.get(2));
        assertEquals(head + "-3.2" + tail, lines.get(3));
        assertEquals(head + "'-3.2 kPa" + tail, lines.get(4));
        assertEquals(head + "'@x" + tail, lines.get(5));
        assertEquals(head + "'\tx" + tail, lines.get(6));
        assertEquals(head + "\"a,\"\"b\"\"\nc\"" + tail, lines.get(7));
        assertEquals(head + "1.5e-3" + tail, lines.get(8));
    }

    private static Attempt answered(String answer) {
        Attempt a = Samples.attempt(1);
        return new Attempt(
                a.problem(),
                a.seed(),
                a.generator(),
                a.fingerprint(),
                a.unitSystem(),
                a.ask(),
                answer,
                a.verdict(),
                a.mistake(),
                a.correct(),
                a.hints(),
                a.seconds(),
                a.time(),
                a.lesson());
    }

    private boolean anyFileHolds(String text) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
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

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.ProblemSet.Numbers;
import hotside.page.Maths;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandPointsTest {
    private static final ProblemSet SET = Classes.set(Numbers.OWN);
    private static final Regrader REGRADER = new Regrader(SET, Classes.BANK);
    private static final String REASON = "=the unit stands, in the \"sketch\"";

    @TempDir private Path folder;

    private Path file() {
        return folder.resolve("new").resolve("points.csv");
    }

    private void set(String learner, int slot, Double points, String reason) throws IOException {
        HandPoints.set(
                file(), SET, learner, slot, Optional.ofNullable(points), reason, Classes.END);
    }

    private HandPoints read() throws IOException {
        return HandPoints.read(file(), SET);
    }

    /** A paper with nothing right: a number without its unit, and blanks. */
    private static Marking.Result unsettled() {
        return new Marking.Result(
                List.of(
                        REGRADER.mark(
                                "paper",
                                "K1",
                                Map.of(0, List.of("133")),
                                DecimalHabit.POINT,
                                Classes.END)),
                List.of());
    }

    private static ClassResult result(Marking.Result result) {
        return new ClassResult(REGRADER, Optional.empty(), result);
    }

    @Test
    void pointsSetByHandReplaceThoseWorkedOutWhichStayToBeSeen() throws IOException {
        assertEquals(1, result(unsettled()).unsettled().size());
        set("K1", 0, 1.5, REASON);
        Marking.Result after = read().on(unsettled());
        MarkedItem item = after.marked().get(0).items().get(0);
        assertEquals(1.5, item.reached());
        assertEquals(0, item.worked());
        assertEquals(1.5, after.marked().get(0).reached());
        ClassResult result = result(after);
        assertEquals(List.of(), result.unsettled());
        String told = "problem 1: 1.5 by hand in place of 0: " + REASON;
        assertEquals(List.of(told), result.byHand(after.marked().get(0)));
        StringWriter marks = new StringWriter();
        result.marksCsv(marks);
        assertTrue(marks.toString().contains("K1,K1,,1.5,0,0,1.5,6,25,marked from paper,,,,"));
        assertTrue(marks.toString().contains(told.replace("\"", "\"\"")), marks.toString());
        StringWriter table = new StringWriter();
        result.byHandCsv(table);
        assertTrue(
                table.toString()
                        .contains(
                                "K1,1,push-on-the-valve,1.5,0,2,\"'"
                                        + REASON.replace("\"", "\"\"")),
                table.toString());
        String report =
                new Papers(REGRADER, new Maths())
                        .report(new Roster.Learner("K1", "K1", ""), after.marked().get(0));
        assertTrue(report.contains("1.5 of 2, set by your instructor in place of 0: =the unit"));
    }

    @Test
    void theLastCountsAndPointsCanBeTakenBack() throws IOException {
        set("K1", 0, 2.0, "first thought");
        set("K1", 0, 0.5, "second thought");
        assertEquals(0.5, read().on(unsettled()).marked().get(0).items().get(0).reached());
        set("K1", 0, null, "");
        assertEquals(
                Optional.empty(), read().on(unsettled()).marked().get(0).items().get(0).byHand());
        String kept = Files.readString(file());
        assertTrue(kept.startsWith("# Points that the instructor set by hand"), kept);
        assertTrue(kept.contains("first thought"), "what was thought before can still be read");
    }

    @Test
    void pointsAreANumberOfThisProblemWithAReason() {
        assertEquals(1.5, HandPoints.points(" 1,5 ", 2));
        assertEquals(0, HandPoints.points("0", 2));
        for (String wrong : List.of("2.1", "-1", "", "two", "NaN", "1e9", "99999999")) {
            String said =
                    assertThrows(IllegalArgumentException.class, () -> HandPoints.points(wrong, 2))
                            .getMessage();
            assertTrue(said.contains("a number from 0 to 2"), said);
        }
        assertThrows(IllegalArgumentException.class, () -> set("K1", 0, 1.0, " "));
        assertThrows(IllegalArgumentException.class, () -> set("K1", 0, 1.0, "x".repeat(201)));
        assertFalse(Files.exists(file()), "nothing half-written");
    }

    @Test
    void linesThatDoNotFitAreFindingsAndTheOthersCount() throws IOException {
        set("K1", 0, 1.0, "good");
        Files.writeString(
                file(),
                Files.readString(file())
                        + "K1,other/1,1,1,another set,2026-12-01T12:00:00Z\r\n"
                        + "K1,gates-1/1,9,1,no such problem,2026-12-01T12:00:00Z\r\n"
                        + "K1,gates-1/1,2,7,too many,2026-12-01T12:00:00Z\r\n"
                        + "K1,gates-1/1,2,1,no time,yesterday\r\n"
                        + "../x,gates-1/1,2,1,no id,2026-12-01T12:00:00Z\r\n"
                        + "short\r\n");
        HandPoints read = read();
        assertEquals(6, read.findings().size(), read.findings().toString());
        assertEquals(1, read.on(unsettled()).marked().get(0).reached());
    }

    @Test
    void whoHasNothingMarkedIsNamed() throws IOException {
        set("K9", 1, 1.0, "told me");
        assertEquals(List.of("K9"), read().idle(unsettled()));
    }

    @Test
    void aFileOfAnotherSortIsLeftAsItIs() throws IOException {
        Path other = folder.resolve("marks.csv");
        Files.writeString(other, "learner_id,points\r\nK1,2\r\n");
        String said =
                assertThrows(
                                IOException.class,
                                () ->
                                        HandPoints.set(
                                                other,
                                                SET,
                                                "K1",
                                                0,
                                                Optional.of(1.0),
                                                "why",
                                                Classes.END))
                        .getMessage();
        assertTrue(said.contains("another sort of file"), said);
        assertThrows(IOException.class, () -> PaperAnswers.add(other, "K1", 0, 0, "1 N"));
        assertEquals("learner_id,points\r\nK1,2\r\n", Files.readString(other));
    }

    @Test
    void aSpreadsheetsMarksAndPaddingAreReadPast() throws IOException {
        set("K1", 0, 1.0, "good");
        String padded = Files.readString(file()).replaceAll("(?m)^(#.*)\r$", "$1,,,,\r");
        Files.writeString(file(), "\ufeff" + padded);
        assertEquals(List.of(), read().findings());
        set("K1", 1, 2.0, "better");
        assertEquals(3, read().on(unsettled()).marked().get(0).reached());
    }

    /** Whatever a file holds: findings, and no more points than there are. */
    @Test
    void mutatedFilesOfPointsAndPapersAreReadOrFoundFaultWith() throws IOException {
        set("K1", 0, 1.0, REASON);
        set("K1", 2, 0.25, "long \u202e reason");
        Path paper = folder.resolve("paper.csv");
        PaperAnswers.add(paper, "K1", 0, 0, "133 N");
        PaperAnswers.add(paper, "K1", 1, 1, "=5 kW");
        Random random = new Random(20261125);
        byte[] points = Files.readAllBytes(file());
        byte[] answers = Files.readAllBytes(paper);
        for (int i = 0; i < 2_000; i++) {
            Files.write(file(), mutated(points, random));
            double reached = read().on(unsettled()).marked().get(0).reached();
            assertTrue(reached >= 0 && reached <= SET.points(), "run " + i);
            Files.write(paper, mutated(answers, random));
            Marking.Result none = new Marking.Result(List.of(), List.of());
            PaperAnswers.read(paper, REGRADER, Optional.empty())
                    .join(none, REGRADER, Classes.END)
                    .marked()
                    .forEach(in -> assertTrue(in.reached() <= SET.points()));
        }
    }

    private static byte[] mutated(byte[] whole, Random random) {
        byte[] bytes = java.util.Arrays.copyOf(whole, whole.length - random.nextInt(20));
        for (int n = random.nextInt(6); n >= 0; n--) {
            bytes[random.nextInt(bytes.length)] =
                    random.nextBoolean()
                            ? (byte) random.nextInt(256)
                            : (byte) ",\"\r\n#-.9eE=".charAt(random.nextInt(11));
        }
        return bytes;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotside.classroom.Regrader;
import hotside.classroom.SetFile;
import hotside.learner.RecordFolder;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Variant;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A set goes the whole way round: composed, worked, handed in, marked, taught again. */
class ClassCommandsTest {
    @TempDir private Path temp;
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private String before;

    @BeforeEach
    void ownDataFolder() {
        before = System.getProperty(RecordFolder.PROPERTY);
        System.setProperty(RecordFolder.PROPERTY, temp.resolve("data").toString());
    }

    @AfterEach
    void usualDataFolder() {
        if (before == null) {
            System.clearProperty(RecordFolder.PROPERTY);
        } else {
            System.setProperty(RecordFolder.PROPERTY, before);
        }
    }

    private int type(String typed, String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return CommandLineDoor.run(
                Arrays.stream(args)
                        .map(a -> a.startsWith("@") ? temp.resolve(a.substring(1)).toString() : a)
                        .toArray(String[]::new),
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
                new PrintWriter(out),
                new PrintWriter(err),
                (folder, whole) -> CommandLineDoor.FINE,
                file -> {});
    }

    private int run(String... args) {
        return type("", args);
    }

    private void compose(String... more) {
        List<String> args =
                new ArrayList<>(
                        List.of(
                                "set",
                                "compose",
                                "--to",
                                "@gates.hotset",
                                "--title",
                                "Gates",
                                "--id",
                                "gates",
                                "--problem",
                                "push-on-the-valve:2",
                                "power-of-a-pipe"));
        args.addAll(List.of(more));
        assertEquals(0, run(args.toArray(String[]::new)), err.toString());
    }

    private Variant variant(String learner, int slot) {
        return new Regrader(SetFile.read(temp.resolve("gates.hotset")).set(), ProblemBank.shipped())
                .variant(learner, slot);
    }

    private void answer(String learner, int number, List<String> answers) {
        List<String> args =
                new ArrayList<>(
                        List.of(
                                "set",
                                "answer",
                                "@gates.hotset",
                                "--work",
                                "@" + learner,
                                "--problem",
                                String.valueOf(number),
                                "--answer"));
        args.addAll(answers);
        assertEquals(0, run(args.toArray(String[]::new)), err.toString());
    }

    private static List<String> right(Variant variant) {
        return Stream.iterate(0, i -> i < variant.answers().size(), i -> i + 1)
                .map(i -> Answers.told(variant, i))
                .toList();
    }

    private static List<String> slipped(Variant variant) {
        Variant.Slipped slip = variant.slips().get(0);
        return List.of(Answers.told(variant, 0, slip.value()));
    }

    @Test
    void aSetGoesTheWholeWayRound() throws IOException {
        compose();
        assertTrue(out.toString().contains("3 points."), out.toString());
        for (String learner : List.of("K1", "K2", "K3")) {
            assertEquals(
                    0,
                    run(
                            "set",
                            "begin",
                            "@gates.hotset",
                            "--work",
                            "@" + learner,
                            "--learner",
                            learner));
            answer(
                    learner,
                    1,
                    learner.equals("K1")
                            ? right(variant(learner, 0))
                            : slipped(variant(learner, 0)));
            answer(learner, 2, right(variant(learner, 1)));
            assertEquals(
                    0,
                    type(
                            "yes\n",
                            "set",
                            "hand-in",
                            "@gates.hotset",
                            "--work",
                            "@" + learner,
                            "--to",
                            "@in/" + learner));
        }
        Files.writeString(temp.resolve("in").resolve("stray.txt"), "hello");
        assertEquals(
                1,
                run(
                        "mark",
                        "folder",
                        "@gates.hotset",
                        "@in",
                        "--to",
                        "@tables",
                        "--drill",
                        "@drill"));
        String told = out.toString();
        assertTrue(told.contains("stray.txt: foreign: it is no hotside-hand-in file"), told);
        assertTrue(told.contains("problem 1: so far 2 of 3 gauge-as-absolute"), told);
        assertTrue(told.contains("gate.valve-force: so far 2 of 3 below three fifths"), told);
        assertFalse(told.contains("%"), "of three learners no share is told: " + told);
        assertEquals(4, Files.readAllLines(temp.resolve("tables").resolve("marks.csv")).size());
        assertEquals(0, run("set", "look", "@drill"), err.toString());
        assertTrue(out.toString().contains("Once more: Gates"), out.toString());
        byte[] drill = Files.readAllBytes(temp.resolve("drill"));
        assertEquals(1, run("mark", "folder", "@gates.hotset", "@in", "--drill", "@drill"));
        assertTrue(err.toString().contains("was left as it is"), err.toString());
        assertArrayEquals(drill, Files.readAllBytes(temp.resolve("drill")));
        assertEquals(1, run("mark", "folder", "@gates.hotset", "@in", "--json"));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals(3, json.get("marked").get(0).get("points").asDouble());
        assertEquals(1, json.get("marked").get(1).get("points").asDouble());
        assertTrue(json.get("reliability").isNull());
    }

    @Test
    void aLearnerIsToldAtOnceAndHasSoManyTries() {
        compose("--tries", "2");
        assertEquals(0, run("set", "begin", "@gates.hotset", "--work", "@K1", "--learner", "K1"));
        assertTrue(out.toString().contains("not seen this instructor's key"), out.toString());
        answer("K1", 1, slipped(variant("K1", 0)));
        assertTrue(out.toString().contains("Your number is what you would get if"));
        assertTrue(out.toString().contains("Tries left: 1."));
        answer("K1", 1, List.of("1 N"));
        assertEquals(
                1,
                run(
                        "set",
                        "answer",
                        "@gates.hotset",
                        "--work",
                        "@K1",
                        "--problem",
                        "1",
                        "--answer",
                        "2 N"));
        assertTrue(out.toString().contains("Problem 1 has no tries left"));
    }

    @Test
    void beforeTheDueDateOnlyTheFormIsSpokenOf() {
        compose("--feedback", "after-due", "--due", "2999-01-01");
        run("set", "begin", "@gates.hotset", "--work", "@K1", "--learner", "K1");
        answer("K1", 1, slipped(variant("K1", 0)));
        assertFalse(out.toString().contains("Not yet"), out.toString());
        answer("K1", 1, right(variant("K1", 0)));
        assertFalse(out.toString().contains("Right"), out.toString());
        answer("K1", 1, List.of("133"));
        assertTrue(out.toString().contains("In which unit?"), out.toString());
        assertEquals(0, run("set", "work", "@gates.hotset", "--work", "@K1"));
        assertTrue(out.toString().contains("your answer 1: 133"), out.toString());
        assertTrue(out.toString().contains("Not yet answered: 2."), out.toString());
    }

    @Test
    void handingInIsAskedBefore() {
        compose();
        run("set", "begin", "@gates.hotset", "--work", "@K1", "--learner", "K1");
        assertEquals(
                0,
                type("no\n", "set", "hand-in", "@gates.hotset", "--work", "@K1", "--to", "@in/K1"));
        assertTrue(out.toString().contains("Not answered: 1, 2."), out.toString());
        assertFalse(Files.exists(temp.resolve("in")));
    }

    @Test
    void answersAreTypedFromPaperByItsCode() throws IOException {
        compose();
        assertEquals(0, run("set", "roster", "@class.csv", "--fresh", "2"));
        String learner = Files.readAllLines(temp.resolve("class.csv")).get(1).split(",")[0];
        String code =
                SetFile.read(temp.resolve("gates.hotset"))
                        .set()
                        .paperCode(learner)
                        .toLowerCase(java.util.Locale.ROOT)
                        .replace("-", " ");
        List<String> pipe = right(variant(learner, 1));
        String typed =
                "nobody\n"
                        + code
                        + "\n133\n<\n"
                        + right(variant(learner, 0)).get(0)
                        + "\n"
                        + pipe.get(0)
                        + "\n\nq\n";
        assertEquals(
                0,
                type(
                        typed,
                        "mark",
                        "type",
                        "@gates.hotset",
                        "--roster",
                        "@class.csv",
                        "--keep",
                        "@paper.csv"));
        assertTrue(out.toString().contains("No paper here has the code nobody"), out.toString());
        assertTrue(out.toString().contains("Read as " + pipe.get(0)), out.toString());
        assertTrue(out.toString().contains("In which unit?"), out.toString());
        assertEquals(
                0,
                run(
                        "mark",
                        "folder",
                        "@gates.hotset",
                        "--roster",
                        "@class.csv",
                        "--paper",
                        "@paper.csv",
                        "--json"));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals(2.5, json.get("marked").get(0).get("points").asDouble());
        assertEquals(
                0,
                run(
                        "mark",
                        "points",
                        "@gates.hotset",
                        "--learner",
                        learner,
                        "--problem",
                        "2",
                        "--points",
                        "1",
                        "--reason",
                        "the rest stands in the margin",
                        "--keep",
                        "@points.csv"),
                err.toString());
        String[] again = {
            "mark",
            "folder",
            "@gates.hotset",
            "--paper",
            "@paper.csv",
            "--by-hand",
            "@points.csv",
            "--json"
        };
        assertEquals(0, run(again));
        JsonNode set = new ObjectMapper().readTree(out.toString()).get("marked").get(0);
        assertEquals(3, set.get("points").asDouble());
        assertEquals(0.5, set.get("byHand").get(0).get("workedOut").asDouble());
        assertEquals(0, run(Arrays.copyOf(again, again.length - 1)));
        assertTrue(
                out.toString().contains("problem 2: 1 by hand in place of 0.5: the rest stands"),
                out.toString());
        assertEquals(
                2,
                run(
                        "mark",
                        "points",
                        "@gates.hotset",
                        "--learner",
                        learner,
                        "--problem",
                        "1",
                        "--points",
                        "3",
                        "--reason",
                        "x",
                        "--keep",
                        "@points.csv"));
        assertTrue(err.toString().contains("a number from 0 to 2"), err.toString());
    }

    @Test
    void theOwnRecordIsWrittenAsStatements() throws IOException {
        assertEquals(0, run("statements", "--to", "@own.json"), err.toString());
        assertTrue(out.toString().startsWith("0 answers written"), out.toString());
        assertEquals("[]", Files.readString(temp.resolve("own.json")));
    }

    @Test
    void anotherSetIsNotWrittenOver() throws IOException {
        compose();
        byte[] before = Files.readAllBytes(temp.resolve("gates.hotset"));
        assertEquals(2, run(again("other", "1")));
        assertTrue(err.toString().contains("gates.hotset is there already."), err.toString());
        assertEquals(2, run(again("gates", "1")));
        assertArrayEquals(before, Files.readAllBytes(temp.resolve("gates.hotset")));
        assertEquals(0, run(again("gates", "2")), err.toString());
        assertEquals(2, SetFile.read(temp.resolve("gates.hotset")).set().edition());
        Files.writeString(temp.resolve("gates.hotset"), "no set at all");
        assertEquals(2, run(again("gates", "3")));
    }

    /** A learner who is late is told so before the work and again before handing in. */
    @Test
    void lateWorkIsToldToTheLearnerInTime() {
        compose("--due", "2020-01-01 18:00");
        assertEquals(0, run("set", "begin", "@gates.hotset", "--learner", "K1"));
        assertTrue(out.toString().contains("It was due 2020-01-01 18:00"), out.toString());
        type("no\n", "set", "hand-in", "@gates.hotset");
        assertTrue(out.toString().contains("It was due 2020-01-01 18:00"), out.toString());
    }

    private static String[] again(String id, String edition) {
        return new String[] {
            "set",
            "compose",
            "--to",
            "@gates.hotset",
            "--title",
            "Again",
            "--id",
            id,
            "--edition",
            edition,
            "--problem",
            "power-of-a-pipe"
        };
    }

    @Test
    void aSkillThatWasMisspeltIsGuessed() {
        assertEquals(2, run("set", "compose", "--to", "@x", "--title", "T", "--skill", "gates"));
        assertTrue(err.toString().contains("Did you mean \"gate\"?"), err.toString());
    }

    /** Eighteen o'clock of this machine is told as eighteen o'clock, and to the learner as well. */
    @Test
    void theDueTimeIsToldAsItWasWritten() {
        compose("--due", "2999-01-01 18:00", "--tries", "1");
        assertTrue(out.toString().contains("; 1 try; "), out.toString());
        assertTrue(out.toString().contains("due 2999-01-01 18:00."), out.toString());
        assertEquals(0, run("set", "begin", "@gates.hotset", "--learner", "K1"));
        assertEquals(0, run("set", "work", "@gates.hotset"), err.toString());
        assertTrue(
                out.toString().contains("Gates: 3 points, due 2999-01-01 18:00."), out.toString());
    }

    @Test
    void wrongUseIsToldInWords() {
        assertEquals(
                2, run("set", "compose", "--to", "@x", "--title", "T", "--problem", "pusch-on"));
        assertTrue(err.toString().contains("There is no problem \"pusch-on\"."), err.toString());
        assertEquals(
                2,
                run(
                        "set",
                        "compose",
                        "--to",
                        "@x",
                        "--title",
                        "T",
                        "--skill",
                        "gate",
                        "--feedback",
                        "after-due"));
        assertTrue(err.toString().contains("needs a due date"), err.toString());
        assertEquals(2, run("set", "compose", "--to", "@x", "--title", "T", "--due", "tomorrow"));
        assertEquals(1, run("set", "look", "@nothing"));
        assertTrue(err.toString().contains("no such file"), err.toString());
        assertFalse(Files.exists(temp.resolve("x")));
    }
}

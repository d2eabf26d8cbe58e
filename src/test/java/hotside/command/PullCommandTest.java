// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PullCommandTest {
    private static final String STEP = "cell.step=900rev/min";

    @TempDir Path temp;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return CommandLineDoor.run(
                args,
                new PrintWriter(out),
                new PrintWriter(err),
                (folder, whole) -> CommandLineDoor.FINE,
                file -> {});
    }

    private List<String> lines() {
        return out.toString().lines().toList();
    }

    @Test
    void writesTheReadingsInSiWithUnitsAtTheHead() {
        assertEquals(0, run("pull", "four-return-spring", "--set", STEP));
        assertTrue(
                lines().get(0)
                        .startsWith(
                                "time [s],engineSpeed [1/s],torque [N·m],power [W],boost [Pa gauge],"),
                lines().get(0));
        assertEquals(7, lines().size());
        assertFalse(lines().get(0).contains("true"));
        assertEquals("", err.toString());
    }

    @Test
    void addsTheTruthAndWhoDecidesOnlyWhenAsked() {
        assertEquals(0, run("pull", "four-return-spring", "--set", STEP, "--truth"));
        assertTrue(lines().get(0).contains(",trueLift [m],trueBypassFraction [1],"));
        assertEquals(lines().get(0).split(",").length, lines().get(1).split(",").length);
        assertTrue(err.toString().contains("the gate is shut"));
    }

    @Test
    void theSameSeedWritesTheSameFileAndNothingElse() throws IOException {
        Path one = temp.resolve("one.csv");
        Path two = temp.resolve("two.csv");
        run("pull", "four-return-spring", "--set", STEP, "--seed", "9", "--out", one.toString());
        run("pull", "four-return-spring", "--set", STEP, "--seed", "9", "--out", two.toString());
        assertEquals(Files.readString(one), Files.readString(two));
        assertEquals("", out.toString());
        try (var files = Files.list(temp)) {
            assertEquals(2, files.count());
        }
    }

    @Test
    void aPartIsWhatItSets() {
        run("pull", "eight-vented-bleed", "--set", STEP, "--part", "pipe-76");
        String fitted = out.toString();
        out.getBuffer().setLength(0);
        run("pull", "eight-vented-bleed", "--set", STEP, "--set", "exhaust.bore=72.9mm");
        assertEquals(out.toString(), fitted);
    }

    @Test
    void listsRigsAndParts() {
        assertEquals(0, run("pull", "--list"));
        assertTrue(out.toString().contains("eight-vented-held: "));
        assertTrue(out.toString().contains("pipe-127: "));
    }

    @Test
    void tellsWhatItDoesNotUnderstand() {
        assertEquals(2, run("pull", "eight-vented-bled"));
        assertTrue(err.toString().contains("Did you mean \"eight-vented-bleed\"?"));
        assertEquals(2, run("pull", "eight-vented-bleed", "--set", "exhaust.boer=3in"));
        assertTrue(err.toString().contains("nearest in spelling: exhaust.bore"));
        assertEquals(2, run("pull", "eight-vented-bleed", "--set", "exhaust.bore"));
        assertTrue(err.toString().contains("is not PATH=VALUE"));
        assertEquals(2, run("pull", "eight-vented-bleed", "--part", "pipe-77"));
        assertTrue(err.toString().contains("There is no part \"pipe-77\"."));
        Path nowhere = temp.resolve("none").resolve("x.csv");
        assertEquals(2, run("pull", "four-return-spring", "--out", nowhere.toString()));
        assertTrue(err.toString().contains("There is no folder"));
    }

    @Test
    void findingsOfARigsFileAreTold() throws IOException {
        Path file = temp.resolve("mine.yaml");
        Files.writeString(file, "title: Mine\nambient: {pressure: 1 kPa, temperature: 20 °C}\n");
        assertEquals(1, run("pull", file.toString()));
        assertTrue(out.toString().contains("mine.yaml:2:"), out.toString());
        assertTrue(out.toString().contains("ambient.pressure is 1000 Pa abs"), out.toString());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir private Path folder;

    private int run(String... args) {
        return CommandLineDoor.run(
                args, new PrintWriter(out), new PrintWriter(err), (to, whole) -> 0, file -> {});
    }

    private int pipes(String... more) {
        String[] args = new String[6 + more.length];
        String[] first = {"trial", "eight-vented-bleed", "--base", "pipe-76", "--with", "pipe-102"};
        System.arraycopy(first, 0, args, 0, first.length);
        System.arraycopy(more, 0, args, first.length, more.length);
        return run(args);
    }

    @Test
    void theTruthIsToldOnlyToWhoHasSaidSomething() {
        assertEquals(CommandLineDoor.FINE, pipes());
        assertFalse(out.toString().contains("Judged by the truth"));
        assertTrue(out.toString().contains("pull-4-A.csv"));
        assertEquals(
                CommandLineDoor.FINE,
                pipes("--predict", "power rises 10 kW, boost stays", "--gain", "4 to 14 kW"));
        assertTrue(out.toString().contains("[mend] boost: You expected that it stays"));
        assertTrue(out.toString().contains("the truth is 8.92 kW"), out.toString());
    }

    /** What the cell writes is read by the command that reads anybody's logs. */
    @Test
    void logsThatAreWrittenAreComparedToTheSameGain() throws IOException {
        assertEquals(CommandLineDoor.FINE, pipes("--out", folder.toString(), "--json"));
        String told = out.toString();
        out.getBuffer().setLength(0);
        int code =
                run(
                        "compare",
                        folder.resolve("pull-1-A.csv").toString(),
                        folder.resolve("pull-4-A.csv").toString(),
                        folder.resolve("pull-2-B.csv").toString(),
                        folder.resolve("pull-3-B.csv").toString(),
                        "--label=A",
                        "--label=A",
                        "--label=B",
                        "--label=B",
                        "--band=4000..6000",
                        "--pressure=98.5 kPa",
                        "--json");
        assertEquals("", err.toString());
        assertEquals(gain(told), gain(out.toString()));
        assertEquals(CommandLineDoor.FINE, code, "every column is known");
    }

    private static JsonNode gain(String json) throws IOException {
        JsonNode band = new ObjectMapper().readTree(json).at("/gains/0/band");
        assertFalse(band.isMissingNode(), () -> json.substring(0, Math.min(400, json.length())));
        return band;
    }

    @Test
    void whatIsNotUnderstoodIsSaidAndNothingIsWritten() throws IOException {
        assertEquals(CommandLineDoor.USAGE, pipes("--order", "ABX", "--out", folder.toString()));
        assertTrue(err.toString().contains("the letters A to B"), err.toString());
        try (var files = Files.list(folder)) {
            assertEquals(0, files.count());
        }
        assertEquals(CommandLineDoor.USAGE, pipes("--predict", "power up"));
        assertEquals(CommandLineDoor.USAGE, pipes("--claim", "maybe"));
        assertEquals(CommandLineDoor.USAGE, run("trial", "nine", "--with", "pipe-102"));
        assertTrue(err.toString().contains("There is no rig \"nine\""), err.toString());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** Choices, orders and charts on the command line. */
class LetteredProblemsTest {
    private static String run(String typed, Object command, String... args) {
        StringWriter out = new StringWriter();
        CommandLine line = new CommandLine(command).setCaseInsensitiveEnumValuesAllowed(true);
        line.setOut(new PrintWriter(out));
        assertEquals(0, line.execute(args), typed);
        return out.toString();
    }

    private static JsonNode json(Object command, String... args) throws Exception {
        return new ObjectMapper().readTree(run("", command, args));
    }

    @Test
    void aVariantTellsItsOptionsAndTheKey() throws Exception {
        JsonNode variant =
                json(new VariantCommand(), "what-back-pressure-does", "--seed", "3", "--json");
        assertEquals(4, variant.get("options").size());
        String key = variant.get("ask").get(0).get("key").asText();
        for (JsonNode option : variant.get("options")) {
            assertEquals(
                    option.get("letter").asText().equals(key), option.get("right").asBoolean());
        }
    }

    @Test
    void lettersOfAnOrderNeedNoQuotes() throws Exception {
        JsonNode variant =
                json(new VariantCommand(), "what-the-narrow-pipe-starts", "--seed", "2", "--json");
        String key = variant.get("ask").get(0).get("key").asText();
        String[] letters = key.split(" ");
        assertEquals(6, letters.length);
        String[] args = {
            "what-the-narrow-pipe-starts",
            "--seed",
            "2",
            "--json",
            "--answer",
            letters[0],
            letters[1],
            letters[2],
            letters[3],
            letters[4],
            letters[5]
        };
        assertTrue(json(new AnswerCommand(), args).get("correct").asBoolean());
        args[5] = letters[1];
        args[6] = letters[0];
        JsonNode wrong = json(new AnswerCommand(), args);
        assertEquals("starts-before-the-turbine", wrong.get("mistake").asText());
    }

    @Test
    void aChartComesAsNumbers() throws Exception {
        JsonNode chart =
                json(new VariantCommand(), "when-boost-arrives", "--seed", "1", "--json")
                        .get("charts")
                        .get(0);
        assertEquals("rev/min", chart.get("x").get("unit").asText());
        JsonNode curve = chart.get("curves").get(0);
        assertEquals(curve.get("x").size(), curve.get("y").size());
        String text = run("", new VariantCommand(), "when-boost-arrives", "--seed", "1");
        assertTrue(text.contains("[boost, kPa gauge over engine speed, rev/min]"), text);
    }

    @Test
    void aDrillTakesLetters() throws Exception {
        String key =
                json(new VariantCommand(), "what-back-pressure-does", "--seed", "1", "--json")
                        .get("ask")
                        .get(0)
                        .get("key")
                        .asText();
        String typed = "?\n" + key + "\nq\n";
        String told =
                run(
                        typed,
                        new DrillCommand(
                                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8))),
                        "what-back-pressure-does");
        assertTrue(told.contains("Answer with one letter."), told);
        assertTrue(told.contains("1 of 1 right."), told);
    }
}

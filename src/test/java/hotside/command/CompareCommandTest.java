// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command as it is typed. All logs are invented. */
class CompareCommandTest {
    @TempDir private Path folder;

    private String out;
    private String err;

    @BeforeEach
    void writesLogs() throws IOException {
        write("before.csv", 100, 80);
        write("after.csv", 110, 81);
    }

    /** Power and boost are even from 3000 to 6000 rev/min. */
    private void write(String name, double kilowatts, double boost) throws IOException {
        StringBuilder text = new StringBuilder("Speed [rpm],Power [kW],Boost [kPa gauge]\n");
        for (int rpm = 3000; rpm <= 6000; rpm += 250) {
            text.append(rpm + "," + kilowatts + "," + boost + "\n");
        }
        Files.writeString(folder.resolve(name), text);
    }

    private int run(String... words) {
        List<String> args = new ArrayList<>(List.of("compare"));
        for (String word : words) {
            args.add(word.endsWith(".csv") ? folder.resolve(word).toString() : word);
        }
        StringWriter printed = new StringWriter();
        StringWriter complained = new StringWriter();
        int code =
                CommandLineDoor.run(
                        args.toArray(String[]::new),
                        new PrintWriter(printed),
                        new PrintWriter(complained),
                        (to, whole) -> 0,
                        file -> {});
        out = printed.toString();
        err = complained.toString();
        return code;
    }

    @Test
    void saysInWordsAndInATableWhatCameOfIt() {
        assertEquals(0, run("before.csv", "after.csv", "--worth", "5 kW/kPa"), err);
        assertTrue(
                out.contains(
                        "- “after” gives 10.0 kW more than “before” on average over 3000 to 6000 rev/min."),
                out);
        assertTrue(out.contains("which makes 5.00 kW ± 0.980 kW"), out);
        assertTrue(out.lines().anyMatch(l -> l.matches("4500 +10\\.00 +\\? +1\\.000 +\\?")), out);
    }

    @Test
    void givesSiAndAbsolutePressureToPrograms() throws IOException {
        assertEquals(
                0,
                run(
                        "before.csv",
                        "after.csv",
                        "--json",
                        "--worth",
                        "5 +- 0.5 kW/kPa",
                        "--band",
                        "4000..5000"),
                err);
        JsonNode json = new ObjectMapper().readTree(out);
        assertEquals(4000 / 60.0, json.at("/band/low").asDouble(), 1e-9);
        JsonNode gain = json.at("/gains/0");
        assertEquals(10e3, gain.at("/band/power/difference").asDouble(), 1e-6);
        assertEquals(181_325, gain.at("/band/manifold-pressure/before").asDouble(), 1e-6);
        assertEquals(5e3, gain.at("/splitByWorth/boostPart").asDouble(), 1e-6);
        assertEquals(0.5, gain.at("/splitByWorth/worthUncertainty").asDouble(), 1e-12);
        assertEquals("too_few_pulls", gain.at("/splitByRegression/trouble").asText());
        assertTrue(gain.at("/band/power/interval").isNull());
    }

    @Test
    void takesFilesOfOneLabelForPullsOfOnePart() throws IOException {
        write("before2.csv", 101, 80);
        write("after2.csv", 111, 81);
        String[] order = {"before.csv", "after.csv", "after2.csv", "before2.csv"};
        assertEquals(
                0,
                run(
                        order[0], order[1], order[2], order[3], "--json", "--label", "A", "--label",
                        "B", "--label", "B", "--label", "A"),
                err);
        JsonNode json = new ObjectMapper().readTree(out);
        assertEquals(2, json.at("/parts").size());
        assertEquals(2, json.at("/parts/0/pulls").size());
        // by hand: spreads √½, u = √(½/2 + ½/2), ν = 2, t = 4.303 from Student's table
        JsonNode interval = json.at("/gains/0/band/power/interval");
        assertEquals(10e3 - 4.303e3 * Math.sqrt(0.5), interval.at("/low").asDouble(), 1);
    }

    @Test
    void correctsWithTheStandardsOwnWarning() {
        assertEquals(
                0,
                run(
                        "before.csv",
                        "after.csv",
                        "--correct",
                        "sae-j1349",
                        "--pressure",
                        "95 kPa",
                        "--temperature",
                        "30 °C"),
                err);
        assertTrue(
                out.contains(
                        "Note: before.csv: Power corrected by SAE J1349, factor 1.060; the air was taken as dry."),
                out);
        assertTrue(out.contains("Compare at equal manifold pressure"), out);
        assertTrue(out.contains("“after” gives 10.6 kW more"), out);
    }

    @Test
    void reportsWhatIsOddAndGoesOn() throws IOException {
        Files.writeString(
                folder.resolve("odd.csv"),
                "Speed [rpm],Power [kW]\n3000,100\n4000,1o0\n4500,100\n5000,100\n6000,100\n");
        assertEquals(1, run("before.csv", "odd.csv"), err);
        assertTrue(out.contains("odd.csv:3:6: \"1o0\" in column \"Power [kW]\" is no number"), out);
        assertTrue(out.contains("Manifold pressure is not in both logs"), out);
    }

    @Test
    void readsAColumnAsItIsTold() throws IOException {
        Files.writeString(folder.resolve("raw.csv"), "Ch1,Ch2\n3000,100\n4000,100\n6000,100\n");
        assertEquals(1, run("raw.csv", "raw.csv", "--label", "A", "--label", "B"));
        assertTrue(err.contains("there is no column for engine speed"), err);
        assertEquals(
                0,
                run(
                        "raw.csv",
                        "raw.csv",
                        "--label",
                        "A",
                        "--label",
                        "B",
                        "--map",
                        "Ch1=speed rpm",
                        "--map",
                        "Ch2=power kW"),
                err);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            before.csv                                        | Name two run logs at least: compare before.csv after.csv
            before.csv after.csv --band 6000..4000            | --band 6000..4000 must run from the lower to the higher.
            before.csv after.csv --band fast                  | --band fast is not of the form 4000..6500, in rev/min.
            before.csv after.csv --label A                    | --label was given 1 times for 2 files; give it once for each.
            before.csv after.csv --label A --label A          | All files have one label, so there is nothing to compare.
            before.csv after.csv --correct sae-j1349          | --correct needs the weather of the test: --pressure "98.2 kPa" --temperature "24 °C".
            before.csv after.csv --map Ch1                    | --map: "Ch1" is not of the form column=quantity unit, such as "Ch7=power kW".
            before.csv after.csv --worth 5kW/kPa --na-power 1kW | --worth and --na-power both say what boost is worth; give one.
            """)
    void refusesWrongUse(String words, String message) {
        assertEquals(2, run(words.split(" ")));
        assertEquals(message, err.strip());
    }

    @Test
    void saysThatAFileIsNotThere() {
        assertEquals(2, run("before.csv", "nowhere.csv"));
        assertEquals("There is no file " + folder.resolve("nowhere.csv") + ".", err.strip());
    }
}

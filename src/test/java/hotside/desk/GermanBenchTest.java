// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.speech.Language;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On a German desk the test cell, the run logs and the pages of relations speak German. */
class GermanBenchTest {
    /** Words that an English text can hardly do without, with what stands about them. */
    private static final Pattern ENGLISH =
            Pattern.compile("\\S* (?:the|of|and|is|are|with|to|from|than) \\S*");

    /** A number with a decimal point; ids of standards and names of files have none. */
    private static final Pattern POINTED = Pattern.compile("(?<![\\w.-])\\d+\\.\\d+(?![\\w.-])");

    /** Relations from all topics. */
    private static final List<String> RELATIONS =
            List.of(
                    "crack-pressure",
                    "duct-flow",
                    "turbo-balance",
                    "cooler-effectiveness",
                    "sae-j1349",
                    "welch-gain",
                    "sensor-lag");

    @TempDir private static Path data;
    private static OpenDesk desk;

    @BeforeAll
    static void openTheDesk() {
        Screen.start();
        desk = OpenDesk.open(Libraries.read(), data.resolve("record"), keeper -> Optional.empty());
    }

    @BeforeEach
    void speakGerman() {
        press("#language-de");
    }

    @AfterAll
    static void closeTheDesk() {
        desk.close();
        Language.speak(Language.ENGLISH);
    }

    private static void press(String button) {
        Screen.run(() -> ((ToggleButton) desk.window().scene().lookup(button)).fire());
    }

    private static void click(String id) {
        Screen.run(() -> desk.window().page().click(id));
    }

    private static void fill(String part, Map<String, String> fields) {
        fields.forEach(
                (name, value) ->
                        Screen.run(() -> desk.window().page().type(part + "-" + name, value)));
    }

    private static String shown(String id) {
        return Screen.on(() -> desk.window().page().text(id).orElse(""));
    }

    private static void waitFor(String id, String text) {
        Screen.until(() -> desk.window().page().text(id).orElse("").contains(text));
    }

    private static Set<String> found(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void assertGerman(String text) {
        assertTrue(text.length() > 500, text);
        assertEquals(Set.of(), found(ENGLISH, text));
        assertEquals(Set.of(), found(POINTED, text));
    }

    private static String page() {
        return Screen.on(() -> desk.window().page().text());
    }

    @Test
    void theTestCellSpeaksGermanFromThePredictionToTheTruth() {
        press("#place-cell");
        fill(
                "cell",
                Map.of(
                        "rig", "eight-vented-bleed",
                        "a", "pipe-76",
                        "b", "pipe-102",
                        "way-power", "rises",
                        "size-power", "12,5 kW",
                        "way-boost", "stays",
                        "way-turbine-inlet", "falls",
                        "way-turbine-outlet", "falls",
                        "order", "AX"));
        click("cell-run");
        waitFor("cell-status", "Reihenfolge");
        assertTrue(
                shown("cell-status")
                        .contains(
                                "in der Reihenfolge steht „X“; erwartet: die Buchstaben A bis B, einer für jede Messung."),
                shown("cell-status"));
        fill("cell", Map.of("order", "ABBA", "band", "4000 bis 6000"));
        click("cell-run");
        waitFor("cell-result", "Dein Schluss");
        fill(
                "cell",
                Map.of("gain", "6 bis 12 kW", "part", "-1,5 bis 5 kW", "claim", "cannot-tell"));
        click("cell-judge");
        waitFor("cell-judged", "Was die Wahrheit sagt");
        assertGerman(page());

        press("#language-en");
        waitFor("cell-judged", "Told by the truth");
        assertTrue(shown("cell-result").contains("B, Pipe, 101.6 mm outside"), page());
        assertEquals(Set.of(), found(Pattern.compile(" (?:der|die|das|und|ist) "), page()));
        press("#language-de");
        waitFor("cell-judged", "Was die Wahrheit sagt");
        assertGerman(page());
    }

    @Test
    void theRunLogsSpeakGerman() {
        press("#place-logs");
        click("logs-sample");
        waitFor("logs-files", "pull-6");
        fill(
                "logs",
                Map.of(
                        "band", "4000 bis 6000",
                        "worth", "2,25 kW/kPa",
                        "displacement", "4,6 L",
                        "standard", "sae-j1349",
                        "air", "36,5 °C",
                        "humidity", "40 %",
                        "smooth", "7"));
        click("logs-compare");
        waitFor("logs-result", "Regression");
        assertGerman(page());

        press("#language-en");
        waitFor("logs-result", "Split by regression");
        assertTrue(shown("logs-result").contains("B, Pipe, 101.6 mm outside"), page());
        press("#language-de");
        waitFor("logs-result", "Regression");
        assertGerman(page());
    }

    /** Sources are cited as they are. */
    @Test
    void thePageOfARelationSpeaksGerman() {
        for (String id : RELATIONS) {
            Screen.run(() -> desk.window().openRelation(id));
            click("c1-working");
            String text = page();
            assertGerman(text.substring(0, text.indexOf("Quellen")));
        }
    }
}

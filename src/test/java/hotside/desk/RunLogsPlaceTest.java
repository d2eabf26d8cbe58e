// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.RunLogsPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunLogsPlaceTest {
    private static final String PART = RunLogsPage.PART;

    private final PageNotes page = new PageNotes();
    private final Remembering keeper = new Remembering();
    private final Deque<Runnable> work = new ArrayDeque<>();
    private RunLogsPlace place;

    @TempDir private Path folder;

    /** A record that holds settings alone. */
    private static final class Remembering implements Keeper {
        private final Map<String, String> settings = new HashMap<>();

        @Override
        public void keep(List<Try> tries, Runnable then) {
            then.run();
        }

        @Override
        public void remember(String key, String value) {
            settings.put(key, value);
        }

        @Override
        public Optional<String> remembered(String key) {
            return Optional.ofNullable(settings.get(key));
        }

        @Override
        public Map<String, Boolean> solved() {
            return Map.of();
        }
    }

    @BeforeEach
    void open() {
        place = newPlace();
        place.open();
    }

    private RunLogsPlace newPlace() {
        return new RunLogsPlace(
                page,
                new Worker(Runnable::run, work::add),
                Chosen.NOTHING,
                keeper,
                SampleTrial::run);
    }

    private void work() {
        while (!work.isEmpty()) {
            work.poll().run();
        }
    }

    private void act(String action) {
        place.act(action, PART, "");
        work();
    }

    private void type(String name, String value) {
        place.edit(PART, name, "form", value);
    }

    private Path log(String name, String head, double factor) throws IOException {
        StringBuilder text = new StringBuilder(head).append('\n');
        for (int rpm = 3000; rpm <= 6000; rpm += 100) {
            text.append(rpm).append(',').append(factor * rpm / 25).append('\n');
        }
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void theSampleIsMarkedAsInventedComparedAndSplit() {
        act("sample");
        assertTrue(page.shown.contains("Invented: made by the simulated cell"));
        assertEquals(6, place.state().files().size());
        type("band", "4000 to 6000");
        type("worth", "2.2 kW/kPa");
        type("displacement", "4.6 L");
        type("smooth", "7");
        act("compare");
        String result = page.element(RunLogsPage.RESULT);
        assertTrue(result.contains("Split by a worth of boost"), result);
        assertTrue(result.contains("pull-6-B.csv"));
        assertTrue(result.contains("The same data, another axis"));
        assertTrue(result.contains("7 readings in one average"));
    }

    @Test
    void oneFileIsNoComparison() throws IOException {
        place.openFiles(List.of(log("a.csv", "rpm,power kW", 1)));
        work();
        act("compare");
        assertTrue(page.element(RunLogsPage.STATUS).contains("Two parts at least"));
    }

    @Test
    void aColumnThatIsNotUnderstoodIsToldHereOnceAndRemembered() throws IOException {
        Path a = log("a.csv", "rpm,Ch7", 1);
        Path b = log("b.csv", "rpm,Ch7", 1.1);
        place.openFiles(List.of(a, b));
        work();
        assertTrue(
                page.shown.contains("What is &quot;Ch7&quot;?")
                        || page.shown.contains("What is \"Ch7\"?"));
        act("compare");
        assertTrue(page.element(RunLogsPage.STATUS).contains("no engine speed with power"));

        type("map-Ch7", "power kW");
        act("reread");
        act("compare");
        // Mean of rpm/25 over the band is 180 kW; a tenth of it.
        assertTrue(
                page.element(RunLogsPage.RESULT).contains("18.0 kW more"),
                page.element(RunLogsPage.RESULT));

        place = newPlace();
        place.openFiles(List.of(a, b));
        work();
        act("compare");
        assertTrue(page.element(RunLogsPage.RESULT).contains("18.0 kW more"), "remembered");
    }

    @Test
    void aMeaningThatIsNoneIsSaid() throws IOException {
        place.openFiles(List.of(log("a.csv", "rpm,Ch7", 1)));
        work();
        type("map-Ch7", "wibble");
        act("reread");
        assertTrue(page.element(RunLogsPage.STATUS).contains("wibble"));
    }

    @Test
    void filesOfOneNameAreOnePart() throws IOException {
        place.openFiles(
                List.of(
                        log("a1.csv", "rpm,power kW", 1),
                        log("a2.csv", "rpm,power kW", 1.01),
                        log("b1.csv", "rpm,power kW", 1.1),
                        log("b2.csv", "rpm,power kW", 1.11)));
        work();
        type("f1-label", "old");
        type("f2-label", "old");
        type("f3-label", "new");
        type("f4-label", "new");
        act("compare");
        assertTrue(page.element(RunLogsPage.RESULT).contains("That stands on 2 and 2 pulls"));
    }

    @Test
    void correctionNeedsTheWeather() throws IOException {
        place.openFiles(
                List.of(log("a.csv", "rpm,power kW", 1), log("b.csv", "rpm,power kW", 1.1)));
        work();
        type("standard", "sae-j1349");
        act("compare");
        assertTrue(page.element(RunLogsPage.STATUS).contains("temperature of the inlet air"));
        type("air", "30 °C");
        act("compare");
        assertTrue(page.element(RunLogsPage.STATUS).contains("barometer"));
        type("f1-barometer", "98 kPa abs");
        type("f2-barometer", "98 kPa abs");
        act("compare");
        assertTrue(page.element(RunLogsPage.RESULT).contains("more than"), "compared");
        assertTrue(
                page.element(RunLogsPage.RESULT).contains("SAE J1349, factor 1.0"),
                page.element(RunLogsPage.RESULT));
    }

    @Test
    void readingCanBeStoppedAndWhatWasOpenStays() throws IOException {
        place.openFiles(List.of(log("a.csv", "rpm,power kW", 1)));
        work();
        place.openFiles(List.of(log("b.csv", "rpm,power kW", 1)));
        place.act("stop", PART, "");
        work();
        assertEquals(1, place.state().files().size());
        assertTrue(page.element(RunLogsPage.STATUS).contains("Reading was stopped"));
    }

    @Test
    void aFileThatIsGoneIsSaid() {
        place.openFiles(List.of(folder.resolve("none.csv")));
        assertTrue(page.element(RunLogsPage.STATUS).contains("could not be read"));
    }
}

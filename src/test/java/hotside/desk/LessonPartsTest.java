// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.ContentReader;
import hotside.course.Course;
import hotside.course.Lesson;
import hotside.course.LessonReader;
import hotside.page.Maths;
import hotside.problem.ProblemBank;
import hotside.unit.UnitSystem;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Faded examples, predictions and diagrams in an open lesson, without a window. */
class LessonPartsTest {
    private static final String LESSON =
            """
            ---
            title: T
            strand: Gate
            skills: [gate.valve-force]
            minutes: 5
            sources: our own
            values:
              seat: 46 mm
              p3: 80 kPa gauge
              ambient: 98.5 kPa
            work:
              push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: ambient}
            ---
            ```faded push
            seat: 38 mm
            Now {{seat}}.
            ```

            ```calculator valve-force
            over: upstream
            ```

            ```diagram valve-forces
            follows: valve-force
            ```

            ```predict
            rig: eight-return-bleed
            change: exhaust.bore = 98.3 mm
            at: 5500 rpm
            watch: boost, p4
            question: A wider pipe is fitted. What moves?

            Because of the valve.
            ```
            """;

    /** The page as a map from ids to what was put there last. */
    private static final class Sheet implements Page {
        private final Map<String, String> put = new LinkedHashMap<>();
        private String html = "";

        @Override
        public void show(String page, String plainText) {
            html = page;
            put.clear();
            put.put("plain", plainText);
        }

        @Override
        public void replace(String id, String inside) {
            put.put(id, inside);
        }

        @Override
        public void put(String id, String text) {
            put.put(id, text);
        }

        @Override
        public void focus(String id) {}

        @Override
        public void cursor(String id, double at) {}

        @Override
        public void reveal(String id) {}

        String at(String id) {
            return put.getOrDefault(id, "");
        }
    }

    /** Work that waits until it is told to go on. */
    private static final class Held implements Executor {
        private final List<Runnable> waiting = new ArrayList<>();

        @Override
        public void execute(Runnable work) {
            waiting.add(work);
        }

        void goOn() {
            List<Runnable> now = List.copyOf(waiting);
            waiting.clear();
            now.forEach(Runnable::run);
        }
    }

    private final Sheet sheet = new Sheet();
    private final Held held = new Held();
    private LessonPlace place;
    private Lesson lesson;

    @BeforeEach
    void openTheLesson(@TempDir Path empty) {
        ContentFile file = ContentReader.read("gate/t.md", LESSON);
        lesson =
                LessonReader.read(file)
                        .orElseThrow(() -> new AssertionError(file.findings().list().toString()));
        Tries none =
                new Tries() {
                    @Override
                    public void keep(List<Try> tries, Runnable then) {
                        throw new AssertionError("an example is no try: " + tries);
                    }

                    @Override
                    public void solved(String problem) {
                        throw new AssertionError("an example is no problem: " + problem);
                    }
                };
        place =
                new LessonPlace(
                        Course.of(ContentFolder.read(empty)),
                        ProblemBank.of(ContentFolder.read(empty)),
                        new Maths(),
                        sheet,
                        none,
                        () -> 1L,
                        Clock.systemUTC(),
                        new Worker(Runnable::run, held));
        place.open(lesson);
    }

    /** Who fears for the own values gets them back; who goes on from the start values does not. */
    @Test
    void startValuesCanBeTakenBackUntilSomethingElseIsMoved() {
        String start = place.calculator("c1").orElseThrow().values().toString();
        place.edit("c1", "seatDiameter", "number", "52");
        String mine = place.calculator("c1").orElseThrow().values().toString();
        place.act("reset", "c1");
        assertEquals(start, place.calculator("c1").orElseThrow().values().toString());
        assertEquals("My values again", sheet.at("c1-reset"));
        place.act("reset", "c1");
        assertEquals(mine, place.calculator("c1").orElseThrow().values().toString());
        assertEquals("52", sheet.at("c1-seatDiameter"));
        assertEquals("Start values", sheet.at("c1-reset"));
        place.act("reset", "c1");
        place.edit("c1", "seatDiameter", "number", "40");
        assertEquals("Start values", sheet.at("c1-reset"));
        place.act("reset", "c1");
        assertEquals(start, place.calculator("c1").orElseThrow().values().toString());
    }

    @Test
    void theLastStepIsLeftOutUntilItIsFound() {
        assertTrue(sheet.html.contains("left out, yours to work"), sheet.html);
        assertTrue(sheet.html.contains("Now <span class=\"computed\">38\u00a0mm</span>."));
        assertFalse(sheet.html.contains("90.7"), "the result stands nowhere");
        place.edit("e1", "0", "answer", "90.7 N");
        place.act("check", "e1");
        assertTrue(sheet.at("e1-verdict-0").contains("Right."), sheet.at("e1-verdict-0"));
        assertTrue(sheet.at("e1-steps").contains("90.7"), "and now it does");
    }

    @Test
    void aWrongResultIsNamedAndTheStepStaysLeftOutUntilAskedFor() {
        // The pressure as gauge taken for absolute: pi/4 x 38² mm² x (80 - 98.5) kPa = -21 N.
        place.edit("e1", "0", "answer", "-20.98 N");
        place.act("check", "e1");
        assertTrue(sheet.at("e1-verdict-0").contains("Your number is what you would get if"));
        assertEquals("", sheet.at("e1-steps"));
        place.act("reveal", "e1");
        assertTrue(sheet.at("e1-steps").contains("90.7"));
        place.act("reveal", "e1");
        assertFalse(sheet.at("e1-steps").contains("90.7"));
    }

    @Test
    void theCellRunsOnlyAfterEverythingIsForetold() {
        assertTrue(sheet.html.contains("id=\"r1-go\" data-do=\"run\" data-part=\"r1\" disabled"));
        place.act("run", "r1");
        held.goOn();
        assertEquals("", sheet.at("r1-result"), "nothing was foretold");
        place.edit("r1", "0", "direction", "RISES");
        place.edit("r1", "0", "size", "LITTLE");
        assertEquals("", sheet.at("r1-run"));
        place.edit("r1", "1", "direction", "STAYS");
        assertTrue(sheet.at("r1-run").contains("id=\"r1-go\""), "what stays needs no size");
        assertFalse(sheet.at("r1-run").contains("disabled"));
        place.act("run", "r1");
        assertTrue(sheet.at("r1-run").contains("disabled"), "it runs");
        assertEquals("", sheet.at("r1-result"), "and the screen does not wait");
        held.goOn();
        assertTrue(sheet.at("r1-result").contains("As you said."), sheet.at("r1-result"));
        assertTrue(sheet.at("r1-result").contains("It moved: "), sheet.at("r1-result"));
        assertTrue(sheet.at("r1-result").contains("Because of the valve."));
    }

    @Test
    void whatWasSaidCannotBeChangedAfterTheRun() {
        foretellAndRun();
        place.edit("r1", "1", "direction", "FALLS");
        assertEquals(
                "Optional[STAYS]",
                place.parts().predicted("r1").orElseThrow().ways().get(1).toString());
    }

    @Test
    void anAnswerThatComesAfterTheLessonWasLeftIsDropped() {
        place.edit("r1", "0", "direction", "STAYS");
        place.edit("r1", "1", "direction", "STAYS");
        place.act("run", "r1");
        place.open(lesson);
        held.goOn();
        assertEquals("", sheet.at("r1-result"));
    }

    @Test
    void onePredictsAgainFromTheBeginning() {
        foretellAndRun();
        place.act("again", "r1");
        assertTrue(sheet.at("r1").contains("disabled"));
        assertFalse(sheet.at("r1").contains("Because of the valve."));
    }

    private void foretellAndRun() {
        place.edit("r1", "0", "direction", "STAYS");
        place.edit("r1", "1", "direction", "STAYS");
        place.act("run", "r1");
        held.goOn();
    }

    @Test
    void aDiagramMovesWithItsCalculator() {
        String before = sheet.html;
        assertTrue(before.contains("<svg"), before);
        place.edit("c1", "seatDiameter", "text", "60 mm");
        String moved = sheet.at("d1");
        // By hand, typical pressures of 181 and 101.325 kPa: pi/4 x 60² mm² x 79.7 kPa = 225 N.
        assertTrue(moved.contains("225\u00a0N") || moved.contains("225 N"), moved);
    }

    @Test
    void otherUnitsAskForOtherNumbers() {
        place.units(UnitSystem.US_SHOP);
        assertTrue(sheet.html.contains("for instance lbf"), sheet.html);
        place.edit("e1", "0", "answer", "20.4 lbf");
        place.act("check", "e1");
        assertTrue(sheet.at("e1-verdict-0").contains("Right."), sheet.at("e1-verdict-0"));
    }

    @Test
    void thePlainTextTellsAllThree() {
        String text = sheet.at("plain");
        assertTrue(text.contains("What is left out comes to 90.73"), text);
        assertTrue(text.contains("[Drawing: Who pushes on the gate."), text);
        assertTrue(text.contains("Write down for each which way it goes"), text);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.page.TestCellPage;
import hotside.trial.Trial;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TestCellPlaceTest {
    private static final String PART = TestCellPage.PART;

    private final PageNotes page = new PageNotes();
    private final List<Trial> opened = new ArrayList<>();
    private final Deque<Runnable> work = new ArrayDeque<>();
    private TestCellPlace place;

    @TempDir private Path folder;

    @BeforeEach
    void open() {
        place =
                new TestCellPlace(
                        page,
                        new Worker(Runnable::run, work::add),
                        () -> 1,
                        new Chosen(List.of(), Optional.of(folder)),
                        opened::add);
        place.open();
    }

    private void work() {
        while (!work.isEmpty()) {
            work.poll().run();
        }
    }

    private void type(Map<String, String> fields) {
        fields.forEach((name, value) -> place.edit(PART, name, "form", value));
    }

    private void predictAndPlan() {
        type(Map.of("rig", "eight-vented-bleed", "a", "pipe-76", "b", "pipe-102"));
        type(
                Map.of(
                        "way-power", "rises",
                        "way-boost", "rises",
                        "way-turbine-inlet", "falls",
                        "way-turbine-outlet", "falls"));
        type(Map.of("order", "ABBA", "warm-up", "1"));
    }

    private void act(String action) {
        place.act(action, PART, "");
    }

    @Test
    void nothingIsPulledBeforeItIsPredicted() {
        type(Map.of("order", "ABBA"));
        act("run");
        assertTrue(work.isEmpty());
        assertTrue(page.element(TestCellPage.STATUS).contains("Predict first"));
    }

    @Test
    void aPlanWithoutAnOrderSaysWhatIsMissing() {
        predictAndPlan();
        type(Map.of("order", ""));
        act("run");
        assertTrue(
                page.element(TestCellPage.STATUS).contains("no pull is made with A"),
                page.element(TestCellPage.STATUS));
    }

    @Test
    void thePullsAreMadeAndTheTruthIsToldOnlyAfterAConclusion() {
        predictAndPlan();
        act("run");
        work();
        String result = page.element(TestCellPage.RESULT);
        assertTrue(result.contains("pull-4-A.csv"), "the pulls are listed");
        assertTrue(result.contains("Your conclusion"));
        assertFalse(result.contains("true"), "nothing of the truth yet");

        act("judge");
        work();
        assertTrue(page.element(TestCellPage.JUDGED).contains("Choose what you tell the customer"));

        type(Map.of("gain", "4 to 14 kW", "part", "-1 to 6 kW", "claim", "cannot-tell"));
        act("judge");
        work();
        String judged = page.element(TestCellPage.JUDGED);
        assertTrue(judged.contains("What you expected"), judged);
        assertTrue(judged.contains("the truth is"), judged);
        assertTrue(judged.contains("belong to that boost and not to the part"), judged);
    }

    @Test
    void anIntervalThatIsNotUnderstoodIsAskedForAgainAndTheLastVerdictIsGone() {
        predictAndPlan();
        act("run");
        work();
        type(Map.of("gain", "some", "claim", "pays"));
        act("judge");
        work();
        assertTrue(page.element(TestCellPage.JUDGED).contains("two powers such as 3 to 9 kW"));
        assertTrue(place.state().judged().isEmpty());
    }

    @Test
    void aTrialCanBeStoppedAndNothingOfItIsKept() {
        predictAndPlan();
        act("run");
        assertTrue(place.state().running());
        assertTrue(page.element(TestCellPage.STATUS).contains("cell-stop"));
        act("stop");
        work();
        assertFalse(place.state().running());
        assertTrue(place.state().result().isEmpty());
        assertTrue(page.element(TestCellPage.STATUS).contains("stopped"));
    }

    @Test
    void theLogsAreSavedAndOpenedElsewhere() throws IOException {
        predictAndPlan();
        act("run");
        work();
        act("save");
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("pull-1-A.csv", "pull-2-B.csv", "pull-3-B.csv", "pull-4-A.csv"),
                    files.map(f -> f.getFileName().toString()).sorted().toList());
        }
        act("logs");
        assertEquals(1, opened.size());
        assertEquals(opened.get(0).logs().get(0), Files.readString(folder.resolve("pull-1-A.csv")));
    }

    @Test
    void unitsAndTextSizeDrawThePullsAnew() {
        predictAndPlan();
        act("run");
        work();
        place.units(UnitSystem.US_SHOP);
        assertTrue(page.shown.contains("hp"), "power in hp");
        place.textSize(200);
        assertTrue(page.shown.contains("0 0 340 "), "narrower charts");
    }

    @Test
    void aChartIsReadByArrowKeys() {
        predictAndPlan();
        act("run");
        work();
        place.nudge("cell-power", 1);
        assertTrue(page.element("cell-power-reading").contains("rev/min"));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.GivePage;
import hotside.classroom.HandPage;
import hotside.classroom.PaperPage;
import hotside.classroom.Regrader;
import hotside.classroom.SetFile;
import hotside.classroom.WorkPage;
import hotside.page.Maths;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.Variant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Both sides of the class, without a window: from composing a set to what to teach again. */
class ClassPlaceTest {
    private static final String PART = GivePage.PART;
    private static final ProblemBank BANK = ProblemBank.shipped();
    private static final Maths MATHS = new Maths();

    @TempDir private Path folder;
    private final PageNotes page = new PageNotes();
    private final Deque<Runnable> work = new ArrayDeque<>();
    private final Answering dialogs = new Answering();
    private ClassPlace place;

    /** Dialogs that are answered as the test says. */
    private static final class Answering implements Chooser {
        private Path file;
        private Path folder;

        @Override
        public List<Path> files(String title) {
            return Optional.ofNullable(file).stream().toList();
        }

        @Override
        public Optional<Path> folder(String title) {
            return Optional.ofNullable(folder);
        }

        @Override
        public Optional<Path> save(String title, String name) {
            return Optional.ofNullable(file);
        }
    }

    @BeforeEach
    void open() {
        place = place();
        place.open();
    }

    private ClassPlace place() {
        return new ClassPlace(
                page,
                new Worker(Runnable::run, work::add),
                dialogs,
                () -> BANK,
                MATHS,
                folder.resolve("data"),
                Clock.fixed(Instant.parse("2026-11-30T08:00:00Z"), ZoneOffset.UTC));
    }

    private void work() {
        while (!work.isEmpty()) {
            work.poll().run();
        }
    }

    private void type(String name, String value) {
        place.edit(PART, name, "form", value);
    }

    private void act(String action) {
        place.act(action, PART, "");
        work();
    }

    /** The sample is marked, says that it is invented, and can be had again. */
    @Test
    void theSampleClassIsMarkedAndSaysThatItIsInvented() {
        for (int i = 0; i < 2; i++) {
            act("sample");
            String set = page.elements.get(GivePage.SET);
            assertTrue(set.contains("Gates, week 3 (invented)"), set);
            String result = page.elements.get(GivePage.RESULT);
            assertTrue(result.contains("12 marked, 1 set aside."), result);
        }
    }

    private void card(int slot, String action) {
        place.act(action, WorkPage.CARD + slot, "");
        work();
    }

    private void answer(int slot, String text) {
        place.edit(WorkPage.CARD + slot, "0", "answer", text);
        work();
    }

    private SetFile composed(String feedback) {
        return composed(feedback, "push-on-the-valve", "push-of-the-signal");
    }

    private SetFile composed(String feedback, String... problems) {
        type("title", "Valves");
        type("feedback", feedback);
        type("due", "2026-12-01 18:00");
        for (String problem : problems) {
            type("problem", problem);
            act("add");
        }
        dialogs.file = folder.resolve("valves.hotset");
        act("save-set");
        return SetFile.read(dialogs.file);
    }

    private Variant variant(SetFile set, int slot) {
        return new Regrader(set.set(), BANK).variant("K7", slot);
    }

    private void begin() {
        act("side-work");
        type("learner", "K7");
        act("open-work");
    }

    private String status() {
        return page.element(GivePage.STATUS);
    }

    @Test
    void problemsAreChosenBySkillMovedAndTakenOut() {
        type("skill", "gate");
        type("count", "3");
        act("choose");
        String chosen = page.element(GivePage.CHOSEN);
        assertTrue(chosen.contains("3 problems, 3 points"), chosen);
        place.act("preview", PART, "0");
        assertTrue(page.element(GivePage.PREVIEW).contains("kPa"), page.element(GivePage.PREVIEW));
        String first = page.element(GivePage.PREVIEW);
        place.act("preview-other", PART, "0");
        assertNotEquals(first, page.element(GivePage.PREVIEW), "other numbers");
        act("estimate");
        assertEquals(
                chosen, page.element(GivePage.CHOSEN), "Enter in a field chooses nothing anew");
        place.act("take-out", PART, "1");
        assertTrue(page.element(GivePage.CHOSEN).contains("2 problems"));
        type("levels", "easy");
        act("choose");
        assertTrue(status().contains("easy"), status());
    }

    @Test
    void aSetGoesTheWholeWayRound() throws IOException {
        SetFile set = composed("now");
        assertEquals("Valves", set.set().title());
        assertTrue(page.element(GivePage.SET).contains(set.key().fingerprint()));
        begin();
        assertTrue(page.shown.contains(set.key().fingerprint()), "a new key is shown");
        Variant first = variant(set, 0);
        answer(0, Answers.told(first, 0, first.slips().get(0).value()));
        card(0, "check");
        assertTrue(page.element("set-0-verdict-0").contains("would get if"));
        answer(1, Answers.told(variant(set, 1), 0));
        act("hand-in");
        assertFalse(page.element(WorkPage.HAND_IN).contains("Not answered"));
        Files.createDirectories(folder.resolve("in"));
        dialogs.file = folder.resolve("in").resolve("K7.handin");
        act("hand-in-yes");
        assertTrue(page.element(WorkPage.HAND_IN).contains("receipt"));
        Files.writeString(folder.resolve("in").resolve("stray"), "?");

        act("side-give");
        dialogs.folder = folder.resolve("in");
        act("mark");
        String result = page.element(GivePage.RESULT);
        assertTrue(result.contains("1 marked, 1 set aside."), result);
        assertTrue(result.contains("<td>K7</td><td>0</td><td>1</td><td>1</td>"), result);
        assertTrue(result.contains(": so far 1 of 1 below three fifths of its points."), result);
        assertFalse(result.contains("%"), "of one learner no share is told: " + result);
        dialogs.folder = folder.resolve("tables");
        act("save-tables");
        act("save-reports");
        dialogs.file = folder.resolve("again.hotset");
        act("save-drill");
        assertEquals(
                List.of(
                        "answers.csv",
                        "marks.csv",
                        "points-by-hand.csv",
                        "problems.csv",
                        "report-K7.pdf",
                        "set-aside.csv"),
                names(folder.resolve("tables")));
        dialogs.file = folder.resolve("statements.json");
        act("save-xapi");
        assertTrue(Files.readString(dialogs.file).contains("\"name\":\"K7\""));
        dialogs.file = folder.resolve("package.zip");
        act("save-qti");
        assertTrue(status().contains("package.zip"), status());
        assertTrue(Files.size(dialogs.file) > 1000);
        assertTrue(SetFile.read(folder.resolve("again.hotset")).set().title().contains("Valves"));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void whatIsTypedIsThereAgainAfterACrash() {
        composed("now");
        begin();
        answer(0, "12");
        answer(0, "123 N");
        place = place();
        place.open();
        begin();
        assertTrue(page.shown.contains("value=\"123 N\""), page.shown);
        assertFalse(page.shown.contains("has not seen"), "the key is known by now");
    }

    @Test
    void beforeTheDueDateNothingIsToldButTheForm() {
        SetFile set = composed("after-due");
        begin();
        answer(0, Answers.told(variant(set, 0), 0));
        card(0, "check");
        assertEquals("", page.element("set-0-verdict-0"));
        assertTrue(page.element(WorkPage.told(0)).contains("after the due date"));
        answer(0, "133");
        card(0, "check");
        assertTrue(page.element("set-0-verdict-0").contains("In which unit?"));
    }

    @Test
    void hintsAreToldOneByOne() {
        composed("now");
        begin();
        card(0, "hint");
        assertTrue(page.element("set-0-hints").contains("Hint 1"));
        card(0, "hint");
        card(0, "hint");
        card(0, "hint");
        assertTrue(page.element(WorkPage.told(0)).contains("no more hints"));
    }

    @Test
    void papersAreWrittenForAListAndCanBeStopped() throws IOException {
        composed("now");
        act("papers");
        assertTrue(status().contains("open a list of learners first"), status());
        type("fresh", "2");
        dialogs.file = folder.resolve("class.csv");
        act("roster-fresh");
        assertTrue(page.element(GivePage.ROSTER).contains("2 learners, from class.csv"));
        dialogs.folder = folder.resolve("paper");
        act("papers");
        assertTrue(status().contains("2 papers and keys"), status());
        assertEquals(2, names(folder.resolve("paper").resolve("papers")).size());
        dialogs.folder = folder.resolve("other");
        place.act("papers", PART, "");
        place.act("stop", PART, "");
        work();
        assertTrue(status().contains("Stopped"), status());
        assertFalse(Files.exists(folder.resolve("other").resolve("codes.csv")));
    }

    @Test
    void aPaperIsTypedMarkedAndItsPointsSetByHand() throws IOException {
        SetFile set = composed("now");
        act("paper-open");
        assertTrue(page.element(PaperPage.TOLD).contains("first open the set"));
        Files.writeString(folder.resolve("class.csv"), "learner_id,display_name\r\nK7,Asta\r\n");
        dialogs.file = folder.resolve("class.csv");
        act("roster-open");
        act("mark-paper");
        assertTrue(status().contains("No answers to this set"), status());
        type(PaperPage.CODE, set.set().paperCode("K7"));
        act("paper-open");
        assertEquals("class-paper-0-0", page.focused);
        type("paper-0-0", "133");
        act("paper-next-0-0");
        assertTrue(page.element("class-paper-0-0-read").contains("earns no points"));
        type("paper-1-0", Answers.told(variant(set, 1), 0));
        assertTrue(page.element("class-paper-1-0-read").startsWith("Read as"));
        act("paper-next-1-0");
        assertEquals(PaperPage.CODE_FIELD, page.focused);
        assertTrue(page.element(PaperPage.LIST).contains("Asta (K7)"));

        act("mark-paper");
        String result = page.element(GivePage.RESULT);
        assertTrue(result.contains("<td>Asta (K7)</td><td>0</td><td>1</td><td>1</td>"), result);
        place.act("hand-pick", PART, "0-0-K7");
        assertEquals("class-hand-points", page.focused);
        type("hand-points", "1");
        act("hand-set");
        assertTrue(page.element(HandPage.TOLD).contains("Say why"));
        type("hand-reason", "the unit stands in the sketch");
        act("hand-set");
        result = page.element(GivePage.RESULT);
        assertTrue(result.contains("<td>Asta (K7)</td><td>1*</td><td>1</td><td>2</td>"), result);
        assertTrue(
                result.contains("* problem 1: 1 by hand in place of 0: the unit stands"), result);
        act("mark-paper");
        assertTrue(page.element(GivePage.RESULT).contains("<td>1*</td>"), "kept in a file");
        place.act("hand-pick", PART, "0-0-K7");
        act("hand-back");
        assertFalse(page.element(GivePage.RESULT).contains("<td>1*</td>"));
    }

    @Test
    void whatIsMissingIsSaid() {
        act("save-set");
        assertTrue(status().contains("A set holds 1 to 100 problems"), status());
        act("mark");
        assertTrue(status().contains("Open the set"), status());
        act("side-work");
        act("open-work");
        assertTrue(status().contains("Type the id"), status());
    }

    @Test
    void optionsAreTickedItemsMovedAndChartsMeasured() throws IOException {
        SetFile set =
                composed(
                        "now",
                        "an-order-for-a-fair-test",
                        "what-two-pulls-allow",
                        "flow-at-a-limit");
        begin();
        Variant order = variant(set, 0);
        String last = order.lettered().get(order.lettered().size() - 1).letter();
        card(0, "up:" + last);
        assertTrue(page.element("set-0-items").contains("set-0-" + last + "-up"));
        Variant several = variant(set, 1);
        for (String letter : Answers.key(several, 0).split(" ")) {
            place.edit(WorkPage.CARD + 1, letter, "answer", "true");
            work();
        }
        card(1, "check");
        assertTrue(page.element("set-1-verdict-0").contains("Right"));
        place.point(WorkPage.CARD + 2, 0.5);
        card(2, "take");
        assertFalse(page.element("set-2-answer-0").isEmpty());
        act("hand-in");
        assertFalse(page.element(WorkPage.HAND_IN).contains("Not answered"), "all is kept");
        place = place();
        place.open();
        dialogs.file = folder.resolve("valves.hotset");
        begin();
        assertTrue(page.shown.contains("value=\"" + page.element("set-2-answer-0") + "\""));
    }

    @Test
    void aSetOpenedOutsideIsTheInstructorsOrTheLearners() throws Exception {
        composed("now");
        Path set = dialogs.file;
        place = place();
        place.take(set);
        assertTrue(page.element(GivePage.SET).contains("Valves"));

        Files.delete(folder.resolve("data/keys/instructor.key"));
        place = place();
        place.take(set);
        assertTrue(page.element(GivePage.STATUS).contains("valves.hotset is ready"));
        type("learner", "K7");
        dialogs.file = null; // nobody is asked for the file again
        act("open-work");
        assertTrue(page.shown.contains("Valves"));
    }

    @Test
    void aFileOpenedOutsideThatIsNoSetIsRefusedInWords() throws Exception {
        Path odd = folder.resolve("odd.hotset");
        Files.writeString(odd, "not a set");
        place.take(odd);
        assertFalse(page.element(GivePage.STATUS).isEmpty());
        place.take(folder.resolve("K7.handin"));
        assertTrue(page.element(GivePage.STATUS).contains("together with its set"));
    }
}

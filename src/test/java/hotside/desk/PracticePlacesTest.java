// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFolder;
import hotside.learner.Attempt;
import hotside.learner.Syllabus;
import hotside.learner.Wish;
import hotside.page.Maths;
import hotside.page.ProblemState;
import hotside.problem.Answers;
import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Practice and My work, with a record on disk and without a window. */
class PracticePlacesTest {
    private static ProblemBank bank;
    private static Syllabus syllabus;
    private static final Maths MATHS = new Maths();

    @TempDir Path folder;

    private final Queue<Runnable> screen = new ConcurrentLinkedQueue<>();
    private final PageNotes page = new PageNotes();
    private final FakeChooser chooser = new FakeChooser();
    private final List<String> troubles = new ArrayList<>();
    private final List<Wish> wishes = new ArrayList<>();
    private final MovableClock clock = new MovableClock();
    private final AtomicLong seed = new AtomicLong();
    private int changes;
    private RecordKeeper keeper;
    private PracticePlace practice;
    private MyWorkPlace myWork;

    @BeforeAll
    static void read() {
        bank = ProblemBank.shipped();
        syllabus = Syllabus.of(SkillMap.shipped(), bank);
    }

    @BeforeEach
    void sitDown() {
        keeper = RecordKeeper.open(folder, screen::add, () -> syllabus);
        keeper.onTrouble(troubles::add);
        practice =
                new PracticePlace(
                        bank,
                        () -> syllabus,
                        MATHS,
                        page,
                        keeper,
                        problem -> {},
                        seed::incrementAndGet,
                        clock,
                        new Ticks(screen::add));
        myWork =
                new MyWorkPlace(
                        page,
                        keeper,
                        keeper,
                        new MyWorkReading(bank, ZoneId.of("UTC")),
                        chooser,
                        chooser,
                        new Doors(),
                        clock);
    }

    @AfterEach
    void leave() {
        keeper.close();
    }

    private final class Doors implements MyWorkPlace.Doors {
        @Override
        public void practise(Wish wish) {
            wishes.add(wish);
        }

        @Override
        public void again(Attempt attempt) {
            practice.again(attempt);
        }

        @Override
        public void changed() {
            changes++;
        }
    }

    /** Does all that is waiting to be done, on the record's thread and on the screen's. */
    private void settle() {
        keeper.settle();
        for (Runnable task = screen.poll(); task != null; task = screen.poll()) {
            task.run();
            keeper.settle();
        }
    }

    private void act(Place place, String action, String argument) {
        place.act(action, "practice", argument);
        settle();
    }

    private void open(Place place) {
        place.open();
        settle();
    }

    private ProblemState problem() {
        return practice.problem().orElseThrow();
    }

    private void answerRightly() {
        Variant variant = problem().variant();
        for (int ask = 0; ask < variant.answers().size(); ask++) {
            practice.edit("p1", String.valueOf(ask), "answer", Answers.told(variant, ask));
        }
        practice.act("check", "p1", "");
        settle();
    }

    private void answerWrongly() {
        Variant.Slipped slip = problem().variant().slips().get(0);
        practice.edit(
                "p1",
                String.valueOf(slip.ask()),
                "answer",
                Answers.told(problem().variant(), slip.ask(), slip.value()));
        practice.act("check", "p1", "");
        settle();
    }

    private List<Attempt> stored() {
        List<Attempt> all = new ArrayList<>();
        keeper.ask(tutor -> tutor.record().attempts(), all::addAll);
        settle();
        return all;
    }

    @Test
    void aNewSkillBeginsWithAnExampleAndAReason() {
        open(practice);
        assertTrue(page.shown.contains("Why this one:"), page.shown);
        assertTrue(page.shown.contains("An example with other numbers"));
        assertTrue(page.text.contains("is new, and nothing has to come before it."), page.text);
        assertTrue(page.text.contains(problem().variant().template().title()));

        answerRightly();
        assertEquals(Attempt.Way.WORKED, stored().get(0).way());
        assertEquals(null, stored().get(0).lesson());
        String after = page.elements.get("practice-after");
        assertTrue(after.contains("straw: begun"), after);
        assertEquals("do-next", page.focused);

        act(practice, "next", "");
        assertTrue(page.shown.contains("The last step is yours."), "then the example fades");
    }

    @Test
    void whoDoesWithoutTheExampleEarnsCredit() {
        open(practice);
        act(practice, "alone", "");
        assertFalse(page.shown.contains("An example with other numbers"));
        answerRightly();
        assertEquals(Attempt.Way.FULL, stored().get(0).way());
        assertTrue(page.elements.get("practice-after").contains("bronze: on its way"));
    }

    @Test
    void aWishIsFollowedAtOnce() {
        open(practice);
        practice.edit("practice", "wish", "choice", "SKILL:gate.valve-force");
        settle();
        assertEquals("gate.valve-force", problem().variant().template().skill());
        assertTrue(page.text.contains("You chose to practise The exhaust on the valve."));
        practice.edit("practice", "wish", "choice", "STRAND:reading");
        settle();
        assertTrue(problem().variant().template().skill().startsWith("reading."));
    }

    @Test
    void aProblemThatHasNoNumbersIsSaidToHaveNone() {
        String text =
                """
                ---
                id: never
                title: Never fits
                skill: gate.valve-force
                level: 1
                kind: number
                givens:
                  seat: 38 to 50 by 2 mm
                  p3: 100 kPa
                  p4: 100 kPa
                work:
                  push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: p4}
                ask:
                  - {of: push.force, say: the push}
                mistakes:
                  - {slip: radius-as-diameter, at: push.seatDiameter}
                ---
                {{seat}}, {{p3}}, {{p4}}?

                ## Hints

                1. A
                2. B
                3. C

                ## Why

                No.
                """;
        Path problems = folder.resolve("problems");
        writeProblem(problems, text);
        ProblemBank odd = ProblemBank.of(ContentFolder.read(problems));
        assertEquals(1, odd.all().size(), odd.findings().toString());
        Syllabus its = Syllabus.of(SkillMap.shipped(), odd);
        keeper.syllabus(() -> its);
        practice.content(odd, () -> its);
        open(practice);
        assertTrue(page.text.contains("“Never fits” cannot be given numbers"), page.text);
        act(practice, "test", "");
        assertEquals(List.of(), practice.test().problems());
    }

    private static void writeProblem(Path problems, String text) {
        try {
            Files.createDirectories(problems.resolve("gate"));
            Files.writeString(problems.resolve("gate/never.md"), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aChartIsReadByItsHairLineInPracticeToo() {
        String graph =
                bank.all().stream()
                        .filter(t -> t.kind() == Template.Kind.GRAPH)
                        .findFirst()
                        .orElseThrow()
                        .id();
        practice.open(new Wish(Wish.Kind.PROBLEM, graph));
        settle();
        assertFalse(page.shown.contains("An example with other numbers"), "none without its chart");
        practice.nudge("p1", 3);
        assertFalse(page.elements.get("p1-reading").isEmpty());
        practice.act("take", "p1", "");
        assertFalse(problem().typed().get(0).isEmpty());
    }

    @Test
    void anOptionIsChosenInPracticeToo() {
        String choice =
                bank.all().stream()
                        .filter(t -> t.kind() == Template.Kind.CHOICE)
                        .findFirst()
                        .orElseThrow()
                        .id();
        practice.open(new Wish(Wish.Kind.PROBLEM, choice));
        settle();
        practice.edit("p1", "0", "answer", "A");
        practice.act("check", "p1", "");
        settle();
        List<Attempt> all = stored();
        assertEquals("A", all.get(all.size() - 1).answer());
    }

    @Test
    void otherUnitsKeepTheProblem() {
        open(practice);
        String title = problem().variant().template().title();
        practice.units(UnitSystem.US_SHOP);
        assertEquals(UnitSystem.US_SHOP, problem().variant().system());
        assertEquals(title, problem().variant().template().title());
    }

    @Test
    void aTestGivesNoHelpAndTellsAtTheEnd() {
        open(practice);
        practice.edit("practice", "minutes", "choice", "30");
        act(practice, "test", "");
        assertEquals(8, practice.test().problems().size());
        assertTrue(page.shown.contains("30 minutes left."), page.shown);
        Variant first = practice.test().problems().get(0).variant();
        for (int ask = 0; ask < first.answers().size(); ask++) {
            practice.edit("t1", String.valueOf(ask), "answer", Answers.told(first, ask));
        }
        practice.act("check", "t1", "");
        practice.act("hint", "t1", "");
        settle();
        assertEquals(List.of(), stored(), "nothing is judged before the end");
        assertEquals(0, practice.test().problems().get(0).rung());

        clock.move(Duration.ofMinutes(29));
        practice.test().tick();
        assertEquals("One minute left.", page.elements.get("test-left"));
        clock.move(Duration.ofMinutes(2));
        practice.test().tick();
        settle();
        assertTrue(page.shown.contains("The time is up"), page.shown);
        assertEquals(first.answers().size(), stored().size());
        assertTrue(stored().stream().allMatch(a -> a.way() == Attempt.Way.TEST && a.correct()));
        int right = practice.test().results().stream().mapToInt(r -> r.right()).sum();
        assertEquals(first.answers().size(), right);
        act(practice, "next", "");
        assertTrue(page.shown.contains("Why this one:"));
    }

    @Test
    void aTestWithoutALimitWaits() {
        open(practice);
        act(practice, "test", "");
        clock.move(Duration.ofDays(1));
        practice.test().tick();
        settle();
        assertTrue(page.shown.contains("No time limit."));
        act(practice, "hand-in", "");
        assertTrue(page.shown.contains("The test is over"));
        assertFalse(page.shown.contains("The time is up"));
    }

    @Test
    void anEmptyRecordSaysWhatToDo() {
        open(myWork);
        assertTrue(page.shown.contains("Nothing is here yet. Work a problem in a lesson"));
        act(myWork, "practise", "");
        assertEquals(List.of(Wish.BEST), wishes);
    }

    @Test
    void myWorkShowsWhatWasDoneAndWhatWentWrong() {
        open(practice);
        act(practice, "alone", "");
        answerRightly();
        practice.open(new Wish(Wish.Kind.SKILL, "fair-test.spread"));
        settle();
        answerWrongly();
        open(myWork);
        var view = myWork.view().orElseThrow();
        assertEquals(view.answers(), view.history().size());
        assertFalse(view.mistakes().isEmpty());
        assertFalse(view.mistakes().get(0).evidence().isEmpty());
        assertTrue(view.skills().stream().anyMatch(s -> s.level() == 2));
        assertTrue(page.shown.contains("bronze: on its way"));
        act(myWork, "drill", view.mistakes().get(0).slip());
        assertEquals(Wish.Kind.MISTAKE, wishes.get(0).kind());
    }

    @Test
    void anEarlierProblemComesAgainWithItsNumbersAndProvesNothing() {
        open(practice);
        act(practice, "alone", "");
        Variant before = problem().variant();
        answerRightly();
        act(practice, "next", "");
        open(myWork);
        var history = myWork.view().orElseThrow().history();
        long oldest = history.get(history.size() - 1).number();
        act(myWork, "again", String.valueOf(oldest));
        assertEquals(before.shown(), problem().variant().shown());
        assertTrue(page.text.contains("counts for nothing else"));
        answerRightly();
        List<Attempt> all = stored();
        assertEquals(Attempt.Way.AGAIN, all.get(all.size() - 1).way());
    }

    @Test
    void workIsExportedAndComesBackOnAnotherMachine() throws IOException {
        open(practice);
        answerRightly();
        open(myWork);
        String learner = myWork.view().orElseThrow().learner();
        for (String ending : List.of("csv", "html", "json")) {
            chooser.file = Optional.of(folder.resolve("out." + ending));
            String action =
                    ending.equals("csv")
                            ? "save-csv"
                            : ending.equals("html") ? "save-report" : "save-all";
            act(myWork, action, "");
            assertEquals("hotside-" + learner + "." + ending, chooser.suggested);
            assertTrue(page.shown.contains("Written: "), page.shown);
        }
        chooser.file = Optional.of(folder.resolve("out.xapi.json"));
        act(myWork, "save-xapi", "");
        assertEquals("hotside-" + learner + ".xapi.json", chooser.suggested);
        assertTrue(Files.readString(folder.resolve("out.xapi.json")).contains("verbs/answered"));
        assertTrue(Files.readString(folder.resolve("out.csv")).startsWith("time,problem,seed"));
        String report = Files.readString(folder.resolve("out.html"));
        assertTrue(report.contains("Report on the work of learner " + learner));
        assertFalse(report.contains("<button"), "paper has no buttons");

        chooser.yes = true;
        act(myWork, "delete", "");
        assertNotEquals(learner, myWork.view().orElseThrow().learner());
        chooser.file = Optional.of(folder.resolve("out.json"));
        act(myWork, "take", "");
        assertEquals(learner, myWork.view().orElseThrow().learner());
        assertTrue(myWork.view().orElseThrow().answers() > 0);
        assertEquals(2, changes);
        assertEquals(List.of(), troubles);
    }

    @Test
    void aFileThatIsNoRecordIsRefusedInWordsAndChangesNothing() throws IOException {
        open(myWork);
        String before = page.shown;
        Path rubbish = folder.resolve("rubbish.json");
        Files.writeString(rubbish, "{\"format\": 7}");
        chooser.file = Optional.of(rubbish);
        act(myWork, "take", "");
        assertEquals(1, troubles.size());
        assertTrue(troubles.get(0).contains("is not a record that can be read"), troubles.get(0));
        assertEquals(before, page.shown);
    }

    @Test
    void nothingIsDeletedWithoutAYes() {
        open(practice);
        answerRightly();
        open(myWork);
        long answers = myWork.view().orElseThrow().answers();
        act(myWork, "delete", "");
        assertTrue(chooser.asked.contains("This cannot be undone."), chooser.asked);
        assertEquals(answers, stored().size());
        chooser.yes = true;
        act(myWork, "delete", "");
        assertEquals(List.of(), stored());
        assertTrue(page.shown.contains("The record is deleted."));
    }

    /** A shorter time to keep answers for deletes the older ones, so it asks first. */
    @Test
    void oldAnswersAreNotForgottenWithoutAYes() {
        for (int daysAgo : List.of(60, 2, 1, 0)) {
            Attempt then =
                    new Attempt(
                            "push-on-the-valve",
                            "7",
                            "1",
                            "f",
                            "si",
                            0,
                            "107 N",
                            "right",
                            "",
                            true,
                            0,
                            60,
                            Instant.now(clock).minus(Duration.ofDays(daysAgo)),
                            "");
            keeper.ask(tutor -> tutor.record().add(then), number -> {});
            settle();
        }
        open(myWork);
        keepFor("90");
        assertEquals("", chooser.asked, "nothing is that old");
        keepFor("30");
        assertTrue(chooser.asked.startsWith("Answers older than 30 days: 1."), chooser.asked);
        assertEquals(4, stored().size());
        assertEquals(90, myWork.view().orElseThrow().retention());
        chooser.yes = true;
        keepFor("30");
        assertEquals(3, stored().size());
        assertEquals(30, myWork.view().orElseThrow().retention());
    }

    private void keepFor(String days) {
        myWork.edit("mywork", "retention", "text", days);
        act(myWork, "set-retention", "");
    }

    @Test
    void learnersTakeTurns() {
        open(practice);
        answerRightly();
        open(myWork);
        String first = myWork.view().orElseThrow().learner();
        myWork.edit("mywork", "nickname", "text", " Blue\u202E locker ");
        act(myWork, "set-nickname", "");
        assertEquals("Blue locker", myWork.view().orElseThrow().nickname());
        act(myWork, "another", "");
        assertNotEquals(first, myWork.view().orElseThrow().learner());
        assertEquals(0, myWork.view().orElseThrow().answers());
        assertTrue(page.shown.contains("Blue locker"), "the other one is in the list");
        myWork.edit("mywork", "learner", "choice", first);
        settle();
        assertEquals(first, myWork.view().orElseThrow().learner());
        assertEquals(2, changes);
        keeper.close();
        keeper = RecordKeeper.open(folder, screen::add, () -> syllabus);
        assertEquals(1, keeper.solved().values().stream().filter(right -> right).count());
    }

    @Test
    void whatIsTypedWronglyIsSaidBesideTheField() {
        open(myWork);
        myWork.edit("mywork", "exam", "text", "next May");
        act(myWork, "set-exam", "");
        assertTrue(page.elements.get("mywork-exam-fault").contains("such as 2027-01-31"));
        myWork.edit("mywork", "retention", "text", "7");
        act(myWork, "set-retention", "");
        assertTrue(page.elements.get("mywork-retention-fault").contains("from 30 to 9999"));
        myWork.edit("mywork", "exam", "text", "2027-05-01");
        act(myWork, "set-exam", "");
        assertEquals("2027-05-01", myWork.view().orElseThrow().exam());
    }

    @Test
    void whatCouldNotBeStoredIsStoredLater() throws Exception {
        open(practice);
        act(practice, "alone", "");
        String url = "jdbc:sqlite:" + folder.resolve("record.sqlite");
        try (var other = DriverManager.getConnection(url);
                var sql = other.createStatement()) {
            sql.execute(
                    "CREATE TRIGGER full BEFORE INSERT ON attempt"
                            + " BEGIN SELECT raise(ABORT, 'no room'); END");
            answerRightly();
            assertFalse(troubles.isEmpty());
            assertEquals(0, stored().size());
            sql.execute("DROP TRIGGER full");
        }
        int first = problem().variant().answers().size();
        practice.act("another", "p1", "");
        answerRightly();
        assertEquals(first + problem().variant().answers().size(), stored().size());
    }

    /** A clock that stands still until it is moved. */
    private static final class MovableClock extends Clock {
        private Instant now = Instant.now();

        void move(Duration by) {
            now = now.plus(by);
        }

        @Override
        public ZoneId getZone() {
            return ZoneId.of("UTC");
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(now, zone);
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}

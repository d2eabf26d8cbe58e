// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.ProblemSet.Feedback;
import hotside.classroom.ProblemSet.Numbers;
import hotside.classroom.Roster.Learner;
import hotside.problem.Answers;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkingTest {
    private static final Roster ROSTER =
            Roster.of(
                    List.of(
                            new Learner("K1", "One", ""),
                            new Learner("K2", "Two", ""),
                            new Learner("K3", "Three", "")));

    @TempDir private Path drafts;
    @TempDir private Path folder;
    private final SigningKey key = SigningKey.fresh();
    private SetFile file;
    private Regrader regrader;

    @BeforeEach
    void handOut() {
        file = Classes.file(Classes.set(Numbers.OWN));
        regrader = new Regrader(file.set(), Classes.BANK);
    }

    private Marking.Result mark() throws IOException {
        return new Marking(file, regrader, Optional.of(ROSTER), false)
                .mark(Marking.files(folder), Watch.NONE);
    }

    private Map<String, Reason> aside() throws IOException {
        Map<String, Reason> reasons = new TreeMap<>();
        mark().aside().forEach(a -> reasons.put(a.source(), a.reason()));
        return reasons;
    }

    private Draft worked(String learner) throws IOException {
        return Classes.worked(drafts, file, learner);
    }

    private MarkedHandIn only(Draft draft) throws IOException {
        draft.handIn(folder.resolve("a"), key, Classes.END);
        Marking.Result result = mark();
        assertEquals(List.of(), result.aside());
        return result.marked().get(0);
    }

    @Test
    void everythingRightEarnsEveryPoint() throws IOException {
        Draft draft = worked("K1");
        String receipt = draft.handIn(folder.resolve("a"), key, Classes.END);
        MarkedHandIn marked = mark().marked().get(0);
        assertEquals(6, marked.reached());
        assertEquals("K1", marked.learner());
        assertEquals(receipt, marked.receipt());
        assertEquals(key.open().fingerprint(), marked.fingerprint());
        assertEquals(List.of(), marked.remarks());
    }

    @Test
    void theLastAnswerCounts() throws IOException {
        Draft draft = worked("K1");
        draft.answer(0, List.of("1 N"), Classes.START.plus(Duration.ofMinutes(30)));
        assertEquals(4, only(draft).reached());
    }

    @Test
    void aMistakeIsNamed() throws IOException {
        Draft draft = worked("K1");
        Variant variant = regrader.variant("K1", 0);
        draft.answer(0, Classes.slipped(variant, 0), Classes.START.plus(Duration.ofMinutes(30)));
        MarkedItem item = only(draft).items().get(0);
        assertEquals(0, item.credit());
        assertEquals(
                Optional.of(variant.slips().get(0).mistake().id()),
                item.verdicts().get(0).orElseThrow().mistake());
    }

    /** The pipe's flow halved, and the power that follows from half the flow. */
    @Test
    void whatFollowsRightlyFromAWrongStepEarnsItsShare() throws IOException {
        Variant variant = regrader.variant("K1", 1);
        double flow = variant.answers().get(0).value() / 2;
        double power = variant.answers().get(1).value() / 2;
        Draft draft = worked("K1");
        draft.answer(
                1,
                List.of(Answers.told(variant, 0, flow), Answers.told(variant, 1, power)),
                Classes.START.plus(Duration.ofMinutes(30)));
        MarkedItem item = only(draft).items().get(1);
        assertEquals(Verdict.Kind.CARRIED, item.verdicts().get(1).orElseThrow().kind());
        assertEquals(1, item.reached());
    }

    @Test
    void blankIsNoAnswerAndAMissingUnitIsForAPersonToLookAt() throws IOException {
        Draft draft =
                Draft.begin(drafts.resolve("d"), file, "K1", DecimalHabit.POINT, Classes.START);
        draft.answer(0, List.of("133"), Classes.START);
        draft.answer(1, List.of(" ", ""), Classes.START);
        MarkedHandIn marked = only(draft);
        assertTrue(marked.items().get(0).unsettled());
        assertTrue(marked.items().get(1).blank());
        assertTrue(marked.items().get(2).blank());
        assertEquals(0, marked.reached());
    }

    @Test
    void answersAfterTheLastTryDoNotCount() throws IOException {
        file = Classes.file(Classes.set(Classes.rules(Numbers.OWN, 2, Feedback.NOW)));
        regrader = new Regrader(file.set(), Classes.BANK);
        Draft draft =
                Draft.begin(drafts.resolve("d"), file, "K1", DecimalHabit.POINT, Classes.START);
        draft.answer(0, List.of("no number"), Classes.START);
        draft.answer(0, List.of("1 N"), Classes.START);
        draft.answer(0, List.of("2 N"), Classes.START);
        draft.answer(0, Classes.right(regrader.variant("K1", 0)), Classes.START);
        MarkedHandIn marked = only(draft);
        assertEquals(List.of("2 N"), marked.items().get(0).answers());
        assertEquals(2, marked.items().get(0).tries());
        assertEquals(List.of("problem 1: answers after the last try, left out"), marked.remarks());
    }

    @Test
    void everyBadFileIsNamedWithItsReasonAndTheGoodOnesMarked() throws IOException {
        worked("K1").handIn(folder.resolve("good"), key, Classes.END);
        byte[] good = Files.readAllBytes(folder.resolve("good"));
        String text = new String(good, StandardCharsets.UTF_8);
        Files.write(folder.resolve("a copy"), good);
        Draft two = worked("K2");
        two.handIn(folder.resolve("late"), key, Classes.DUE.plusSeconds(1));
        Files.copy(drafts.resolve("K2.work"), folder.resolve("never handed in"));
        worked("K9").handIn(folder.resolve("not in the roster"), key, Classes.END);
        Files.writeString(folder.resolve("altered"), text.replace("\"slot\":0", "\"slot\":1"));
        Files.writeString(folder.resolve("half"), text.substring(0, text.length() * 2 / 3));
        Files.writeString(
                folder.resolve("newer"), text.replaceFirst("\"version\":1", "\"version\":7"));
        Files.writeString(
                folder.resolve("other generator"),
                resealed(text.replaceFirst("\"generator\":1", "\"generator\":2")));
        Files.writeString(folder.resolve("picture.png"), "\u0089PNG");
        Files.writeString(folder.resolve("empty"), "");
        Files.write(folder.resolve("the set"), SetFile.bytes(file.set(), key));
        Files.write(folder.resolve("huge"), new byte[SealedLines.LARGEST + 1]);
        Files.createSymbolicLink(folder.resolve("link"), folder.resolve("good"));
        Files.createDirectory(folder.resolve("folder"));
        Marking.Result result = mark();
        assertEquals(List.of("K1"), result.marked().stream().map(MarkedHandIn::learner).toList());
        assertEquals("a copy", result.marked().get(0).source());
        Map<String, Reason> expected = new TreeMap<>();
        expected.put("good", Reason.DUPLICATE);
        expected.put("late", Reason.LATE);
        expected.put("never handed in", Reason.TRUNCATED);
        expected.put("not in the roster", Reason.FOREIGN);
        expected.put("altered", Reason.ALTERED);
        expected.put("half", Reason.TRUNCATED);
        expected.put("newer", Reason.UNKNOWN_VERSION);
        expected.put("other generator", Reason.UNKNOWN_VERSION);
        expected.put("picture.png", Reason.FOREIGN);
        expected.put("empty", Reason.FOREIGN);
        expected.put("the set", Reason.FOREIGN);
        expected.put("huge", Reason.TOO_LARGE);
        expected.put("link", Reason.UNREADABLE);
        assertEquals(expected, aside());
    }

    /** The learner owns the key, so a changed file can be sealed anew; the rules still hold. */
    private String resealed(String text) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        lines.remove(lines.size() - 1);
        return new String(SealedLines.seal(lines, key), StandardCharsets.UTF_8);
    }

    @Test
    void aLineThatDoesNotFollowOnTheOneBeforeIsAnAlteration() throws IOException {
        worked("K1").handIn(folder.resolve("good"), key, Classes.END);
        String text = Files.readString(folder.resolve("good"));
        String doctored = text.replace("\"slot\":0", "\"slot\":2");
        Files.delete(folder.resolve("good"));
        Files.writeString(folder.resolve("doctored"), resealed(doctored));
        assertEquals(Map.of("doctored", Reason.ALTERED), aside());
    }

    @Test
    void ofSeveralHandInsTheLastCounts() throws IOException {
        Draft draft = worked("K1");
        draft.handIn(folder.resolve("a"), key, Classes.END);
        draft.answer(0, List.of("1 N"), Classes.END.plusSeconds(10));
        draft.handIn(folder.resolve("b"), key, Classes.END.plusSeconds(20));
        Marking.Result result = mark();
        assertEquals("b", result.marked().get(0).source());
        assertEquals(Map.of("a", Reason.DUPLICATE), aside());
    }

    @Test
    void aNameThatTwoKeysClaimIsNotMarked() throws IOException {
        Draft draft = worked("K1");
        draft.handIn(folder.resolve("a"), key, Classes.END);
        draft.handIn(folder.resolve("b"), SigningKey.fresh(), Classes.END.plusSeconds(20));
        assertEquals(List.of(), mark().marked());
        assertEquals(Map.of("a", Reason.DUPLICATE, "b", Reason.DUPLICATE), aside());
    }

    @Test
    void lateOnesCountIfTheInstructorSaysSo() throws IOException {
        worked("K1").handIn(folder.resolve("a"), key, Classes.DUE.plusSeconds(1));
        MarkedHandIn marked =
                new Marking(file, regrader, Optional.empty(), true)
                        .mark(Marking.files(folder), Watch.NONE)
                        .marked()
                        .get(0);
        assertEquals(List.of("late, finished 2026-12-01T12:00:01Z"), marked.remarks());
    }

    @Test
    void workOnAnotherEditionOrAnotherFileOfTheSameNameIsNotMixedIn() throws IOException {
        SetFile first = file;
        ProblemSet set = first.set();
        Classes.worked(drafts, first, "K1").handIn(folder.resolve("a"), key, Classes.END);
        file = Classes.file(new ProblemSet(set.id(), 2, set.title(), 1, set.rules(), set.items()));
        assertEquals(Map.of("a", Reason.UNKNOWN_VERSION), aside());
        file = Classes.file(new ProblemSet(set.id(), 1, "Retitled", 1, set.rules(), set.items()));
        assertEquals(Map.of("a", Reason.FOREIGN), aside());
    }

    @Test
    void aClockThatGoesBackIsRemarkedAndNothingMore() throws IOException {
        Draft draft = worked("K1");
        draft.answer(
                0,
                Classes.right(regrader.variant("K1", 0)),
                Classes.START.minus(Duration.ofDays(1)));
        MarkedHandIn marked = only(draft);
        assertEquals(List.of("the learner's clock went back"), marked.remarks());
        assertEquals(6, marked.reached());
    }

    @Test
    void aSetOfOtherProblemsThanThisProgramHasIsRefusedByName() {
        ProblemSet set = file.set();
        ProblemSet other =
                new ProblemSet(
                        set.id(),
                        1,
                        set.title(),
                        1,
                        set.rules(),
                        List.of(
                                new ProblemSet.Item("no-such", "0", 1),
                                new ProblemSet.Item("push-on-the-valve", "0", 1)));
        RefusedException e =
                assertThrows(RefusedException.class, () -> new Regrader(other, Classes.BANK));
        assertTrue(e.getMessage().contains("not here: no-such."), e.getMessage());
        assertTrue(
                e.getMessage().contains("reads otherwise here: push-on-the-valve."),
                e.getMessage());
    }

    @Test
    void aWatchStopsTheWork() throws IOException {
        worked("K1").handIn(folder.resolve("a"), key, Classes.END);
        Marking marking = new Marking(file, regrader, Optional.empty(), true);
        List<Path> files = Marking.files(folder);
        assertThrows(StoppedException.class, () -> marking.mark(files, (done, all) -> false));
    }

    @Test
    void answersFromPaperAreMarkedTheSameWay() {
        Map<Integer, List<String>> answers =
                Map.of(0, Classes.right(regrader.variant("K1", 0)), 2, List.of("1 mm"));
        MarkedHandIn marked =
                regrader.mark("paper", "K1", answers, DecimalHabit.POINT, Classes.END);
        assertEquals(2, marked.reached());
        assertTrue(marked.items().get(1).blank());
    }
}

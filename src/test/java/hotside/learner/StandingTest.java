// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StandingTest {
    private final SmallSchool school = new SmallSchool();

    @Test
    void masteryWantsThreeRightAnswersFromTwoProblemsOnTwoDays() {
        school.right("a.one-p").right("a.one-q");
        assertTrue(school.log("a.one").known(), "two lucky numbers look like knowledge");
        assertEquals(Temper.VIOLET, temper("a.one"));
        school.right("a.one-p").right("a.one-q");
        assertEquals(Temper.VIOLET, temper("a.one"), "many on one day prove no more");
        school.on(1).right("a.one-p");
        assertEquals(Temper.BLUE, temper("a.one"));
    }

    @Test
    void oneProblemAloneDoesNotProveASkillThatHasTwo() {
        for (int day = 0; day < 5; day++) {
            school.on(day).right("a.one-p");
        }
        assertEquals(Temper.VIOLET, temper("a.one"));
        assertEquals(
                1,
                school.standing()
                        .skill("a.one", Optional.empty(), school.today())
                        .problemsMissing());
        school.right("a.one-q");
        assertEquals(Temper.BLUE, temper("a.one"));
    }

    @Test
    void theSameProblemTwiceInARowOnOneDayIsOnePieceOfEvidence() {
        school.right("a.one-p");
        double once = school.log("a.one").belief;
        school.right("a.one-p");
        assertEquals(once, school.log("a.one").belief);
        assertEquals(1, school.log("a.one").proofs);
        assertEquals(2, school.log("a.one").right);
    }

    @Test
    void colourFollowsBelief() {
        assertEquals(Temper.COLD, temper("a.one"));
        school.wrong("a.one-p");
        assertEquals(Temper.STRAW, temper("a.one"));
        school.right("a.one-q");
        assertEquals(Temper.BRONZE, temper("a.one"));
    }

    @Test
    void aMistakeThatBetraysAnotherSkillIsBlamedOnThatOne() {
        school.wrong("a.three-p", "gauge-as-absolute@p");
        assertEquals(1, school.log("a.one").wrong);
        assertEquals(0, school.log("a.three").tries);
        school.wrong("a.three-p", "left-out@q");
        assertEquals(1, school.log("a.three").wrong);
        assertEquals(1, school.log("a.one").wrong);
    }

    @Test
    void onlyTheFirstAnswerToTheSameNumbersCounts() {
        school.take("a.one-p", 7, 0, false, null, 0, Attempt.Way.FULL);
        double belief = school.log("a.one").belief;
        school.take("a.one-p", 7, 0, true, null, 0, Attempt.Way.FULL);
        assertEquals(belief, school.log("a.one").belief);
        assertEquals(1, school.log("a.one").tries);
        assertEquals(0, school.log("a.one").right);
    }

    @Test
    void aProblemOfSeveralQuestionsCountsOnceAndOnlyWhenAllAreRight() {
        school.take("b.steps", 7, 0, true, null, 0, Attempt.Way.FULL)
                .take("b.steps", 7, 2, true, null, 0, Attempt.Way.FULL);
        assertEquals(0, school.log("b.four").tries);
        school.take("b.steps", 7, 1, true, null, 0, Attempt.Way.FULL);
        assertEquals(1, school.log("b.four").right);

        school.take("b.steps", 8, 0, true, null, 0, Attempt.Way.FULL)
                .take("b.steps", 8, 1, false, null, 0, Attempt.Way.FULL)
                .take("b.steps", 8, 2, false, null, 0, Attempt.Way.FULL);
        assertEquals(
                1, school.log("b.four").wrong, "the second wrong answer follows from the first");
    }

    @Test
    void helpEarnsNoCredit() {
        school.right("a.one-p", 1, Attempt.Way.FULL);
        assertEquals(Tracing.START, school.log("a.one").belief, "one hint: neither way");
        school.right("a.one-p", 2, Attempt.Way.FULL);
        assertTrue(school.log("a.one").belief < Tracing.START, "more help counts against it");
        school.right("a.one-p", 0, Attempt.Way.WORKED);
        school.right("a.one-q", 0, Attempt.Way.FADED);
        assertEquals(0, school.log("a.one").proofs);
        assertEquals(4, school.log("a.one").helped);
        assertEquals(Temper.STRAW, temper("a.one"));
    }

    @Test
    void aHintReadForOneQuestionTaintsTheWholeProblem() {
        school.take("b.steps", 7, 0, true, null, 2, Attempt.Way.FULL)
                .take("b.steps", 7, 1, true, null, 0, Attempt.Way.FULL)
                .take("b.steps", 7, 2, true, null, 0, Attempt.Way.FULL);
        assertEquals(0, school.log("b.four").right);
        assertEquals(1, school.log("b.four").helped);
    }

    @Test
    void helpFadesWithRightAnswersAndComesBackAfterTwoWrongOnes() {
        assertEquals(Stage.WORKED, school.log("a.one").stage);
        school.right("a.one-p", 0, Attempt.Way.WORKED);
        assertEquals(Stage.FADED, school.log("a.one").stage);
        school.right("a.one-q", 1, Attempt.Way.FADED);
        assertEquals(Stage.FADED, school.log("a.one").stage, "with a hint it stays");
        school.right("a.one-q", 0, Attempt.Way.FADED);
        assertEquals(Stage.FULL, school.log("a.one").stage);
        school.wrong("a.one-p");
        assertEquals(Stage.FULL, school.log("a.one").stage);
        school.wrong("a.one-q");
        assertEquals(Stage.FADED, school.log("a.one").stage);
    }

    @Test
    void whoAnswersWithoutHelpNeedsNoExamples() {
        school.right("a.one-p");
        assertEquals(Stage.FULL, school.log("a.one").stage);
    }

    @Test
    void tenTriesWithoutMasteryLeadBackToAFullExampleAndAFlag() {
        for (int i = 0; i < 9; i++) {
            school.wrong(i % 2 == 0 ? "a.one-p" : "a.one-q");
        }
        assertFalse(school.log("a.one").flagged);
        school.wrong("a.one-p");
        assertTrue(school.log("a.one").flagged);
        assertEquals(Stage.WORKED, school.log("a.one").stage);
        school.right("a.one-p").right("a.one-q").on(1).right("a.one-p");
        assertEquals(Temper.BLUE, temper("a.one"));
        assertFalse(school.log("a.one").flagged);
    }

    @Test
    void tenGoodTriesOnOneDayAreNoReasonForAFlag() {
        for (int i = 0; i < 12; i++) {
            school.right(i % 2 == 0 ? "a.one-p" : "a.one-q");
        }
        assertFalse(school.log("a.one").flagged);
    }

    @Test
    void reviewsComeAfterOneThreeSevenSixteenAndThirtyFiveDays() {
        master();
        int day = 1;
        for (int gap : new int[] {1, 3, 7, 16, 35, 35}) {
            assertEquals(SmallSchool.FIRST_DAY.plusDays(day + gap), due());
            school.on(day + gap - 1);
            if (gap > 1) {
                school.right("a.one-p");
                assertEquals(
                        SmallSchool.FIRST_DAY.plusDays(day + gap), due(), "early changes nothing");
            }
            day += gap;
            school.on(day).right("a.one-q");
        }
    }

    @Test
    void aMissedReviewStartsOver() {
        master();
        school.on(2).right("a.one-p").on(5).right("a.one-q").on(12).wrong("a.one-p");
        assertEquals(SmallSchool.FIRST_DAY.plusDays(13), due());
        assertEquals(Temper.VIOLET, temper("a.one"), "shaken, not lost");
        school.on(13).right("a.one-q");
        assertEquals(Temper.BLUE, temper("a.one"));
        assertEquals(SmallSchool.FIRST_DAY.plusDays(14), due());
    }

    @Test
    void aReviewPassedAfterAWeekIsRemembered() {
        master();
        school.on(2).right("a.one-p").on(5).right("a.one-q");
        assertFalse(school.log("a.one").week);
        school.on(12).right("a.one-p");
        assertTrue(school.log("a.one").week);
    }

    @Test
    void beforeAnExamEveryRightAnswerCountsAsALook() {
        master();
        Optional<LocalDate> exam = Optional.of(SmallSchool.FIRST_DAY.plusDays(21));
        // Twenty days are left: 17.5 % of them are 3.5.
        assertEquals(
                SmallSchool.FIRST_DAY.plusDays(1 + 4),
                school.log("a.one").due(exam, school.today()).orElseThrow());
        school.on(5).right("a.one-p");
        assertEquals(
                SmallSchool.FIRST_DAY.plusDays(5 + 3),
                school.log("a.one").due(exam, school.today()).orElseThrow());
    }

    @Test
    void aMistakeCountsAsGoneAfterTwoProblemsThatInviteItWentWell() {
        school.wrong("a.one-p", "left-out@x").wrong("a.one-q", "left-out@y");
        assertEquals(
                List.of(new SlipStanding("left-out", 2, 2, "a.one-q", SmallSchool.FIRST_DAY)),
                school.standing().slips());
        school.right("a.one-p").right("a.one-q");
        assertEquals(0, school.standing().slips().get(0).open());
        assertEquals(2, school.standing().slips().get(0).total());
    }

    @Test
    void theSameNumbersOnceMoreProveNothing() {
        school.right("a.one-p", 0, Attempt.Way.AGAIN);
        assertEquals(0, school.log("a.one").tries);
        assertEquals(
                Map.of(SmallSchool.FIRST_DAY, new DayStanding(1, 1)),
                school.standing().calendar(),
                "but it is work");
    }

    @Test
    void aProblemThatIsGoneFromTheProgramIsNoEvidence() {
        school.wrong("of-yesterday");
        assertTrue(school.standing().state().skills.isEmpty());
    }

    @Test
    void aSnapshotGoesOnLikeTheWholeStory() {
        SplittableRandom random = new SplittableRandom(20261125);
        Standing whole = new Standing(SmallSchool.SYLLABUS, SmallSchool.ZONE);
        Standing halves = new Standing(SmallSchool.SYLLABUS, SmallSchool.ZONE);
        List<Exercise> all = SmallSchool.SYLLABUS.all();
        for (int i = 1; i <= 400; i++) {
            Exercise e = all.get(random.nextInt(all.size()));
            boolean right = random.nextInt(3) > 0;
            school.on(i / 9);
            Attempt a =
                    school.attempt(
                            e.id(),
                            random.nextInt(5),
                            random.nextInt(e.asks()),
                            right,
                            right || random.nextBoolean() ? null : "left-out@x",
                            random.nextInt(8) / 6,
                            Attempt.Way.values()[random.nextInt(5)]);
            whole.take(i, a);
            halves.take(i, a);
            if (i % 7 == 0) {
                Standing.State state = Snapshot.of("rules", halves).state("rules").orElseThrow();
                halves = new Standing(SmallSchool.SYLLABUS, SmallSchool.ZONE, state);
            }
        }
        assertEquals(Snapshot.of("rules", whole), Snapshot.of("rules", halves));
    }

    @Test
    void aSnapshotOfOtherRulesOrDamagedIsNotUsed() {
        school.right("a.one-p");
        Snapshot snapshot = Snapshot.of("rules", school.standing());
        assertEquals(Optional.empty(), snapshot.state("other rules"));
        assertEquals(Optional.empty(), new Snapshot("rules", 1, "{\"upTo\":").state("rules"));
        assertEquals(Optional.empty(), new Snapshot("rules", 2, snapshot.text()).state("rules"));
    }

    private void master() {
        school.right("a.one-p").right("a.one-q").on(1).right("a.one-p");
        assertEquals(Temper.BLUE, temper("a.one"));
    }

    private LocalDate due() {
        return school.log("a.one").due(Optional.empty(), school.today()).orElseThrow();
    }

    private Temper temper(String skill) {
        return school.standing().temper(skill);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PickerTest {
    private final SmallSchool school = new SmallSchool();

    private Choice next() {
        return next(Wish.BEST).orElseThrow();
    }

    private Optional<Choice> next(Wish wish) {
        return new Picker(SmallSchool.SYLLABUS, school.standing(), Optional.empty(), school.today())
                .next(wish);
    }

    @Test
    void theFirstProblemIsTheFirstSkillWithAFullExample() {
        Choice first = next();
        assertEquals("a.one", first.exercise().skill());
        assertEquals(Stage.WORKED, first.stage());
        assertEquals("One is new, and nothing has to come before it.", first.reason().text());
    }

    @Test
    void aNewSkillGetsThreeInARowAndThenANeighbour() {
        List<String> skills = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Choice choice = next();
            skills.add(choice.exercise().skill());
            school.wrong(choice.exercise().id());
        }
        assertEquals(List.of("a.one", "a.one", "a.one", "b.four"), skills);
    }

    @Test
    void aSkillThatRestsOnAnotherWaitsForIt() {
        school.wrong("a.one-p").wrong("a.one-q").wrong("a.one-p");
        school.wrong("b.four-p").wrong("b.four-q").wrong("b.four-p");
        assertEquals("a.one", next().exercise().skill(), "the weakest of what is ready");
        school.right("a.one-q").right("a.one-p");
        Choice choice = next();
        assertEquals("a.two", choice.exercise().skill());
        assertEquals("Two is new, and builds on “One”, which you know.", choice.reason().text());
    }

    @Test
    void noTwoNeighboursShareASkillAfterTheFirstThree() {
        SplittableRandom random = new SplittableRandom(1);
        String before = "";
        int triesBefore = 0;
        for (int i = 0; i < 300; i++) {
            school.on(i / 10);
            Choice choice = next();
            String skill = choice.exercise().skill();
            if (skill.equals(before)) {
                assertTrue(triesBefore < 3, "problem " + i + " repeats " + skill);
            }
            triesBefore = school.log(skill).tries + 1;
            before = skill;
            if (random.nextInt(10) < 6) {
                school.right(choice.exercise().id(), 0, Attempt.Way.of(choice.stage()));
            } else {
                school.wrong(choice.exercise().id());
            }
        }
    }

    @Test
    void whatIsDueComesFirst() {
        school.right("a.one-p").right("a.one-q").on(1).right("a.one-p");
        school.wrong("b.four-p").on(4);
        Choice choice = next();
        assertEquals("a.one", choice.exercise().skill());
        assertEquals("One has been due for a look for 2 days.", choice.reason().text());
    }

    @Test
    void aMistakeMadeTwiceIsTakenUpAndNamed() {
        school.wrong("b.four-p", "left-out@x").wrong("b.four-q", "left-out@x");
        school.wrong("b.four-p").right("a.one-p", 0, Attempt.Way.WORKED);
        Choice choice = next(Wish.MISTAKES).orElseThrow();
        assertTrue(choice.exercise().slips().contains("left-out"));
        assertNotEquals("a.one", choice.exercise().skill(), "not twice the same skill");
        assertEquals(
                "You made the mistake “left out” twice lately. Here it could happen again.",
                choice.reason().text());
    }

    @Test
    void aSkillThatLooksKnownIsTakenUpOnAnotherDay() {
        school.right("a.one-p").right("a.one-q").wrong("b.four-p").on(1);
        Choice choice = next();
        assertEquals("a.one", choice.exercise().skill());
        assertTrue(choice.reason().text().contains("another day"), choice.reason().text());
    }

    @Test
    void wishesAreKept() {
        assertEquals(
                "a.three", next(wish(Wish.Kind.SKILL, "a.three")).orElseThrow().exercise().skill());
        assertEquals("b.four", next(wish(Wish.Kind.STRAND, "b")).orElseThrow().exercise().skill());
        assertEquals(
                "b.steps", next(wish(Wish.Kind.PROBLEM, "b.steps")).orElseThrow().exercise().id());
        assertFalse(next(wish(Wish.Kind.SKILL, "c.none")).isPresent());
        assertFalse(next(wish(Wish.Kind.MISTAKE, "never-heard-of")).isPresent());
    }

    @Test
    void theProblemOfASkillThatWasNotSeenForLongestComesNext() {
        Wish four = wish(Wish.Kind.SKILL, "b.four");
        List<String> problems = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            String id = next(four).orElseThrow().exercise().id();
            problems.add(id);
            school.wrong(id);
        }
        assertEquals(List.of("b.four-p", "b.four-q", "b.steps", "b.four-p"), problems);
    }

    @Test
    void thereIsAlwaysANextProblem() {
        SplittableRandom random = new SplittableRandom(20261125);
        for (int i = 0; i < 1_000; i++) {
            school.on(random.nextInt(60));
            Choice choice = next();
            assertFalse(choice.reason().text().contains("{"), choice.reason().text());
            if (random.nextBoolean()) {
                school.right(choice.exercise().id());
            } else {
                school.wrong(choice.exercise().id(), "left-out@x");
            }
        }
    }

    private static Wish wish(Wish.Kind kind, String of) {
        return new Wish(kind, of);
    }
}

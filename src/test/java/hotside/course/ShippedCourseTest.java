// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import java.util.List;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The course that comes with the program, as a whole. */
class ShippedCourseTest {
    private static final Course COURSE = Course.shipped();
    private static final SkillMap SKILLS = SkillMap.shipped();

    static Stream<Named<Lesson>> lessons() {
        return COURSE.lessons().stream().map(lesson -> Named.of(lesson.id(), lesson));
    }

    @Test
    void everythingIsRead() {
        assertEquals(List.of(), COURSE.findings());
        assertFalse(COURSE.lessons().isEmpty());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lessons")
    void skillsAreThoseOfTheMap(Lesson lesson) {
        Stream.concat(lesson.skills().stream(), lesson.needs().stream())
                .forEach(
                        skill ->
                                assertTrue(
                                        SKILLS.find(skill).isPresent(),
                                        () -> lesson.id() + " names the skill " + skill));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lessons")
    void theTimeFitsTheWords(Lesson lesson) {
        ReadingTime time = ReadingTime.of(lesson);
        assertTrue(
                lesson.minutes() >= time.least() && lesson.minutes() <= time.most(),
                () -> lesson.id() + ": " + lesson.minutes() + " minutes for " + time);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lessons")
    void everyFencedBlockBecameAPart(Lesson lesson) {
        lesson.texts()
                .forEach(
                        text ->
                                text.accept(
                                        new AbstractVisitor() {
                                            @Override
                                            public void visit(FencedCodeBlock block) {
                                                throw new AssertionError(
                                                        lesson.id()
                                                                + " has a block \""
                                                                + block.getInfo()
                                                                + "\" that nothing draws");
                                            }
                                        }));
    }

    /** The outline counts them before the page is read. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("lessons")
    void itsProblemsAreKnownBeforeItIsRead(Lesson lesson) {
        assertEquals(lesson.content().problems(), lesson.problems());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lessons")
    void everyProblemIsThere(Lesson lesson) {
        ProblemBank bank = ProblemBank.shipped();
        lesson.problems().forEach(id -> assertTrue(bank.find(id).isPresent(), id));
    }

    @Test
    void aTimeComesFromWordsAndParts() {
        ReadingTime time = new ReadingTime(900, 6);
        // 900 words at 180 a minute are five minutes; six parts take 12 to 48.
        assertEquals(17, time.least());
        assertEquals(68, time.most());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.content.Once;
import hotside.course.Course;
import hotside.learner.Syllabus;
import hotside.page.Maths;
import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;

/**
 * What the desk shows from. Most of it is read when it is first wanted.
 *
 * @param course the lessons
 * @param bank the problems
 * @param maths the setter of formulas, warm
 * @param plan what there is to learn from the problems
 */
public record Library(Course course, ProblemBank bank, Maths maths, Once<Syllabus> plan) {
    Library(Course course, ProblemBank bank, Maths maths) {
        this(course, bank, maths, new Once<>(() -> Syllabus.of(SkillMap.shipped(), bank)));
    }

    /** What there is to learn from the problems; worked out once, which reads all of them. */
    Syllabus syllabus() {
        return plan.get();
    }

    /** Reads what nobody has asked for yet, so that nobody has to wait for it later. */
    void readOn() {
        syllabus();
        course.lessons().forEach(lesson -> lesson.parts().size());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Course;
import hotside.page.Maths;
import hotside.problem.ProblemBank;

/**
 * What the desk shows from: read once, at the start, off the screen's thread.
 *
 * @param course the lessons
 * @param bank the problems
 * @param maths the setter of formulas, warm
 */
public record Library(Course course, ProblemBank bank, Maths maths) {}

// SPDX-License-Identifier: Apache-2.0
/**
 * Lessons: what their files hold, in order, checked.
 *
 * <p>Start at {@link hotside.course.Lesson}. {@link hotside.course.LessonReader} turns a file into
 * one, or into findings; {@link hotside.course.Markup} is the Markdown that lessons and problems
 * are written in; a {@link hotside.course.Part} is a living piece embedded by a fenced block. How
 * any of it looks is the business of the room above.
 */
package hotside.course;

// SPDX-License-Identifier: Apache-2.0
/**
 * The desk: the window, its places, and what happens when a person touches something. No physics
 * and no marking happen here.
 *
 * <p>Start at {@link hotside.desk.DeskWindow}. {@link hotside.desk.LessonPlace} holds what the
 * cards of the open lesson show and answers every touch; {@link hotside.desk.PracticePlace} sets
 * the problems that the tutor chooses; {@link hotside.desk.RecordKeeper} is the way to the record,
 * on a thread of its own; {@link hotside.desk.PageView} is the one class that touches WebView.
 */
package hotside.desk;

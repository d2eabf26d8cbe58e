// SPDX-License-Identifier: Apache-2.0
/**
 * The desk: the window, its places, and what happens when a person touches something. No physics
 * and no marking happen here.
 *
 * <p>Start at {@link hotside.desk.DeskWindow}. {@link hotside.desk.LessonPlace} holds what the
 * cards of the open lesson show and answers every touch; {@link hotside.desk.PageView} is the one
 * class that touches WebView.
 */
package hotside.desk;

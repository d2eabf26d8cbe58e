// SPDX-License-Identifier: Apache-2.0
/**
 * HTML, MathML, SVG charts: the same page on screen and on paper.
 *
 * <p>Start at {@link hotside.page.Maths} for formulas and {@link hotside.page.Chart} for curves.
 * Everything here makes text from values and holds no window: it knows lessons, problems, relations
 * and units, and never {@code javafx}.
 */
package hotside.page;

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

/**
 * What a place does to the page. Places know the page by this only, so they can be tested without a
 * window.
 */
interface Page {
    /** Turns to a page and goes to its top. */
    void show(String html, String plainText);

    /** Exchanges the inside of one element. */
    void replace(String id, String html);

    /** Puts a text into a field. */
    void put(String id, String text);

    /** Brings an element into sight. */
    void reveal(String id);

    /** Gives an element the keyboard. */
    void focus(String id);

    /** Moves the cursor line of a chart, along the chart's own horizontal coordinate. */
    void cursor(String id, double at);
}

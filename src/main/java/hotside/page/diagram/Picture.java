// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

/**
 * A drawing and what it shows in words.
 *
 * @param sketch the drawing
 * @param words the same for those who do not see it, one or more sentences
 */
public record Picture(Sketch sketch, String words) {
    /**
     * As SVG.
     *
     * @param id unique in the page
     */
    public String svg(String id, String title) {
        return sketch.svg(id, title, words);
    }
}

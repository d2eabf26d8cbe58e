// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.unit.UnitSystem;
import java.util.Optional;
import javafx.scene.Node;

/**
 * A place of the desk: a button at the top of the window, what stands at the left, and the page.
 * Only the open place is told of what a person does in the page; units and text size are told to
 * all.
 */
interface Place {
    /** Its name in {@code desk.place.<id>} and the id of its button, {@code place-<id>}. */
    String id();

    /** The name of the page that it shows; one that has several names each. */
    default String page() {
        return id();
    }

    /** What stands at the left while the place is open. */
    default Optional<Node> side() {
        return Optional.empty();
    }

    /** Shows its page as it was left. */
    void open();

    /** Something in the page was clicked; see {@link PageView.Listener#act}. */
    default void act(String action, String part, String argument) {}

    /** A field got a new content; see {@link PageView.Listener#edit}. */
    default void edit(String part, String slot, String kind, String value) {}

    /** A chart was pointed at; see {@link PageView.Listener#point}. */
    default void point(String part, double across) {}

    /** An arrow key was pressed on a chart; see {@link PageView.Listener#nudge}. */
    default void nudge(String part, int steps) {}

    /** What is being filled in is done; see {@link Shortcuts}. */
    default void finish() {}

    /** Speaks another shop's units. Draws only if it is open. */
    default void units(UnitSystem system) {}

    /** Text grew or shrank. Draws only if it is open. */
    default void textSize(int percent) {}

    /** The place is left for another one. */
    default void leave() {}
}

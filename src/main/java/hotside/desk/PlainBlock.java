// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.List;

/** A piece of a page as native controls show it. */
sealed interface PlainBlock {
    /**
     * Where an edit goes, see {@link PageView.Listener#edit}.
     *
     * @param slot empty for a field that nobody listens to
     */
    record Target(String part, String slot, String kind) {}

    /**
     * An action, see {@link PageView.Listener#act}.
     *
     * @param name empty for none
     */
    record Action(String name, String part, String argument) {}

    /** Something to choose. */
    record Option(String value, String label) {
        @Override
        public String toString() {
            return label;
        }
    }

    /**
     * A paragraph, an item, a row of a table.
     *
     * @param heading 1 to 6 for a heading, else 0
     */
    record Prose(String text, int heading) implements PlainBlock {}

    /** An element of the page that may get another inside. */
    record Region(String id, List<PlainBlock> inside) implements PlainBlock {}

    /**
     * A field for text.
     *
     * @param prompt what is expected
     * @param enter what Enter does
     * @param lines true for a text of several lines
     */
    record Field(
            String id,
            Target target,
            String label,
            String value,
            String prompt,
            Action enter,
            boolean lines)
            implements PlainBlock {}

    /**
     * A slider.
     *
     * @param low where it begins
     * @param high where it ends
     * @param at where it stands
     */
    record Slide(String id, Target target, String label, double low, double high, double at)
            implements PlainBlock {}

    /** One out of a list. */
    record Choice(String id, Target target, String label, List<Option> options, String chosen)
            implements PlainBlock {}

    /**
     * Something to tick, or one of several to take.
     *
     * @param value what taking it says; for a tick, nothing
     * @param group its rivals' name; empty for a tick
     */
    record Tick(
            String id,
            Target target,
            String label,
            String value,
            String group,
            boolean ticked,
            Action enter)
            implements PlainBlock {}

    /** A button. */
    record Press(String id, String label, Action action, boolean enabled) implements PlainBlock {}

    /** A link that stood in the text before it. */
    record Link(String text, String href) implements PlainBlock {}

    /**
     * A chart that arrow keys measure.
     *
     * @param level true if its heights are measured
     */
    record Chart(String id, String label, Action enter, boolean level) implements PlainBlock {}

    /** What stands behind a fold. */
    record Fold(String summary, List<PlainBlock> inside) implements PlainBlock {}
}

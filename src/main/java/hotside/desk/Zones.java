// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;

/** The three parts of the window that the keyboard can go round: bar, side, page. */
final class Zones {
    private final BorderPane window;
    private final Runnable page;

    /**
     * @param page gives the page the keyboard
     */
    Zones(BorderPane window, Runnable page) {
        this.window = window;
        this.page = page;
    }

    /**
     * Gives the keyboard to another part of the window, to what is chosen there.
     *
     * @param by 1 for the next, -1 for the one before
     */
    void turn(int by) {
        List<Supplier<Node>> zones = List.of(window::getTop, window::getLeft, window::getCenter);
        int at = Math.max(0, at(zones));
        for (int i = 1; i <= zones.size(); i++) {
            int next = Math.floorMod(at + by * i, zones.size());
            if (next == 2) {
                page.run();
                return;
            }
            Optional<Node> target = Optional.ofNullable(zones.get(next).get()).flatMap(Zones::in);
            if (target.isPresent()) {
                target.get().requestFocus();
                return;
            }
        }
    }

    private int at(List<Supplier<Node>> zones) {
        for (Node node = window.getScene().getFocusOwner(); node != null; node = node.getParent()) {
            for (int i = 0; i < zones.size(); i++) {
                if (node == zones.get(i).get()) {
                    return i;
                }
            }
        }
        return 2;
    }

    /** The chosen button, or what comes first. */
    private static Optional<Node> in(Node zone) {
        return find(zone, true).or(() -> find(zone, false));
    }

    private static Optional<Node> find(Node node, boolean chosen) {
        if (!node.isVisible() || node.isDisabled()) {
            return Optional.empty();
        }
        boolean fits = !chosen || node instanceof ToggleButton button && button.isSelected();
        if (node.isFocusTraversable() && fits) {
            return Optional.of(node);
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Optional<Node> found = find(child, chosen);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}

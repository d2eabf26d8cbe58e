// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;

/**
 * Where the window stood. Immutable.
 *
 * @param x of its left edge on the screens, pixels
 * @param y of its upper edge
 * @param width in pixels
 * @param height in pixels
 * @param full true if it filled its screen
 */
record WindowPlace(int x, int y, int width, int height, boolean full) {
    static final int LEAST_WIDTH = 800;
    static final int LEAST_HEIGHT = 600;
    private static final String FORM =
            "(-?\\d{1,5}) (-?\\d{1,5}) (\\d{1,5}) (\\d{1,5}) (full|free)";

    /** As it is remembered. */
    String text() {
        return x + " " + y + " " + width + " " + height + " " + (full ? "full" : "free");
    }

    /** Reads what was remembered; nothing for anything else. */
    static Optional<WindowPlace> read(String text) {
        if (!text.matches(FORM)) {
            return Optional.empty();
        }
        String[] words = text.split(" ");
        return Optional.of(
                new WindowPlace(
                        Integer.parseInt(words[0]),
                        Integer.parseInt(words[1]),
                        Integer.parseInt(words[2]),
                        Integer.parseInt(words[3]),
                        words[4].equals("full")));
    }

    /** True if all of it lies on one of these screens, and it is large enough to work in. */
    boolean fits(List<Rectangle2D> screens) {
        return width >= LEAST_WIDTH
                && height >= LEAST_HEIGHT
                && screens.stream().anyMatch(s -> s.contains(x, y, width, height));
    }
}

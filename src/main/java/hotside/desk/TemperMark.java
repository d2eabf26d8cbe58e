// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** The colours of steel as it heats, as small marks; a word always stands beside them. */
final class TemperMark {
    private static final int COLOURS = 4;

    private TemperMark() {}

    /** All four, beside the program's name. */
    static Node whole() {
        return row("temper-mark", COLOURS, COLOURS);
    }

    /** A step for each of so many problems, the first of them coloured; blue is the last one. */
    static Node steps(int done, int all) {
        return row("steps", done, all);
    }

    private static Node row(String style, int done, int all) {
        HBox row = new HBox();
        row.getStyleClass().add(style);
        for (int i = 0; i < all; i++) {
            Region step = new Region();
            step.getStyleClass().add("region");
            if (i < done) {
                step.getStyleClass().add("heat-" + (i * COLOURS / all + 1));
            }
            row.getChildren().add(step);
        }
        return row;
    }
}

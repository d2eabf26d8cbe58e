// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Course;
import hotside.course.Lesson;
import hotside.page.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The lessons by strand, each with how far its problems are worked. */
final class Outline {
    private final VBox rows = new VBox();
    private final ScrollPane pane = new ScrollPane(rows);
    private final ToggleGroup group = new ToggleGroup();
    private final Map<Lesson, ToggleButton> buttons = new LinkedHashMap<>();
    private final Map<Lesson, Label> states = new LinkedHashMap<>();

    Outline(Course course, Consumer<Lesson> open) {
        rows.getStyleClass().add("outline");
        pane.setFitToWidth(true);
        pane.getStyleClass().add("outline-pane");
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        String strand = "";
        for (Lesson lesson : course.lessons()) {
            if (!lesson.strand().equals(strand)) {
                strand = lesson.strand();
                Label heading = new Label(strand);
                heading.getStyleClass().add("strand");
                rows.getChildren().add(heading);
            }
            rows.getChildren().add(row(lesson, open));
        }
        if (course.lessons().isEmpty()) {
            Label none = new Label(Words.of("desk.no-lessons"));
            none.setWrapText(true);
            rows.getChildren().add(none);
        }
    }

    Node node() {
        return pane;
    }

    /** Marks the open lesson. */
    void select(Lesson lesson) {
        ToggleButton button = buttons.get(lesson);
        if (button != null) {
            group.selectToggle(button);
        }
    }

    /** Shows how far each lesson's problems are worked. */
    void progress(Predicate<String> solved) {
        states.forEach(
                (lesson, label) -> {
                    List<String> problems = lesson.problems();
                    long right = problems.stream().filter(solved).count();
                    String key = right == 0 ? "none" : right < problems.size() ? "some" : "all";
                    label.setText(
                            right == 0 || right < problems.size()
                                    ? Words.of("desk.state." + key, right, problems.size())
                                    : Words.of("desk.state.all", right));
                    label.getStyleClass().setAll("label", "state", "state-" + key);
                });
    }

    private Node row(Lesson lesson, Consumer<Lesson> open) {
        Label title = new Label(lesson.title());
        title.setWrapText(true);
        title.getStyleClass().add("lesson-title");
        Label state = new Label();
        state.setWrapText(true);
        ToggleButton button = new ToggleButton();
        button.setGraphic(new VBox(title, state));
        button.setMaxWidth(Double.MAX_VALUE);
        button.setMinHeight(Region.USE_PREF_SIZE);
        button.setMaxHeight(Region.USE_PREF_SIZE);
        button.getStyleClass().add("lesson-row");
        button.setId("lesson-" + lesson.id().replace('/', '-'));
        button.setAccessibleText(lesson.title());
        button.setToggleGroup(group);
        button.setOnAction(
                e -> {
                    group.selectToggle(button);
                    open.accept(lesson);
                });
        title.maxWidthProperty().bind(rows.widthProperty().subtract(48));
        buttons.put(lesson, button);
        states.put(lesson, state);
        return button;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Lesson;
import hotside.page.Words;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * Pages under headings: lessons with how far their problems are worked, or relations with a field
 * to search them.
 */
final class Outline {
    private final VBox rows = new VBox();
    private final ScrollPane pane = new ScrollPane(rows);
    private final BorderPane frame = new BorderPane(pane);
    private final ToggleGroup group = new ToggleGroup();
    private final List<Lesson> lessons;
    private final boolean withProgress;
    private final Map<Lesson, ToggleButton> buttons = new LinkedHashMap<>();
    private final Map<Lesson, Label> states = new LinkedHashMap<>();

    private Outline(List<Lesson> lessons, boolean withProgress, Consumer<Lesson> open) {
        this.lessons = lessons;
        this.withProgress = withProgress;
        rows.getStyleClass().add("outline");
        pane.setFitToWidth(true);
        pane.getStyleClass().add("outline-pane");
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        frame.getStyleClass().add("outline-frame");
        lessons.forEach(lesson -> buttons.put(lesson, row(lesson, open)));
        list(lessons);
    }

    /** The course. */
    static Outline ofLessons(List<Lesson> lessons, Consumer<Lesson> open) {
        return new Outline(lessons, true, open);
    }

    /** Puts something above the list. */
    void top(Node tools) {
        frame.setTop(tools);
    }

    /** The relations, with a field that narrows the list down. */
    static Outline ofRelations(
            List<Lesson> pages, Function<Lesson, String> searched, Consumer<Lesson> open) {
        Outline outline = new Outline(pages, false, open);
        TextField search = new TextField();
        search.setId("search-relations");
        search.setPromptText(Words.of("desk.search"));
        search.setAccessibleText(Words.of("desk.search"));
        search.textProperty()
                .addListener(
                        (o, was, is) ->
                                outline.list(
                                        pages.stream()
                                                .filter(page -> matches(searched.apply(page), is))
                                                .toList()));
        VBox tools = new VBox(search);
        tools.getStyleClass().add("course-tools");
        outline.frame.setTop(tools);
        return outline;
    }

    private static boolean matches(String text, String words) {
        String lower = text.toLowerCase(Locale.ROOT);
        return Arrays.stream(words.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                .allMatch(lower::contains);
    }

    private void list(List<Lesson> shown) {
        rows.getChildren().clear();
        String strand = "";
        for (Lesson lesson : shown) {
            if (!lesson.strand().equals(strand)) {
                strand = lesson.strand();
                Label heading = new Label(strand);
                heading.getStyleClass().add("strand");
                heading.setWrapText(true);
                heading.setMinHeight(Region.USE_PREF_SIZE);
                rows.getChildren().add(heading);
            }
            rows.getChildren().add(buttons.get(lesson));
            if (withProgress) {
                rows.getChildren().add(states.get(lesson));
            }
        }
        if (shown.isEmpty()) {
            Label none =
                    new Label(
                            Words.of(lessons.isEmpty() ? "desk.no-lessons" : "desk.nothing-found"));
            none.setWrapText(true);
            rows.getChildren().add(none);
        }
    }

    Node node() {
        return frame;
    }

    /** Marks the open lesson. */
    void select(Lesson lesson) {
        ToggleButton button = buttons.get(lesson);
        group.selectToggle(button);
        if (button != null) {
            reveal(button);
        }
    }

    /** Scrolls a row into sight, if it is out of it. */
    void reveal(Node row) {
        rows.applyCss();
        rows.layout();
        double seen = pane.getViewportBounds().getHeight();
        double beyond = rows.getHeight() - seen;
        if (seen <= 0 || beyond <= 0) {
            return;
        }
        double top = row.getBoundsInParent().getMinY();
        double bottom = row.getBoundsInParent().getMaxY();
        double at = pane.getVvalue() * beyond;
        if (top < at || bottom > at + seen) {
            pane.setVvalue(Math.max(0, Math.min(1, (top - seen / 3) / beyond)));
        }
    }

    /** Shows how far each lesson's problems are worked. */
    void progress(Predicate<String> solved) {
        states.forEach(
                (lesson, label) -> {
                    List<String> problems = lesson.problems();
                    long right = problems.stream().filter(solved).count();
                    String key = right < problems.size() ? "some" : "all";
                    label.setText(
                            right < problems.size()
                                    ? Words.of("desk.state.some", right, problems.size())
                                    : Words.of("desk.state.all", right));
                    label.setGraphic(TemperMark.steps((int) right, problems.size()));
                    // Where nothing is worked yet there is nothing to say.
                    label.setVisible(right > 0);
                    label.setManaged(right > 0);
                    label.getStyleClass().setAll("label", "state", "state-" + key);
                });
    }

    private ToggleButton row(Lesson lesson, Consumer<Lesson> open) {
        ToggleButton button = new ToggleButton(lesson.title());
        button.setWrapText(true);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setMinHeight(Region.USE_PREF_SIZE);
        button.getStyleClass().add("lesson-row");
        button.setId("lesson-" + lesson.id().replace('/', '-'));
        button.setToggleGroup(group);
        button.setOnAction(
                e -> {
                    group.selectToggle(button);
                    open.accept(lesson);
                });
        Label state = new Label();
        state.setWrapText(true);
        state.setMinHeight(Region.USE_PREF_SIZE);
        states.put(lesson, state);
        return button;
    }
}

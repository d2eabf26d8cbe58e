// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.course.Lesson;
import hotside.page.Words;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Above the outline of the course: a field to search it, and ways to glossary and skill map. */
final class CourseTools {
    private final VBox box = new VBox();

    /**
     * @param pages what the tools open
     * @param open opens a page
     * @param more what stands beside and below them
     */
    CourseTools(LookUpPages pages, Consumer<Lesson> open, List<Node> more) {
        TextField field = new TextField();
        field.setId("search-course");
        field.setPromptText(Words.of("desk.find-short"));
        field.setAccessibleText(Words.of("desk.find"));
        field.setOnAction(
                e -> {
                    if (!field.getText().isBlank()) {
                        open.accept(pages.results(field.getText()));
                    }
                });
        FlowPane ways =
                new FlowPane(
                        way("glossary", LookUpPages.GLOSSARY, pages, open),
                        way("skills", LookUpPages.SKILLS, pages, open));
        ways.getChildren().addAll(more);
        ways.getStyleClass().add("ways");
        box.getChildren().addAll(field, ways);
        box.getStyleClass().add("course-tools");
    }

    private static Button way(String name, String href, LookUpPages pages, Consumer<Lesson> open) {
        Button way = new Button(Words.of("desk." + name));
        way.setId("open-" + name);
        way.setOnAction(e -> pages.page(href).ifPresent(open));
        return way;
    }

    Node node() {
        return box;
    }
}

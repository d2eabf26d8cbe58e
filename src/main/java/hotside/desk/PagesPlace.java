// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.content.Once;
import hotside.course.Lesson;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;

/**
 * A place of pages with calculators and problems, and an outline of them: the course, or the
 * relations.
 */
final class PagesPlace implements Place {
    private final String id;
    private Once<Pages> pages;
    private final LessonPlace content;
    private final Consumer<Lesson> opened;

    /** The pages, and an outline of them. */
    record Pages(List<Lesson> lessons, Outline outline) {}

    /**
     * @param pages made when they are first wanted
     * @param opened told which page is open
     */
    PagesPlace(String id, Once<Pages> pages, LessonPlace content, Consumer<Lesson> opened) {
        this.id = id;
        this.pages = pages;
        this.content = content;
        this.opened = opened;
    }

    LessonPlace content() {
        return content;
    }

    /** Takes other pages. */
    void pages(Once<Pages> others) {
        pages = others;
    }

    Optional<Lesson> find(String pageId) {
        return pages.get().lessons().stream().filter(page -> page.id().equals(pageId)).findFirst();
    }

    /** Opens one of its pages; the place itself must be open. */
    void turnTo(Lesson page) {
        pages.get().outline().select(page);
        content.open(page);
        opened.accept(page);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String page() {
        return content.lesson().map(this::page).orElse(id);
    }

    /** The name of one of its pages. */
    String page(Lesson lesson) {
        return id + "/" + lesson.id();
    }

    @Override
    public Optional<Node> side() {
        return Optional.of(pages.get().outline().node());
    }

    @Override
    public void open() {
        Optional<Lesson> left = content.lesson();
        Optional<Lesson> anew =
                left.flatMap(page -> find(page.id())).filter(page -> !left.get().equals(page));
        if (anew.isPresent()) {
            turnTo(anew.get());
        } else if (left.isPresent()) {
            content.again();
        } else if (!pages.get().lessons().isEmpty()) {
            turnTo(pages.get().lessons().get(0));
        }
    }

    @Override
    public void act(String action, String part, String argument) {
        content.act(action, part);
    }

    @Override
    public void edit(String part, String slot, String kind, String value) {
        content.edit(part, slot, kind, value);
    }

    @Override
    public void point(String part, double across) {
        content.point(part, across);
    }

    @Override
    public void nudge(String part, int steps) {
        content.nudge(part, steps);
    }

    @Override
    public void units(UnitSystem system) {
        content.units(system);
    }

    @Override
    public void textSize(int percent) {
        content.textSize(percent);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.content.WholeFile;
import hotside.course.Lesson;
import hotside.course.LookUp;
import hotside.page.Book;
import hotside.page.Words;
import hotside.unit.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;

/** Writes the open lesson or the whole course for paper and book readers. */
final class SaveAs {
    /** What can be written. */
    enum Kind {
        LESSON_PDF(".pdf"),
        LESSON_HTML(".html"),
        COURSE_PDF(".pdf"),
        COURSE_EPUB(".epub");

        private final String suffix;

        Kind(String suffix) {
            this.suffix = suffix;
        }

        private String key() {
            return "save." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        private boolean isLesson() {
            return this == LESSON_PDF || this == LESSON_HTML;
        }
    }

    private final Supplier<Library> library;
    private final Supplier<Optional<Lesson>> open;
    private final Supplier<UnitSystem> system;
    private final Worker worker;
    private final Chooser chooser;
    private final MenuButton button = new MenuButton(Words.of("save.as"));
    private final Label news = new Label();

    /**
     * @param open the open lesson, if there is one
     */
    SaveAs(
            Supplier<Library> library,
            Supplier<Optional<Lesson>> open,
            Supplier<UnitSystem> system,
            Worker worker,
            Chooser chooser) {
        this.library = library;
        this.open = open;
        this.system = system;
        this.worker = worker;
        this.chooser = chooser;
        button.setId("save-as");
        news.setId("save-news");
        news.setWrapText(true);
        news.setManaged(false);
        button.getItems().addAll(Arrays.stream(Kind.values()).map(this::item).toList());
    }

    private MenuItem item(Kind kind) {
        MenuItem item = new MenuItem(Words.of(kind.key()));
        item.setId(kind.key());
        item.setOnAction(e -> save(kind));
        return item;
    }

    List<Node> nodes() {
        return List.of(button, news);
    }

    /** What it last said. */
    String news() {
        return news.getText();
    }

    /** Asks where to and writes, beside the screen. */
    void save(Kind kind) {
        Optional<Lesson> lesson = open.get().filter(page -> !page.id().startsWith(LookUp.PREFIX));
        if (kind.isLesson() && lesson.isEmpty()) {
            say(Words.of("save.no-lesson"));
            return;
        }
        String name =
                kind.isLesson() ? lesson.orElseThrow().id().replace('/', '-') : "hotside-course";
        chooser.save(Words.of(kind.key()), name + kind.suffix)
                .ifPresent(file -> write(kind, lesson, file));
    }

    private void write(Kind kind, Optional<Lesson> lesson, Path file) {
        Library now = library.get();
        Book book = new Book(now.course(), now.bank(), now.maths(), system.get());
        say(Words.of("save.writing", file.getFileName()));
        worker.run(
                () -> {
                    try {
                        WholeFile.write(file, bytes(kind, book, lesson));
                        return file;
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                done -> say(Words.of("save.done", done)),
                fault -> say(Words.of("save.failed", fault.getMessage())));
    }

    private static byte[] bytes(Kind kind, Book book, Optional<Lesson> lesson) {
        return switch (kind) {
            case LESSON_PDF -> book.pdf(lesson.orElseThrow());
            case LESSON_HTML -> book.html(lesson.orElseThrow()).getBytes(StandardCharsets.UTF_8);
            case COURSE_PDF -> book.pdf();
            case COURSE_EPUB -> book.epub();
        };
    }

    private void say(String text) {
        news.setText(text);
        news.setManaged(true);
    }
}

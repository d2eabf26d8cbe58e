// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.content.WholeFile;
import hotside.course.Course;
import hotside.course.Lesson;
import hotside.page.Book;
import hotside.page.Maths;
import hotside.problem.ProblemBank;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the course, or one lesson, for paper and for book readers. */
@Command(
        name = "book",
        description = "Writes the course as PDF, HTML or EPUB 3, or one lesson as PDF or HTML.",
        mixinStandardHelpOptions = true)
final class BookCommand implements Callable<Integer> {
    /** At least one of them. */
    private static final class Targets {
        @Option(names = "--pdf", paramLabel = "FILE", description = "PDF to write")
        private Path pdf;

        @Option(names = "--html", paramLabel = "FILE", description = "HTML to write")
        private Path html;

        @Option(names = "--epub", paramLabel = "FILE", description = "EPUB to write")
        private Path epub;
    }

    @ArgGroup(exclusive = false, multiplicity = "1")
    private Targets files;

    @Option(names = "--lesson", paramLabel = "ID", description = "only this lesson: strand/name")
    private String id;

    @Option(names = "--units", description = "si or us", defaultValue = "si")
    private WorkCommand.Shop shop;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Course course = Course.shipped();
        Book book = new Book(course, ProblemBank.shipped(), new Maths(), shop.system());
        if (id != null && files.epub != null) {
            throw new UsageException("An EPUB holds the whole course; leave --lesson out.");
        }
        Lesson lesson = id == null ? null : lesson(course);
        if (files.pdf != null) {
            write(files.pdf, lesson == null ? book.pdf() : book.pdf(lesson));
        }
        if (files.html != null) {
            String html = lesson == null ? book.html() : book.html(lesson);
            write(files.html, html.getBytes(StandardCharsets.UTF_8));
        }
        if (files.epub != null) {
            write(files.epub, book.epub());
        }
        return CommandLineDoor.FINE;
    }

    private Lesson lesson(Course course) {
        return course.find(id)
                .orElseThrow(
                        () ->
                                Lookups.unknown(
                                        "lesson",
                                        id,
                                        course.lessons().stream().map(Lesson::id).toList(),
                                        "lesson"));
    }

    private void write(Path file, byte[] bytes) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UsageException(
                    "There is no folder " + folder + " to write " + file + " into.");
        }
        WholeFile.write(file, bytes);
        spec.commandLine().getOut().println(file + ": " + bytes.length / 1024 + " KiB");
    }
}

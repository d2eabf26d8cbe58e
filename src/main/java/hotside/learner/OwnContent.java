// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.content.ContentFolder;
import hotside.course.Course;
import hotside.problem.ProblemBank;
import hotside.speech.Language;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Lessons and problems that a teacher keeps beside the shipped ones: in the folders {@code lessons}
 * and {@code problems} of one folder. A file with the id of a shipped one takes its place.
 */
public final class OwnContent {
    /** System property that names another folder. */
    public static final String PROPERTY = "hotside.content";

    private OwnContent() {}

    /** Where it is looked for; it need not exist. */
    public static Path folder() {
        String named = System.getProperty(PROPERTY);
        return named == null || named.isBlank()
                ? RecordFolder.usual().resolve("content")
                : Path.of(named);
    }

    /** The shipped problems and those of a folder, in English. */
    public static ProblemBank bank(Path folder) {
        return bank(folder, Language.ENGLISH);
    }

    /** The shipped problems and those of a folder; what has no such words stays in English. */
    public static ProblemBank bank(Path folder, Language language) {
        ProblemBank shipped = ProblemBank.shipped(language);
        Path own = folder.resolve("problems");
        ProblemBank bank =
                Files.isDirectory(own)
                        ? shipped.with(ProblemBank.of(ContentFolder.read(own)))
                        : shipped;
        Path words = own.resolve(language.code());
        return Files.isDirectory(words) ? bank.translated(ContentFolder.read(words)) : bank;
    }

    /** The shipped lessons and those of a folder, in English. */
    public static Course course(Path folder) {
        return course(folder, Language.ENGLISH);
    }

    /** The shipped lessons and those of a folder; what has no such words stays in English. */
    public static Course course(Path folder, Language language) {
        Course shipped = Course.shipped(language);
        Path own = folder.resolve("lessons");
        Course course =
                Files.isDirectory(own) ? shipped.with(Course.of(ContentFolder.read(own))) : shipped;
        Path words = own.resolve(language.code());
        return Files.isDirectory(words) ? course.translated(ContentFolder.read(words)) : course;
    }
}

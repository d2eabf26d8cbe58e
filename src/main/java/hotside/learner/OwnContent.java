// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import hotside.content.ContentFolder;
import hotside.course.Course;
import hotside.problem.ProblemBank;
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

    /** The shipped problems and those of a folder. */
    public static ProblemBank bank(Path folder) {
        ProblemBank shipped = ProblemBank.shipped();
        Path own = folder.resolve("problems");
        return Files.isDirectory(own)
                ? shipped.with(ProblemBank.of(ContentFolder.read(own)))
                : shipped;
    }

    /** The shipped lessons and those of a folder. */
    public static Course course(Path folder) {
        Course shipped = Course.shipped();
        Path own = folder.resolve("lessons");
        return Files.isDirectory(own) ? shipped.with(Course.of(ContentFolder.read(own))) : shipped;
    }
}

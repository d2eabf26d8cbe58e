// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFolder;
import hotside.course.Course;
import hotside.course.Lesson;
import hotside.learner.OwnContent;
import hotside.problem.ProblemBank;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContentWatchTest {
    private static final String LESSON =
            """
            ---
            title: Our own
            strand: Gate
            skills: [gate.diaphragm]
            minutes: 5
            sources: [the shop's own notes]
            ---
            A short lesson.
            """;

    @TempDir private Path folder;

    @Test
    void seesWhatCameWasWrittenAndWent() throws IOException {
        ContentWatch watch = new ContentWatch(folder);
        assertFalse(watch.changed());
        Path lessons = Files.createDirectories(folder.resolve("lessons/04-gate"));
        Path file = Files.writeString(lessons.resolve("09-own.md"), LESSON);
        assertTrue(watch.changed());
        assertFalse(watch.changed(), "told once");
        Files.setLastModifiedTime(file, FileTime.fromMillis(1));
        assertTrue(watch.changed());
        Files.writeString(lessons.resolve("notes.txt"), "not content");
        assertFalse(watch.changed());
        Files.delete(file);
        assertTrue(watch.changed());
    }

    @Test
    void ownContentStandsBesideTheShippedAndInItsStrand() throws IOException {
        Path lessons = Files.createDirectories(folder.resolve("lessons/04-gate"));
        Files.writeString(lessons.resolve("09-own.md"), LESSON);
        Course course = OwnContent.course(folder);
        Lesson own = course.find("gate/own").orElseThrow();
        assertEquals("Gate", course.before(own).orElseThrow().strand());
        assertEquals(Course.shipped().lessons().size() + 1, course.lessons().size());
    }

    @Test
    void aFileWithTheIdOfAShippedProblemTakesItsPlace() throws IOException {
        ProblemBank shipped = ProblemBank.shipped();
        Path problems = Files.createDirectories(folder.resolve("problems/gate"));
        Path source = Path.of("problems/gate/push-on-the-valve.md");
        String changed = Files.readString(source).replaceFirst("title: .*", "title: Ours");
        Files.writeString(problems.resolve("push-on-the-valve.md"), changed);
        ProblemBank bank = OwnContent.bank(folder);
        assertEquals(shipped.all().size(), bank.all().size());
        String id = ProblemBank.of(ContentFolder.read(problems)).all().get(0).id();
        assertEquals("Ours", bank.find(id).orElseThrow().title());
        assertEquals(List.of(), bank.findings());
    }
}

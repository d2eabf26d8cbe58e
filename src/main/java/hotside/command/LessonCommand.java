// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.course.Course;
import hotside.course.Lesson;
import hotside.course.RelationLessons;
import hotside.page.LessonText;
import hotside.page.Maths;
import hotside.problem.ProblemBank;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a lesson as plain text, or the list of lessons. */
@Command(
        name = "lesson",
        description = "Prints a lesson as plain text; without a name, lists the lessons.",
        mixinStandardHelpOptions = true)
final class LessonCommand implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "ID", description = "strand/name")
    private String id;

    @Option(names = "--units", description = "si or us", defaultValue = "si")
    private WorkCommand.Shop shop;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Course course = Course.shipped();
        if (id == null) {
            course.lessons()
                    .forEach(
                            l ->
                                    out.println(
                                            l.id()
                                                    + ": "
                                                    + l.title()
                                                    + " ("
                                                    + l.strand()
                                                    + ", "
                                                    + l.minutes()
                                                    + " min)"));
            return CommandLineDoor.FINE;
        }
        LessonText text = new LessonText(new Maths());
        if (id.equals("relations")) {
            RelationLessons.all()
                    .forEach(
                            page ->
                                    out.println(
                                            text.of(page, ProblemBank.shipped(), shop.system())
                                                    + "\n"));
            return CommandLineDoor.FINE;
        }
        List<Lesson> all = new ArrayList<>(course.lessons());
        all.addAll(RelationLessons.all());
        Lesson lesson =
                all.stream()
                        .filter(l -> isNamed(l, id))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        Lookups.unknown(
                                                "lesson",
                                                id,
                                                all.stream().map(Lesson::id).toList(),
                                                "lesson"));
        out.println(text.of(lesson, ProblemBank.shipped(), shop.system()));
        return CommandLineDoor.FINE;
    }

    /** By its whole name, or by what stands behind the strand, which no two lessons share. */
    private static boolean isNamed(Lesson lesson, String name) {
        return lesson.id().equals(name) || lesson.id().endsWith("/" + name);
    }
}

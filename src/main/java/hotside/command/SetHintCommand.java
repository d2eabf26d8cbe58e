// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.AtWork;
import hotside.classroom.SetFile;
import hotside.page.LessonText;
import hotside.page.Maths;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reads the next hint of a problem. */
@Command(
        name = "hint",
        description = "Tells the next hint of a problem (learner); that it was read is noted.",
        mixinStandardHelpOptions = true)
final class SetHintCommand implements Callable<Integer> {
    @Mixin private WorkFile work;

    @Option(names = "--problem", required = true, paramLabel = "N", description = "its number")
    private int problem;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        SetFile file = work.file();
        AtWork at = work.open(file);
        int slot = WorkFile.slot(file, problem);
        Optional<String> hint = at.hint(slot, Instant.now());
        out.println(
                hint.map(
                                h ->
                                        new LessonText(new Maths())
                                                .of(
                                                        h,
                                                        name ->
                                                                at.variant(slot)
                                                                        .shown()
                                                                        .getOrDefault(name, name)))
                        .orElse(
                                file.set().rules().hints()
                                        ? "There are no more hints."
                                        : "This set has no hints."));
        return CommandLineDoor.FINE;
    }
}

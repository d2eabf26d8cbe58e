// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.AtWork;
import hotside.classroom.SetFile;
import hotside.page.Maths;
import hotside.problem.Variant;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows a learner's problems and what was answered so far. */
@Command(
        name = "work",
        description = "Shows your problems and what you answered so far (learner).",
        mixinStandardHelpOptions = true)
final class SetWorkCommand implements Callable<Integer> {
    @Mixin private WorkFile work;

    @Option(names = "--problem", paramLabel = "N", description = "this one alone")
    private Integer problem;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        SetFile file = work.file();
        AtWork at = work.open(file);
        Maths maths = new Maths();
        out.println(
                file.set().title()
                        + ": "
                        + file.set().points()
                        + " points, "
                        + SetLookCommand.due(file.set().rules())
                        + ".");
        out.println();
        int from = problem == null ? 0 : WorkFile.slot(file, problem);
        int to = problem == null ? file.set().items().size() : from + 1;
        for (int slot = from; slot < to; slot++) {
            Variant variant = at.variant(slot);
            SetLookCommand.problem(slot, variant, maths, out);
            List<String> typed = at.typed(slot);
            for (int ask = 0; ask < typed.size(); ask++) {
                out.println(
                        "  your answer "
                                + (ask + 1)
                                + ": "
                                + (typed.get(ask).isBlank() ? "none yet" : typed.get(ask)));
            }
            WorkFile.tell(variant, at.told(slot, Instant.now()), out);
            out.println();
        }
        out.println(
                at.open().isEmpty()
                        ? "Everything is answered. \"set hand-in\" hands it in."
                        : "Not yet answered: " + numbers(at.open()) + ".");
        return CommandLineDoor.FINE;
    }

    static String numbers(List<Integer> slots) {
        return String.join(", ", slots.stream().map(s -> String.valueOf(s + 1)).toList());
    }
}

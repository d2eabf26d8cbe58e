// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.AtWork;
import hotside.classroom.SetFile;
import hotside.problem.Verdict;
import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Answers a problem of a set. A wrong answer is an ordinary result: the exit code stays 0. */
@Command(
        name = "answer",
        description = "Answers a problem of a set (learner); saved at once.",
        mixinStandardHelpOptions = true)
final class SetAnswerCommand implements Callable<Integer> {
    @Mixin private WorkFile work;

    @Option(names = "--problem", required = true, paramLabel = "N", description = "its number")
    private int problem;

    @Option(
            names = "--answer",
            required = true,
            arity = "1..*",
            paramLabel = "TEXT",
            description = "one for each thing asked, in order, with unit")
    private List<String> answers;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        SetFile file = work.file();
        AtWork at = work.open(file);
        int slot = WorkFile.slot(file, problem);
        int asks = at.typed(slot).size();
        if (answers.size() > asks) {
            throw new UsageException(
                    "Problem "
                            + problem
                            + " asks "
                            + asks
                            + (asks == 1 ? " thing" : " things")
                            + ", but "
                            + answers.size()
                            + " answers were given.");
        }
        try {
            List<Optional<Verdict>> verdicts = at.answer(slot, answers, Instant.now());
            WorkFile.tell(at.variant(slot), verdicts, out);
        } catch (IllegalStateException e) {
            out.println(e.getMessage());
            return CommandLineDoor.FINDINGS;
        }
        out.println("Saved in " + work.path() + ".");
        at.triesLeft(slot).ifPresent(left -> out.println("Tries left: " + left + "."));
        return CommandLineDoor.FINE;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.AtWork;
import hotside.classroom.HandIn;
import hotside.classroom.SetFile;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the hand-in, after asking. */
@Command(
        name = "hand-in",
        description = "Writes the file to hand in (learner), signed with your key.",
        mixinStandardHelpOptions = true)
final class SetHandInCommand implements Callable<Integer> {
    @Mixin private WorkFile work;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "the hand-in; SET-LEARNER.handin beside the set if not given")
    private Path to;

    @Option(names = "--yes", description = "does not ask")
    private boolean yes;

    @Option(names = "--key", paramLabel = "FILE", description = "your key, if not the usual one")
    private Path key;

    @Spec private CommandSpec spec;

    private final BufferedReader in;

    SetHandInCommand(InputStream in) {
        this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        SetFile file = work.file();
        AtWork at = work.open(file);
        if (!at.open().isEmpty()) {
            out.println("Not answered: " + SetWorkCommand.numbers(at.open()) + ".");
        }
        String past = SetLookCommand.past(file.set().rules(), Instant.now());
        if (!past.isEmpty()) {
            out.println(past);
        }
        if (!yes) {
            out.print("Hand in? Type yes: ");
            out.flush();
            String line = in.readLine();
            if (line == null || !line.strip().toLowerCase(Locale.ROOT).equals("yes")) {
                out.println("Not handed in; your work is kept.");
                return CommandLineDoor.FINE;
            }
        }
        String learner = at.draft().learner();
        Path target =
                to == null
                        ? work.path()
                                .resolveSibling(file.set().id() + "-" + learner + HandIn.ENDING)
                        : to;
        String receipt = at.handIn(target, ClassFiles.key(key, "learner"), Instant.now());
        out.println("Written to " + target + ". Receipt: " + receipt);
        out.println(
                "Give the file to your instructor and keep the receipt. The file shows if anybody changes it on the way; it holds your id, your answers and when you gave them, and nothing else about you.");
        return CommandLineDoor.FINE;
    }
}

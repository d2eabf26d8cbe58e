// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.Draft;
import hotside.classroom.KnownKeys;
import hotside.classroom.SetCheck;
import hotside.classroom.SetFile;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Begins work on a set. */
@Command(
        name = "begin",
        description = "Begins work on a set (learner).",
        mixinStandardHelpOptions = true)
final class SetBeginCommand implements Callable<Integer> {
    @Mixin private WorkFile work;

    @Option(
            names = "--learner",
            required = true,
            paramLabel = "ID",
            description = "the id that your instructor gave you")
    private String learner;

    @Option(
            names = "--decimal",
            defaultValue = "point",
            description = "your decimal mark, point or comma (${DEFAULT-VALUE})")
    private DecimalHabit habit;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        SetFile file = work.file();
        SetCheck.templates(file.set(), ClassFiles.bank());
        try {
            Draft.begin(work.path(), file, learner, habit, Instant.now());
        } catch (FileAlreadyExistsException e) {
            throw new UsageException(
                    work.path() + " is there already. Go on with it, or name another with --work.");
        } catch (IllegalArgumentException e) {
            throw new UsageException(e.getMessage());
        }
        KnownKeys known = ClassFiles.knownKeys();
        if (!known.knows(file.key())) {
            out.println(
                    "This machine has not seen this instructor's key before. Compare its fingerprint with the one that your instructor tells you:");
            out.println("    " + file.key().fingerprint());
            known.note(file.key(), file.set().title());
        }
        out.println(
                "Begun: " + file.set().title() + ", " + file.set().items().size() + " problems.");
        String past = SetLookCommand.past(file.set().rules(), Instant.now());
        out.println(
                past.isEmpty() ? "Time: " + SetLookCommand.due(file.set().rules()) + "." : past);
        out.println("Your work is kept in " + work.path() + " with every answer.");
        return CommandLineDoor.FINE;
    }
}

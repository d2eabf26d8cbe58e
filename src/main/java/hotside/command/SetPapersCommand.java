// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.Papers;
import hotside.classroom.Papers.Form;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.classroom.SetFile;
import hotside.page.Maths;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes papers and keys. */
@Command(
        name = "papers",
        description = "Writes a paper and a key with marking sheet for each learner of a roster.",
        mixinStandardHelpOptions = true)
final class SetPapersCommand implements Callable<Integer> {
    private static final int TOLD_EVERY = 25;

    @Parameters(paramLabel = "SET", description = "the set file")
    private Path set;

    @Option(names = "--roster", required = true, paramLabel = "FILE")
    private Path rosterFile;

    @Option(names = "--to", required = true, paramLabel = "FOLDER")
    private Path to;

    @Option(
            names = "--form",
            arity = "1..*",
            defaultValue = "pdf",
            description = "pdf, html or both (${DEFAULT-VALUE})")
    private List<Form> forms;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        SetFile file = SetFile.read(set);
        Roster roster = ClassFiles.roster(rosterFile, err).orElseThrow();
        Regrader regrader = new Regrader(file.set(), ClassFiles.bank());
        new Papers(regrader, new Maths())
                .write(
                        to,
                        roster,
                        EnumSet.copyOf(forms),
                        (done, all) -> {
                            if (done % TOLD_EVERY == 0) {
                                err.println(done + " of " + all);
                                err.flush();
                            }
                            return true;
                        });
        spec.commandLine()
                .getOut()
                .println(
                        roster.all().size()
                                + " papers and keys were written to "
                                + to
                                + "; codes.csv there says whose is which.");
        return roster.findings().isEmpty() ? CommandLineDoor.FINE : CommandLineDoor.FINDINGS;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.Roster;
import hotside.content.WholeFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks a roster, or makes one with fresh ids to write names beside. */
@Command(
        name = "roster",
        description = "Checks a roster (CSV: learner_id,display_name,group), or makes one.",
        mixinStandardHelpOptions = true)
final class SetRosterCommand implements Callable<Integer> {
    private static final int MOST = 10_000;

    @Parameters(paramLabel = "FILE")
    private Path file;

    @Option(
            names = "--fresh",
            paramLabel = "N",
            description = "makes the file, with this many new ids")
    private Integer fresh;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        if (fresh != null) {
            return make(out);
        }
        Roster roster = Roster.read(file);
        roster.findings().forEach(f -> out.println(f.text()));
        out.println(roster.all().size() + " learners.");
        return roster.findings().isEmpty() ? CommandLineDoor.FINE : CommandLineDoor.FINDINGS;
    }

    private int make(PrintWriter out) throws IOException {
        if (fresh < 1 || fresh > MOST) {
            throw new UsageException("--fresh is 1 to " + MOST + ".");
        }
        if (Files.exists(file)) {
            throw new UsageException(
                    file + " is there already. Name a new file, or move the old one away.");
        }
        WholeFile.write(file, Roster.fresh(fresh).csv().getBytes(StandardCharsets.UTF_8));
        out.println(
                file
                        + " holds "
                        + fresh
                        + " new ids. Write the names beside them; they stay in this file.");
        return CommandLineDoor.FINE;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import java.io.InputStream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Marking: files, and answers from paper. */
@Command(
        name = "mark",
        description =
                "Marks a class's work by working every problem again; no mark in a file is believed.",
        mixinStandardHelpOptions = true)
final class MarkCommand implements Runnable {
    @Spec private CommandSpec spec;

    static CommandLine line(InputStream in) {
        return new CommandLine(new MarkCommand())
                .addSubcommand(new MarkFolderCommand())
                .addSubcommand(new MarkTypeCommand(in))
                .addSubcommand(new MarkPointsCommand());
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}

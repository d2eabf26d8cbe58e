// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import java.io.InputStream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Problem sets: the instructor's side and the learner's. */
@Command(
        name = "set",
        description = {
            "Problem sets.",
            "Instructor: roster, compose, look, papers, export. Learner: begin, work, answer, hint, hand-in."
        },
        mixinStandardHelpOptions = true)
final class SetCommand implements Runnable {
    @Spec private CommandSpec spec;

    static CommandLine line(InputStream in) {
        return new CommandLine(new SetCommand())
                .addSubcommand(new SetRosterCommand())
                .addSubcommand(new SetComposeCommand())
                .addSubcommand(new SetLookCommand())
                .addSubcommand(new SetPapersCommand())
                .addSubcommand(new SetExportCommand())
                .addSubcommand(new SetBeginCommand())
                .addSubcommand(new SetWorkCommand())
                .addSubcommand(new SetAnswerCommand())
                .addSubcommand(new SetHintCommand())
                .addSubcommand(new SetHandInCommand(in));
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}

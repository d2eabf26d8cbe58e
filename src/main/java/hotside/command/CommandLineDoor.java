// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.RefusedException;
import hotside.problem.NoVariantException;
import hotside.relation.RelationException;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToIntBiFunction;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The door for those who type: finds the command and reports what went wrong in words. */
@Command(
        name = "hotside",
        description =
                "A tutor for what a change on a turbo's exhaust side is worth. Without a command the desk opens.",
        mixinStandardHelpOptions = true,
        version = "Hotside 0.1.0",
        subcommands = CommandLine.HelpCommand.class)
public final class CommandLineDoor implements Runnable {
    /** How much a tour shows. */
    public enum TourLength {
        /** One lesson: whether the desk can open here. */
        FIRST,
        /** Every place, and the head of every lesson. */
        PLACES,
        /** Every lesson from top to bottom too. */
        WHOLE
    }

    /** All is well. */
    public static final int FINE = 0;

    /** The command worked and found something wrong in what it was given. */
    public static final int FINDINGS = 1;

    /** The command was not used rightly. */
    public static final int USAGE = 2;

    @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

    private CommandLineDoor() {}

    /**
     * Runs one command.
     *
     * @param args as typed, the command first
     * @param out where results go
     * @param err where complaints go
     * @param tour drives the real screens and puts pictures into a folder; returns an exit code
     * @param desk opens the desk, with a file if one is given, and returns when it is closed
     * @return the exit code
     */
    public static int run(
            String[] args,
            PrintWriter out,
            PrintWriter err,
            ToIntBiFunction<Path, TourLength> tour,
            Consumer<Optional<Path>> desk) {
        return run(args, System.in, out, err, tour, desk);
    }

    /** As above, with something else in place of standard input. */
    static int run(
            String[] args,
            InputStream in,
            PrintWriter out,
            PrintWriter err,
            ToIntBiFunction<Path, TourLength> tour,
            Consumer<Optional<Path>> desk) {
        CommandLine line = new CommandLine(new CommandLineDoor());
        line.addSubcommand(new RelationsCommand());
        line.addSubcommand(new WorkCommand(in));
        line.addSubcommand(new VariantCommand());
        line.addSubcommand(new AnswerCommand());
        line.addSubcommand(new DrillCommand(in));
        line.addSubcommand(new LessonCommand());
        line.addSubcommand(new CheckContentCommand());
        line.addSubcommand(new BookCommand());
        line.addSubcommand(new PullCommand());
        line.addSubcommand(new CompareCommand());
        line.addSubcommand(new TrialCommand());
        line.addSubcommand(SetCommand.line(in));
        line.addSubcommand(MarkCommand.line(in));
        line.addSubcommand(new StatementsCommand());
        line.addSubcommand(new TourCommand(tour));
        line.addSubcommand(new DeskCommand(desk));
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExecutionExceptionHandler((e, command, parsed) -> complain(e, err));
        int code = line.execute(args);
        out.flush();
        err.flush();
        return code;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static int complain(Exception e, PrintWriter err) {
        if (e instanceof UsageException || e instanceof RelationException) {
            err.println(e.getMessage());
            return USAGE;
        }
        if (e instanceof RefusedException) {
            err.println("That is refused: " + e.getMessage());
            return FINDINGS;
        }
        if (e instanceof IOException || e instanceof UncheckedIOException) {
            err.println("That cannot be read: " + e.getMessage());
            return USAGE;
        }
        if (e instanceof NoVariantException) {
            err.println(e.getMessage());
            return FINDINGS;
        }
        err.println("Hotside stumbled: " + e);
        e.printStackTrace(err);
        return CommandLine.ExitCode.SOFTWARE + USAGE;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.HandPoints;
import hotside.classroom.Ids;
import hotside.classroom.ProblemSet;
import hotside.classroom.SetFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Sets points by hand. */
@Command(
        name = "points",
        description = {
            "Sets points by hand for one problem of one learner, in place of those worked out, with a reason.",
            "\"mark folder --by-hand\" takes them in; what was worked out stays to be seen."
        },
        mixinStandardHelpOptions = true)
final class MarkPointsCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "SET", description = "the set as it was handed out")
    private Path set;

    @Option(names = "--learner", required = true, paramLabel = "ID")
    private String learner;

    @Option(
            names = "--problem",
            required = true,
            paramLabel = "NUMBER",
            description = "its place in the set, from 1")
    private int problem;

    @Option(
            names = "--points",
            paramLabel = "POINTS",
            description = "0 to what it is worth; leave it out to take back what was set")
    private String points;

    @Option(
            names = "--reason",
            defaultValue = "",
            paramLabel = "TEXT",
            description = "why; the learner reads it in the report")
    private String reason;

    @Option(
            names = "--keep",
            required = true,
            paramLabel = "FILE",
            description = "where points set by hand go; more are added to what is there")
    private Path keep;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        ProblemSet of = SetFile.read(set).set();
        if (!Ids.isId(learner)) {
            throw new UsageException("\"" + learner + "\" is no learner's id.");
        }
        if (problem < 1 || problem > of.items().size()) {
            throw new UsageException(
                    "--problem is 1 to " + of.items().size() + ", not " + problem + ".");
        }
        int most = of.items().get(problem - 1).points();
        try {
            Optional<Double> given =
                    Optional.ofNullable(points).map(text -> HandPoints.points(text, most));
            HandPoints.set(keep, of, learner, problem - 1, given, reason, Instant.now());
            out.println(
                    learner
                            + ", problem "
                            + problem
                            + ": "
                            + given.map(p -> points + " of " + most + " points by hand.")
                                    .orElse("as worked out again."));
        } catch (IllegalArgumentException e) {
            throw new UsageException(e.getMessage());
        }
        return CommandLineDoor.FINE;
    }
}

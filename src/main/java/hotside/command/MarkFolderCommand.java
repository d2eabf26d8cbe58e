// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.ClassResult;
import hotside.classroom.HandPoints;
import hotside.classroom.Marking;
import hotside.classroom.PaperAnswers;
import hotside.classroom.Papers;
import hotside.classroom.ProblemSet;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.classroom.SetFile;
import hotside.classroom.Statements;
import hotside.classroom.TeachAgain;
import hotside.classroom.Watch;
import hotside.page.Maths;
import hotside.problem.ProblemBank;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Marks a folder of hand-ins. */
@Command(
        name = "folder",
        description = {
            "Marks a folder of hand-ins and says what the class should be taught again.",
            "Exit code 1 if files were set aside."
        },
        mixinStandardHelpOptions = true)
final class MarkFolderCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "SET", description = "the set as it was handed out")
    private Path set;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FOLDER",
            description = "the hand-ins; nothing in it is changed")
    private Path folder;

    @Option(names = "--roster", paramLabel = "FILE", description = "who belongs to the class")
    private Path rosterFile;

    @Option(
            names = "--paper",
            paramLabel = "FILE",
            description = "answers from paper, as \"mark type\" keeps them")
    private Path paper;

    @Option(
            names = "--by-hand",
            paramLabel = "FILE",
            description = "points set by hand, as \"mark points\" keeps them")
    private Path byHand;

    @Option(names = "--accept-late", description = "marks late work too")
    private boolean acceptLate;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            description =
                    "writes marks.csv, answers.csv, problems.csv, set-aside.csv, points-by-hand.csv there")
    private Path to;

    @Option(
            names = "--reports",
            paramLabel = "FOLDER",
            description = "writes a report for each learner there, PDF")
    private Path reports;

    @Option(
            names = "--xapi",
            paramLabel = "FILE",
            description = "writes what was answered as xAPI statements; learners' ids, no names")
    private Path xapi;

    @Option(
            names = "--drill",
            paramLabel = "FILE",
            description = "writes a set on what to teach again, signed with your key")
    private Path drill;

    @Option(names = "--key", paramLabel = "FILE", description = "your key, if not the usual one")
    private Path key;

    @Option(names = "--json", description = "for another program")
    private boolean json;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        SetFile file = SetFile.read(set);
        ProblemBank bank = ClassFiles.bank();
        Regrader regrader = new Regrader(file.set(), bank);
        Optional<Roster> roster = ClassFiles.roster(rosterFile, err);
        ClassResult result =
                new ClassResult(
                        regrader,
                        roster,
                        byHand(regrader, marked(file, regrader, roster, err), err));
        if (json) {
            out.println(Json.text(ClassReport.object(result)));
        } else {
            ClassReport.print(result, out);
        }
        if (to != null) {
            result.tables(to);
            err.println("Tables written to " + to + ".");
        }
        if (reports != null) {
            new Papers(regrader, new Maths())
                    .reports(reports, result, EnumSet.of(Papers.Form.PDF), Watch.NONE);
            err.println("Reports written to " + reports + ".");
        }
        if (xapi != null) {
            Statements.write(xapi, regrader, result.marked());
            err.println("Statements written to " + xapi + ".");
        }
        if (drill != null) {
            drill(result, file, bank, err);
        }
        return result.aside().isEmpty() ? CommandLineDoor.FINE : CommandLineDoor.FINDINGS;
    }

    private Marking.Result marked(
            SetFile file, Regrader regrader, Optional<Roster> roster, PrintWriter err)
            throws IOException {
        if (folder == null && paper == null) {
            throw new UsageException("Name a folder of hand-ins, or answers with --paper.");
        }
        Marking.Result result =
                folder == null
                        ? new Marking.Result(List.of(), List.of())
                        : new Marking(file, regrader, roster, acceptLate)
                                .mark(Marking.files(folder), Watch.NONE);
        if (paper == null) {
            return result;
        }
        PaperAnswers answers = PaperAnswers.read(paper, regrader, roster);
        answers.findings().forEach(f -> err.println(f.text()));
        return answers.join(result, regrader, Instant.now());
    }

    private Marking.Result byHand(Regrader regrader, Marking.Result worked, PrintWriter err)
            throws IOException {
        if (byHand == null) {
            return worked;
        }
        HandPoints points = HandPoints.read(byHand, regrader.set());
        points.findings().forEach(f -> err.println(f.text()));
        points.idle(worked)
                .forEach(
                        learner ->
                                err.println(
                                        "Points were set by hand for "
                                                + learner
                                                + ", of whom no work was marked."));
        return points.on(worked);
    }

    private void drill(ClassResult result, SetFile file, ProblemBank bank, PrintWriter err)
            throws IOException {
        Optional<ProblemSet> again = TeachAgain.drill(result.again(), file.set(), bank);
        if (again.isEmpty()) {
            err.println("Nothing has to be taught again; no drill was written.");
            return;
        }
        if (Files.exists(drill)) {
            err.println(
                    drill
                            + " is there already and was left as it is: work on it can be marked only with it."
                            + " For a new drill name a new file.");
            return;
        }
        SetFile.write(drill, again.get(), ClassFiles.key(key, "instructor"));
        err.println(
                "A drill of "
                        + again.get().items().size()
                        + " problems was written to "
                        + drill
                        + ".");
    }
}

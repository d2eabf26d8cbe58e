// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.PaperAnswers;
import hotside.classroom.PaperCode;
import hotside.classroom.PaperQuestion;
import hotside.classroom.PaperReading;
import hotside.classroom.Regrader;
import hotside.classroom.Roster;
import hotside.classroom.SetFile;
import hotside.unit.DecimalHabit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Types in answers from paper: the paper's code, then one line an answer. */
@Command(
        name = "type",
        description = {
            "Types in answers from paper: the paper's code, then one line for each answer; an empty line for none, < to go back, q to stop.",
            "Each is kept at once."
        },
        mixinStandardHelpOptions = true)
final class MarkTypeCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "SET", description = "the set as it was handed out")
    private Path set;

    @Option(names = "--roster", required = true, paramLabel = "FILE")
    private Path rosterFile;

    @Option(
            names = "--keep",
            required = true,
            paramLabel = "FILE",
            description = "where the answers go; more are added to what is there")
    private Path keep;

    @Spec private CommandSpec spec;

    private final BufferedReader in;
    private PrintWriter out;
    private Regrader regrader;

    MarkTypeCommand(InputStream in) {
        this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    @Override
    public Integer call() throws IOException {
        out = spec.commandLine().getOut();
        SetFile file = SetFile.read(set);
        regrader = new Regrader(file.set(), ClassFiles.bank());
        Roster roster = ClassFiles.roster(rosterFile, spec.commandLine().getErr()).orElseThrow();
        while (true) {
            out.print("Code: ");
            out.flush();
            String line = in.readLine();
            if (line == null || line.strip().equals("q")) {
                return CommandLineDoor.FINE;
            }
            if (line.isBlank()) {
                continue;
            }
            PaperCode code = PaperCode.read(file.set(), roster, line);
            if (code.whose().isEmpty()) {
                out.println(code.said());
            } else if (!paper(code.whose().get())) {
                return CommandLineDoor.FINE;
            }
        }
    }

    /** False when the instructor has had enough. */
    private boolean paper(Roster.Learner learner) throws IOException {
        out.println(learner.id() + " " + learner.name());
        List<PaperQuestion> questions = PaperQuestion.all(regrader);
        for (int i = 0; i < questions.size(); i++) {
            PaperQuestion q = questions.get(i);
            out.print(
                    q.number(regrader)
                            + " "
                            + regrader.template(q.slot()).asks().get(q.ask()).phrase()
                            + ": ");
            out.flush();
            String line = in.readLine();
            if (line == null || line.strip().equals("q")) {
                return false;
            }
            if (line.strip().equals("<")) {
                i = Math.max(-1, i - 2);
            } else if (!line.isBlank()) {
                PaperAnswers.add(keep, learner.id(), q.slot(), q.ask(), line.strip());
                echo(learner, q, line.strip());
            }
        }
        return true;
    }

    /** A slip of typing shows at once; of right and wrong nothing is told. */
    private void echo(Roster.Learner learner, PaperQuestion q, String answer) {
        List<String> answers = new ArrayList<>(Collections.nCopies(q.ask() + 1, ""));
        answers.set(q.ask(), answer);
        out.println(
                "    "
                        + PaperReading.of(
                                        regrader.variant(learner.id(), q.slot()),
                                        answers,
                                        q.ask(),
                                        DecimalHabit.spoken())
                                .words());
    }
}

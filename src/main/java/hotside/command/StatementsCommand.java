// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.OwnStatements;
import hotside.content.WholeFile;
import hotside.learner.Attempt;
import hotside.learner.LearnerRecord;
import hotside.learner.Learners;
import hotside.learner.RecordFolder;
import hotside.learner.Syllabus;
import hotside.problem.ProblemBank;
import hotside.problem.SkillMap;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes a learner's own record as xAPI statements. */
@Command(
        name = "statements",
        description = {
            "Writes the answers of whoever worked last at this desk, and the skills that they prove, as xAPI statements.",
            "Nothing is sent anywhere; the file holds a random id and no name."
        },
        mixinStandardHelpOptions = true)
final class StatementsCommand implements Callable<Integer> {
    @Option(names = "--to", required = true, paramLabel = "FILE", description = "the file")
    private Path to;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        ProblemBank bank = ClassFiles.bank();
        try (LearnerRecord record =
                LearnerRecord.open(new Learners(RecordFolder.usual()).current())) {
            List<Attempt> attempts = record.attempts();
            StringWriter text = new StringWriter();
            int left =
                    new OwnStatements(
                                    record.learner(),
                                    Syllabus.of(SkillMap.shipped(), bank),
                                    bank,
                                    ZoneId.systemDefault())
                            .write(attempts, text);
            WholeFile.write(to, text.toString().getBytes(StandardCharsets.UTF_8));
            out.println(attempts.size() - left + " answers written to " + to + ".");
            if (left > 0) {
                out.println(left + " left out: their problems have another text by now.");
            }
        }
        return CommandLineDoor.FINE;
    }
}

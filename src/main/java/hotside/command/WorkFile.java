// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.AtWork;
import hotside.classroom.Draft;
import hotside.classroom.Regrader;
import hotside.classroom.SetFile;
import hotside.problem.Variant;
import hotside.problem.Verdict;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The set and the draft that a learner's command is about. */
final class WorkFile {
    @Parameters(index = "0", paramLabel = "SET", description = "the set file")
    private Path set;

    @Option(
            names = "--work",
            paramLabel = "FILE",
            description = "where the work is kept; SET with .work behind it if not given")
    private Path work;

    SetFile file() {
        return SetFile.read(set);
    }

    Path path() {
        return work == null ? set.resolveSibling(set.getFileName() + ".work") : work;
    }

    AtWork open(SetFile file) throws IOException {
        if (!Files.exists(path())) {
            throw new UsageException(
                    "No work was begun in " + path() + ". Begin it with \"set begin\".");
        }
        return new AtWork(Draft.resume(path(), file), new Regrader(file.set(), ClassFiles.bank()));
    }

    /** The index of a problem told by its number. */
    static int slot(SetFile file, int number) {
        int most = file.set().items().size();
        if (number < 1 || number > most) {
            throw new UsageException("--problem is 1 to " + most + ", not " + number + ".");
        }
        return number - 1;
    }

    static void tell(Variant variant, List<Optional<Verdict>> verdicts, PrintWriter out) {
        for (int i = 0; i < verdicts.size(); i++) {
            String phrase = variant.template().asks().get(i).phrase();
            verdicts.get(i)
                    .ifPresent(
                            v ->
                                    out.println(
                                            phrase
                                                    + ": "
                                                    + hotside.page.Words.of(
                                                            "verdict."
                                                                    + v.kind()
                                                                            .name()
                                                                            .toLowerCase(
                                                                                    Locale.ROOT))
                                                    + " "
                                                    + v.feedback()));
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.classroom.QtiPackage;
import hotside.classroom.Regrader;
import hotside.classroom.SetFile;
import hotside.page.Maths;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a set for other programs. */
@Command(
        name = "export",
        description =
                "Writes a set as a QTI 3.0 package with frozen numbers; checked against our own profile, not certified.",
        mixinStandardHelpOptions = true)
final class SetExportCommand implements Callable<Integer> {
    @Parameters(paramLabel = "SET", description = "the set file")
    private Path set;

    @Option(names = "--qti", required = true, paramLabel = "FILE", description = "the package")
    private Path qti;

    @Option(
            names = "--variants",
            defaultValue = "10",
            description = "of each problem (${DEFAULT-VALUE})")
    private int variants;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        Regrader regrader = new Regrader(SetFile.read(set).set(), ClassFiles.bank());
        QtiPackage made;
        try {
            made = new QtiPackage(regrader, variants, new Maths());
        } catch (IllegalArgumentException e) {
            throw new UsageException(e.getMessage());
        }
        made.write(qti);
        out.println("Written to " + qti + ". Each answer is marked there by itself.");
        made.leftOut()
                .forEach(
                        id ->
                                out.println(
                                        "Left out, because too many orders of it are right: "
                                                + id
                                                + "."));
        return made.leftOut().isEmpty() ? CommandLineDoor.FINE : CommandLineDoor.FINDINGS;
    }
}

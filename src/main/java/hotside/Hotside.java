// SPDX-License-Identifier: Apache-2.0
package hotside;

import hotside.classroom.HandIn;
import hotside.classroom.SetFile;
import hotside.command.CommandLineDoor;
import hotside.desk.DeskApplication;
import hotside.desk.Headless;
import hotside.desk.Tour;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the program starts: the desk without arguments, else a command; the tour where there is no
 * display.
 */
public final class Hotside {
    private Hotside() {}

    public static void main(String[] args) {
        PrintWriter out = writer(System.out);
        PrintWriter err = writer(System.err);
        if (args.length > 0) {
            System.exit(
                    CommandLineDoor.run(
                            isTaken(args) ? new String[] {"desk", args[0]} : args,
                            out,
                            err,
                            (to, length) -> Tour.guide(to, Tour.Length.valueOf(length.name()), out),
                            file -> desk(out, file)));
        } else {
            desk(out, Optional.empty());
        }
    }

    /** A file of one of our types, opened from outside as if it were a program. */
    private static boolean isTaken(String[] args) {
        return args.length == 1
                && (args[0].endsWith(SetFile.ENDING) || args[0].endsWith(HandIn.ENDING));
    }

    private static void desk(PrintWriter out, Optional<Path> file) {
        if (Headless.noDisplay()) {
            out.println(
                    "There is no display here, so the desk cannot open. Taking the tour instead.");
            System.exit(Tour.guide(tourFolder(), Tour.Length.PLACES, out));
        }
        DeskApplication.open(file);
    }

    private static PrintWriter writer(java.io.PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), false);
    }

    /** Beside what the build made, or a temporary folder for an installed program. */
    private static Path tourFolder() {
        Path built = Path.of("target");
        if (Files.isDirectory(built)) {
            return built.resolve("tour");
        }
        try {
            return Files.createTempDirectory("hotside-tour");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

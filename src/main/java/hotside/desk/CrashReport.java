// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.page.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What went wrong inside the program, as classes and lines of code. The messages of exceptions are
 * left out: they may hold what a person typed, or the name of a folder.
 */
final class CrashReport {
    /** Older ones go. */
    static final int KEPT = 10;

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss-SSS").withZone(ZoneOffset.UTC);

    private CrashReport() {}

    static String text(Throwable fault, String thread, Instant when) {
        StringBuilder out = new StringBuilder(Words.of("crash.report")).append('\n');
        out.append("when: ").append(when).append('\n');
        out.append("version: ").append(Notices.version().orElse("not packed")).append('\n');
        for (String property : List.of("java.version", "javafx.version", "os.name", "os.version")) {
            out.append(property).append(": ").append(System.getProperty(property)).append('\n');
        }
        out.append("thread: ").append(thread).append("\n\n");
        Set<Throwable> told = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Throwable at = fault; at != null && told.add(at); at = at.getCause()) {
            out.append(at == fault ? "" : "caused by ").append(at.getClass().getName());
            out.append('\n');
            for (StackTraceElement line : at.getStackTrace()) {
                out.append("    at ").append(line).append('\n');
            }
        }
        return out.toString();
    }

    /**
     * Keeps a report, and of the older ones the last few.
     *
     * @return where it lies
     */
    static Path keep(Path folder, String text, Instant when) throws IOException {
        Files.createDirectories(folder);
        Path file = folder.resolve("crash-" + STAMP.format(when) + ".txt");
        for (int more = 2; Files.exists(file); more++) {
            file = folder.resolve("crash-" + STAMP.format(when) + "-" + more + ".txt");
        }
        Files.writeString(file, text, StandardCharsets.UTF_8);
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> reports =
                    files.filter(f -> f.getFileName().toString().matches("crash-.*\\.txt"))
                            .sorted(Comparator.reverseOrder())
                            .skip(KEPT)
                            .toList();
            for (Path old : reports) {
                Files.deleteIfExists(old);
            }
        }
        return file;
    }
}

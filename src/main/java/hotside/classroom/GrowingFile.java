// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A text file that grows line by line, so that nothing told is lost. */
final class GrowingFile {
    private GrowingFile() {}

    /**
     * Adds lines.
     *
     * @param head what a new file begins with
     * @param lines with their line ends
     */
    static void add(Path file, String head, String lines) throws IOException {
        String before = "";
        if (!Files.exists(file) || Files.size(file) == 0) {
            Files.createDirectories(file.toAbsolutePath().getParent());
            before = head;
        } else if (!endsLine(file)) {
            // Somebody's editor, or a power cut: the new line must not run on in the old one.
            before = "\r\n";
        }
        Files.writeString(
                file,
                before + lines,
                StandardCharsets.UTF_8,
                StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
    }

    private static boolean endsLine(Path file) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            in.seek(in.length() - 1);
            return in.read() == '\n';
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A text file that grows line by line, so that nothing told is lost. */
final class GrowingFile {
    /** Stands for a letter that cannot be read. */
    static final String LOST = "\ufffd";

    private static final int FIRST = 2_000;

    private GrowingFile() {}

    /**
     * Adds lines.
     *
     * @param head what a new file begins with
     * @param lines with their line ends
     * @throws IOException if it cannot be written, or is a file of another sort, which stays as it
     *     is
     */
    static void add(Path file, String head, String lines) throws IOException {
        String before = "";
        if (!Files.exists(file) || Files.size(file) == 0) {
            Files.createDirectories(file.toAbsolutePath().getParent());
            before = head;
        } else if (!text(file, FIRST).startsWith(firstLine(head))) {
            throw new IOException(ClassWords.of("file.another-sort", file, firstLine(head)));
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

    private static String firstLine(String text) {
        return text.lines().findFirst().orElse("");
    }

    /**
     * What a file holds, without a byte order mark. Where it is no UTF-8, as a spreadsheet may save
     * it, {@link #LOST} stands in place of what cannot be read.
     *
     * @param most bytes
     */
    static String text(Path file, int most) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            String text = new String(in.readNBytes(most), StandardCharsets.UTF_8);
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        }
    }

    private static boolean endsLine(Path file) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            in.seek(in.length() - 1);
            return in.read() == '\n';
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/** Writes a file aside and moves it into place, so that nobody ever sees half of it. */
public final class WholeFile {
    private WholeFile() {}

    /** Something that may fail as files do. */
    @FunctionalInterface
    public interface Writing<T> {
        void to(T target) throws IOException;
    }

    /** Writes these bytes. Folders on the way are made. */
    public static void write(Path file, byte[] bytes) throws IOException {
        write(file, bytes, beside -> {});
    }

    /** The same, with something done to the empty file first, such as taking rights from it. */
    public static void write(Path file, byte[] bytes, Writing<Path> before) throws IOException {
        aside(
                file,
                beside -> {
                    before.to(beside);
                    Files.write(beside, bytes);
                });
    }

    /** Writes what is streamed. */
    public static void stream(Path file, Writing<OutputStream> writing) throws IOException {
        aside(
                file,
                beside -> {
                    try (OutputStream out = Files.newOutputStream(beside)) {
                        writing.to(out);
                    }
                });
    }

    private static void aside(Path file, Writing<Path> writing) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Files.createDirectories(folder);
        // Not a temporary file of the system: those only their owner may read, even once moved.
        Path beside = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
        Files.createFile(beside);
        try {
            writing.to(beside);
            move(beside, file);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void move(Path beside, Path file) throws IOException {
        try {
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}

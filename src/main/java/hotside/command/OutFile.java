// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.content.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes what a command made into the file that it was told to. */
final class OutFile {
    private OutFile() {}

    static void write(String text, Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UsageException("There is no folder to write " + file + " into.");
        }
        try {
            WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UsageException(
                    "Cannot write " + file + " (" + e + "). Give a file that may be written.");
        }
    }
}

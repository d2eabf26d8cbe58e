// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file aside first, then in place: whoever reads it never finds half of it. */
final class OutFile {
    private OutFile() {}

    static void write(String text, Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new UsageException("There is no folder to write " + file + " into.");
        }
        Path aside = folder.resolve("." + file.getFileName() + ".part");
        try {
            Files.writeString(aside, text, StandardCharsets.UTF_8);
            Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            aside.toFile().delete();
            throw new UsageException(
                    "Cannot write " + file + " (" + e + "). Give a file that may be written.");
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all: beside its place first, then moved there. */
public final class WholeFile {
    private WholeFile() {}

    /** Puts these bytes in the place of whatever was there. */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path place = file.toAbsolutePath();
        Path aside = Files.createTempFile(place.getParent(), ".hotside-", ".part");
        try {
            Files.write(aside, bytes);
            try {
                Files.move(aside, place, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(aside, place, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(aside);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file aside first, then in place: nobody ever finds half of it. */
final class Aside {
    private Aside() {}

    /**
     * @throws IOException if it cannot be written; what was there before is still there
     */
    static void write(Path file, String text) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Path aside = Files.createTempFile(folder, ".hotside", ".part");
        try {
            Files.writeString(aside, text, StandardCharsets.UTF_8);
            Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(aside);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where a log comes from.
 *
 * @param name for people
 * @param invented true if it comes out of the simulated cell
 * @param opener opens it, as often as wanted
 * @param size in bytes
 */
record LogSource(String name, boolean invented, Opener opener, long size) {
    @FunctionalInterface
    interface Opener {
        InputStream open() throws IOException;
    }

    static LogSource of(Path file) throws IOException {
        return new LogSource(
                file.getFileName().toString(),
                false,
                () -> Files.newInputStream(file),
                Files.size(file));
    }

    static LogSource of(String name, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return new LogSource(name, true, () -> new ByteArrayInputStream(bytes), bytes.length);
    }
}

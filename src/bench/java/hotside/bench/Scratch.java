// SPDX-License-Identifier: Apache-2.0
package hotside.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * A folder for a record that nobody keeps.
 *
 * @param folder where it lies
 */
public record Scratch(Path folder) implements AutoCloseable {
    public Scratch() throws IOException {
        this(Files.createTempDirectory("hotside-bench"));
    }

    @Override
    public void close() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }
}

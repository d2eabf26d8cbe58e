// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.Visible;
import hotside.content.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The keys whose sets were opened on this machine before. A key that is met for the first time has
 * to be compared by fingerprint, for nothing in a file can prove whose key it is.
 */
public final class KnownKeys {
    private final Path file;
    private final List<String> lines;

    private KnownKeys(Path file, List<String> lines) {
        this.file = file;
        this.lines = new ArrayList<>(lines);
    }

    /** The keys noted in this file, which need not exist. */
    public static KnownKeys of(Path file) throws IOException {
        return new KnownKeys(
                file,
                Files.exists(file) ? Files.readAllLines(file, StandardCharsets.UTF_8) : List.of());
    }

    public boolean knows(PublicKeyText key) {
        return lines.stream().anyMatch(line -> line.startsWith(key.base64() + " "));
    }

    /** Notes a key with the title of the first set that bore it. */
    public void note(PublicKeyText key, String title) throws IOException {
        if (!knows(key)) {
            lines.add(key.base64() + " " + Visible.of(title));
            WholeFile.write(
                    file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Sees when something in a folder of content was written, so that the desk can show it at once. For
 * one thread.
 */
final class ContentWatch {
    private static final int DEEPEST = 4;
    private static final int MOST_FILES = 10_000;

    private final Path folder;
    private String seen;

    ContentWatch(Path folder) {
        this.folder = folder;
        seen = state();
    }

    /** True if a file came, went or was written since the last look. */
    boolean changed() {
        String now = state();
        boolean other = !now.equals(seen);
        seen = now;
        return other;
    }

    private String state() {
        if (!Files.isDirectory(folder)) {
            return "";
        }
        try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .limit(MOST_FILES)
                    .map(ContentWatch::state)
                    .sorted()
                    .collect(Collectors.joining("\n"));
        } catch (IOException | UncheckedIOException e) {
            // A file that is being written may be gone for a moment: look again the next time.
            return seen == null ? "" : seen;
        }
    }

    private static String state(Path file) {
        try {
            BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
            return file + " " + is.size() + " " + is.lastModifiedTime();
        } catch (IOException e) {
            return file.toString();
        }
    }
}

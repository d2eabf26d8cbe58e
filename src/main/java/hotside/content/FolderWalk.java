// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import hotside.speech.Language;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Looks for content files below a folder without being led out of it or astray by its size. */
final class FolderWalk extends SimpleFileVisitor<Path> {
    private static final int MOST_ENTRIES = 50_000;

    /**
     * A file to read.
     *
     * @param shown as shown in findings
     * @param bytes its size, at most what a reader would take of it
     */
    record Found(String shown, Path file, long bytes) {}

    private final String shown;
    private final Path folder;
    private final List<Found> files = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final String suffix;
    private final int mostFiles;
    private int entries;

    private FolderWalk(String shown, Path folder, String suffix, int mostFiles) {
        this.shown = shown;
        this.folder = folder;
        this.suffix = suffix;
        this.mostFiles = mostFiles;
    }

    /** Files whose names end so. */
    static FolderWalk of(String shown, Path folder, String suffix, int mostFiles) {
        FolderWalk walk = new FolderWalk(shown, folder, suffix, mostFiles);
        try {
            walk = new FolderWalk(shown, folder.toRealPath(), suffix, mostFiles);
            Files.walkFileTree(walk.folder, walk);
        } catch (IOException e) {
            walk.problem(folder, "cannot be read: " + e.getMessage(), "check its permissions");
        }
        walk.files.sort(Comparator.comparing(Found::shown, new NaturalOrder()));
        return walk;
    }

    List<Found> files() {
        return files;
    }

    List<Finding> findings() {
        return findings;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
        boolean skipped = name(directory).startsWith(".") || isTranslated(directory);
        return skipped && !directory.equals(folder) ? FileVisitResult.SKIP_SUBTREE : counted();
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        if (attributes.isSymbolicLink()) {
            link(file);
        } else if (isContent(file) && attributes.isRegularFile()) {
            add(file, attributes.size());
        }
        return counted();
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) {
        problem(file, "cannot be read: " + e.getMessage(), "check its permissions");
        return counted();
    }

    /** A link within the folder to a file is that file; no other is followed. */
    private void link(Path link) {
        try {
            Path real = link.toRealPath();
            if (real.startsWith(folder) && Files.isRegularFile(real)) {
                if (isContent(link)) {
                    add(link, Files.size(real));
                }
            } else if (isContent(link) || Files.isDirectory(real)) {
                problem(
                        link,
                        "a link to a folder or out of this one, not followed",
                        "put the files themselves here");
            }
        } catch (IOException e) {
            problem(link, "a link that leads nowhere", "delete it or mend its target");
        }
    }

    private void add(Path file, long size) {
        files.add(new Found(shown(file), file, Math.min(size, ContentReader.LARGEST_FILE)));
    }

    private FileVisitResult counted() {
        entries++;
        if (files.size() <= mostFiles && entries <= MOST_ENTRIES) {
            return FileVisitResult.CONTINUE;
        }
        if (files.size() > mostFiles) {
            files.remove(files.size() - 1);
        }
        String most = mostFiles + " content files and " + MOST_ENTRIES + " files in all";
        findings.add(
                Finding.about(
                        shown,
                        "this folder holds more files than are read",
                        "at most " + most,
                        "give the folder that holds the content only"));
        return FileVisitResult.TERMINATE;
    }

    private void problem(Path at, String what, String mend) {
        findings.add(Finding.about(shown(at), what, "a readable file in this folder", mend));
    }

    private String shown(Path file) {
        if (!file.startsWith(folder) || file.equals(folder)) {
            return shown;
        }
        return shown + "/" + folder.relativize(file).toString().replace('\\', '/');
    }

    private boolean isContent(Path file) {
        return name(file).endsWith(suffix) && !name(file).equalsIgnoreCase("README.md");
    }

    /** What is below a folder named after a language translates what is beside it. */
    private static boolean isTranslated(Path directory) {
        return Language.find(name(directory)).filter(l -> l != Language.ENGLISH).isPresent();
    }

    private static String name(Path file) {
        Path name = file.getFileName();
        return name == null ? "" : name.toString();
    }
}

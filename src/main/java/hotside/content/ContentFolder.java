// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * All content files of a folder, on disk or on the class path: the {@code .md} files below it
 * except {@code README.md}, in the order that people number them. Hidden folders and links that
 * lead out of the folder are not entered, nor are those named after a language, such as {@code de}:
 * they hold translations and are read as folders of their own.
 *
 * @param path the folder as shown in findings
 * @param entries its files; their bytes are in memory, and parsed when they are first asked for
 * @param findings what is wrong with the folder itself
 */
public record ContentFolder(String path, List<Entry> entries, List<Finding> findings) {
    /** At most so many files of one folder are read. */
    public static final int MOST_FILES = 5_000;

    /** At most so many bytes of one folder are read. */
    public static final long MOST_BYTES = 64L << 20;

    /**
     * A file of the folder.
     *
     * @param path as shown in findings
     * @param file with its own findings
     */
    public record Entry(String path, Once<ContentFile> file) {
        /** The file's name without folders and ending. */
        public String name() {
            return ContentFile.name(path);
        }
    }

    /** How much of a folder is read. */
    record Limits(int files, long bytes) {}

    private static final Limits LIMITS = new Limits(MOST_FILES, MOST_BYTES);

    public ContentFolder {
        entries = List.copyOf(entries);
        findings = List.copyOf(findings);
    }

    /** Reads a folder on disk, shown in findings by the path given. Nothing is thrown. */
    public static ContentFolder read(Path folder) {
        return read(folder.toString().replace('\\', '/'), folder, LIMITS);
    }

    /** As {@link #read(Path)}, for {@code .yaml} files, which hold data and no text. */
    public static ContentFolder readData(Path folder) {
        return read(folder.toString().replace('\\', '/'), folder, FileForm.DATA, LIMITS);
    }

    /**
     * Reads a folder of the class path, in a jar or unpacked.
     *
     * @param resource as {@code hotside/lessons}
     */
    public static ContentFolder ofResources(String resource) {
        return ofResources(resource, ContentFolder.class.getClassLoader());
    }

    /** As {@link #ofResources(String)}, for {@code .yaml} files, which hold data and no text. */
    public static ContentFolder dataOfResources(String resource) {
        return ofResources(resource, ContentFolder.class.getClassLoader(), FileForm.DATA);
    }

    static ContentFolder ofResources(String resource, ClassLoader loader) {
        return ofResources(resource, loader, FileForm.TEXT);
    }

    private static ContentFolder ofResources(String resource, ClassLoader loader, FileForm form) {
        URL url = loader.getResource(resource);
        if (url == null) {
            return unread(resource, form, "the program has no such folder inside");
        }
        try {
            return url.openConnection() instanceof JarURLConnection jar
                    ? ofJar(resource, jar, form)
                    : read(resource, Path.of(url.toURI()), form, LIMITS);
        } catch (IOException | URISyntaxException e) {
            return unread(resource, form, "cannot be read: " + e.getMessage());
        }
    }

    /** A file system of its own for the jar, so that nobody else can close it meanwhile. */
    private static ContentFolder ofJar(String resource, JarURLConnection jar, FileForm form)
            throws IOException, URISyntaxException {
        Path file = Path.of(jar.getJarFileURL().toURI());
        try (FileSystem inside = FileSystems.newFileSystem(file)) {
            return read(resource, inside.getPath(resource), form, LIMITS);
        }
    }

    static ContentFolder read(String shown, Path folder, Limits limits) {
        return read(shown, folder, FileForm.TEXT, limits);
    }

    private static ContentFolder read(String shown, Path folder, FileForm form, Limits limits) {
        if (!Files.isDirectory(folder)) {
            return unread(shown, form, "there is no such folder");
        }
        FolderWalk walk = FolderWalk.of(shown, folder, form.suffix(), limits.files());
        List<Finding> findings = new ArrayList<>(walk.findings());
        List<Entry> entries = new ArrayList<>();
        long bytes = 0;
        for (FolderWalk.Found found : walk.files()) {
            bytes += found.bytes();
            if (bytes > limits.bytes()) {
                findings.add(
                        Finding.about(
                                found.shown(),
                                "this file and those after it are not read: the folder is too large",
                                "at most " + limits.bytes() + " bytes of text in one folder",
                                "split the folder"));
                break;
            }
            entries.add(
                    new Entry(
                            found.shown(), ContentReader.later(found.shown(), found.file(), form)));
        }
        return new ContentFolder(shown, entries, findings);
    }

    private static ContentFolder unread(String shown, FileForm form, String what) {
        Finding finding =
                Finding.about(
                        shown,
                        what,
                        "a folder with " + form.suffix() + " files",
                        "check the path and its spelling");
        return new ContentFolder(shown, List.of(), List.of(finding));
    }

    /** Its files, all parsed. */
    public List<ContentFile> files() {
        return entries.stream().map(entry -> entry.file().get()).toList();
    }

    /** The findings of the folder and of all its files. */
    public List<Finding> allFindings() {
        return Stream.concat(
                        findings.stream(),
                        files().stream().flatMap(file -> file.findings().list().stream()))
                .toList();
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Reads content files: UTF-8 text with front matter between two {@code ---} lines at its very top.
 * Whatever is wrong becomes a finding of the file; nothing is thrown. Windows line ends and a byte
 * order mark are taken as they come.
 */
public final class ContentReader {
    /** Files larger than this are not read. */
    public static final int LARGEST_FILE = 1 << 20;

    private ContentReader() {}

    /** Reads a file, shown in findings by the path given. */
    public static ContentFile read(Path file) {
        return read(file.toString().replace('\\', '/'), file);
    }

    /**
     * Reads a file.
     *
     * @param path as shown in findings
     * @param file where it is; only a regular file is opened
     */
    public static ContentFile read(String path, Path file) {
        return read(path, file, FileForm.TEXT);
    }

    /** Reads a {@code .yaml} file: all of it is front matter, without the two lines around. */
    public static ContentFile readData(Path file) {
        return read(file.toString().replace('\\', '/'), file, FileForm.DATA);
    }

    static ContentFile read(String path, Path file, FileForm form) {
        return later(path, file, form).get();
    }

    /** Takes the bytes of a file now, and parses them when somebody asks. */
    static Once<ContentFile> later(String path, Path file, FileForm form) {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                return Once.of(
                        unread(path, "not a file", "a text file", "give the path of a file"));
            }
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes(LARGEST_FILE + 1);
                return new Once<>(
                        () ->
                                bytes.length > LARGEST_FILE
                                        ? tooLarge(path)
                                        : form.split(path, SafeText.of(bytes)));
            }
        } catch (NoSuchFileException e) {
            return Once.of(unread(path, "there is no such file", "a text file", "check the path"));
        } catch (AccessDeniedException e) {
            return Once.of(
                    unread(
                            path,
                            "this file may not be read",
                            "a readable file",
                            "change its permissions"));
        } catch (IOException e) {
            return Once.of(
                    unread(
                            path,
                            "cannot be read: " + e.getMessage(),
                            "a readable file",
                            "check the disk"));
        }
    }

    /**
     * Reads a text.
     *
     * @param path as shown in findings
     */
    public static ContentFile read(String path, String text) {
        return text.length() > LARGEST_FILE
                ? tooLarge(path)
                : FrontMatter.split(path, SafeText.of(text));
    }

    /**
     * Reads a text that is all front matter.
     *
     * @param path as shown in findings
     */
    public static ContentFile readData(String path, String text) {
        return text.length() > LARGEST_FILE
                ? tooLarge(path)
                : FrontMatter.all(path, SafeText.of(text));
    }

    private static ContentFile tooLarge(String path) {
        return unread(path, "larger than 1 MiB", "at most 1 MiB", "split it into several files");
    }

    private static ContentFile unread(String path, String what, String expected, String mend) {
        Findings findings = new Findings(path, "");
        findings.add(Place.START, what, expected, mend);
        return FrontMatter.none(path, "", findings);
    }
}

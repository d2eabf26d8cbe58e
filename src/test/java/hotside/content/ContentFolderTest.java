// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContentFolderTest {
    private static final String GOOD = "---\ntitle: x\n---\nText.\n";

    @TempDir Path temp;

    private Path write(String path, String text) throws IOException {
        Path file = temp.resolve(path);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private List<String> paths(ContentFolder folder) {
        String start = temp.toString().replace('\\', '/') + "/";
        return folder.files().stream().map(f -> f.path().replace(start, "")).toList();
    }

    private static List<String> whats(ContentFolder folder) {
        return folder.findings().stream().map(Finding::what).toList();
    }

    @Test
    void readsTheContentFilesBelowInTheOrderOfTheirNumbers() throws IOException {
        for (String path :
                List.of(
                        "lessons/10-duct/1-a.md",
                        "lessons/2-gate/10-c.md",
                        "lessons/2-gate/9-B.md",
                        "lessons/2-gate/09-a.md",
                        "lessons/2-gate/README.md",
                        "lessons/readme.md",
                        "lessons/2-gate/notes.txt",
                        "lessons/.git/x.md",
                        "lessons/1-start.md")) {
            write(path, GOOD);
        }
        ContentFolder folder = ContentFolder.read(temp.resolve("lessons"));
        assertEquals(
                List.of(
                        "lessons/1-start.md",
                        "lessons/2-gate/09-a.md",
                        "lessons/2-gate/9-B.md",
                        "lessons/2-gate/10-c.md",
                        "lessons/10-duct/1-a.md"),
                paths(folder));
        assertEquals(List.of(), folder.allFindings());
    }

    @Test
    void findingsOfTheFolderAndOfItsFilesComeTogether() throws IOException {
        write("lessons/a.md", "no front matter");
        write("lessons/b.md", "---\n- x\n---\n");
        assertEquals(
                List.of("no front matter", "the front matter is a list"),
                ContentFolder.read(temp.resolve("lessons")).allFindings().stream()
                        .map(Finding::what)
                        .toList());
    }

    @Test
    void linksThatLeadOutAreReportedAndNotFollowed() throws IOException {
        Path secret = write("secret/out.md", GOOD);
        write("lessons/in/a.md", GOOD);
        Path lessons = temp.resolve("lessons");
        Files.createSymbolicLink(lessons.resolve("b.md"), secret);
        Files.createSymbolicLink(lessons.resolve("c"), secret.getParent());
        Files.createSymbolicLink(lessons.resolve("d.md"), lessons.resolve("in/a.md"));
        Files.createSymbolicLink(lessons.resolve("e.md"), temp.resolve("nowhere"));
        Files.createSymbolicLink(lessons.resolve("in/loop"), lessons);
        ContentFolder folder = ContentFolder.read(lessons);
        assertEquals(List.of("lessons/d.md", "lessons/in/a.md"), paths(folder));
        String out = "a link to a folder or out of this one, not followed";
        assertEquals(
                List.of("a link that leads nowhere", out, out, out),
                whats(folder).stream().sorted().toList());
    }

    @Test
    void aFolderBehindALinkOfItsOwnIsRead() throws IOException {
        write("real/a.md", GOOD);
        Path link = Files.createSymbolicLink(temp.resolve("lessons"), temp.resolve("real"));
        assertEquals(List.of("lessons/a.md"), paths(ContentFolder.read(link)));
    }

    @Test
    void aFolderThatIsNotThereIsAFinding() {
        ContentFolder folder = ContentFolder.read(temp.resolve("none"));
        assertEquals(List.of("there is no such folder"), whats(folder));
        assertEquals(List.of(), folder.files());
        assertEquals(
                List.of("the program has no such folder inside"),
                whats(ContentFolder.ofResources("hotside/no-such-place")));
    }

    @Test
    void filesBeyondTheLimitAreNotRead() throws IOException {
        for (int i = 1; i <= 11; i++) {
            write("lessons/" + i + ".md", GOOD);
        }
        Path lessons = temp.resolve("lessons");
        var limits = new ContentFolder.Limits(10, ContentFolder.MOST_BYTES);
        ContentFolder folder = ContentFolder.read("lessons", lessons, limits);
        assertEquals(10, folder.files().size());
        assertEquals(
                List.of(
                        "lessons:1:1: this folder holds more files than are read\n"
                                + "  expected: at most 10 content files and 50000 files in all\n"
                                + "  to mend:  give the folder that holds the content only"),
                folder.findings().stream().map(Finding::text).toList());
        assertEquals(11, ContentFolder.read(lessons).files().size());
    }

    @Test
    void bytesBeyondTheLimitAreNotRead() throws IOException {
        for (int i = 1; i <= 11; i++) {
            write("lessons/" + i + ".md", GOOD);
        }
        var limits = new ContentFolder.Limits(ContentFolder.MOST_FILES, 10L * GOOD.length());
        ContentFolder folder = ContentFolder.read("lessons", temp.resolve("lessons"), limits);
        assertEquals(10, folder.files().size());
        assertEquals(
                List.of(
                        "lessons/11.md:1:1: this file and those after it are not read: the folder is"
                                + " too large"),
                folder.findings().stream().map(Finding::oneLine).toList());
    }

    @Test
    void readsAFolderOfTheClassPathUnpacked() throws IOException {
        write("hotside/lessons/1-a/b.md", GOOD);
        try (var loader = loader(temp)) {
            ContentFolder folder = ContentFolder.ofResources("hotside/lessons", loader);
            assertEquals(List.of("hotside/lessons/1-a/b.md"), paths(folder));
            assertEquals("x", folder.files().get(0).fields().text("title"));
        }
    }

    @Test
    void readsAFolderOfTheClassPathInsideAJarWithASpaceInItsName() throws IOException {
        Path jar = temp.resolve("a program.jar");
        writeJar(jar, "hotside/", "hotside/lessons/", "hotside/lessons/1-a/");
        try (var loader = loader(jar)) {
            for (int again = 0; again < 2; again++) {
                ContentFolder folder = ContentFolder.ofResources("hotside/lessons", loader);
                assertEquals(
                        List.of("hotside/lessons/1-a/2.md", "hotside/lessons/1-a/10.md"),
                        paths(folder));
                assertEquals(List.of(), folder.allFindings());
                assertEquals("x", folder.files().get(0).fields().text("title"));
            }
        }
    }

    private static URLClassLoader loader(Path path) throws IOException {
        return new URLClassLoader(new URL[] {path.toUri().toURL()}, null);
    }

    private static void writeJar(Path jar, String... folders) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            List<String> files = List.of("hotside/lessons/1-a/10.md", "hotside/lessons/1-a/2.md");
            for (String name : Stream.concat(Stream.of(folders), files.stream()).toList()) {
                zip.putNextEntry(new ZipEntry(name));
                if (!name.endsWith("/")) {
                    zip.write(GOOD.getBytes(StandardCharsets.UTF_8));
                }
            }
        }
    }
}

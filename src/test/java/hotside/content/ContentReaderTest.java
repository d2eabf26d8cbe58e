// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContentReaderTest {
    @TempDir Path folder;

    private static ContentFile read(String text) {
        return ContentReader.read("spring.md", text);
    }

    private static String shown(ContentFile file) {
        return String.join("\n", file.findings().list().stream().map(Finding::text).toList());
    }

    private ContentFile readBytes(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("spring.md"), bytes);
        return ContentReader.read("spring.md", file);
    }

    @Test
    void partsAFileIntoFrontMatterAndBody() {
        ContentFile file = read("---\ntitle: Spring\n---\n# The spring\n\nText.\n");
        assertEquals("", shown(file));
        assertEquals("Spring", file.fields().text("title"));
        assertEquals("# The spring\n\nText.\n", file.body());
        assertEquals(4, file.bodyLine());
        assertEquals(new Place(6, 2), file.inBody(3, 2));
    }

    @Test
    void takesWindowsLineEndsAndAByteOrderMarkAsTheyCome() {
        ContentFile file = read("\uFEFF---\r\ntitle: Spring\r\n--- \r\nText.\r\n");
        assertEquals("", shown(file));
        assertEquals("Spring", file.fields().text("title"));
        assertEquals("Text.\n", file.body());
    }

    @Test
    void anEmptyBodyAndAnEmptyFrontMatterAreNoFindings() {
        ContentFile file = read("---\n---");
        assertEquals("", shown(file));
        assertTrue(file.frontRead());
        assertEquals("", file.body());
    }

    @Test
    void aMissingFrontMatterIsOneFindingAndItsKeysAreNotAskedFor() {
        ContentFile file = read("# The spring\n");
        file.fields().text("title");
        assertEquals(
                """
                spring.md:1:1: no front matter
                     1 | # The spring
                         ^
                  expected: a first line "---", lines "key: value", and a line "---"
                  to mend:  put "---" alone on line 1""",
                shown(file));
        assertEquals("# The spring\n", file.body());
    }

    @Test
    void frontMatterWithoutAnEndIsAFinding() {
        ContentFile file = read("---\ntitle: Spring\n# The spring\n");
        assertFalse(file.frontRead());
        assertEquals(
                """
                spring.md:1:1: the front matter that opens here has no end
                     1 | ---
                         ^
                  expected: a line "---" after the last key
                  to mend:  put "---" alone on the line before the text""",
                shown(file));
    }

    @Test
    void bytesOfAnotherEncodingAreFoundAndTheRestIsRead() throws IOException {
        byte[] latin = "---\ntitle: Öl für\n---\nfür\n".getBytes(StandardCharsets.ISO_8859_1);
        ContentFile file = readBytes(latin);
        assertEquals(
                """
                spring.md:2:8: byte 0xD6 is not UTF-8, the first of 3 in this file
                     2 | title: \uFFFDl f\uFFFDr
                                ^
                  expected: text in UTF-8
                  to mend:  save the file as UTF-8 in your editor""",
                shown(file));
        assertEquals("\uFFFDl f\uFFFDr", file.fields().text("title"));
    }

    @Test
    void controlCharactersAreFoundInFrontMatterAndBody() {
        ContentFile file = read("---\ntitle: a\0b\n---\nbell \7\n");
        assertEquals(
                """
                spring.md:2:9: control character U+0000, the first of 2 in this file
                     2 | title: a\uFFFDb
                                 ^
                  expected: letters, signs, spaces and line ends
                  to mend:  delete it""",
                shown(file));
    }

    @Test
    void aFileOfExactlyOneMebibyteIsReadAndOneByteMoreIsNot() throws IOException {
        String head = "---\ntitle: x\n---\n";
        byte[] full = (head + "x".repeat(ContentReader.LARGEST_FILE - head.length())).getBytes();
        assertEquals("", shown(readBytes(full)));
        byte[] over = (new String(full, StandardCharsets.UTF_8) + "x").getBytes();
        assertEquals(
                """
                spring.md:1:1: larger than 1 MiB
                  expected: at most 1 MiB
                  to mend:  split it into several files""",
                shown(readBytes(over)));
    }

    @Test
    void whatIsNoFileIsAFinding() {
        ContentFile missing = ContentReader.read(folder.resolve("none.md"));
        assertEquals("there is no such file", missing.findings().list().get(0).what());
        ContentFile directory = ContentReader.read(folder);
        assertEquals("not a file", directory.findings().list().get(0).what());
        assertEquals(List.of(), directory.fields().names());
    }

    @Test
    void knowsItsNameAndFolder() {
        ContentFile file = ContentReader.read("lessons/03-wastegate/01-spring.md", "");
        assertEquals("01-spring", file.name());
        assertEquals("03-wastegate", file.folder());
        assertEquals("", read("").folder());
    }
}

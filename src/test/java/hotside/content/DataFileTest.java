// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that hold keys and values and no text. */
class DataFileTest {
    @TempDir Path temp;

    @Test
    void allOfItIsFrontMatterWithThePlacesOfTheFile() {
        ContentFile file = ContentReader.readData("a/rig.yaml", "# note\ntitle: x\nsize: 5\n");
        assertEquals("x", file.fields().text("title"));
        assertEquals(new Place(3, 7), file.fields().place("size"));
        assertEquals("rig", file.name());
        assertEquals("", file.body());
        assertTrue(file.findings().isEmpty());
    }

    @Test
    void whatCannotBeReadIsFoundWithItsLine() {
        ContentFile file = ContentReader.readData("rig.yaml", "title: x\nsize: [5\n");
        assertEquals(1, file.findings().list().size());
        assertTrue(file.findings().list().get(0).oneLine().startsWith("rig.yaml:"));
    }

    @Test
    void aFolderGivesItsDataFilesAndNoOthers() throws IOException {
        Files.writeString(temp.resolve("b.yaml"), "title: b\n");
        Files.writeString(temp.resolve("a.yaml"), "title: a\n");
        Files.writeString(temp.resolve("c.md"), "---\ntitle: c\n---\n");
        ContentFolder folder = ContentFolder.readData(temp);
        assertEquals(List.of("a", "b"), folder.files().stream().map(ContentFile::name).toList());
        assertEquals(List.of(), folder.allFindings());
    }

    @Test
    void aFolderThatIsNotThereIsTold() {
        ContentFolder folder = ContentFolder.readData(temp.resolve("none"));
        assertEquals("there is no such folder", folder.findings().get(0).what());
        assertEquals("a folder with .yaml files", folder.findings().get(0).expected());
    }
}

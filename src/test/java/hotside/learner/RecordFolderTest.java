// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

// Places: XDG Base Directory Specification 0.8 (Linux); the platforms' own guides (from memory).
class RecordFolderTest {
    private static final Path HOME = Path.of("/home/learner");

    @Test
    void aNamedFolderGoesFirst() {
        assertEquals(
                Path.of("/srv/class"),
                RecordFolder.of("/srv/class", "Linux", HOME, Map.of("XDG_DATA_HOME", "/x")));
    }

    @Test
    void linuxFollowsTheXdgSpecification() {
        assertEquals(
                HOME.resolve(".local/share/hotside"),
                RecordFolder.of(null, "Linux", HOME, Map.of()));
        assertEquals(
                Path.of("/data/hotside"),
                RecordFolder.of(null, "Linux", HOME, Map.of("XDG_DATA_HOME", "/data")));
        assertEquals(
                HOME.resolve(".local/share/hotside"),
                RecordFolder.of("", "Linux", HOME, Map.of("XDG_DATA_HOME", "not/absolute")));
    }

    @Test
    void macKeepsItInApplicationSupport() {
        assertEquals(
                HOME.resolve("Library/Application Support/Hotside"),
                RecordFolder.of(null, "Mac OS X", HOME, Map.of("XDG_DATA_HOME", "/data")));
    }

    @Test
    void windowsKeepsItInRoamingData() {
        assertEquals(
                Path.of("/roaming/Hotside"),
                RecordFolder.of(null, "Windows 11", HOME, Map.of("APPDATA", "/roaming")));
        assertEquals(
                HOME.resolve("AppData/Roaming/Hotside"),
                RecordFolder.of(null, "Windows 11", HOME, Map.of()));
    }
}

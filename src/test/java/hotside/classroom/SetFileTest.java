// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.ProblemSet.Numbers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SetFileTest {
    private final ProblemSet set = Classes.set(Numbers.OWN);
    private final String text =
            new String(SetFile.bytes(set, Classes.INSTRUCTOR), StandardCharsets.UTF_8);

    private static Reason refused(String text) {
        return assertThrows(
                        RefusedException.class,
                        () -> SetFile.read(text.getBytes(StandardCharsets.UTF_8)))
                .reason();
    }

    @Test
    void comesBackAsItWasSealed() {
        SetFile file = Classes.file(set);
        assertEquals(set, file.set());
        assertEquals(Classes.INSTRUCTOR.open(), file.key());
    }

    @ParameterizedTest(name = "{0} for {1}: {2}")
    @CsvSource({
        "push-on-the-valve, push-on-the-walve, ALTERED",
        "'\"points\":2', '\"points\":9', ALTERED",
        "'\"version\":1', '\"version\":2', UNKNOWN_VERSION",
        "hotside-set, hotside-hand-in, FOREIGN",
    })
    void refusesWhatWasChanged(String old, String changed, Reason reason) {
        assertTrue(text.contains(old));
        assertEquals(reason, refused(text.replaceFirst(old, changed)));
    }

    @Test
    void refusesTheFirstPartOfAFile() {
        for (int length = text.indexOf('\n') + 1; length < text.length(); length++) {
            assertEquals(Reason.TRUNCATED, refused(text.substring(0, length)));
        }
    }

    @Test
    void anotherKeySealsAnotherFile() {
        SetFile other = SetFile.read(SetFile.bytes(set, SigningKey.fresh()));
        assertEquals(set, other.set());
        assertNotEquals(Classes.file(set).key().fingerprint(), other.key().fingerprint());
    }

    /**
     * Counted by hand with sha256sum: {@code printf 'gates-1\n1\nK7\n3\n' | sha256sum} begins with
     * these eight bytes.
     */
    @Test
    void seedIsTheBeginningOfAPublishedHash() {
        assertEquals(Long.parseUnsignedLong("9c69515d9ce2f7fe", 16), set.seed("K7", 2));
    }

    /** {@code printf 'gates-1\n1\n\n3\n' | sha256sum}. */
    @Test
    void oneSeedForAllIfTheNumbersAreTheSame() {
        ProblemSet same = Classes.set(Numbers.SAME);
        assertEquals(Long.parseUnsignedLong("d96896b0a2bce64f", 16), same.seed("K7", 2));
        assertEquals(same.seed("K7", 2), same.seed("X9", 2));
    }

    @Test
    void learnersHaveNumbersOfTheirOwn() {
        assertNotEquals(set.seed("K7", 0), set.seed("K8", 0));
        assertNotEquals(set.paperCode("K7"), set.paperCode("K8"));
    }

    @Test
    void aKeyIsKeptForItsOwnerAlone(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("deep").resolve("my.key");
        SigningKey first = SigningKey.kept(file);
        assertEquals(first.open(), SigningKey.kept(file).open());
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            assertEquals(
                    "rw-------",
                    java.nio.file.attribute.PosixFilePermissions.toString(
                            Files.getPosixFilePermissions(file)));
        }
        Files.writeString(file, "nonsense\n");
        assertThrows(IOException.class, () -> SigningKey.kept(file));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFolder;
import hotside.content.Finding;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProblemBankTest {
    private static String sample(String name) throws Exception {
        try (InputStream in =
                ProblemBankTest.class.getResourceAsStream("/samples/problems/" + name + ".md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void holdsWhatCouldBeReadAndSaysWhatNot(@TempDir Path folder) throws Exception {
        Files.writeString(folder.resolve("a.md"), sample("push"));
        Files.writeString(folder.resolve("b.md"), sample("bleed").replace("level: 2", "level: 9"));
        Files.writeString(folder.resolve("c.md"), sample("push"));
        ProblemBank bank = ProblemBank.of(ContentFolder.read(folder));
        assertEquals(List.of("sample-push"), bank.all().stream().map(Template::id).toList());
        assertEquals(
                List.of("\"level\" is \"9\"", "another problem is called \"sample-push\" too"),
                bank.findings().stream().map(Finding::what).toList());
        assertTrue(bank.find("sample-push").isPresent());
        assertEquals(Optional.empty(), bank.find("sample-bleed"));
    }

    @Test
    void whatComesWithTheProgramIsSound() {
        assertEquals(List.of(), ProblemBank.shipped().findings());
    }
}

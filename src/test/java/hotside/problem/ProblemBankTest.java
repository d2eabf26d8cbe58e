// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFolder;
import hotside.content.Finding;
import hotside.speech.Language;
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

    /** A problem is looked for by the name of its file, so that the others need not be read. */
    @Test
    void whatComesWithTheProgramIsCalledAsItsFile() {
        for (Language language : Language.values()) {
            String folder =
                    language == Language.ENGLISH
                            ? "hotside/problems"
                            : "hotside/problems/" + language.code();
            ProblemBank bank = ProblemBank.shipped(language);
            ContentFolder.ofResources(folder)
                    .entries()
                    .forEach(
                            entry ->
                                    assertEquals(
                                            Optional.of(entry.name()),
                                            bank.find(entry.name()).map(Template::id)));
        }
    }

    @Test
    void aProblemOfAnotherBankIsTakenOnlyIfItCouldBeRead(@TempDir Path folder) throws Exception {
        Files.writeString(folder.resolve("a.md"), sample("push").replace("level: ", "level: 9"));
        ProblemBank shipped = ProblemBank.shipped();
        ProblemBank both = shipped.with(ProblemBank.of(ContentFolder.read(folder)));
        assertEquals(
                shipped.all().stream().map(Template::id).toList(),
                both.all().stream().map(Template::id).toList());
        assertEquals(1, both.findings().size());
    }

    /** A German sentence that goes on in English reads as if the program were broken. */
    @Test
    void theEnglishWordsOfAMistakeAreQuotedInAnotherLanguage() {
        Language.speak(Language.GERMAN);
        try {
            ProblemBank german = ProblemBank.shipped(Language.GERMAN);
            List<String> told =
                    german.find("how-many-pulls").orElseThrow().mistakes().stream()
                            .map(mistake -> mistake.ifText().orElseThrow())
                            .toList();
            assertFalse(told.isEmpty());
            told.forEach(text -> assertTrue(text.contains("auf Englisch"), text));
            ProblemBank english = ProblemBank.shipped();
            english.find("how-many-pulls").orElseThrow().mistakes().stream()
                    .flatMap(mistake -> mistake.ifText().stream())
                    .forEach(text -> assertFalse(text.contains("Englisch"), text));
        } finally {
            Language.speak(Language.ENGLISH);
        }
    }
}

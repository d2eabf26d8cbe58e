// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is in a file, reading it ends, and ends in findings. */
class HostileFileTest {
    /** Only against hanging for ever; reading takes a fraction of it. */
    private static final Duration GUARD = Duration.ofSeconds(20);

    private static final int MUCH = 1_000_000;

    static Stream<Map.Entry<String, String>> hostile() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("doubling aliases", doublingAliases());
        files.put("brackets", "a: " + "[".repeat(MUCH));
        files.put("braces", "a: " + "{".repeat(MUCH));
        files.put("braces with keys", "a: " + "{a: ".repeat(MUCH / 4));
        files.put("dashes", "- ".repeat(MUCH / 2));
        files.put("question marks", "? ".repeat(MUCH / 2));
        files.put("stairs", stairs());
        files.put("anchors", "a: " + "&a ".repeat(MUCH / 3));
        files.put("aliases", "a: [" + "*a, ".repeat(MUCH / 4) + "]");
        files.put("tags", "a: " + "!".repeat(MUCH));
        files.put("tagged items", "a: [" + "!x y, ".repeat(MUCH / 6) + "]");
        files.put("script engine", "!!javax.script.ScriptEngineManager [!!java.net.URL [\"x\"]]");
        files.put("huge key", "k".repeat(MUCH) + ": 1");
        files.put("huge explicit key", "? " + "k".repeat(MUCH) + "\n: 1");
        files.put("many keys", "k: 1\n".repeat(MUCH / 5));
        files.put("many items", "a: [" + "1,".repeat(MUCH / 2) + "]");
        files.put("open quote", "a: \"" + "x".repeat(MUCH));
        files.put("backslashes", "a: \"" + "\\n".repeat(MUCH / 2) + "\"");
        files.put("NUL bytes", "a: " + "\0".repeat(MUCH));
        files.put("escape sequences", "a\u001B[2J: b");
        files.put("percent signs", "%".repeat(MUCH));
        files.put("colons", ":".repeat(MUCH) + " " + ": ".repeat(10));
        files.put("lone surrogates", "a: " + "\uD800".repeat(MUCH));
        files.put("unknown keys", numberedKeys(9_000));
        return files.entrySet().stream();
    }

    private static String doublingAliases() {
        StringBuilder yaml = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 60; i++) {
            yaml.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        return yaml.toString();
    }

    private static String stairs() {
        StringBuilder yaml = new StringBuilder();
        for (int i = 0; i < 1_000; i++) {
            yaml.append(" ".repeat(i)).append("a:\n");
        }
        return yaml.toString();
    }

    private static String numberedKeys(int count) {
        StringBuilder yaml = new StringBuilder();
        for (int i = 0; i < count; i++) {
            yaml.append("k%060d: 1\n".formatted(i));
        }
        return yaml.toString();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("hostile")
    void endsInFindingsThatCanBeShown(Map.Entry<String, String> file) {
        List<Finding> findings =
                assertTimeoutPreemptively(
                        GUARD, () -> readAll("---\n" + file.getValue() + "\n---\n"));
        assertFalse(findings.isEmpty(), file.getKey());
        assertTrue(findings.size() <= 101, file.getKey());
        findings.forEach(finding -> assertTrue(finding.text().length() < 2_500, file.getKey()));
    }

    static Stream<String> merelyLarge() {
        return Stream.of(
                "a: " + "x".repeat(MUCH),
                "a: " + "x\n  ".repeat(MUCH / 4),
                "a: |\n" + "  x\n".repeat(MUCH / 4),
                "a: >\n" + "\n".repeat(MUCH) + "  x",
                "a: '" + "''".repeat(MUCH / 2) + "'",
                "a: \"" + "\\\\".repeat(MUCH / 2) + "\"",
                "# x\n".repeat(MUCH / 4) + "a: 1",
                "\n".repeat(MUCH) + "a: 1");
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("merelyLarge")
    void whatIsMerelyLargeIsRead(String front) {
        List<Finding> findings =
                assertTimeoutPreemptively(
                        GUARD,
                        () -> {
                            ContentFile file =
                                    ContentReader.read("f.md", "---\n" + front + "\n---\n");
                            file.fields().text("a");
                            return file.findings().list();
                        });
        assertEquals(List.of(), findings);
    }

    @Test
    void aLineOfFiveMegabytesIsNotTakenIntoMemory(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("long.md");
        Files.writeString(file, "---\na: " + "x".repeat(5_000_000) + "\n---\n");
        ContentFile read = assertTimeoutPreemptively(GUARD, () -> ContentReader.read(file));
        assertEquals("larger than 1 MiB", read.findings().list().get(0).what());
        assertEquals("", read.text());
    }

    @Property(tries = 500, seed = "20261125")
    void anyTextIsReadWithoutAnException(@ForAll String text) {
        readAll(text);
        readAll("---\n" + text + "\n---\n");
    }

    @Property(tries = 3_000, seed = "20261125")
    void anyYamlIsReadWithoutAnException(@ForAll("nearYaml") String yaml) {
        readAll("---\n" + yaml + "\n---\nbody\n");
    }

    @Property(tries = 500, seed = "20261125")
    void anyBytesAreReadWithoutAnException(@ForAll byte[] bytes) {
        SafeText text = SafeText.of(bytes);
        assertTrue(StandardCharsets.UTF_8.newEncoder().canEncode(text.text()));
        readAll(text.text());
    }

    @Provide
    Arbitrary<String> nearYaml() {
        return Arbitraries.of(
                        "a", "key", ": ", ":", "- ", "-", "\n", "\n  ", "\n    ", " ", "\t", "[",
                        "]", "{", "}", ",", "'", "\"", "\\", "|", ">", "|2", "*a", "&a ", "!!str ",
                        "!", "#", " # ", "? ", "%", "@", "`", "---", "...", "\r", "<<", "~", "1.5",
                        "\uFEFF", "\u2028", "𝛾", "\uD800", "\0", "{{a}}")
                .list()
                .ofMaxSize(40)
                .map(parts -> String.join("", parts));
    }

    /** Reads as callers do, and asks for every key in every way. */
    private static List<Finding> readAll(String text) {
        ContentFile file = ContentReader.read("f.md", text);
        Fields fields = file.fields();
        fields.text("title");
        fields.words("skills");
        for (String key : List.of("a", "key")) {
            fields.text(key);
            fields.whole(key, 1, 4);
            fields.number(key);
            fields.words(key);
            fields.map(key).map("a").noOthers();
            fields.maps(key);
            fields.optionalScalar(key).ifPresent(HostileFileTest::askForPlaces);
        }
        fields.noOthers();
        List<Finding> findings = file.findings().list();
        findings.forEach(Finding::text);
        return findings;
    }

    private static void askForPlaces(ScalarNode node) {
        for (int i = 0; i <= Math.min(node.text().length(), 50); i++) {
            node.at(i);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldsTest {
    private ContentFile file;

    private Fields fields(String front) {
        file = ContentReader.read("f.md", "---\n" + front + "\n---\n");
        return file.fields();
    }

    private String shown() {
        return String.join("\n", file.findings().list().stream().map(Finding::text).toList());
    }

    private List<String> oneLines() {
        return file.findings().list().stream().map(Finding::oneLine).toList();
    }

    @Test
    void readsEveryKindOfValue() {
        Fields f =
                fields(
                        """
                        title: The spring
                        level: 3
                        share: −2.5e-1
                        kind: steps
                        skills: [a, b c]
                        needs: one
                        open: yes
                        items: [1, {x: 2}]
                        givens: {boost: 12 kPa}
                        parts:
                          - name: pipe
                          - name: gate""");
        assertEquals("The spring", f.text("title"));
        assertEquals(3, f.whole("level", 1, 4));
        assertEquals(-0.25, f.number("share"), 0.0);
        assertEquals("steps", f.oneOf("kind", List.of("number", "steps")));
        assertEquals(List.of("a", "b c"), f.words("skills"));
        assertEquals(List.of("one"), f.words("needs"));
        assertTrue(f.flag("open", false));
        assertEquals(2, f.list("items").size());
        Fields givens = f.map("givens");
        assertEquals(List.of("boost"), givens.names());
        assertEquals("12 kPa", givens.scalar("boost").orElseThrow().text());
        assertEquals(
                List.of("pipe", "gate"),
                f.maps("parts").stream().map(part -> part.text("name")).toList());
        assertEquals(new Place(2, 8), f.place("title"));
        assertEquals(new Place(3, 1), f.keyPlace("level"));
        f.noOthers();
        givens.noOthers();
        assertEquals("", shown());
    }

    @Test
    void whatIsNotThereMayBeLeftOut() {
        Fields f = fields("title: x");
        assertEquals(Optional.empty(), f.optionalText("note"));
        assertEquals(Optional.empty(), f.optionalScalar("note"));
        assertEquals(Optional.empty(), f.optionalMap("note"));
        assertEquals(Optional.empty(), f.optionalNode("note"));
        assertEquals(List.of(), f.optionalWords("note"));
        assertEquals(List.of(), f.optionalScalars("note"));
        assertEquals(List.of(), f.optionalList("note"));
        assertEquals(List.of(), f.optionalMaps("note"));
        assertEquals(7, f.whole("note", 1, 9, 7));
        assertEquals(1.5, f.number("note", 1.5), 0.0);
        assertEquals("b", f.oneOf("note", List.of("a", "b"), "b"));
        assertTrue(f.flag("note", true));
        assertFalse(f.flag("note", false));
        assertFalse(f.has("note"));
        assertEquals("", shown());
    }

    @Test
    void allThatIsMissingIsSaidAtOnce() {
        Fields f = fields("other: x");
        assertEquals("", f.text("title"));
        assertEquals(1, f.whole("level", 1, 4));
        assertEquals(0, f.number("share"), 0.0);
        assertEquals("number", f.oneOf("kind", List.of("number", "steps")));
        assertEquals(List.of(), f.words("skills"));
        assertEquals(List.of(), f.list("items"));
        assertEquals(List.of(), f.maps("parts"));
        assertEquals("", f.map("givens").text("nothing asked for here"));
        assertEquals(
                List.of(
                        "f.md:2:1: missing key \"title\"",
                        "f.md:2:1: missing key \"level\"",
                        "f.md:2:1: missing key \"share\"",
                        "f.md:2:1: missing key \"kind\"",
                        "f.md:2:1: missing key \"skills\"",
                        "f.md:2:1: missing key \"items\"",
                        "f.md:2:1: missing key \"parts\"",
                        "f.md:2:1: missing key \"givens\""),
                oneLines());
        assertEquals(
                """
                f.md:2:1: missing key "title"
                     2 | other: x
                         ^
                  expected: text
                  to mend:  add "title: some text\"""",
                file.findings().list().get(0).text());
    }

    @Test
    void whatIsMissingInsideSaysWhere() {
        Fields f = fields("givens:\n  boost: {value: 3}\nparts:\n  - {}");
        f.map("givens").map("boost").text("unit");
        f.maps("parts").get(0).text("name");
        assertEquals(
                List.of(
                        "f.md:3:10: missing key \"unit\" in \"boost\"",
                        "f.md:5:5: missing key \"name\" in \"parts\""),
                oneLines());
    }

    @Test
    void anUnknownKeyIsComparedWithTheKnownOnes() {
        Fields f = fields("title: x\nskils: y\ncolour: z");
        f.text("title");
        f.optionalText("minutes");
        f.optionalWords("skills");
        f.noOthers();
        assertEquals(
                """
                f.md:3:1: unknown key "skils"
                     3 | skils: y
                         ^
                  expected: one of: skills, title, minutes
                  to mend:  did you mean "skills"?
                f.md:4:1: unknown key "colour"
                     4 | colour: z
                         ^
                  expected: one of: title, skills, minutes
                  to mend:  delete the key, or look up its name""",
                shown());
    }

    @Test
    void aWordOutsideTheChoiceIsComparedWithIt() {
        Fields f = fields("kind: stpes");
        assertEquals("number", f.oneOf("kind", List.of("number", "steps")));
        assertEquals(
                """
                f.md:2:7: "kind" is "stpes"
                     2 | kind: stpes
                               ^
                  expected: one of: steps, number
                  to mend:  did you mean "steps"?""",
                shown());
    }

    @ParameterizedTest
    @CsvSource({"0", "5", "2.0", "two", "99999999999999999999", "''", "1e0"})
    void aWholeNumberOutsideItsRangeIsRefused(String typed) {
        Fields f = fields("level: " + (typed.isEmpty() ? "''" : typed));
        assertEquals(1, f.whole("level", 1, 4));
        assertEquals(
                """
                f.md:2:8: "level" is "%s"
                     2 | level: %s
                                ^
                  expected: a whole number from 1 to 4
                  to mend:  write "level: 1\""""
                        .formatted(typed, typed.isEmpty() ? "''" : typed),
                shown());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3,5 | write \"3.5\"",
                "14 psi | write \"14\"",
                "-2.5kPa | write \"-2.5\"",
                "NaN | write \"share: 1.5\"",
                "Infinity | write \"share: 1.5\"",
                "1e999 | write \"share: 1.5\"",
                "0x10 | write \"share: 1.5\"",
                "1d | write \"1\"",
                "1.2.3 | write \"share: 1.5\""
            })
    void aNumberIsPlainAndFinite(String typed, String mend) {
        Fields f = fields("share: " + typed);
        assertEquals(0, f.number("share"), 0.0);
        assertEquals(List.of("f.md:2:8: \"share\" is \"" + typed + "\""), oneLines());
        assertEquals("a number without a unit", file.findings().list().get(0).expected());
        assertEquals(mend, file.findings().list().get(0).mend());
    }

    @Test
    void aWrongKindSaysWhatWasExpected() {
        Fields f = fields("title: [a]\nskills: {a: 1}\nparts: x\ngivens: [1]\nlevel: {}\nempty:");
        assertEquals("", f.text("title"));
        assertEquals(List.of(), f.words("skills"));
        assertEquals(List.of(), f.maps("parts"));
        assertEquals("", f.map("givens").text("anything"));
        assertEquals(1, f.whole("level", 1, 4));
        assertEquals("", f.text("empty"));
        assertEquals(
                List.of(
                        "f.md:2:8: \"title\" is a list",
                        "f.md:3:9: \"skills\" is a map",
                        "f.md:4:8: \"parts\" is text",
                        "f.md:5:9: \"givens\" is a list",
                        "f.md:6:8: \"level\" is a map",
                        "f.md:7:1: \"empty\" is empty"),
                oneLines());
        assertEquals(
                """
                f.md:3:9: "skills" is a map
                     3 | skills: {a: 1}
                                 ^
                  expected: a word or a list of words
                  to mend:  write "skills: [first, second]\"""",
                file.findings().list().get(1).text());
    }

    @Test
    void itemsOfTheWrongKindAreLeftOutAndNumbered() {
        Fields f = fields("skills: [a, {b: 1}, '', c]\nparts: [x, {name: y}]");
        assertEquals(List.of("a", "c"), f.words("skills"));
        assertEquals("y", f.maps("parts").get(0).text("name"));
        assertEquals(
                List.of(
                        "f.md:2:13: item 2 of \"skills\" is a map",
                        "f.md:2:21: item 3 of \"skills\" is empty",
                        "f.md:3:9: item 1 of \"parts\" is text"),
                oneLines());
    }

    @Test
    void anEmptyListIsAFindingWhereOneIsNeeded() {
        Fields f = fields("skills: []");
        assertEquals(List.of(), f.words("skills"));
        assertEquals(List.of("f.md:2:9: \"skills\" is an empty list"), oneLines());
    }

    @Test
    void whatWasRefusedWhileReadingIsNotReportedAgain() {
        Fields f = fields("title: *x\nskills: [*x, b]\nlevel: *x\nparts: [*x]\ngivens: !x {}");
        assertEquals("", f.text("title"));
        assertEquals(List.of("b"), f.words("skills"));
        assertEquals(2, f.whole("level", 1, 4, 2));
        assertEquals(List.of(), f.maps("parts"));
        assertEquals("", f.map("givens").text("x"));
        f.noOthers();
        assertEquals(5, file.findings().list().size(), this::shown);
    }

    @Test
    void afterAnUnreadableFrontMatterNothingMoreIsAskedFor() {
        Fields f = fields("title: 'open");
        assertEquals("", f.text("title"));
        assertEquals(List.of(), f.words("skills"));
        assertEquals(List.of("f.md:2:8: the quote that opens here has no end"), oneLines());
    }

    @Test
    void aHugeKeyIsQuotedInPart() {
        Fields f = fields("? " + "k".repeat(150) + "\n: 1");
        f.noOthers();
        assertEquals(List.of("f.md:2:3: unknown key \"" + "k".repeat(59) + "…\""), oneLines());
        assertEquals("no keys here", file.findings().list().get(0).expected());
    }
}

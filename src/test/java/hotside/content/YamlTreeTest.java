// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YamlTreeTest {
    private static ContentFile read(String front) {
        return ContentReader.read("f.md", "---\n" + front + "\n---\n");
    }

    private static MapNode good(String front) {
        ContentFile file = read(front);
        assertEquals(List.of(), file.findings().list());
        return file.front();
    }

    private static ScalarNode scalar(MapNode map, String key) {
        return assertInstanceOf(ScalarNode.class, map.get(key).orElseThrow());
    }

    private static String shown(String front) {
        return String.join(
                "\n", read(front).findings().list().stream().map(Finding::text).toList());
    }

    /** A place in the file really is where the character stands. */
    private static void assertAt(ContentFile file, ScalarNode node, int offset) {
        Place place = node.at(offset);
        String line = file.text().lines().toList().get(place.line() - 1);
        int inFile = line.codePointAt(line.offsetByCodePoints(0, place.column() - 1));
        assertEquals(node.text().codePointAt(offset), inFile, place.toString());
    }

    @Test
    void everyNodeKnowsItsPlaceInTheFile() {
        MapNode map = good("title: Spring\ninputs:\n  boost: [12 kPa, {at: 3}]");
        assertEquals(new Place(2, 1), map.place());
        assertEquals(new Place(2, 8), scalar(map, "title").place());
        assertEquals(new Place(3, 1), map.keyPlace("inputs"));
        MapNode inputs = assertInstanceOf(MapNode.class, map.get("inputs").orElseThrow());
        assertEquals(new Place(4, 3), inputs.place());
        ListNode boost = assertInstanceOf(ListNode.class, inputs.get("boost").orElseThrow());
        assertEquals(new Place(4, 10), boost.place());
        assertEquals(new Place(4, 11), boost.items().get(0).place());
        MapNode last = assertInstanceOf(MapNode.class, boost.items().get(1));
        assertEquals(new Place(4, 24), scalar(last, "at").place());
    }

    @Test
    void scalarsStayAsWritten() {
        MapNode map = good("a: 12.5 kPa\nb: yes\nc: 1e3\nd: ~\ne: 0x1F\nf: 2026-01-01\ng: '1'");
        assertEquals("12.5 kPa", scalar(map, "a").text());
        assertEquals("yes", scalar(map, "b").text());
        assertEquals("1e3", scalar(map, "c").text());
        assertEquals("~", scalar(map, "d").text());
        assertEquals("0x1F", scalar(map, "e").text());
        assertEquals("2026-01-01", scalar(map, "f").text());
        assertEquals("1", scalar(map, "g").text());
    }

    @Test
    void keysKeepTheOrderOfTheFile() {
        assertEquals(
                List.of("z", "a", "m"), List.copyOf(good("z: 1\na: 2\nm: 3").entries().keySet()));
    }

    @Test
    void aCharacterInsideAScalarIsFoundInTheFile() {
        ContentFile file =
                read(
                        "plain: 𝛾 = x\nquoted: '𝛾 = x'\nliteral: |\n\n    if x\n      then y\nempty: ''");
        assertEquals(List.of(), file.findings().list());
        for (String key : List.of("plain", "quoted")) {
            ScalarNode node = scalar(file.front(), key);
            assertAt(file, node, node.text().indexOf('x'));
        }
        ScalarNode literal = scalar(file.front(), "literal");
        assertEquals("\nif x\n  then y\n", literal.text());
        assertAt(file, literal, literal.text().indexOf('x'));
        assertAt(file, literal, literal.text().indexOf('y'));
        assertEquals(new Place(8, 9), scalar(file.front(), "empty").at(5));
    }

    @Test
    void joinedLinesArePlacedAtTheirStart() {
        MapNode map = good("plain: one\n  two\nfolded: >\n  one\n  two\nquoted: 'one\n  two'");
        for (String key : List.of("plain", "folded", "quoted")) {
            ScalarNode node = scalar(map, key);
            assertEquals("one two", node.text().strip());
            assertEquals(node.place(), node.at(5));
        }
    }

    @Test
    void commentsAndBlankLinesAreAllowed() {
        MapNode map = good("# about\n\ntitle: Spring # a comment\n\n");
        assertEquals("Spring", scalar(map, "title").text());
        assertEquals(new Place(4, 1), map.keyPlace("title"));
    }

    @Test
    void aKeyTwiceIsFoundWithBothPlacesAndTheFirstCounts() {
        assertEquals(
                """
                f.md:4:1: key "title" a second time; the first is at 2:1
                     4 | title: Gate
                         ^
                  expected: each key once
                  to mend:  delete one of the two, or join their values""",
                shown("title: Spring\nlevel: 1\ntitle: Gate"));
        assertEquals("Spring", scalar(read("title: Spring\ntitle: Gate").front(), "title").text());
    }

    @Test
    void aTagIsRefusedAndNothingIsConstructed() {
        ContentFile file = read("a: !!javax.script.ScriptEngineManager [x]\nb: 1");
        assertEquals(
                """
                f.md:2:4: "!" at the start of a value gives it a type, which is not done here
                     2 | a: !!javax.script.ScriptEngineManager [x]
                            ^
                  expected: text, a number, a list or a map
                  to mend:  delete the type, or put text that begins with "!" in single quotes""",
                file.findings().list().get(0).text());
        assertEquals(1, file.findings().list().size());
        assertTrue(scalar(file.front(), "a").isFaulty());
        assertEquals("1", scalar(file.front(), "b").text());
    }

    @Test
    void aliasAndAnchorAreRefusedEachAtItsPlace() {
        ContentFile file = read("a: &x [1]\nb: *x\nc: 1");
        assertEquals(
                List.of(new Place(2, 4), new Place(3, 4)),
                file.findings().list().stream().map(Finding::place).toList());
        assertTrue(scalar(file.front(), "b").isFaulty());
        assertTrue(file.frontRead());
    }

    @Test
    void texInDoubleQuotesIsRefusedBeforeItLosesItsCommands() {
        assertEquals(
                """
                f.md:3:7: a backslash in double quotes
                     3 | b: "x \\theta"
                               ^
                  expected: \\\\ or \\" if the quotes are double
                  to mend:  put the text in single quotes, where a backslash is a backslash""",
                shown("a: \"\\\\theta \\\"\"\nb: \"x \\theta\"\nc: '\\theta'"));
        assertEquals("\\theta \"", scalar(good("a: \"\\\\theta \\\"\""), "a").text());
        assertEquals("\\theta", scalar(good("a: '\\theta'"), "a").text());
    }

    @Test
    void nestingIsReadToTwentyLevelsAndNoFurther() {
        good("a: " + "[".repeat(18) + "x" + "]".repeat(18));
        String tooDeep = "a: " + "[".repeat(19) + "x" + "]".repeat(19);
        assertEquals(
                "f.md:2:23: maps and lists are nested more than 20 deep\n"
                        + ("     2 | " + tooDeep + "\n")
                        + (" ".repeat(9 + 22) + "^\n")
                        + "  expected: at most 20 levels\n"
                        + "  to mend:  put text that holds brackets in quotes, or nest less",
                shown(tooDeep));
    }

    @Test
    void manyValuesAreReadToALimit() {
        good("a: [" + "x, ".repeat(19_997) + "]");
        ContentFile file = read("a: [" + "x, ".repeat(19_998) + "]");
        assertEquals(
                "more than 20000 values in the front matter", file.findings().list().get(0).what());
        assertFalse(file.frontRead());
    }

    @Test
    void frontMatterThatIsNoMapIsAFinding() {
        assertEquals(
                """
                f.md:2:1: the front matter is a list
                     2 | - x
                         ^
                  expected: lines of a key and its value, "title: …"
                  to mend:  put a key, a colon and a space before each value""",
                shown("- x"));
        assertFalse(read("just text").frontRead());
    }

    @Test
    void aColonInsideAValueIsExplained() {
        assertEquals(
                """
                f.md:2:13: a second ": " in one value
                     2 | title: Boost: what it is
                                     ^
                  expected: one "key: value" on a line, and the keys of one map in one column
                  to mend:  put a value that holds ": " in single quotes, or set the indentation right""",
                shown("title: Boost: what it is"));
    }

    @Test
    void anOpenBracketIsFoundWhereItOpens() {
        assertEquals(
                """
                f.md:2:9: the list that opens here goes wrong at 3:6
                     2 | skills: [a, b
                                 ^
                  expected: [first, second]
                  to mend:  close it with "]", with commas between; quote items that hold ", " or ": \"""",
                shown("skills: [a, b\nlevel: 2"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '¦',
            quoteCharacter = '`',
            value = {
                "a:¶\tb: 1 ¦ 3:1 ¦ a tab in the indentation",
                "a: \"open¶b: 1 ¦ 2:4 ¦ the quote that opens here has no end",
                "a: 'it's' ¦ 2:8 ¦ text after the end of a value",
                "a: @b ¦ 2:4 ¦ a value cannot begin with this character",
                "a: {x: 1¶b: 3 ¦ 2:4 ¦ the map that opens here goes wrong at 3:2",
                "a: {{name}} is ¦ 2:5 ¦ a key that is a map",
                "a: 1¶b¶c: 2 ¦ 3:1 ¦ neither a key with its value nor part of the value above",
                "a: **bold** text ¦ 2:4 ¦ \"*\" at the start of a value points to another one, which"
                        + " is not done here",
                "a: &x 1 ¦ 2:4 ¦ \"&\" at the start of a value names it for use elsewhere, which is"
                        + " not done here",
                "a: !x%zz ¦ 2:4 ¦ \"!\" at the start of a value gives it a type, which is not done"
                        + " here",
                "a: [1, &] ¦ 2:8 ¦ \"&\" at the start of a value names it for use elsewhere, which is"
                        + " not done here",
                "a: pipe text below¶ x: 1 ¦ 3:3 ¦ a second \": \" in one value",
                "b: > text ¦ 2:6 ¦ text after \"|\" or \">\"",
                "b: >¶    ¶  x ¦ 4:3 ¦ lines below \"|\" or \">\" begin further left than the first"
                        + " of them",
                ": v ¦ 2:1 ¦ a colon without a key before it",
                "? [a, b]¶: c ¦ 2:3 ¦ a key that is a list",
                "a: - b ¦ 2:4 ¦ a list begins on the line of its key",
                "a: ? b ¦ 2:4 ¦ a value begins with \"? \"",
                "a: ] ¦ 2:4 ¦ a bracket or comma where a value should be",
                "a:¶  - x¶ - y ¦ 4:2 ¦ this line stands in no column that a line above it began",
                "%FOO bar ¦ 3:1 ¦ a line above begins with \"%\", which speaks to the reader of the"
                        + " file",
                "a: 1¶...¶b: 2 ¦ 4:1 ¦ this line stands further left than the first key, or after an"
                        + " end mark",
                "a: 1¶--- x ¦ 3:1 ¦ a second set of keys and values",
                "%YAML 3.0¶--- x ¦ 2:1 ¦ not readable as YAML: Version{major=3, minor=0}",
            })
    void whatGoesWrongIsSaidPlainlyAtItsPlace(String front, String place, String what) {
        ContentFile file = read(front.replace('¶', '\n'));
        assertEquals(1, file.findings().list().size(), () -> file.findings().list().toString());
        Finding finding = file.findings().list().get(0);
        assertEquals(what, finding.what());
        assertEquals(place, finding.place().toString());
        assertFalse(finding.mend().isEmpty());
    }

    @Test
    void aKeyHasALimitedLength() {
        good("? " + "k".repeat(200) + "\n: 1");
        assertEquals(
                "a key of 201 characters",
                read("? " + "k".repeat(201) + "\n: 1").findings().list().get(0).what());
    }
}

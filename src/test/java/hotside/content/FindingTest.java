// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class FindingTest {
    private static Finding one(String text, Place place) {
        Findings findings = new Findings("f.md", text);
        findings.add(place, "odd", "", "");
        return findings.list().get(0);
    }

    private static String underCaret(Finding finding) {
        String[] lines = finding.text().split("\n");
        int caret = lines[2].indexOf('^');
        return lines[1].substring(caret, caret + 1);
    }

    @Test
    void saysWhatWhereWhatWasExpectedAndHowToMendIt() {
        Findings findings =
                new Findings(
                        "lessons/03-wastegate/spring.md", "\n".repeat(17) + "boost: 14 psig\n");
        findings.add(
                new Place(18, 11),
                "unknown unit \"psig\" in input \"boost\"",
                "a pressure unit: Pa, kPa, bar, psi (absolute)",
                "write \"28.7 psi\", or \"14 psi gauge\"");
        Finding finding = findings.list().get(0);
        assertEquals(
                """
                lessons/03-wastegate/spring.md:18:11: unknown unit "psig" in input "boost"
                    18 | boost: 14 psig
                                   ^
                  expected: a pressure unit: Pa, kPa, bar, psi (absolute)
                  to mend:  write "28.7 psi", or "14 psi gauge\"""",
                finding.text());
        assertEquals(finding.text(), finding.toString());
        assertEquals(
                "lessons/03-wastegate/spring.md:18:11: unknown unit \"psig\" in input \"boost\"",
                finding.oneLine());
    }

    @Test
    void caretStandsUnderItsCharacterBehindTabsAndBeyondTheFirstPlane() {
        assertEquals("x", underCaret(one("\t\tx y", new Place(1, 3))));
        Finding finding = one("𝛾𝛾x y", new Place(1, 3));
        assertEquals(2, finding.excerpt().caret());
        assertEquals("𝛾𝛾x y", finding.excerpt().text());
    }

    @Test
    void aLongLineIsCutRoundTheColumn() {
        String line = "a".repeat(5000) + "x" + "b".repeat(5000);
        Finding finding = one(line, new Place(1, 5001));
        assertEquals("…" + "a".repeat(50) + "x" + "b".repeat(49) + "…", finding.excerpt().text());
        assertEquals("x", underCaret(finding));
        assertEquals("b".repeat(100), one("b".repeat(100), new Place(1, 1)).excerpt().text());
        assertEquals("x", underCaret(one("x" + line, new Place(1, 1))));
        assertEquals("x", underCaret(one(line + "x", new Place(1, 10002))));
    }

    @Test
    void controlAndDirectionCharactersCannotReachATerminal() {
        Findings findings = new Findings("a\u001B[2Jb.md", "a\u001B[31m \u202E x\u009B");
        findings.add(Place.START, "key \"\u001B[2J\"", "\u0007", "\u2066");
        String text = findings.list().get(0).text();
        assertTrue(
                text.chars().allMatch(c -> c == '\n' || c >= ' ' && Character.getType(c) != 16),
                text);
        assertTrue(text.startsWith("a␛[2Jb.md:1:1: key \"␛[2J\""), text);
        assertTrue(text.contains("a␛[31m \uFFFD x\uFFFD"), text);
    }

    @Test
    void aPlaceBeyondTheFileIsShownAtItsEnd() {
        assertEquals(
                "f.md:2:9: odd\n     2 | bc\n           ^", one("a\nbc", new Place(9, 9)).text());
    }

    @Test
    void findingsComeInTheOrderOfTheFileAndOnceEach() {
        Findings findings = new Findings("f.md", "a\nb\n");
        findings.add(new Place(2, 1), "second", "", "");
        findings.add(new Place(1, 1), "first", "", "");
        findings.add(new Place(2, 1), "second", "", "");
        assertEquals(
                List.of("first", "second"), findings.list().stream().map(Finding::what).toList());
    }

    @Test
    void afterAHundredTheRestIsCounted() {
        Findings findings = new Findings("f.md", "a\n".repeat(200));
        for (int line = 1; line <= 103; line++) {
            findings.add(new Place(line, 1), "odd", "", "");
        }
        List<Finding> list = findings.list();
        assertEquals(101, list.size());
        assertEquals(
                "f.md:100:1: 3 more findings in this file are not shown\n"
                        + "  to mend:  mend those above first",
                list.get(100).text());
    }
}

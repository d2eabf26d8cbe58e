// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.Finding;
import hotside.content.Place;
import hotside.unit.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule with a good file and a bad one, which differs in one place. */
class TemplateReaderTest {
    private static final String GOOD =
            """
            ---
            id: push
            title: The push
            skill: gate.push
            level: 1
            kind: number
            givens:
              seat: 38 to 50 by 2 mm
              p3: 80 to 160 by 5 kPa gauge
              ambient: 98.5 kPa
            work:
              push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: ambient}
            ask:
              - {of: push.force, say: the push}
            mistakes:
              - {slip: gauge-as-absolute, at: push.upstream}
            ---
            Seat {{seat}}, tap {{ p3 }}, air {{ambient}}.

            ## Hints

            1. One.
            2. Two,
               longer.
            3. Three.

            ## Why

            Because.
            """;

    private static List<Finding> findings(String good, String bad) {
        assertTrue(GOOD.contains(good), good);
        return SampleProblems.findings(GOOD.replace(good, bad));
    }

    /** One change, one finding, told in full. */
    private static void assertFinds(String good, String bad, String text) {
        List<Finding> findings = findings(good, bad);
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(text.stripTrailing(), findings.get(0).text());
    }

    @Test
    void aGoodFileBecomesATemplate() {
        Template template = SampleProblems.template(GOOD);
        assertEquals("push", template.id());
        assertEquals("gate.push", template.skill());
        assertEquals(Template.Kind.NUMBER, template.kind());
        assertEquals(
                List.of("seat", "p3", "ambient"),
                template.givens().stream().map(Given::name).toList());
        assertEquals(7, template.given("seat").orElseThrow().si().values().size());
        assertEquals(Quantity.FORCE, template.asks().get(0).quantity());
        assertEquals(Ask.Tolerance.USUAL, template.asks().get(0).tolerance());
        assertEquals(
                List.of("gauge-as-absolute@push.upstream"),
                template.mistakes().stream().map(Mistake::id).toList());
        assertEquals("Seat {{seat}}, tap {{ p3 }}, air {{ambient}}.", template.prompt());
        assertEquals(List.of("One.", "Two,\nlonger.", "Three."), template.hints());
        assertEquals("Because.", template.why());
        assertTrue(template.strict());
    }

    @Test
    void anotherTextHasAnotherFingerprint() {
        String one = SampleProblems.template(GOOD).fingerprint();
        assertEquals(one, SampleProblems.template(GOOD).fingerprint());
        assertNotEquals(
                one, SampleProblems.template(GOOD.replace("Because.", "Why not.")).fingerprint());
    }

    @Test
    void anIdHasItsForm() {
        assertFinds(
                "id: push",
                "id: Push_1",
                """
                problem.md:2:5: id "Push_1" has the wrong form
                     2 | id: Push_1
                             ^
                  expected: lower case words joined by hyphens
                """);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    gate.push         | Gate           | 4:8  | skill "Gate" has the wrong form
                    level: 1          | level: 7       | 5:8  | "level" is "7"
                    kind: number      | kind: essay    | 6:7  | unknown kind "essay"
                    title: The push   | colour: red    | 2:1  | missing key "title"
                    title: The push   | title: ''      | 3:1  | "title" is empty
                    """)
    void theHeadHasItsForm(String good, String bad, String place, String what) {
        Finding first = findings(good, bad).get(0);
        assertEquals(what, first.what());
        assertEquals(place, first.place().toString());
    }

    @Test
    void anUnknownKeyIsNamedWithTheKnownOnes() {
        assertFinds(
                "level: 1",
                "level: 1\nlevle: 2",
                """
                problem.md:6:1: unknown key "levle"
                     6 | levle: 2
                         ^
                  expected: one of: level, title, skill, id, kind, givens, work, ask, mistakes
                  to mend:  did you mean "level"?
                """);
    }

    @Test
    void whatIsAskedMustComeOut() {
        assertFinds(
                "of: push.force",
                "of: push.farce",
                """
                problem.md:14:10: nothing is found at "push.farce"
                    14 |   - {of: push.farce, say: the push}
                                  ^
                  expected: one of push.force
                  to mend:  write "push.force"
                """);
        assertFinds(
                "of: push.force",
                "of: push.upstream",
                """
                problem.md:14:10: push.upstream goes in and does not come out
                    14 |   - {of: push.upstream, say: the push}
                                  ^
                  expected: one of push.force
                """);
    }

    @Test
    void anAnswerIsAskedInAUnitOfItsKind() {
        assertFinds(
                "say: the push",
                "say: the push, us: psi",
                """
                problem.md:14:41: unknown unit "psi"
                    14 |   - {of: push.force, say: the push, us: psi}
                                                                 ^
                  expected: a number and a unit: N, kN, kgf, lbf
                """);
        Template template =
                SampleProblems.template(
                        GOOD.replace("say: the push", "say: the push, unit: kN, us: kgf"));
        assertEquals("kN", template.asks().get(0).siScale().label());
        assertEquals("kgf", template.asks().get(0).usScale().label());
    }

    @ParameterizedTest
    @CsvSource({
        "1 %, 0.01, 0",
        "0.5 N, 0, 0.5",
        "1 % or 0.5 N, 0.01, 0.5",
        "2 N or 3 %, 0.03, 2",
    })
    void aToleranceIsAShareAnAmountOrBoth(String text, double relative, double absolute) {
        Ask ask =
                SampleProblems.template(
                                GOOD.replace("say: the push", "say: the push, tolerance: " + text))
                        .asks()
                        .get(0);
        assertEquals(relative, ask.tolerance().relative(), 1e-12);
        assertEquals(absolute, ask.tolerance().absolute(), 1e-12);
        assertEquals(Math.max(relative * 300, absolute), ask.tolerance().band(-300), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"some", "-2 %", "0 %", "1 K", "2"})
    void otherTolerancesAreRefused(String text) {
        Finding finding = findings("say: the push", "say: the push, tolerance: " + text).get(0);
        assertEquals("\"" + text + "\" is no tolerance", finding.what());
        assertEquals(new Place(14, 48), finding.place());
        assertEquals("such as \"2 %\", \"1 K\" or \"2 % or 1 K\"", finding.expected());
    }

    @Test
    void aSlipIsKnown() {
        Finding finding = findings("gauge-as-absolute", "gauge-as-absolut").get(0);
        assertEquals("unknown slip \"gauge-as-absolut\"", finding.what());
        assertEquals(new Place(16, 12), finding.place());
        assertEquals("write \"gauge-as-absolute\"", finding.mend());
    }

    @Test
    void aSlipIsAtAPlaceThatIsThere() {
        assertFinds(
                "at: push.upstream",
                "at: push.upstraem",
                """
                problem.md:16:35: nothing is found at "push.upstraem"
                    16 |   - {slip: gauge-as-absolute, at: push.upstraem}
                                                           ^
                  expected: one of seat, p3, ambient, push.seatDiameter, push.upstream, push.downstream, push.force
                  to mend:  write "push.upstream"
                """);
        assertFinds(
                "at: push.upstream",
                "at: p3, with: p4",
                """
                problem.md:16:45: nothing is found at "p4"
                    16 |   - {slip: gauge-as-absolute, at: p3, with: p4}
                                                                     ^
                  expected: one of seat, p3, ambient, push.seatDiameter, push.upstream, push.downstream, push.force
                  to mend:  write "p3"
                """);
    }

    @Test
    void aSlipThatTakesAnotherValueNamesIt() {
        assertFinds(
                "slip: gauge-as-absolute",
                "slip: taken-instead",
                """
                problem.md:16:12: taken-instead needs another value
                    16 |   - {slip: taken-instead, at: push.upstream}
                                    ^
                  expected: with: and the place of a value
                """);
    }

    @Test
    void aFactorNeedsItsNumberAndItsWords() {
        assertFinds(
                "slip: gauge-as-absolute",
                "slip: factor, factor: 2",
                """
                problem.md:16:12: factor needs your own words
                    16 |   - {slip: factor, factor: 2, at: push.upstream}
                                    ^
                  expected: factor:, if: and check:
                """);
        assertFinds(
                "slip: gauge-as-absolute",
                "slip: factor, factor: two, if: x, check: y",
                """
                problem.md:16:28: "two" is no factor
                    16 |   - {slip: factor, factor: two, if: x, check: y, at: push.upstream}
                                                    ^
                  expected: a number without a unit
                """);
        assertEquals(
                "factor@push.upstream=−0.5",
                SampleProblems.template(
                                GOOD.replace(
                                        "slip: gauge-as-absolute",
                                        "slip: factor, factor: −0.5, if: x, check: y"))
                        .mistakes()
                        .get(0)
                        .id());
    }

    @Test
    void aMistakeStandsThereOnce() {
        String line = "  - {slip: gauge-as-absolute, at: push.upstream}";
        assertFinds(
                line,
                line + "\n" + line,
                """
                problem.md:17:12: the mistake gauge-as-absolute@push.upstream a second time
                    17 |   - {slip: gauge-as-absolute, at: push.upstream}
                                    ^
                  expected: each mistake once
                  to mend:  delete one of the two
                """);
        Template two =
                SampleProblems.template(
                        GOOD.replace(
                                line,
                                "  - {slip: added, at: push.upstream, with: p3}\n"
                                        + "  - {slip: added, at: push.upstream, with: ambient}"));
        assertEquals(
                List.of("added@push.upstream=p3", "added@push.upstream=ambient"),
                two.mistakes().stream().map(Mistake::id).toList());
    }

    @Test
    void theTextTellsEveryGiven() {
        assertFinds(
                ", air {{ambient}}",
                "",
                """
                problem.md:18:1: the text never tells the given ambient
                    18 | Seat {{seat}}, tap {{ p3 }}.
                         ^
                  expected: {{ambient}} in the scenario
                """);
    }

    @Test
    void aGivenToldOnlyInAHintIsNotTold() {
        List<Finding> findings =
                SampleProblems.findings(
                        GOOD.replace(", air {{ambient}}", "").replace("One.", "Air {{ambient}}."));
        assertEquals("the text never tells the given ambient", findings.get(0).what());
    }

    @Test
    void theTextTellsNothingElse() {
        assertFinds(
                "tap",
                "té {{p4}} tap",
                """
                problem.md:18:19: no given is called "p4"
                    18 | Seat {{seat}}, té {{p4}} tap {{ p3 }}, air {{ambient}}.
                                           ^
                  expected: one of seat, p3, ambient
                """);
    }

    @Test
    void aGivenThatCannotBeReadIsNotCalledUnknownToo() {
        List<Finding> findings = findings("by 2 mm", "by 2 parsec");
        assertEquals(1, findings.size(), findings.toString());
    }

    @Test
    void thereAreThreeHints() {
        assertFinds(
                "3. Three.\n",
                "",
                """
                problem.md:20:1: 2 hints
                    20 | ## Hints
                         ^
                  expected: a section ## Hints with a numbered list of exactly three
                  to mend:  the fourth rung, the full working, is computed
                """);
    }

    @Test
    void thereIsAReason() {
        assertEquals(
                "no reason why it matters", findings("## Why\n\nBecause.\n", "").get(0).what());
    }

    @Test
    void aMisspeltSectionIsOneFinding() {
        assertFinds(
                "## Why",
                "## Wy",
                """
                problem.md:27:1: unknown section "Wy"
                    27 | ## Wy
                         ^
                  expected: ## Hints or ## Why
                """);
    }

    @Test
    void thereIsAScenario() {
        List<Finding> findings = findings("Seat {{seat}}, tap {{ p3 }}, air {{ambient}}.", "");
        assertEquals(List.of("no scenario"), findings.stream().map(Finding::what).toList());
    }

    @Test
    void oneNumberIsOneQuestion() {
        String ask = "  - {of: push.force, say: the push}\n";
        assertFinds(
                ask,
                ask + ask,
                """
                problem.md:14:3: a problem of kind number asks 2 things
                    14 |   - {of: push.force, say: the push}
                           ^
                  expected: one
                  to mend:  write kind: steps
                """);
        assertEquals(
                2,
                SampleProblems.template(
                                GOOD.replace(ask, ask + ask).replace("kind: number", "kind: steps"))
                        .asks()
                        .size());
    }

    @Test
    void allFindingsComeAtOnceInTheOrderOfTheFile() {
        String bad =
                GOOD.replace("gate.push", "Gate")
                        .replace("by 2 mm", "by 2 parsec")
                        .replace("valve-force", "valve-farce")
                        .replace("gauge-as-absolute", "gauge-as-relative")
                        .replace("{{ambient}}", "{{air}}")
                        .replace("2. Two,\n   longer.\n", "");
        assertEquals(
                List.of(
                        "4:8 skill \"Gate\" has the wrong form",
                        "8:23 unknown unit \"parsec\" for a pure number",
                        "12:20 unknown relation \"valve-farce\"",
                        "16:12 unknown slip \"gauge-as-relative\"",
                        "18:1 the text never tells the given ambient",
                        "18:34 no given is called \"air\"",
                        "20:1 2 hints"),
                SampleProblems.findings(bad).stream()
                        .map(f -> f.place() + " " + f.what())
                        .toList());
    }

    @Test
    void aFileWithAFindingBecomesNoTemplate() {
        var file =
                hotside.content.ContentReader.read(
                        "problem.md", GOOD.replace("level: 1", "level: 9"));
        assertEquals(Optional.empty(), TemplateReader.read(file));
        assertFalse(file.findings().isEmpty());
    }

    @Test
    void resultsBesideASolvedInputCanBeAskedFor() {
        String text =
                GOOD.replace(
                                "seat: 38 to 50 by 2 mm",
                                "cup: 60 to 90 by 2 mm\n  boost: 60 to 90 by 5 kPa gauge")
                        .replace(
                                "push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: ambient}",
                                "crack: {relation: crack-pressure, solve: preload, boost: boost, diaphragmDiameter: cup,"
                                        + " seatDiameter: 30 mm, turbineInletAtZeroBoost: p3, turbineInletSlope: 1,"
                                        + " downstream: ambient, signalShare: 100 %}")
                        .replace("push.force", "crack.upstream")
                        .replace("at: push.upstream", "at: p3")
                        .replace("{{seat}}", "{{cup}} {{boost}}");
        assertEquals("crack.upstream", SampleProblems.template(text).asks().get(0).place());
        List<Finding> fed =
                SampleProblems.findings(text.replace("of: crack.upstream", "of: crack.boost"));
        assertEquals("crack.boost goes in and does not come out", fed.get(0).what());
        assertTrue(fed.get(0).expected().startsWith("one of crack.preload, crack.upstream"));
    }
}

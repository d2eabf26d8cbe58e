// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.ContentFile;
import hotside.content.ContentReader;
import hotside.content.Finding;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule with a good file and a bad one, which differs in one place. */
class LessonReaderTest {
    private static final String GOOD =
            """
            ---
            title: What opens a gate
            strand: Gate
            skills: [gate.valve-force]
            needs: duct.pressure
            minutes: 15
            sources: our own
            cautions: A turbine housing burns.
            values:
              seat: 46 mm
              p3: 80 kPa gauge
              ambient: 98.5 kPa
              pulls: 149.6 150.9 kW
            work:
              push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: ambient}
              mean: {relation: mean-spread, sample: pulls}
            ---
            # A heading

            The push is {{push.force}}, the seat {{seat}}.

            ```calculator valve-force
            seatDiameter: 46 mm
            upstream: p3
            over: upstream
            curve: force
            ```

            ```worked push mean
            It is {{push.force in lbf}}.
            ```

            ```problem gate-push
            ```

            ```chart pipe-friction-drop
            title: One flow, three bores
            x: massFlow from 50 g/s to 500 g/s
            y: drop
            by: diameter = 63 mm, 76 mm, 89 mm
            length: 2.5 m
            ```

            ```note
            Beside: {{p3}}.
            ```

            - a list

              ```caution
              Hot: {{change from seat to seat}}.
              ```

            ```java
            code
            ```
            """;

    private static ContentFile file(String text) {
        return ContentReader.read("lessons/02-gate/03-opening.md", text);
    }

    private static Lesson lesson(String text) {
        ContentFile file = file(text);
        return LessonReader.read(file)
                .orElseThrow(() -> new AssertionError(file.findings().list().toString()));
    }

    private static List<Finding> findings(String good, String bad) {
        assertTrue(GOOD.contains(good), good);
        ContentFile file = file(GOOD.replace(good, bad));
        assertEquals(Optional.empty(), LessonReader.read(file));
        return file.findings().list();
    }

    private static void assertFinds(String good, String bad, String text) {
        List<Finding> findings = findings(good, bad);
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(
                text.stripTrailing(),
                findings.get(0).text().replace("lessons/02-gate/03-opening.md", "l.md"));
    }

    @Test
    void aGoodFileBecomesALesson() {
        Lesson lesson = lesson(GOOD);
        assertEquals("gate/opening", lesson.id());
        assertEquals("What opens a gate", lesson.title());
        assertEquals(List.of("gate.valve-force"), lesson.skills());
        assertEquals(List.of("duct.pressure"), lesson.needs());
        assertEquals(15, lesson.minutes());
        assertEquals(List.of("gate-push"), lesson.problems());
        assertEquals(
                List.of(
                        "Calculator",
                        "WorkedExample",
                        "ProblemCard",
                        "ChartFigure",
                        "Aside",
                        "Aside"),
                lesson.parts().stream().map(part -> part.getClass().getSimpleName()).toList());
        assertEquals(98.5e3 + 80e3, lesson.values().number("p3"), 1e-6);
        assertEquals(3 + 1, lesson.texts().size(), "the text, two asides, the worked example");
    }

    @Test
    void aCalculatorStartsWhereItIsTold() {
        Part.Calculator part = assertInstanceOf(Part.Calculator.class, lesson(GOOD).parts().get(0));
        assertEquals(0.046, part.start().number("seatDiameter"), 1e-12);
        assertEquals(178.5e3, part.start().number("upstream"), 1e-6);
        assertEquals(
                part.relation().slot("downstream").orElseThrow().typical(),
                part.start().get("downstream"));
        assertEquals("upstream", part.over().orElseThrow().name());
        assertEquals("force", part.curve().name());
    }

    @Test
    void aChartHasItsAxisAndItsCurves() {
        Part.ChartFigure part =
                assertInstanceOf(Part.ChartFigure.class, lesson(GOOD).parts().get(3));
        assertEquals(0.05, part.from(), 1e-12);
        assertEquals(0.5, part.to(), 1e-12);
        assertEquals(List.of(0.063, 0.076, 0.089), part.each());
        assertEquals(2.5, part.fixed().number("length"), 1e-12);
        assertEquals("drop", part.y().name());
    }

    @Test
    void readingsWithAUnitMakeACalculatorSpeakIt() {
        String text =
                GOOD.replace(
                        "```calculator valve-force\nseatDiameter: 46 mm\nupstream: p3\nover: upstream\ncurve: force\n",
                        "```calculator mean-spread\nsample: 149.6 150.9 kW\n");
        Part.Calculator part = assertInstanceOf(Part.Calculator.class, lesson(text).parts().get(0));
        assertEquals(hotside.unit.Quantity.POWER, part.curve().quantity());
        assertEquals(List.of(149600.0, 150900.0), part.start().numbers("sample"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    minutes: 15        | minutes: 0         | 6:10 | "minutes" is "0"
                    gate.valve-force   | Gate force         | 4:10 | skill "Gate force" has the wrong form
                    duct.pressure      | pressure           | 5:8  | skill "pressure" has the wrong form
                    seat: 46 mm        | seat: 4 to 6 by 1 mm | 10:9 | seat has several values
                    seat: 46 mm        | seat: 46 parsec    | 10:12 | unknown unit "parsec" for a length
                    strand: Gate       | strand: ''         | 3:1  | "strand" is empty
                    """)
    void theHeadHasItsForm(String good, String bad, String place, String what) {
        Finding first = findings(good, bad).get(0);
        assertEquals(what, first.what());
        assertEquals(place, first.place().toString());
    }

    @Test
    void aNamedValueOfTwoKindsIsRefused() {
        assertFinds(
                "  mean: {",
                "  cup: {relation: diaphragm-force, signalPressure: p3, diaphragmDiameter: 60 mm}\n  mean: {",
                """
                l.md:11:3: p3 feeds an absolute pressure and, in cup.signalPressure, a gauge pressure
                    11 |   p3: 80 kPa gauge
                           ^
                  expected: one kind of value
                  to mend:  turn one kind into the other with a relation, or use two givens
                """);
    }

    @Test
    void workThatHasNoResultIsSaid() {
        Finding finding = findings("80 kPa gauge", "80 MPa").get(0);
        assertEquals(
                "valve-force: upstream = 8.0E7 is outside [0.0, 2000000.0] Pa abs", finding.what());
        ContentFile file =
                file(
                        GOOD.replace("80 kPa gauge", "80 MPa")
                                .replace("upstream: p3\nover", "upstream: 2 bar\nover"));
        assertEquals(Optional.empty(), LessonReader.read(file));
        assertEquals(
                "the lesson's work has no result: valve-force: upstream = 8.0E7 is outside [0.0, 2000000.0] Pa abs",
                file.findings().list().get(0).what());
    }

    @Test
    void proseComputesWhatIsThere() {
        assertFinds(
                "{{push.force}}, the",
                "{{push.farce}}, the",
                """
                l.md:20:13: nothing is computed by "push.farce"
                    20 | The push is {{push.farce}}, the seat {{seat}}.
                                     ^
                  expected: a named value, use.slot, a - b, a / b or change from a to b
                """);
    }

    /** Places inside a part are those of the file. */
    @Test
    void proseInsideAPartIsCheckedAtItsPlaceInTheFile() {
        assertFinds(
                "Beside: {{p3}}",
                "Beside: {{p4}}",
                """
                l.md:45:9: nothing is computed by "p4"
                    45 | Beside: {{p4}}.
                                 ^
                  expected: a named value, use.slot, a - b, a / b or change from a to b
                """);
        assertFinds(
                "{{push.force in lbf}}",
                "{{push.force in psi}}",
                """
                l.md:30:7: nothing is computed by "push.force in psi"
                    30 | It is {{push.force in psi}}.
                               ^
                  expected: a named value, use.slot, a - b, a / b or change from a to b
                """);
        assertFinds(
                "Hot: {{change",
                "Höt: {{chnge",
                """
                l.md:51:8: nothing is computed by "chnge from seat to seat"
                    51 |   Höt: {{chnge from seat to seat}}.
                                ^
                  expected: a named value, use.slot, a - b, a / b or change from a to b
                """);
    }

    /** Columns count characters as people see them: a wide one is one. */
    @Test
    void columnsCountWideCharactersOnce() {
        Finding finding = findings("The push is {{push.force}}", "\uD83D\uDE00 push {{no}}").get(0);
        assertEquals("20:8", finding.place().toString());
    }

    @Test
    void aBlockHasAKnownKind() {
        assertFinds(
                "```calculator",
                "```calculater",
                """
                l.md:22:4: unknown block "calculater"
                    22 | ```calculater valve-force
                            ^
                  expected: one of calculator, problem, worked, faded, chart, diagram, predict, note, caution
                  to mend:  write "calculator"
                """);
    }

    @Test
    void aPartNamesAKnownRelation() {
        Finding finding = findings("calculator valve-force", "calculator valve-farce").get(0);
        assertEquals("unknown relation \"valve-farce\"", finding.what());
        assertEquals("22:15", finding.place().toString());
        assertEquals("write \"valve-force\"", finding.mend());
        assertEquals(
                "unknown relation \"\"",
                findings("calculator valve-force", "calculator").get(0).what());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    seatDiameter: 46 mm | seatDiametre: 46 mm | 23:1  | no slot is called "seatDiametre"
                    seatDiameter: 46 mm | seatDiameter: 46 psi | 23:15 | "46 psi" is no value for seatDiameter
                    seatDiameter: 46 mm | seatDiameter: 460 mm | 23:15 | 460 mm is outside the range of seatDiameter
                    seatDiameter: 46 mm | seatDiameter         | 23:1 | this line says nothing
                    over: upstream      | upstream: 2 bar      | 25:1 | "upstream" stands here twice
                    over: upstream      | over: upstraem       | 25:7 | no slot is called "upstraem"
                    curve: force        | curve: farce         | 26:8 | no slot is called "farce"
                    over: upstream      | downstream: seat     | 25:13 | seat does not fit downstream
                    worked push mean    | worked push maen     | 29:16 | a worked block names what the lesson works
                    worked push mean    | worked               | 29:10 | a worked block names what the lesson works
                    problem gate-push   | problem              | 33:11 | a problem block names one problem
                    problem gate-push   | problem one two      | 33:12 | a problem block names one problem
                    title: One flow, three bores | length: 2 m | 36:1 | this chart is incomplete
                    massFlow from 50 g/s to | massFlow 50 g/s to | 38:4 | "massFlow 50 g/s to 500 g/s" is no axis
                    massFlow from 50 g/s | masFlow from 50 g/s | 38:4 | no slot is called "masFlow"
                    massFlow from 50 g/s | massFlow from 50 mm | 38:18 | "50 mm" is no value for massFlow
                    to 500 g/s          | to 5 g/s             | 38:4 | this axis has no length
                    y: drop             | y: dorp              | 39:4 | no slot is called "dorp"
                    diameter = 63 mm    | diameter 63 mm       | 40:5 | "diameter 63 mm, 76 mm, 89 mm" tells no curves apart
                    = 63 mm, 76 mm, 89 mm | = ,,             | 40:5 | "diameter = ,," tells no curves apart
                    76 mm               | 76 kg                | 40:23 | "76 kg" is no value for diameter
                    63 mm, 76 mm, 89 mm | 1 mm, 2 mm, 3 mm, 4 mm, 5 mm, 6 mm, 7 mm | 40:5 | 7 curves in one chart
                    length: 2.5 m       | length: 250 m        | 41:9 | 250 m is outside the range of length
                    """)
    void partsHaveTheirForm(String good, String bad, String place, String what) {
        Finding first = findings(good, bad).get(0);
        assertEquals(what, first.what());
        assertEquals(place, first.place().toString());
    }

    @Test
    void aCurveRunsOverANumber() {
        List<Finding> findings =
                findings(
                        "```java",
                        "```calculator cooler-effectiveness\nover: arrangement\n```\n\n```java");
        assertEquals(
                List.of("no slot is called \"arrangement\""),
                findings.stream().map(Finding::what).toList());
    }

    @Test
    void aWordThatIsNoChoiceIsSaidAtItsPlace() {
        Finding finding =
                findings(
                                "```java",
                                "```calculator cooler-effectiveness\narrangement: sideways\n```\n\n```java")
                        .get(0);
        assertEquals("55:14", finding.place().toString());
        assertTrue(finding.what().contains("one of crossflow, counterflow"), finding.what());
    }

    @Test
    void allFindingsComeAtOnceInTheOrderOfTheFile() {
        ContentFile file =
                file(
                        GOOD.replace("minutes: 15", "minutes: long")
                                .replace("46 mm\n  p3", "46 parsec\n  p3")
                                .replace("calculator valve-force", "calculator valve-farce")
                                .replace("y: drop", "y: dorp"));
        LessonReader.read(file);
        assertEquals(
                List.of(
                        "6:10 \"minutes\" is \"long\"",
                        "10:12 unknown unit \"parsec\" for a length",
                        "22:15 unknown relation \"valve-farce\"",
                        "39:4 no slot is called \"dorp\""),
                file.findings().list().stream().map(f -> f.place() + " " + f.what()).toList());
    }

    @Test
    void tooManyFormulasAreOneFinding() {
        Finding finding = findings("# A heading", "$a$ ".repeat(700)).get(0);
        assertEquals("700 formulas in one lesson", finding.what());
        assertEquals("18:2401", finding.place().toString());
    }

    @ParameterizedTest
    @CsvSource({
        "lessons/02-gate/03-opening.md, gate/opening",
        "02-gate/10-what-opens.md, gate/what-opens",
        "gate/opening.md, gate/opening",
        "03-opening.md, opening",
        "a\\02-gate\\03-opening.md, gate/opening",
    })
    void aLessonIsCalledByStrandAndNameWithoutNumbers(String path, String id) {
        assertEquals(id, LessonReader.id(path));
    }

    /** What computed prose says; the numbers are reckoned by hand. */
    @Nested
    class ComputedTest {
        private static final Lesson LESSON = lesson(GOOD);

        private static Optional<String> text(String expression, UnitSystem system) {
            return new Computed(LESSON, system)
                    .text(expression)
                    .map(text -> text.replace('\u00a0', ' '));
        }

        /** π/4 · (46 mm)² · 80 kPa = 132.95 N = 29.89 lbf; 46 mm = 1.811 in; 80 kPa = 11.60 psi. */
        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                textBlock =
                        """
                        push.force                 | 133 N            | 29.9 lbf
                        push.force, 2 digits       | 130 N            | 30 lbf
                        push.force in kN, 4 digits | 0.1330 kN        | 0.1330 kN
                        seat                       | 46.0 mm          | 1.81 in
                        p3                         | 80.0 kPa gauge   | 11.6 psi gauge
                        ambient                    | 98.5 kPa abs     | 14.3 psi abs
                        push.upstream - push.downstream | 80.0 kPa    | 11.6 psi
                        push.upstream / push.downstream | 1.81        | 1.81
                        change from push.downstream to push.upstream | 81.2 % | 81.2 %
                        pulls                      | 149.6; 150.9 kW  | 200.6; 202.4 hp
                        mean.sample                | 149.6; 150.9 kW  | 200.6; 202.4 hp
                        mean.mean, 4 digits        | 150.3 kW         | 201.5 hp
                        """)
        void saysTheValueInTheShopsUnits(String expression, String si, String us) {
            assertEquals(Optional.of(si), text(expression, UnitSystem.SI_SHOP));
            assertEquals(Optional.of(us), text(expression, UnitSystem.US_SHOP));
        }

        @ParameterizedTest
        @CsvSource({
            "push.farce",
            "seat - p3",
            "seat / push.force",
            "change from seat to p3",
            "push.force in mm",
            "pulls in hp",
            "pulls - pulls",
            "'push.force, 99999999999 digits'",
            "push.force + push.force",
            "''",
            "seat -",
            "SEAT",
        })
        void saysNothingOfWhatIsNoExpression(String expression) {
            assertEquals(Optional.empty(), text(expression, UnitSystem.SI_SHOP));
        }

        @Test
        void aDivisionByNothingSaysNothing() {
            Lesson zero =
                    lesson(
                            GOOD.replace("p3: 80 kPa gauge", "p3: 80 kPa gauge\n  none: 0 mm")
                                    .replace("Beside: {{p3}}", "Beside: {{none}}"));
            Computed computed = new Computed(zero, UnitSystem.SI_SHOP);
            assertEquals(Optional.empty(), computed.text("seat / none"));
            assertEquals(Optional.empty(), computed.text("change from none to seat"));
            assertEquals(Optional.of("0 mm"), computed.text("none"));
        }
    }
}

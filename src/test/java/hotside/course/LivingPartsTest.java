// SPDX-License-Identifier: Apache-2.0
package hotside.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.cell.OperatingPoint;
import hotside.content.ContentFile;
import hotside.content.ContentReader;
import hotside.content.Finding;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faded examples, diagrams and predictions as files tell them. */
class LivingPartsTest {
    private static final String HEAD =
            """
            ---
            title: T
            strand: Gate
            skills: [gate.valve-force]
            minutes: 5
            sources: our own
            values:
              seat: 46 mm
              p3: 80 kPa gauge
              ambient: 98.5 kPa
            work:
              push: {relation: valve-force, seatDiameter: seat, upstream: p3, downstream: ambient}
            ---
            """;

    private static ContentFile file(String body) {
        return ContentReader.read("l.md", HEAD + body);
    }

    private static Part part(String body) {
        ContentFile file = file(body);
        List<Part> parts =
                LessonReader.read(file)
                        .orElseThrow(() -> new AssertionError(file.findings().list().toString()))
                        .parts();
        return parts.get(parts.size() - 1);
    }

    private static Finding finding(String body) {
        ContentFile file = file(body);
        assertEquals(Optional.empty(), LessonReader.read(file));
        assertEquals(1, file.findings().list().size(), file.findings().list().toString());
        return file.findings().list().get(0);
    }

    @Test
    void aFadedExampleHasNumbersOfItsOwn() {
        Part.FadedExample faded =
                assertInstanceOf(
                        Part.FadedExample.class,
                        part("```faded push\nblank: 2\nseat: 38 mm\nNow {{seat}}.\n```\n"));
        assertEquals(2, faded.blank());
        Variant variant = Variants.draw(faded.template(), 1, UnitSystem.SI_SHOP);
        // Area of a disc of 38 mm times 80 kPa, by hand: 1134.1 mm² x 0.08 N/mm² = 90.7 N.
        assertEquals(90.73, variant.answers().get(0).value(), 0.01);
        assertEquals("push.force", faded.template().asks().get(0).place());
    }

    @Test
    void withoutLinesTheLastStepOfTheLessonsOwnNumbersIsLeftOut() {
        Part.FadedExample faded =
                assertInstanceOf(Part.FadedExample.class, part("```faded push\n```\n"));
        assertEquals(1, faded.blank());
        assertEquals(
                132.95,
                Variants.draw(faded.template(), 1, UnitSystem.SI_SHOP).answers().get(0).value(),
                0.01);
    }

    @Test
    void aGaugePressureTakenForAbsoluteIsRecognisedInAFadedExample() {
        Part.FadedExample faded =
                assertInstanceOf(Part.FadedExample.class, part("```faded push\n```\n"));
        assertTrue(
                Variants.draw(faded.template(), 1, UnitSystem.SI_SHOP).slips().stream()
                        .anyMatch(
                                slip ->
                                        slip.mistake()
                                                .id()
                                                .equals("gauge-as-absolute@push.upstream")));
    }

    @Test
    void aNumberBeyondTheGoodRangeIsNotAskedFor() {
        Finding finding = finding("```faded push\np3: 1900 kPa gauge\n```\n");
        assertTrue(
                finding.what().startsWith("nobody can be asked to finish this example: "),
                finding.what());
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    faded push       | blank: x           | "x" is no number of steps
                    faded push       | blank: 9           | the last relation has 2 steps, not 9
                    faded push       | seatt: 4 mm        | the lesson has no value "seatt"
                    faded push       | seat: 4 kPa        | unknown unit "kPa" for a length
                    faded push       | seat: 4 5 mm       | seat is written otherwise than in the front matter
                    faded pusch      | blank: 1           | a faded block names what the lesson works
                    diagram pipes    | seat: 4 mm         | there is no diagram "pipes"
                    diagram cell-layout | seat: 4 mm      | cell-layout is drawn without numbers
                    diagram valve-forces | seat: 4 mm     | no slot is called "seat"
                    diagram valve-forces | lift: 4 mm     | no slot is called "lift"
                    diagram valve-forces | follows: valve-force | no calculator of "valve-force" stands before this diagram
                    """)
    void whatIsWrongIsSaid(String info, String line, String what) {
        assertEquals(what, finding("```" + info + "\n" + line + "\n```\n").what());
    }

    @Test
    void aDiagramFollowsACalculatorThatSharesItsInputs() {
        Part.DiagramFigure figure =
                assertInstanceOf(
                        Part.DiagramFigure.class,
                        part(
                                "```calculator valve-force\nover: upstream\n```\n\n"
                                        + "```diagram valve-forces\nfollows: valve-force\nboost: 60 kPa gauge\n```\n"));
        assertEquals(
                List.of("seatDiameter", "upstream", "downstream"),
                figure.diagram().shared(figure.follows().orElseThrow().relation()).stream()
                        .map(slot -> slot.name())
                        .toList());
        assertEquals(60e3, figure.start().number("boost"), 1e-6);
    }

    @Test
    void aDiagramCannotFollowWhatItHasNothingInCommonWith() {
        assertEquals(
                "cell-layout has nothing in common with valve-force",
                finding(
                                "```calculator valve-force\nover: upstream\n```\n\n"
                                        + "```diagram cell-layout\nfollows: valve-force\n```\n")
                        .what());
    }

    private static final String PREDICT =
            """
            ```predict
            rig: eight-return-bleed
            change: exhaust.bore = 98.3 mm
            at: 5500 rpm
            watch: boost, p4, power
            question: A wider pipe is fitted. What moves?

            The valve sees less. {{push.force}}
            ```
            """;

    @Test
    void aPredictionHoldsBothRigs() {
        Part.Prediction predict = assertInstanceOf(Part.Prediction.class, part(PREDICT));
        assertEquals(List.of(Watched.BOOST, Watched.P4, Watched.POWER), predict.watched());
        assertEquals(5500 / 60.0, predict.speed(), 1e-9);
        assertEquals(0.0856, predict.before().exhaust().pipe().diameter(), 1e-12);
        assertEquals(0.0983, predict.after().exhaust().pipe().diameter(), 1e-12);
        OperatingPoint before = OperatingPoint.solve(predict.before(), predict.speed());
        OperatingPoint after = OperatingPoint.solve(predict.after(), predict.speed());
        assertTrue(
                Watched.P4.of(after) < Watched.P4.of(before), "a wider pipe cannot hold more back");
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    rig: eight-return-bleed        | rig: eight                  | there is no rig "eight"
                    change: exhaust.bore = 98.3 mm | change: wider               | "wider" changes nothing
                    at: 5500 rpm                   | at: fast                    | "fast" is no engine speed
                    at: 5500 rpm                   | at: 0 rpm                   | "0 rpm" is no engine speed
                    watch: boost, p4, power        | watch: boost, p5            | the cell does not watch "p5"
                    question: A wider pipe is fitted. What moves? | ask: what    | unknown line "ask"
                    """)
    void whatAPredictionLacksIsSaid(String good, String bad, String what) {
        ContentFile file = file(PREDICT.replace(good, bad));
        assertEquals(Optional.empty(), LessonReader.read(file));
        assertTrue(
                file.findings().list().stream().anyMatch(f -> f.what().equals(what)),
                file.findings().list().toString());
    }

    @Test
    void aValueThatNoRigHasIsAnsweredWithItsNeighbours() {
        String what = finding(PREDICT.replace("exhaust.bore", "exhaust.boar")).what();
        assertTrue(what.contains("exhaust.bore"), what);
    }
}

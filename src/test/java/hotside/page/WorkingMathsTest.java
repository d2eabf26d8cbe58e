// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.catalogue.Catalogue;
import hotside.physics.gate.ValveForce;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Step;
import hotside.relation.StepTex;
import hotside.relation.Worked;
import java.text.Normalizer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Every formula of every relation can be set; grows with the catalogue. */
class WorkingMathsTest {
    private static final Maths MATHS = new Maths();
    private static final WorkingMaths WORKING = new WorkingMaths(MATHS);

    static Stream<Relation> relations() {
        return Catalogue.all().stream();
    }

    @ParameterizedTest
    @MethodSource("relations")
    void theCardAndItsSymbolsCanBeSet(Relation relation) {
        assertSound(MATHS.block(relation.tex()));
        Stream.concat(relation.inputs().stream(), relation.outputs().stream())
                .map(Slot::symbol)
                .forEach(symbol -> assertSound(MATHS.inline(symbol)));
    }

    @ParameterizedTest
    @MethodSource("relations")
    void everyLineOfAWorkingCanBeSet(Relation relation) {
        Worked worked = relation.work(relation.typical());
        for (Step step : worked.steps()) {
            assertSound(WORKING.symbolic(step, worked));
            assertSound(WORKING.numeric(step, worked));
        }
    }

    /** The filled template must say what KaTeX makes of the same line written out in TeX. */
    @ParameterizedTest
    @MethodSource("relations")
    void aFilledLineSaysWhatTheLineInTexSays(Relation relation) {
        Worked worked = relation.work(relation.typical());
        for (Step step : worked.steps()) {
            assertEquals(
                    letters(MATHS.inline(new StepTex(worked).numeric(step))),
                    letters(WORKING.numeric(step, worked)),
                    step.name());
        }
    }

    @Test
    void numbersComeInSiWithTheirUnits() {
        Worked worked = ValveForce.RELATION.work(ValveForce.RELATION.typical());
        // By hand: π/4 · 0.046² = 0.00166190 m²; times 181 000 − 101 325 Pa = 132.412 N.
        assertEquals(
                "A_s = π/4 × (0.046 m)² = 0.0016619 m²",
                WORKING.numericText(worked.steps().get(0), worked));
        assertEquals(
                "F = 0.0016619 m² (181000 Pa − 101325 Pa) = 132.412 N",
                WORKING.numericText(worked.steps().get(1), worked));
        assertEquals("F = A_s (p_u − p_d)", WORKING.symbolicText(worked.steps().get(1), worked));
    }

    @Test
    void aNegativeNumberAfterAnOperatorStandsInBrackets() {
        Relation difference =
                Relation.named("difference", "Difference", "Test")
                        .says("A difference.")
                        .tex("d = a - b")
                        .input(
                                Slot.number("a", "a", hotside.unit.Quantity.RATIO, "first")
                                        .range(-9, 9)
                                        .typical(1))
                        .input(
                                Slot.number("b", "b", hotside.unit.Quantity.RATIO, "second")
                                        .range(-9, 9)
                                        .typical(-2))
                        .output("d", "d", hotside.unit.Quantity.RATIO, "difference")
                        .assumes("nothing")
                        .source("arithmetic")
                        .by(w -> w.out("d", "@a - @b", w.in("a") - w.in("b"), "Subtract."));
        Worked worked = difference.work(difference.typical());
        assertEquals("d = 1 − (−2) = 3", WORKING.numericText(worked.steps().get(0), worked));
    }

    /** One formula, or the pieces of a long one. */
    private static void assertSound(String mathml) {
        for (String piece : mathml.split("(?<=</math>) ")) {
            assertSoundPiece(piece);
        }
    }

    private static void assertSoundPiece(String mathml) {
        Element math = Xml.parse(mathml);
        assertEquals("math", math.getTagName());
        assertFalse(math.getTextContent().isBlank());
        assertFalse(math.getAttribute("alttext").isBlank());
        assertTrue(math.getElementsByTagName("merror").getLength() == 0, mathml);
        assertFalse(mathml.chars().anyMatch(c -> MathTemplate.isMarker((char) c)), mathml);
    }

    /** Text without spaces, with superscript digits and Unicode minus as plain ones. */
    private static String letters(String mathml) {
        return Normalizer.normalize(
                        Xml.parse("<p>" + mathml + "</p>")
                                .getTextContent()
                                .replaceAll("[⋅·\u2062]", ""),
                        Normalizer.Form.NFKC)
                .replaceAll("[\\s\u00A0\u2000-\u200A]", "")
                .replace('−', '-');
    }
}

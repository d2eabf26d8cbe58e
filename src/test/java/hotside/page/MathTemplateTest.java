// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.unit.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MathTemplateTest {
    private static final Maths MATHS = new Maths();

    @Test
    void fillsEachPlaceWithItsValue() {
        String filled = MATHS.template("F = @area\\,@p").fill(place -> word(place.name()));
        assertEquals("F=areap", text(filled));
        assertEquals("F = area p", Xml.parse(filled).getAttribute("alttext"));
    }

    @Test
    void fillsTheSamePlaceTwice() {
        assertEquals("k+k", text(MATHS.template("@a + @a").fill(place -> word("k"))));
    }

    @Test
    void saysWhichPlaceCarriesAPower() {
        assertEquals(
                List.of(
                        new MathTemplate.Place("d", true),
                        new MathTemplate.Place("d", false),
                        new MathTemplate.Place("r", true)),
                MATHS.template("@d^2 + @d + @r ^{\\gamma}").places());
    }

    @Test
    void placesSideBySideStandOnTheirOwn() {
        String filled =
                MATHS.template("@a@b\\text{ of }@c + \\sqrt@d").fill(place -> word(place.name()));
        assertEquals("ab of c+d", text(filled).replace('\u00A0', ' '));
        assertEquals("a b of c + √d", Xml.parse(filled).getAttribute("alttext"));
        assertEquals(4, Xml.parse(filled).getElementsByTagName("mi").getLength());
    }

    @Test
    void aPlaceUnderAFractionGetsBracketsOnlyIfItNeedsThem() {
        MathTemplate ratio = MATHS.template("\\frac{@a}{@b}");
        assertEquals("1.5/2.5", ratio.plain(p -> piece(p.name().equals("a") ? 1.5 : 2.5)));
        assertEquals(
                "(1.5 Pa)/(2.5 Pa)",
                ratio.plain(
                        p ->
                                MathPiece.quantity(
                                        p.name().equals("a") ? 1.5 : 2.5,
                                        Quantity.PRESSURE_DIFFERENCE)));
    }

    @Test
    void refusesTexThatCouldBeMistakenForPlaces() {
        assertThrows(MathsException.class, () -> MATHS.template("\\text{가} + @a"));
    }

    @ParameterizedTest
    @CsvSource({
        "0.046, LENGTH, 0.046m, 0.046 m",
        "-132.41, FORCE, −132.41N, −132.41 N",
        "1.2e-5, RATIO, 1.2×10−5, 1.2×10⁻⁵",
        "101325000, PRESSURE, 1.01325×108Pa, 1.01325×10⁸ Pa",
        "4, COUNT, 4, 4",
        "0, FORCE, 0N, 0 N"
    })
    void aQuantityReadsAsNumberAndUnit(double value, Quantity quantity, String text, String plain) {
        MathPiece piece = MathPiece.quantity(value, quantity);
        assertEquals(text, text(piece.mathml()));
        assertEquals(plain, piece.plain());
    }

    @Test
    void aMinusBeforeANumberIsASignAndNotADifference() {
        String mathml = MathPiece.quantity(-3, Quantity.RATIO).inParentheses().mathml();
        assertTrue(mathml.contains("<mo form=\"prefix\">−</mo><mn>3</mn>"), mathml);
        assertEquals("(−3)", text(mathml));
    }

    @Test
    void aUnitCannotBreakTheMarkup() {
        assertEquals("1<b>", text(MathPiece.of("1", "<b>").mathml()));
    }

    private static MathPiece piece(double value) {
        return MathPiece.of(Double.toString(value), "");
    }

    private static MathPiece word(String word) {
        return new MathPiece("<mi>" + word + "</mi>", word);
    }

    private static String text(String mathml) {
        return Xml.parse(mathml).getTextContent().replace("\u2009", "");
    }
}

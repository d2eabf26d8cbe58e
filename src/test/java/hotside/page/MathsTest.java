// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class MathsTest {
    private static final Maths MATHS = new Maths();

    @Test
    void setsAFractionAsPresentationMathMl() {
        // Elements by W3C MathML Core: mfrac holds numerator, then denominator.
        assertEquals(
                "<math alttext=\"a/b\" xmlns=\"http://www.w3.org/1998/Math/MathML\">"
                        + "<mrow><mfrac><mi>a</mi><mi>b</mi></mfrac></mrow></math>",
                MATHS.inline("\\frac{a}{b}"));
    }

    @Test
    void setsAFormulaOfItsOwnLineAsBlock() {
        Element math = Xml.parse(MATHS.block("F = p A"));
        assertEquals("block", math.getAttribute("display"));
        assertEquals("F = p A", math.getAttribute("alttext"));
        assertEquals("", Xml.parse(MATHS.inline("F = p A")).getAttribute("display"));
    }

    @Test
    void leavesOutTheTexThatSomeReadersShow() {
        String mathml = MATHS.block("\\dot m = \\rho A v");
        assertFalse(mathml.contains("annotation") || mathml.contains("semantics"), mathml);
        assertFalse(mathml.contains("span"), mathml);
    }

    @Test
    void escapesWhatTheWriterTyped() {
        Element math = Xml.parse(MATHS.inline("\\text{<b>\\&amp; \"q\" 'r'</b>} < y"));
        assertEquals(0, math.getElementsByTagName("b").getLength());
        assertTrue(math.getTextContent().contains("<b>&amp;"), math.getTextContent());
        assertTrue(math.getAttribute("alttext").contains("<b>&amp;"));
    }

    @Test
    void aFormulaSetBeforeComesFromMemory() {
        assertSame(MATHS.inline("p_u - p_d"), MATHS.inline("p_u - p_d"));
        assertSame(MATHS.template("@a + 1"), MATHS.template("@a + 1"));
    }

    @Test
    void aMacroOfOneFormulaIsUnknownToTheNext() {
        MATHS.inline("\\gdef\\ours{x}\\ours");
        assertThrows(MathsException.class, () -> MATHS.inline("\\ours"));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = '|',
            textBlock =
                    """
                    \\frac{\\pi}{4}\\,d_s^2\\,(p_u - p_d)     | (π/4) d_s² (p_u − p_d)
                    \\sqrt{\\frac{a}{b + 1}}                  | √(a/(b + 1))
                    \\frac{s}{\\sqrt n}                       | s/√n
                    10^{-5}\\,\\mathrm{m^2}                   | 10⁻⁵ m²
                    x = -3                                    | x = −3
                    (-3)                                      | (−3)
                    \\bar x \\pm t\\,s                        | x̄ ± t s
                    \\dot m                                   | ṁ
                    \\left(\\frac{p_2}{p_1}\\right)^{n/2}     | (p₂/p₁)^(n/2)
                    \\Delta T_\\mathrm{max}                   | ΔT_max
                    20\\,\\mathrm{°C}                         | 20 °C
                    \\sqrt[3]{8}                              | ³√8
                    a \\cdot b, c                             | a ⋅ b, c
                    """)
    void readsAsOneLineOfPlainText(String tex, String plain) {
        assertEquals(plain, MATHS.plain(tex));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = '|',
            textBlock =
                    """
                    \\frac{1            | 8 | Unexpected end of input in a macro argument, expected '}'
                    a + \\foo b         | 5 | Undefined control sequence: \\foo
                    x^2^3               | 4 | Double superscript
                    y = 5 % of x        | 7 | % hides the rest of the formula; write \\% for a percent sign
                    }                   | 1 | Expected 'EOF', got '}'
                    a + 🔧              | 5 | no way to draw this character
                    x \\href{http://a}b | 3 | \\href is switched off here
                    """)
    void saysWhatIsWrongAndWhere(String tex, int position, String message) {
        MathsException e = assertThrows(MathsException.class, () -> MATHS.inline(tex));
        assertEquals(message, e.getMessage());
        assertEquals(position, e.position());
    }

    @Test
    void saysWhichCharacterCannotBePrinted() {
        MathsException e = assertThrows(MathsException.class, () -> MATHS.inline("a\u0001b"));
        assertEquals("character U+0001 cannot be printed; remove it", e.getMessage());
        assertEquals(2, e.position());
        assertThrows(MathsException.class, () -> MATHS.inline("a\uD800b"));
    }

    static Stream<String> reachingOut() {
        return Stream.of(
                "\\href{javascript:alert(1)}{x}",
                "\\url{https://example.org}",
                "\\includegraphics{a.png}",
                "\\htmlData{a=b}{x}",
                "\\htmlId{a}{x}",
                "\\htmlClass{a}{x}",
                "\\htmlStyle{color:red}{x}");
    }

    @ParameterizedTest
    @MethodSource("reachingOut")
    void refusesWhatReachesOutOfTheFormula(String tex) {
        MathsException e = assertThrows(MathsException.class, () -> MATHS.inline(tex));
        assertEquals(tex.substring(0, tex.indexOf('{')) + " is switched off here", e.getMessage());
        assertEquals(1, e.position());
    }

    static Stream<String> bombs() {
        return Stream.of(
                "\\def\\a{\\a\\a}\\a",
                "\\def\\b#1{#1#1}" + "\\b{".repeat(30) + "x" + "}".repeat(30),
                "\\def\\a{" + "x^2".repeat(900) + "}" + "\\a".repeat(290),
                "x".repeat(100_000),
                "{".repeat(300) + "}".repeat(300),
                "\\left(".repeat(600),
                "\\bf".repeat(1300),
                "'".repeat(3999),
                "\\begin{array}{" + "c".repeat(3900) + "}x\\end{array}",
                "\\begin{matrix}".repeat(200));
    }

    /** The time is a net against endless work, far above what any of these takes. */
    @ParameterizedTest
    @MethodSource("bombs")
    void refusesAFormulaThatWouldNotEnd(String tex) {
        assertTimeoutPreemptively(
                Duration.ofSeconds(60),
                () -> assertThrows(MathsException.class, () -> MATHS.inline(tex)));
        assertEquals("x", MATHS.plain("x"), "the next formula is set as if nothing had happened");
    }

    @Test
    void setsADeepButLegalFormula() {
        String deep = "\\sqrt{".repeat(TexGuard.DEEPEST) + "x" + "}".repeat(TexGuard.DEEPEST);
        Element math = Xml.parse(MATHS.inline(deep));
        assertEquals(TexGuard.DEEPEST, math.getElementsByTagName("msqrt").getLength());
    }

    @Test
    void capsASizeThatWouldCoverThePage() {
        String rule = MATHS.inline("\\rule{900em}{900em}");
        assertTrue(rule.contains("width=\"20em\""), rule);
    }

    @Test
    void aLongFormulaMayRunOnBeforeAnOperator() {
        Element p =
                Xml.parse(
                        "<p>"
                                + MATHS.line(
                                        "F_\\text{net} = A_\\text{seat}\\,(p_\\text{up} - p_\\text{down}) - F_\\text{spring}")
                                + "</p>");
        assertEquals(
                List.of("F_net = A_seat (p_up", "− p_down)", "− F_spring"),
                attributes(p, "alttext"));
        assertEquals(
                "Fnet=Aseat(pup−pdown)−Fspring", p.getTextContent().replaceAll("[\\s\u2009]", ""));
    }

    @Test
    void aShortFormulaStaysWhole() {
        assertEquals(MATHS.inline("F = p\\,A"), MATHS.line("F = p\\,A"));
    }

    @Test
    void aSignOrAnOperatorInsideARootIsNoPlaceToBreak() {
        assertEquals(1, pieces("\\sqrt{a + b + c + d + e + f + g + h + i + j + k + l}"));
        assertEquals(2, pieces("abcdefghijklmnop = -qrstuvwxyz"));
    }

    private static int pieces(String tex) {
        return MATHS.line(tex).split("<math ").length - 1;
    }

    private static List<String> attributes(Element parent, String name) {
        NodeList children = parent.getChildNodes();
        return IntStream.range(0, children.getLength())
                .mapToObj(children::item)
                .filter(Element.class::isInstance)
                .map(node -> ((Element) node).getAttribute(name))
                .toList();
    }

    @Test
    void scriptsReachNothingOfJava() {
        for (String name : List.of("java", "Packages", "importClass", "JavaAdapter", "getClass")) {
            assertEquals("undefined", new Katex().typeOf(name), name);
        }
        assertEquals("object", new Katex().typeOf("katex"));
    }
}

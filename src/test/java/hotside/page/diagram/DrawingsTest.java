// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.course.Diagram;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Values;
import hotside.speech.Language;
import hotside.unit.UnitSystem;
import java.io.StringReader;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class DrawingsTest {
    private static final double AIR = 101_325;

    static Stream<Diagram> all() {
        return Diagram.all().stream();
    }

    private static Values typical(Diagram diagram) {
        return diagram.relation().map(Relation::typical).orElse(Values.NONE);
    }

    private static Element svg(Picture picture) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(picture.svg("d1", "A <title> & more"))))
                .getDocumentElement();
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyDiagramIsDrawnInBothShopsWithAnAlternativeInWords(Diagram diagram) throws Exception {
        for (UnitSystem system : UnitSystem.values()) {
            Picture picture = Drawings.of(diagram, typical(diagram), system, AIR);
            Element svg = svg(picture);
            assertEquals("img", svg.getAttribute("role"));
            assertEquals("d1-t d1-d", svg.getAttribute("aria-labelledby"));
            assertEquals(
                    picture.words(), svg.getElementsByTagName("desc").item(0).getTextContent());
            assertTrue(picture.words().length() > 80, picture.words());
        }
    }

    /** About: letters have an average width here, and a word may be a little wider. */
    @ParameterizedTest
    @MethodSource("all")
    void wordsStayInsideThePictureInEveryLanguage(Diagram diagram) throws Exception {
        for (Language language : Language.values()) {
            Language.speak(language);
            for (UnitSystem system : UnitSystem.values()) {
                wordsStayInside(
                        diagram, Drawings.of(diagram, typical(diagram), system, AIR), language);
            }
        }
    }

    private static void wordsStayInside(Diagram diagram, Picture picture, Language language)
            throws Exception {
        NodeList texts = svg(picture).getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            double x = Double.parseDouble(text.getAttribute("x"));
            double width = Sketch.width(text.getTextContent()) * 0.92;
            double left =
                    switch (text.getAttribute("text-anchor")) {
                        case "start" -> x;
                        case "end" -> x - width;
                        default -> x - width / 2;
                    };
            String told = diagram.id() + ", " + language + ": " + text.getTextContent();
            assertTrue(left >= -8 && left + width <= Sketch.WIDTH + 8, told);
            double y = Double.parseDouble(text.getAttribute("y"));
            assertTrue(y > 8 && y <= picture.sketch().height(), "above or below: " + told);
        }
    }

    /** Words that English sentences cannot do without. */
    @ParameterizedTest
    @MethodSource("all")
    void noDrawingSpeaksEnglishOnAGermanDesk(Diagram diagram) {
        Language.speak(Language.GERMAN);
        Picture picture = Drawings.of(diagram, typical(diagram), UnitSystem.SI_SHOP, AIR);
        String drawn = picture.svg("d1", diagram.title()).replaceAll("<[^>]*>", " ");
        assertFalse(drawn.matches("(?is).*\\b(the|of|and|is|with|from|air|to)\\b.*"), drawn);
        Language.speak(Language.ENGLISH);
        String original = Drawings.of(diagram, typical(diagram), UnitSystem.SI_SHOP, AIR).words();
        assertNotEquals(original, picture.words());
    }

    @AfterEach
    void speakEnglishAgain() {
        Language.speak(Language.ENGLISH);
    }

    /** Every input at either end of its usual range: it draws, or says why not. */
    @ParameterizedTest
    @MethodSource("all")
    void nothingBreaksAtTheEndsOfTheUsualRanges(Diagram diagram) {
        if (diagram.relation().isEmpty()) {
            return;
        }
        Relation relation = diagram.relation().get();
        int drawn = 0;
        for (Slot slot : relation.inputs()) {
            if (slot.kind() != Slot.Kind.NUMBER) {
                continue;
            }
            for (double value : List.of(slot.usualMin(), slot.usualMax())) {
                try {
                    Drawings.of(
                            diagram,
                            relation.typical().with(slot.name(), value),
                            UnitSystem.SI_SHOP,
                            AIR);
                    drawn++;
                } catch (RelationException e) {
                    assertFalse(e.getMessage().isBlank());
                }
            }
        }
        boolean numbers = relation.inputs().stream().anyMatch(s -> s.kind() == Slot.Kind.NUMBER);
        assertTrue(drawn > 0 || !numbers, diagram.id());
    }

    @Test
    void thereAreAtLeastFifteen() {
        assertTrue(Diagram.all().size() >= 15);
    }

    /** The arrows' lengths stand in the ratio of the forces. */
    @Test
    void forcesOnTheGateAreDrawnToOneScale() {
        Diagram gate = Diagram.find("valve-forces").orElseThrow();
        Values in =
                Values.of(
                        "preload",
                        260.0,
                        "rate",
                        7000.0,
                        "maxLift",
                        0.012,
                        "diaphragmDiameter",
                        0.0714,
                        "seatDiameter",
                        0.046,
                        "boost",
                        60e3,
                        "signalShare",
                        0.7,
                        "upstream",
                        180e3,
                        "downstream",
                        100e3);
        String words = Drawings.of(gate, in, UnitSystem.SI_SHOP, AIR).words();
        // By hand: pi/4 x 71.4² mm² x 0.042 N/mm² = 168 N; pi/4 x 46² mm² x 0.080 N/mm² = 133 N.
        assertTrue(words.contains("168 N") && words.contains("133 N"), words);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void boresHaveTheSizesThatTheySay(UnitSystem system) throws Exception {
        Diagram bores = Diagram.find("pipe-bores-to-scale").orElseThrow();
        NodeList circles =
                svg(Drawings.of(bores, typical(bores), system, AIR)).getElementsByTagName("circle");
        double smallest = Double.parseDouble(((Element) circles.item(0)).getAttribute("r"));
        double largest =
                Double.parseDouble(
                        ((Element) circles.item(circles.getLength() - 1)).getAttribute("r"));
        assertEquals(127.0 / 57.0, largest / smallest, 0.01);
    }

    @Test
    void longWordsAreBroken() {
        assertEquals(List.of("one two", "three"), List.of(Sketch.wrap("one two three", 8 * 7.1)));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.catalogue.Catalogue;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.unit.UnitSystem;
import hotside.unit.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CalculatorCardTest {
    private static final CalculatorCard CARD = new CalculatorCard(new Maths());

    private static CalculatorState state(Relation relation, UnitSystem system) {
        return new CalculatorState(
                "c1",
                relation,
                relation.typical(),
                Map.of(),
                relation.inputs().stream().filter(s -> s.kind() == Slot.Kind.NUMBER).findFirst(),
                relation.outputs().get(0),
                system,
                Units.STANDARD_ATMOSPHERE,
                false);
    }

    private static CalculatorState push() {
        return state(Catalogue.find("valve-force").orElseThrow(), UnitSystem.SI_SHOP)
                .with("seatDiameter", 0.046)
                .with("upstream", 180e3)
                .with("downstream", 100e3);
    }

    private static Slot slot(String name) {
        return push().relation().slot(name).orElseThrow();
    }

    static Stream<Relation> relations() {
        return Catalogue.all().stream();
    }

    @ParameterizedTest
    @MethodSource("relations")
    void everyRelationHasACardWithAFieldForEachInput(Relation relation) {
        for (UnitSystem system : UnitSystem.values()) {
            CalculatorState state = state(relation, system).working(true);
            String html = CARD.html(state);
            for (Slot slot : relation.inputs()) {
                assertTrue(html.contains("<label for=\"c1-" + slot.name() + "\">"), slot.name());
            }
            assertFalse(html.contains("not a number") || html.contains("NaN"), relation.id());
            assertFalse(html.contains("verdict ask"), "a typical case has a result");
            List<String> ids =
                    Pattern.compile(" id=\"([^\"]*)\"").matcher(html).results()
                            .map(m -> m.group(1))
                            .toList();
            assertEquals(ids.size(), ids.stream().distinct().count(), ids.toString());
            Xml.parse("<div>" + CARD.outputs(state) + CARD.working(state) + "</div>");
        }
    }

    /** π/4 · (46 mm)² · 80 kPa = 132.95 N = 29.89 lbf. */
    @Test
    void outputsAreToldInTheShopsUnits() {
        assertTrue(CARD.outputs(push()).contains("<dd>133.0 N</dd>"), CARD.outputs(push()));
        assertTrue(CARD.outputs(push().in(UnitSystem.US_SHOP)).contains("<dd>29.89 lbf</dd>"));
    }

    @Test
    void whereThereIsNoResultTheCardSaysWhy() {
        assertEquals(
                "<p class=\"verdict ask\">No result here. valve-force: seatDiameter = 9.0 is outside (0.0, 0.2] m</p>",
                CARD.outputs(push().with("seatDiameter", 9.0)));
        assertEquals("", CARD.cautions(push().with("seatDiameter", 9.0)));
        assertEquals("", CARD.working(push().with("seatDiameter", 9.0).working(true)));
    }

    @Test
    void anUnusualInputIsCautionedAgainst() {
        assertEquals("", CARD.cautions(push()));
        assertTrue(
                CARD.cautions(push().with("seatDiameter", 0.15))
                        .startsWith("<p>Take care with this result:</p><ul><li>bore of the valve seat: "));
    }

    @Test
    void fieldsHoldWhatAPersonWouldType() {
        assertEquals("46", CalculatorCard.fieldText(push(), slot("seatDiameter")));
        assertEquals(
                "1.811",
                CalculatorCard.fieldText(push().in(UnitSystem.US_SHOP), slot("seatDiameter")));
        Relation shift = Catalogue.find("boost-shift").orElseThrow();
        CalculatorState falling =
                state(shift, UnitSystem.SI_SHOP).with("turbineInletChange", -12_500.0);
        assertEquals(
                "-12.5",
                CalculatorCard.fieldText(falling, shift.slot("turbineInletChange").orElseThrow()));
    }

    @Test
    void aSliderRunsOverTheUsualRangeInRoundNumbers() {
        Slot seat = slot("seatDiameter");
        assertEquals(0, CalculatorCard.sliderAt(push().with("seatDiameter", 0.001), seat));
        assertEquals(1000, CalculatorCard.sliderAt(push().with("seatDiameter", 0.19), seat));
        assertEquals(
                seat.usualMin(), CalculatorCard.sliderValue(push(), seat, 0), 1e-12);
        assertEquals(seat.usualMax(), CalculatorCard.sliderValue(push(), seat, 1000), 1e-12);
        double middle = CalculatorCard.sliderValue(push(), seat, 500);
        assertEquals(0.0425, middle, 1e-12, "three figures of a millimetre");
        assertEquals(
                500, CalculatorCard.sliderAt(push().with("seatDiameter", middle), seat), 1);
    }

    @Test
    void aFaultStandsUnderItsFieldUntilTheFieldChanges() {
        CalculatorState faulty = push().withFault("upstream", "That is no <pressure>.");
        assertTrue(CARD.html(faulty).contains(">That is no &lt;pressure&gt;.</p>"));
        assertFalse(CARD.html(faulty.with("upstream", 2e5)).contains("no &lt;pressure"));
    }

    @Test
    void aChoiceIsAListOfItsWords() {
        Relation sae = Catalogue.find("sae-j1349").orElseThrow();
        String html = CARD.html(state(sae, UnitSystem.SI_SHOP).with("boosted", "yes"));
        assertTrue(html.contains("<option value=\"yes\" selected>yes</option>"), html);
        assertTrue(html.contains("<option value=\"no\">no</option>"));
    }

    @Test
    void withoutACurveThereIsNone() {
        CalculatorState bare =
                new CalculatorState(
                        "c1",
                        push().relation(),
                        push().values(),
                        Map.of(),
                        Optional.empty(),
                        push().curve(),
                        UnitSystem.SI_SHOP,
                        Units.STANDARD_ATMOSPHERE,
                        false);
        assertEquals("", CARD.curve(bare));
        assertFalse(CARD.html(bare).contains("class=\"axes\""));
        assertTrue(CARD.curve(push()).contains("<svg"));
    }
}

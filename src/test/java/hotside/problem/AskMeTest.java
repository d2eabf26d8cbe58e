// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.catalogue.Catalogue;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class AskMeTest {
    private static final int SEEDS = 200;

    static Stream<Arguments> relationsOfNumbers() {
        return Catalogue.all().stream()
                .filter(AskMeTest::isOfNumbers)
                .flatMap(r -> Arrays.stream(UnitSystem.values()).map(s -> Arguments.of(r, s)));
    }

    private static boolean isOfNumbers(Relation relation) {
        return relation.inputs().stream()
                        .allMatch(s -> s.kind() == Slot.Kind.NUMBER || s.kind() == Slot.Kind.CHOICE)
                && relation.outputs().stream()
                        .anyMatch(
                                s ->
                                        s.quantity() != Quantity.FLAG
                                                && s.quantity() != Quantity.COUNT);
    }

    @ParameterizedTest
    @MethodSource("relationsOfNumbers")
    void everyRelationOfNumbersCanBeAskedFromEverySeed(Relation relation, UnitSystem system) {
        Set<String> asked = new HashSet<>();
        for (long seed = 1; seed <= SEEDS; seed++) {
            Template template = AskMe.template(relation, seed, system).orElseThrow();
            Variant variant = Variants.draw(template, seed, system);
            String where = relation + ", seed " + seed + ", " + system;
            asked.add(template.asks().get(0).place());
            assertEquals(Verdict.Kind.RIGHT, mark(variant, Answers.told(variant, 0)), where);
            for (Variant.Slipped slip : variant.slips()) {
                String typed = Answers.told(variant, 0, slip.value());
                assertEquals(
                        Verdict.Kind.MISTAKE,
                        mark(variant, typed),
                        () -> where + ": " + slip.mistake().id() + " gives " + typed);
            }
        }
        long outputs =
                relation.outputs().stream()
                        .filter(
                                s ->
                                        s.quantity() != Quantity.FLAG
                                                && s.quantity() != Quantity.COUNT)
                        .count();
        assertTrue(asked.size() >= Math.min(outputs, 2), "asks for " + asked);
    }

    private static Verdict.Kind mark(Variant variant, String answer) {
        return Marker.mark(variant, List.of(answer), DecimalHabit.POINT)
                .get(0)
                .orElseThrow()
                .kind();
    }

    @ParameterizedTest
    @MethodSource("relationsOfNumbers")
    void theTextTellsEveryInput(Relation relation, UnitSystem system) {
        Template template = AskMe.template(relation, 1, system).orElseThrow();
        for (Slot slot : relation.inputs()) {
            String told =
                    slot.kind() == Slot.Kind.NUMBER
                            ? slot.meaning() + " $" + slot.symbol() + "$: {{" + slot.name() + "}}"
                            : slot.meaning() + ": " + slot.fallback().orElse(slot.typical());
            assertTrue(template.prompt().contains("- " + told + "\n"), template.prompt());
        }
        assertEquals(3, template.hints().size());
        assertFalse(template.why().isBlank());
    }

    @Test
    void relationsOfReadingsAreNotAsked() {
        for (String id : List.of("mean-spread", "order-balance", "gain-split-regression")) {
            Relation relation = Catalogue.find(id).orElseThrow();
            assertEquals(Optional.empty(), AskMe.template(relation, 1, UnitSystem.SI_SHOP), id);
        }
    }

    @Test
    void theTextReadsLikeATask() {
        Relation push = Catalogue.find("valve-force").orElseThrow();
        Template template = AskMe.template(push, 1, UnitSystem.SI_SHOP).orElseThrow();
        assertEquals(
                """
                - bore of the valve seat $d_s$: {{seatDiameter}}
                - pressure under the valve $p_u$: {{upstream}}
                - pressure behind the valve $p_d$: {{downstream}}

                Find the push of the exhaust $F$.""",
                template.prompt());
    }

    @Test
    void whatIsGivenAwayByItsNatureIsNotAskedFor() {
        // Unless choked, the pressure inside the exit is the pressure outside, which is given.
        Relation duct = Catalogue.find("duct-flow").orElseThrow();
        for (long seed = 1; seed <= 60; seed++) {
            String place =
                    AskMe.template(duct, seed, UnitSystem.SI_SHOP)
                            .orElseThrow()
                            .asks()
                            .get(0)
                            .place();
            assertFalse(place.equals("r.exitStatic"), "seed " + seed);
        }
    }

    @Test
    void countsAreWhole() {
        Relation smoothing = Catalogue.find("smoothing-bias").orElseThrow();
        for (long seed = 1; seed <= 40; seed++) {
            Template template = AskMe.template(smoothing, seed, UnitSystem.SI_SHOP).orElseThrow();
            double points =
                    Variants.draw(template, seed, UnitSystem.SI_SHOP).givens().number("points");
            assertEquals(Math.rint(points), points);
        }
    }

    @Test
    void numbersAreRoundInTheShopThatIsAsked() {
        Relation push = Catalogue.find("valve-force").orElseThrow();
        Template us = AskMe.template(push, 3, UnitSystem.US_SHOP).orElseThrow();
        String seat = Variants.draw(us, 3, UnitSystem.US_SHOP).shown().get("seatDiameter");
        assertTrue(seat.matches("\\d\\.\\d{1,2}\u00a0in"), seat);
    }
}

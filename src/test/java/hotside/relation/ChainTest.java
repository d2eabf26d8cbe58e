// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.relation.Chain.Fixed;
import hotside.relation.Chain.From;
import hotside.relation.Chain.Use;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A square of given side; another square whose area is the first one's, doubled. */
class ChainTest {
    private static final Relation SQUARE =
            Relation.named("square", "A square", "Geometry")
                    .says("Side and area.")
                    .tex("A = k s^2")
                    .input(Slot.number("side", "s", Quantity.LENGTH, "its side").range(0, 100))
                    .input(
                            Slot.number("times", "k", Quantity.RATIO, "how many")
                                    .range(0, 9)
                                    .orElse(1))
                    .output("area", "A", Quantity.AREA, "area")
                    .by(
                            w ->
                                    w.out(
                                            "area",
                                            "@times @side^2",
                                            w.in("times") * w.in("side") * w.in("side"),
                                            "Side times side."));

    private static final Chain CHAIN =
            new Chain(
                    List.of(
                            new Use(
                                    "first",
                                    SQUARE,
                                    Map.of("side", new From("edge"), "times", new Fixed(2.0)),
                                    Optional.empty()),
                            new Use(
                                    "second",
                                    SQUARE,
                                    Map.of("area", new From("first.area")),
                                    Optional.of("side"))));

    private static final Chain.Tamper NOTHING = (place, value, known) -> value;

    @Test
    void eachUseTakesGivensFixedValuesAndEarlierResults() {
        Chain.Run run = CHAIN.run(Values.of("edge", 3));
        assertEquals(18, run.number("first.area"), 1e-12);
        assertEquals(Math.sqrt(18), run.number("second.side"), 1e-11);
        assertEquals(2, run.workings().size());
        assertEquals(1.0, run.number("second.times"), 0, "an optional slot has a place too");
    }

    @Test
    void untamperedTheUnguardedRunGivesTheSame() {
        Values plain = CHAIN.run(Values.of("edge", 3)).values();
        Values tampered = CHAIN.run(Values.of("edge", 3), NOTHING);
        plain.names()
                .forEach(
                        place ->
                                assertEquals(
                                        plain.number(place), tampered.number(place), 1e-9, place));
    }

    @Test
    void everyPlaceIsOfferedOnceAndInOrder() {
        List<String> places = new ArrayList<>();
        CHAIN.run(
                Values.of("edge", 3),
                (place, value, known) -> {
                    places.add(place);
                    return value;
                });
        assertEquals(
                List.of(
                        "edge",
                        "first.side",
                        "first.times",
                        "first.area",
                        "second.times",
                        "second.area",
                        "second.side",
                        "second.area"),
                sorted(places));
    }

    /** The two inputs of a use come in the order of its feeds, which a map does not fix. */
    private static List<String> sorted(List<String> places) {
        List<String> out = new ArrayList<>(places);
        if (out.get(1).equals("first.times")) {
            java.util.Collections.swap(out, 1, 2);
        }
        return out;
    }

    @Test
    void aChangedGivenRunsThroughEverything() {
        Values run =
                CHAIN.run(
                        Values.of("edge", 3),
                        (place, value, known) -> place.equals("edge") ? (Object) 6.0 : value);
        assertEquals(72, run.number("first.area"), 1e-12);
        assertEquals(Math.sqrt(72), run.number("second.side"), 1e-10);
    }

    @Test
    void aChangedInputLeavesTheGivenAlone() {
        Values run =
                CHAIN.run(
                        Values.of("edge", 3),
                        (place, value, known) -> place.equals("first.side") ? (Object) 6.0 : value);
        assertEquals(3, run.number("edge"));
        assertEquals(6, run.number("first.side"));
        assertEquals(72, run.number("first.area"), 1e-12);
    }

    @Test
    void aChangedResultGoesOnToWhatComesAfter() {
        Values run =
                CHAIN.run(
                        Values.of("edge", 3),
                        (place, value, known) ->
                                place.equals("first.area") ? (Object) 50.0 : value);
        assertEquals(50, run.number("first.area"));
        assertEquals(Math.sqrt(50), run.number("second.side"), 1e-10);
    }

    @Test
    void aChangedUnknownStaysChanged() {
        Values run =
                CHAIN.run(
                        Values.of("edge", 3),
                        (place, value, known) ->
                                place.equals("second.side") ? (Object) 1.0 : value);
        assertEquals(1, run.number("second.side"));
    }

    @Test
    void aChangeMaySeeWhatIsKnownSoFar() {
        Values run =
                CHAIN.run(
                        Values.of("edge", 3),
                        (place, value, known) ->
                                place.equals("second.area") && known.containsKey("first.side")
                                        ? known.get("edge")
                                        : value);
        assertEquals(Math.sqrt(3), run.number("second.side"), 1e-10);
    }

    @Test
    void slotsAreFoundByTheirPlace() {
        assertEquals(Optional.of("area"), CHAIN.slotAt("first.area").map(Slot::name));
        assertEquals(Optional.of(Quantity.LENGTH), CHAIN.quantityAt("second.side"));
        assertEquals(Optional.empty(), CHAIN.slotAt("third.area"));
        assertEquals(Optional.empty(), CHAIN.slotAt("first.volume"));
        assertEquals(Optional.empty(), CHAIN.slotAt("edge"));
    }

    @Test
    void aMissingGivenIsNamedWithTheSlotItFeeds() {
        var e = assertThrows(RelationException.class, () -> CHAIN.run(Values.NONE));
        assertEquals("first.side: nothing is known at \"edge\"", e.getMessage());
    }

    @Test
    void outOfRangeIsRefusedGuardedAndWorkedUnguarded() {
        assertThrows(RelationException.class, () -> CHAIN.run(Values.of("edge", -3)));
        assertEquals(18, CHAIN.run(Values.of("edge", -3), NOTHING).number("first.area"), 1e-12);
    }
}

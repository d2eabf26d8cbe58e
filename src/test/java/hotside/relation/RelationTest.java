// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.unit.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RelationTest {
    private static final Relation RECTANGLE =
            Relation.named("rectangle", "A rectangle", "Geometry")
                    .says("Area and edge.")
                    .tex("A = a b")
                    .input(
                            Slot.number("a", "a", Quantity.LENGTH, "one side")
                                    .above(0, 10)
                                    .usual(1, 5, "Long ones bend."))
                    .input(
                            Slot.number("b", "b", Quantity.LENGTH, "other side")
                                    .range(0, 10)
                                    .orElse(2))
                    .output("area", "A", Quantity.AREA, "area")
                    .output("edge", "u", Quantity.LENGTH, "length of the edge")
                    .by(
                            w -> {
                                double half =
                                        w.step(
                                                "half",
                                                "h",
                                                Quantity.LENGTH,
                                                "@a + @b",
                                                w.in("a") + w.in("b"),
                                                "Half the edge.");
                                w.out("area", "@a @b", w.in("a") * w.in("b"), "Side by side.");
                                w.caution(half > 9, "edge", () -> "That is a long edge.");
                                w.out("edge", "2 @half", 2 * half, "Twice the half.");
                            });

    private static final Relation MEAN =
            Relation.named("mean", "A mean", "Readings")
                    .says("The middle.")
                    .tex("m")
                    .input(Slot.numbers("row", "x", Quantity.AS_MEASURED, "the readings"))
                    .output("mean", "m", Quantity.AS_MEASURED, "their mean")
                    .by(
                            w -> {
                                double sum = 0;
                                for (double x : w.readings("row")) {
                                    sum += x;
                                }
                                w.step("sum", "S", Quantity.AS_MEASURED, "", sum, "Their sum.");
                                w.out("mean", "", sum / w.readings("row").length, "Shared out.");
                            });

    private static String complaint(Values given) {
        return assertThrows(RelationException.class, () -> RECTANGLE.work(given)).getMessage();
    }

    @Test
    void workingGivesInputsOutputsStepsAndCautions() {
        Worked worked = RECTANGLE.work(Values.of("a", 8));
        assertEquals(Values.of("a", 8, "b", 2), worked.in());
        assertEquals(Values.of("area", 16, "edge", 20), worked.out());
        assertEquals(
                List.of("half", "area", "edge"), worked.steps().stream().map(Step::name).toList());
        assertEquals(
                List.of(
                        new Caution("a", "Long ones bend."),
                        new Caution("edge", "That is a long edge.")),
                worked.cautions());
    }

    @Test
    void badInputsAreNamedWithTheirRange() {
        assertEquals("rectangle: a is missing (one side)", complaint(Values.NONE));
        assertEquals("rectangle: a = 0.0 is outside (0.0, 10.0] m", complaint(Values.of("a", 0)));
        assertEquals(
                "rectangle: no input named \"c\"; its inputs are a, b",
                complaint(Values.of("a", 1, "c", 1)));
        assertEquals(
                "rectangle: a = long is not what is expected: one number",
                complaint(Values.of("a", "long")));
        assertEquals(
                "mean: row = [] is not what is expected: a row of numbers",
                assertThrows(RelationException.class, () -> MEAN.work(Values.of("row", List.of())))
                        .getMessage());
    }

    @Test
    void aRowOfInputsGivesTheSameAsValuesByName() {
        assertArrayEquals(new double[] {12, 14}, RECTANGLE.solveRow(new Object[] {3.0, 4.0}));
        assertThrows(RelationException.class, () -> RECTANGLE.solveRow(new Object[] {-3.0, 4.0}));
    }

    @Test
    void unguardedItWorksOutsideItsRange() {
        assertEquals(
                Values.of("area", -4, "edge", 0),
                RECTANGLE.solveUnguarded(Values.of("a", -2, "b", 2)));
    }

    @Test
    void unguardedAFailureInsideIsNoResult() {
        Relation fragile =
                Relation.named("fragile", "Fragile", "Odd")
                        .says("It breaks.")
                        .tex("y")
                        .input(Slot.number("x", "x", Quantity.RATIO, "x").range(0, 1))
                        .output("y", "y", Quantity.RATIO, "y")
                        .by(
                                w -> {
                                    throw new IllegalArgumentException("no bracket");
                                });
        var e =
                assertThrows(
                        RelationException.class, () -> fragile.solveUnguarded(Values.of("x", 5)));
        assertEquals("fragile: no result for {x=5.0}", e.getMessage());
        assertInstanceOf(IllegalArgumentException.class, e.getCause());
    }

    @Test
    void readingsOfPowerHaveAMeanThatIsAPower() {
        Relation powers = MEAN.measuring(Quantity.POWER);
        assertEquals("mean", powers.id());
        assertEquals(Optional.of(Quantity.POWER), powers.slot("mean").map(Slot::quantity));
        Worked worked = powers.work(Values.of("row", List.of(150e3, 152e3)));
        assertEquals(151e3, worked.out().number("mean"));
        assertEquals(
                List.of(Quantity.POWER, Quantity.POWER),
                worked.steps().stream().map(Step::quantity).toList());
    }

    @Test
    void readingsOfNobodyKnowsWhatStayAsMeasured() {
        Worked worked = MEAN.work(Values.of("row", List.of(1.0, 3.0)));
        assertEquals(Quantity.AS_MEASURED, worked.steps().get(0).quantity());
    }

    @Test
    void aFunctionThatNamesASlotItLacksIsFoundAtOnce() {
        Relation wrong =
                Relation.named("wrong", "Wrong", "Odd")
                        .says("It misspells.")
                        .tex("y")
                        .input(Slot.number("x", "x", Quantity.RATIO, "x"))
                        .output("y", "y", Quantity.RATIO, "y")
                        .by(w -> w.out("z", "", 1, "Z."));
        var e = assertThrows(IllegalStateException.class, () -> wrong.solve(Values.of("x", 1)));
        assertEquals("wrong writes a slot it does not have: z", e.getMessage());
    }
}

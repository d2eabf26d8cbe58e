// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.unit.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SlotTest {
    private static final Slot BORE = Slot.number("bore", "d", Quantity.LENGTH, "bore of the pipe");

    @Test
    void bothEndsOfARangeBelongToIt() {
        Slot slot = BORE.range(1, 2);
        assertTrue(slot.admits(1) && slot.admits(2));
        assertFalse(slot.admits(0.999) || slot.admits(2.001));
    }

    @Test
    void excludedEndsAreRefused() {
        assertFalse(BORE.above(1, 2).admits(1));
        assertTrue(BORE.above(1, 2).admits(2));
        assertFalse(BORE.between(1, 2).admits(1) || BORE.between(1, 2).admits(2));
    }

    @Test
    void noSlotAdmitsWhatIsNoFiniteNumber() {
        for (Slot slot : List.of(BORE, BORE.range(0, 1), BORE.above(0, Double.MAX_VALUE))) {
            assertFalse(slot.admits(Double.NaN));
            assertFalse(slot.admits(Double.POSITIVE_INFINITY));
            assertFalse(slot.admits(Double.NEGATIVE_INFINITY));
        }
    }

    @Test
    void theRangeIsWrittenWithItsUnitAndItsExcludedEnds() {
        assertEquals("[0.0, 0.2] m", BORE.range(0, 0.2).rangeText());
        assertEquals("(0.0, 0.2] m", BORE.above(0, 0.2).rangeText());
        assertEquals("(0.0, 0.2) m", BORE.between(0, 0.2).rangeText());
        assertEquals("(0.0, inf) m", BORE.above(0, Double.MAX_VALUE).rangeText());
        assertEquals("(-inf, inf)", Slot.number("x", "x", Quantity.RATIO, "anything").rangeText());
        assertEquals(
                "[0.0, 1.0] Pa gauge",
                Slot.number("p", "p", Quantity.GAUGE_PRESSURE, "boost").range(0, 1).rangeText());
    }

    @Test
    void theUsualRangeIsTheWholeUntilSomebodySaysOtherwise() {
        Slot slot = BORE.range(0, 5).typical(2);
        assertEquals(0, slot.usualMin());
        assertEquals(5, slot.usualMax());
        Slot narrower = slot.range(1, 3);
        assertEquals(1, narrower.usualMin());
        assertEquals(3, narrower.usualMax());
    }

    @Test
    void aUsualRangeStaysThroughLaterChangesWithOrWithoutAReason() {
        for (String reason : List.of("Beyond it bends.", "")) {
            Slot slot = BORE.range(0, 5).usual(1, 2, reason).typical(1.5).shown("mm", "in");
            assertEquals(1, slot.usualMin());
            assertEquals(2, slot.usualMax());
            assertEquals(reason, slot.usualReason());
        }
    }

    @Test
    void anOptionalSlotStartsFromItsFallback() {
        Slot slot = BORE.range(0, 5).typical(3).orElse(1);
        assertEquals(Optional.of(1.0), slot.fallback());
        assertEquals(1.0, slot.typical());
    }

    @Test
    void aChoiceStartsFromItsFirstWordOrItsFallback() {
        Slot slot = Slot.choice("held", "what is held", "boost", "nothing");
        assertEquals("boost", slot.typical());
        assertEquals(Optional.empty(), slot.fallback());
        assertEquals("nothing", slot.orElse("nothing").typical());
    }

    @Test
    void changingASlotLeavesTheFirstAsItWas() {
        BORE.range(0, 1);
        assertTrue(BORE.admits(7));
    }

    @Test
    void onlyReadingsAsMeasuredTakeAnotherQuantity() {
        assertSame(BORE, BORE.measuring(Quantity.POWER));
        Slot mean = Slot.number("mean", "m", Quantity.AS_MEASURED, "mean").usual(0, 9, "Why.");
        Slot power = mean.measuring(Quantity.POWER);
        assertEquals(Quantity.POWER, power.quantity());
        assertEquals(9_000, power.usualMax(), "nine kilowatt, as readings in kW are meant");
    }
}

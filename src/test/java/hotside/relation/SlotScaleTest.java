// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import org.junit.jupiter.api.Test;

class SlotScaleTest {
    private static final Slot PIPE =
            Slot.number("length", "L", Quantity.LENGTH, "length of the pipe");

    @Test
    void aSlotIsShownInItsQuantitysUnit() {
        assertEquals("mm", SlotScale.of(PIPE, UnitSystem.SI_SHOP).label());
        assertEquals("in", SlotScale.of(PIPE, UnitSystem.US_SHOP).label());
    }

    @Test
    void aSlotsOwnUnitGoesFirst() {
        Slot pipe = PIPE.shown("m", "ft");
        assertEquals("m", SlotScale.of(pipe, UnitSystem.SI_SHOP).label());
        assertEquals("ft", SlotScale.of(pipe, UnitSystem.US_SHOP).label());
    }

    @Test
    void aSlotsOwnPressureKeepsItsZeroUnlessItNamesAnother() {
        Slot slot =
                Slot.number("inlet", "p", Quantity.PRESSURE, "pressure").shown("bar", "psi gauge");
        assertEquals("bar abs", SlotScale.of(slot, UnitSystem.SI_SHOP).label());
        assertEquals("psi gauge", SlotScale.of(slot, UnitSystem.US_SHOP).label());
    }

    @Test
    void aUnitOfSomethingElseIsRefused() {
        Slot slot = PIPE.shown("psi", "psi");
        var e =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> SlotScale.of(slot, UnitSystem.SI_SHOP));
        assertEquals(
                "“psi” is a unit of pressure. A length was expected, in m, mm, cm, µm, in, ft or thou.",
                e.getMessage());
    }
}

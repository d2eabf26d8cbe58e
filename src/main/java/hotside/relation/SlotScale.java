// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.Scale;
import hotside.unit.UnitSystem;

/** The scale on which a slot is shown. */
public final class SlotScale {
    private SlotScale() {}

    /** The slot's own unit for this shop, or else its quantity's. */
    public static Scale of(Slot slot, UnitSystem system) {
        String own = system == UnitSystem.SI_SHOP ? slot.siShown() : slot.usShown();
        return own == null ? slot.quantity().shown(system) : Scale.of(slot.quantity(), own);
    }
}

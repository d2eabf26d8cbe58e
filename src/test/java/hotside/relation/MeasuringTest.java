// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.unit.Quantity;
import org.junit.jupiter.api.Test;

class MeasuringTest {
    private static final Slot READING =
            Slot.number("step", "q", Quantity.AS_MEASURED, "step of the display")
                    .range(0, 1e9)
                    .usual(0, 100, "displays count in steps below 100; check the unit");

    /** One kilowatt is a thousand watts: SI prefixes. */
    @Test
    void whatIsUsualForReadingsOfPowerCountsInKilowatts() {
        Slot power = READING.measuring(Quantity.POWER);
        assertEquals(100e3, power.usualMax(), 1e-6);
        assertEquals(0, power.usualMin(), 0);
    }

    @Test
    void aSlotThatMeasuresSomethingAlreadyStaysAsItIs() {
        Slot bore =
                Slot.number("bore", "D", Quantity.LENGTH, "bore")
                        .range(0, 10)
                        .usual(0.02, 0.2, "pipes of engines are 20 to 200 mm wide");
        assertEquals(0.2, bore.measuring(Quantity.POWER).usualMax(), 0);
    }
}

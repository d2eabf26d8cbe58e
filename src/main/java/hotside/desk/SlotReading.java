// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.unit.DecimalHabit;
import hotside.unit.Expected;
import hotside.unit.Typed;
import hotside.unit.UnitSystem;
import java.util.List;
import java.util.Optional;

/**
 * What was typed into a calculator's field.
 *
 * @param value for the slot, SI; null if there is a fault
 * @param fault what to tell the person
 */
record SlotReading(Object value, Optional<String> fault) {
    static SlotReading of(
            Slot slot, String text, UnitSystem system, double ambient, DecimalHabit habit) {
        Expected expected =
                new Expected(slot.quantity(), SlotScale.of(slot, system), ambient, habit);
        return switch (slot.kind()) {
            case NUMBER -> number(slot, Typed.read(text, expected));
            case NUMBERS -> row(Typed.list(text, expected));
            case CHOICE, TEXT -> good(text.strip());
        };
    }

    private static SlotReading number(Slot slot, Typed typed) {
        if (typed instanceof Typed.Understood understood) {
            return slot.admits(understood.si())
                    ? good(understood.si())
                    : bad(hotside.page.Words.of("calculator.outside", slot.meaning()));
        }
        return typed instanceof Typed.Ambiguous ambiguous
                ? bad(ambiguous.question())
                : bad(((Typed.NotUnderstood) typed).message());
    }

    private static SlotReading row(Typed.Row row) {
        if (row instanceof Typed.Readings readings) {
            List<Double> values = readings.si();
            return good(values);
        }
        return row instanceof Typed.Ambiguous ambiguous
                ? bad(ambiguous.question())
                : bad(((Typed.NotUnderstood) row).message());
    }

    private static SlotReading good(Object value) {
        return new SlotReading(value, Optional.empty());
    }

    private static SlotReading bad(String fault) {
        return new SlotReading(null, Optional.of(fault));
    }
}

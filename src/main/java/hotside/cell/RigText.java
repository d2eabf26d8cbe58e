// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.content.Nearest;
import hotside.relation.Slot;
import hotside.unit.DecimalHabit;
import hotside.unit.Expected;
import hotside.unit.Numbers;
import hotside.unit.Typed;

/** Reads and checks what somebody wrote for a value of a rig. A number without a unit is in SI. */
final class RigText {
    private RigText() {}

    /**
     * @param path of the value, for messages
     * @param ambient absolute, Pa, where gauge and absolute meet
     * @return a {@code Double} in SI, or a {@code String} for a choice
     * @throws RigException if it is not understood or out of range
     */
    static Object read(String path, Slot slot, String text, double ambient) {
        if (slot.kind() == Slot.Kind.CHOICE) {
            return choice(path, slot, text.strip());
        }
        var expected =
                new Expected(
                        slot.quantity(), slot.quantity().siScale(), ambient, DecimalHabit.POINT);
        Typed typed = Typed.read(text, expected);
        if (typed instanceof Typed.Understood understood) {
            return number(path, slot, understood.si());
        }
        String why =
                typed instanceof Typed.NotUnderstood not
                        ? not.message()
                        : ((Typed.Ambiguous) typed).question();
        throw new RigException(
                CellWords.of("value.unread", path, text, why.replaceFirst("\\.$", "")), "");
    }

    private static String choice(String path, Slot slot, String word) {
        if (slot.choices().contains(word)) {
            return word;
        }
        throw new RigException(
                CellWords.of("value.word", path, word),
                CellWords.of("value.one-of", String.join(", ", slot.choices())));
    }

    /**
     * @throws RigException if the slot does not admit it
     */
    static Double number(String path, Slot slot, double value) {
        if (slot.admits(value)) {
            return value;
        }
        String unit = slot.quantity().siScale().label();
        throw new RigException(
                CellWords.of("value.range", path, tell(value, unit)),
                CellWords.of("value.range.wanted", tell(slot.min(), unit), tell(slot.max(), unit)));
    }

    private static String tell(double value, String unit) {
        return (DecimalHabit.spoken().write(Numbers.plain(value)) + " " + unit).strip();
    }

    static RigException unknown(String path, Iterable<String> known) {
        var paths = new java.util.ArrayList<String>();
        known.forEach(paths::add);
        var near = Nearest.sorted(path, paths);
        return new RigException(
                CellWords.of("value.unknown", path),
                CellWords.of(
                        "value.nearest",
                        String.join(", ", near.subList(0, Math.min(6, near.size())))));
    }
}

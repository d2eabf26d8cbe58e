// SPDX-License-Identifier: Apache-2.0
package hotside.page.diagram;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Values;
import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import hotside.unit.Shown;
import hotside.unit.UnitSystem;
import java.util.List;

/** What a drawing may draw: a relation worked for its inputs, and how its shop says numbers. */
final class Facts {
    private static final int DIGITS = 3;

    private final Relation relation;
    private final Values in;
    private final Values out;
    private final UnitSystem system;
    private final double ambient;

    /**
     * @throws RelationException if the relation cannot be worked
     */
    Facts(Relation relation, Values in, UnitSystem system, double ambient) {
        this.relation = relation;
        this.system = system;
        this.ambient = ambient;
        this.in = relation.work(in).in();
        this.out = relation.work(in).out();
    }

    /** An input or a result, SI. */
    double si(String slot) {
        return in.has(slot) ? in.number(slot) : out.number(slot);
    }

    List<Double> readings(String slot) {
        return in.numbers(slot);
    }

    String word(String slot) {
        return (String) in.get(slot);
    }

    double ambient() {
        return ambient;
    }

    /** A result for other inputs, SI; NaN where the relation has none. */
    double other(String output, String input, double value) {
        try {
            return relation.value(output, in.with(input, value));
        } catch (RelationException e) {
            return Double.NaN;
        }
    }

    /**
     * A result for two other inputs, SI.
     *
     * @throws RelationException if the relation has none
     */
    double with(String output, String one, double first, String other, double second) {
        return relation.value(output, in.with(one, first).with(other, second));
    }

    /** An input or a result with its unit. */
    String told(String slot) {
        Slot known = relation.slot(slot).orElseThrow();
        return Shown.of(
                        si(slot),
                        known.quantity(),
                        SlotScale.of(known, system),
                        ambient,
                        DIGITS,
                        DecimalHabit.spoken())
                .text();
    }

    /** Some number as the shop says it. */
    String told(double si, Quantity quantity) {
        return Shown.of(
                        si,
                        quantity,
                        quantity.shown(system),
                        ambient,
                        DIGITS,
                        DecimalHabit.spoken())
                .text();
    }

    /** A number in the unit of a slot. */
    String told(double si, String slot) {
        Slot known = relation.slot(slot).orElseThrow();
        return Shown.of(
                        si,
                        known.quantity(),
                        SlotScale.of(known, system),
                        ambient,
                        DIGITS,
                        DecimalHabit.spoken())
                .text();
    }
}

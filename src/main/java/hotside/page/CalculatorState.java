// SPDX-License-Identifier: Apache-2.0
package hotside.page;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Values;
import hotside.unit.UnitSystem;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a calculator card shows just now. Immutable.
 *
 * @param id the card's id in the page
 * @param relation the relation it works
 * @param values the last understood value of each input, SI; complete
 * @param faults for inputs whose text was not understood: what to say about it
 * @param over the input that the curve runs over, if a curve is drawn
 * @param curve the output that the curve shows
 * @param system the shop whose units it speaks
 * @param ambient absolute pressure of the air around, Pa
 * @param chartWidth width of its chart in pixels at 100 % text, less for larger text
 * @param working true if the working is shown
 */
public record CalculatorState(
        String id,
        Relation relation,
        Values values,
        Map<String, String> faults,
        Optional<Slot> over,
        Slot curve,
        UnitSystem system,
        double ambient,
        int chartWidth,
        boolean working) {
    public CalculatorState {
        faults = Map.copyOf(faults);
    }

    /** With one input changed; its fault, if any, is gone. */
    public CalculatorState with(String slot, Object value) {
        Map<String, String> rest = new LinkedHashMap<>(faults);
        rest.remove(slot);
        return new CalculatorState(
                id,
                relation,
                values.with(slot, value),
                rest,
                over,
                curve,
                system,
                ambient,
                chartWidth,
                working);
    }

    /** With one input not understood; its last value stays. */
    public CalculatorState withFault(String slot, String fault) {
        Map<String, String> more = new LinkedHashMap<>(faults);
        more.put(slot, fault);
        return new CalculatorState(
                id, relation, values, more, over, curve, system, ambient, chartWidth, working);
    }

    public CalculatorState over(Slot input) {
        return new CalculatorState(
                id,
                relation,
                values,
                faults,
                Optional.of(input),
                curve,
                system,
                ambient,
                chartWidth,
                working);
    }

    public CalculatorState curve(Slot output) {
        return new CalculatorState(
                id, relation, values, faults, over, output, system, ambient, chartWidth, working);
    }

    public CalculatorState in(UnitSystem other) {
        return new CalculatorState(
                id, relation, values, Map.of(), over, curve, other, ambient, chartWidth, working);
    }

    public CalculatorState working(boolean shown) {
        return new CalculatorState(
                id, relation, values, faults, over, curve, system, ambient, chartWidth, shown);
    }

    public CalculatorState chartWidth(int width) {
        return new CalculatorState(
                id, relation, values, faults, over, curve, system, ambient, width, working);
    }
}

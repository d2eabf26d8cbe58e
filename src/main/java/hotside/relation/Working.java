// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * What a relation's function reads its inputs from and writes its steps, results and cautions to.
 * The same function serves the fast path, where steps are dropped, and the explaining path, where
 * they are kept: so a worked solution cannot differ from the number it explains.
 */
public final class Working {
    private final Relation relation;
    private final Object[] inputs;
    private final double[] outputs;
    private final List<Step> steps;
    private final List<Caution> cautions;

    Working(Relation relation, Object[] inputs, boolean explain) {
        this.relation = relation;
        this.inputs = inputs;
        this.outputs = new double[relation.outputs().size()];
        java.util.Arrays.fill(outputs, Double.NaN);
        this.steps = explain ? new ArrayList<>() : null;
        this.cautions = explain ? new ArrayList<>() : null;
    }

    /** The number in this input slot, SI. */
    public double in(String slot) {
        return (Double) inputs[relation.inputIndex(slot)];
    }

    /** The readings in this input slot, SI; a fresh array. */
    @SuppressWarnings("unchecked")
    public double[] readings(String slot) {
        List<Double> list = (List<Double>) inputs[relation.inputIndex(slot)];
        double[] array = new double[list.size()];
        for (int i = 0; i < array.length; i++) {
            array[i] = list.get(i);
        }
        return array;
    }

    /** The word or text in this input slot. */
    public String word(String slot) {
        return (String) inputs[relation.inputIndex(slot)];
    }

    /**
     * Writes a line of working.
     *
     * @param name what later formulas call it, after an {@code @}; no slot's name
     * @param symbol in TeX
     * @param formula TeX with {@code @name} for inputs and earlier lines
     * @param value in SI
     * @param text why, a phrase for people
     * @return the value, so that a line can be written where it is computed
     */
    public double step(
            String name,
            String symbol,
            Quantity quantity,
            String formula,
            double value,
            String text) {
        if (steps != null) {
            Quantity known = quantity == Quantity.AS_MEASURED ? relation.measured() : quantity;
            steps.add(new Step(name, symbol, known, formula, value, told(name, text), false));
        }
        return value;
    }

    /**
     * Writes a result, which is also the last line that leads to it.
     *
     * @param slot an output slot
     */
    public double out(String slot, String formula, double value, String text) {
        int index = relation.outputIndex(slot);
        outputs[index] = value;
        if (steps != null) {
            Slot output = relation.outputs().get(index);
            steps.add(
                    new Step(
                            slot,
                            output.symbol(),
                            output.quantity(),
                            formula,
                            value,
                            told(slot, text),
                            true));
        }
        return value;
    }

    private String told(String step, String text) {
        return CardWords.step(relation.id(), step, text);
    }

    /** Warns, if the condition holds, that an assumption is weakened. */
    public void caution(boolean when, String about, Supplier<String> text) {
        if (when && cautions != null) {
            cautions.add(new Caution(about, CardWords.caution(text.get())));
        }
    }

    double[] outputs() {
        return outputs;
    }

    List<Step> steps() {
        return steps;
    }

    List<Caution> cautions() {
        return cautions;
    }
}

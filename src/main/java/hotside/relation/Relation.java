// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.DecimalHabit;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A relation of the trade: pure core functions wrapped for teaching. Calculators, problems, answer
 * keys, mistakes and the test cell are all views of relations. Immutable and safe to share between
 * threads.
 *
 * <pre>{@code
 * Relation.named("valve-force", "Push of the exhaust on a gate valve", "Gate")
 *         .says("The exhaust pushes on the closed valve with the pressure difference times the seat area.")
 *         .tex("F = \\frac{\\pi}{4} d_s^2 (p_u - p_d)")
 *         .input(Slot.number("seatDiameter", "d_s", Quantity.LENGTH, "bore of the seat").range(0, 0.2))
 *         .output(Slot.number("force", "F", Quantity.FORCE, "push, positive opens"))
 *         .assumes("the valve is closed")
 *         .source("force is pressure times area")
 *         .by(ValveForce::work);
 * }</pre>
 */
public final class Relation {
    private final String id;
    private final String title;
    private final String topic;
    private final String says;
    private final String tex;
    private final List<Slot> inputs;
    private final List<Slot> outputs;
    private final List<String> assumptions;
    private final List<String> sources;
    private final Consumer<Working> function;
    private final Quantity measured;
    private final Map<String, Integer> inputIndex = new HashMap<>();
    private final Map<String, Integer> outputIndex = new HashMap<>();

    private Relation(Draft draft, Consumer<Working> function) {
        this.id = draft.id;
        this.title = draft.title;
        this.topic = draft.topic;
        this.says = draft.says;
        this.tex = draft.tex;
        this.inputs = draft.inputs.stream().map(slot -> slot.of(id)).toList();
        this.outputs = draft.outputs.stream().map(slot -> slot.of(id)).toList();
        this.assumptions = List.copyOf(draft.assumptions);
        this.sources = List.copyOf(draft.sources);
        this.function = function;
        this.measured = draft.measured;
        for (int i = 0; i < inputs.size(); i++) {
            inputIndex.put(inputs.get(i).name(), i);
        }
        for (int i = 0; i < outputs.size(); i++) {
            outputIndex.put(outputs.get(i).name(), i);
        }
    }

    /**
     * Starts a relation.
     *
     * @param id lower case words joined by hyphens; unique
     * @param title for people
     * @param topic the heading it is listed under
     */
    public static Draft named(String id, String title, String topic) {
        return new Draft(id, title, topic);
    }

    public String id() {
        return id;
    }

    public String title() {
        return CardWords.card(id + ".title", title);
    }

    public String topic() {
        String key = topic.toLowerCase(Locale.ROOT).replace(' ', '-');
        return CardWords.card("topic." + key, topic);
    }

    /** What it is, in one or two plain sentences. */
    public String says() {
        return CardWords.card(id + ".says", says);
    }

    /** The law in TeX. */
    public String tex() {
        return tex;
    }

    public List<Slot> inputs() {
        return inputs;
    }

    public List<Slot> outputs() {
        return outputs;
    }

    /** What it takes for granted, phrases. */
    public List<String> assumptions() {
        return IntStream.range(0, assumptions.size())
                .mapToObj(i -> CardWords.card(id + ".assumes." + (i + 1), assumptions.get(i)))
                .toList();
    }

    /** Where it comes from, with what was read and what is from memory. */
    public List<String> sources() {
        return sources;
    }

    /** The input or output slot of this name, if there is one. */
    public java.util.Optional<Slot> slot(String name) {
        if (inputIndex.containsKey(name)) {
            return java.util.Optional.of(inputs.get(inputIndex.get(name)));
        }
        return java.util.Optional.ofNullable(outputIndex.get(name)).map(outputs::get);
    }

    public boolean isInput(String name) {
        return inputIndex.containsKey(name);
    }

    public boolean isOutput(String name) {
        return outputIndex.containsKey(name);
    }

    /**
     * The same relation for readings of a known quantity: what was {@link Quantity#AS_MEASURED}
     * becomes it, so that a mean of powers is a power.
     */
    public Relation measuring(Quantity quantity) {
        Draft draft = new Draft(id, title, topic).says(says).tex(tex);
        inputs.forEach(slot -> draft.input(slot.measuring(quantity)));
        outputs.forEach(slot -> draft.output(slot.measuring(quantity)));
        assumptions.forEach(draft::assumes);
        sources.forEach(draft::source);
        draft.measured = quantity;
        return draft.by(function);
    }

    /** What its readings measure; {@link Quantity#AS_MEASURED} where nobody has said. */
    Quantity measured() {
        return measured;
    }

    /** The value to start each input from. */
    public Values typical() {
        Map<String, Object> map = new LinkedHashMap<>();
        inputs.forEach(slot -> map.put(slot.name(), slot.typical()));
        return Values.of(map);
    }

    /**
     * Works the relation out, with steps and cautions.
     *
     * @param given by slot name, SI; optional slots may be left out
     * @throws RelationException if a slot is unknown, missing, of the wrong kind or outside its
     *     range, or if the relation has no finite result there
     */
    public Worked work(Values given) {
        Object[] arranged = arrange(given, true);
        Working working = run(arranged, true);
        List<Caution> cautions = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            Slot slot = inputs.get(i);
            if (slot.kind() == Slot.Kind.NUMBER && !slot.usualReason().isEmpty()) {
                double value = (Double) arranged[i];
                if (value < slot.usualMin() || value > slot.usualMax()) {
                    cautions.add(new Caution(slot.name(), slot.usualReason()));
                }
            }
        }
        cautions.addAll(working.cautions());
        return new Worked(this, named(inputs, arranged), out(working), working.steps(), cautions);
    }

    /** The outputs alone: as {@link #work}, without keeping steps and cautions. */
    public Values solve(Values given) {
        return out(run(arrange(given, true), false));
    }

    /**
     * The outputs for inputs that may lie outside their ranges: what a mistaken person would get.
     * Never use it for a right answer.
     *
     * @throws RelationException if nothing finite comes out
     */
    public Values solveUnguarded(Values given) {
        Object[] arranged = arrange(given, false);
        try {
            return out(run(arranged, false));
        } catch (RelationException e) {
            throw e;
        } catch (RuntimeException e) {
            // Out of range anything may fail: a root that has no bracket, a share above one.
            throw new RelationException(
                    "", RelationWords.of("no-result", id, named(inputs, arranged)), e);
        }
    }

    /**
     * One number for one row of inputs, without any wrapping: for long tables.
     *
     * @param row one value for each input, in order; not kept
     * @return the outputs in order; a fresh array
     */
    public double[] solveRow(Object[] row) {
        for (int i = 0; i < row.length; i++) {
            check(inputs.get(i), row[i]);
        }
        return run(row, false).outputs();
    }

    /**
     * One output for numbers given in the order of the inputs; short for tests.
     *
     * @throws RelationException as {@link #work}
     */
    public double value(String output, Values given) {
        return solve(given).number(output);
    }

    /**
     * One output over one input, the other inputs staying as they are: for the many trials of a
     * solver. Not for two threads at once.
     *
     * @param others the other inputs, SI; not checked against their ranges
     * @param expectFaults true if others may lie where the relation fails
     * @return gives NaN where the relation has no result
     * @throws RelationException if a slot is unknown or missing
     */
    DoubleUnaryOperator curve(String input, String output, Values others, boolean expectFaults) {
        Object[] row = arrange(others.with(input, Double.NaN), false);
        int in = inputIndex(input);
        int out = outputIndex(output);
        return x -> {
            row[in] = x;
            try {
                double[] results = work(row, false).outputs();
                return firstNotFinite(results) < 0 ? results[out] : Double.NaN;
            } catch (RelationException e) {
                return Double.NaN;
            } catch (RuntimeException e) {
                if (expectFaults) {
                    return Double.NaN;
                }
                throw e;
            }
        };
    }

    int inputIndex(String slot) {
        Integer index = inputIndex.get(slot);
        if (index == null) {
            throw new IllegalStateException(id + " reads a slot it does not have: " + slot);
        }
        return index;
    }

    int outputIndex(String slot) {
        Integer index = outputIndex.get(slot);
        if (index == null) {
            throw new IllegalStateException(id + " writes a slot it does not have: " + slot);
        }
        return index;
    }

    private Working run(Object[] arranged, boolean explain) {
        Working working = work(arranged, explain);
        int unsound = firstNotFinite(working.outputs());
        if (unsound >= 0) {
            String output = outputs.get(unsound).name();
            throw new RelationException(
                    output, RelationWords.of("not-finite", id, output, named(inputs, arranged)));
        }
        return working;
    }

    private Working work(Object[] arranged, boolean explain) {
        Working working = new Working(this, arranged, explain);
        function.accept(working);
        return working;
    }

    /** Where a result is not a finite number; −1 if all are. */
    private static int firstNotFinite(double[] results) {
        for (int i = 0; i < results.length; i++) {
            if (!Double.isFinite(results[i])) {
                return i;
            }
        }
        return -1;
    }

    private Object[] arrange(Values given, boolean guarded) {
        for (String name : given.names()) {
            if (!inputIndex.containsKey(name)) {
                throw new RelationException(
                        name, RelationWords.of("input.unknown", id, name, listOf(inputs)));
            }
        }
        Object[] arranged = new Object[inputs.size()];
        for (int i = 0; i < arranged.length; i++) {
            Slot slot = inputs.get(i);
            Object value = given.get(slot.name());
            if (value == null) {
                value = slot.fallback().orElseThrow(() -> missing(slot));
            }
            if (guarded) {
                check(slot, value);
            }
            arranged[i] = value;
        }
        return arranged;
    }

    private RelationException missing(Slot slot) {
        return new RelationException(
                slot.name(), RelationWords.of("input.missing", id, slot.name(), slot.meaning()));
    }

    private RelationException outside(String key, Slot slot, Object value) {
        return new RelationException(
                slot.name(),
                RelationWords.of(
                        key,
                        id,
                        slot.name(),
                        DecimalHabit.spoken().write(String.valueOf(value)),
                        slot.rangeText()));
    }

    private void check(Slot slot, Object value) {
        switch (slot.kind()) {
            case NUMBER -> {
                if (!(value instanceof Double number)) {
                    throw wrongKind(slot, value, RelationWords.of("kind.number"));
                }
                if (!slot.admits(number)) {
                    throw outside("input.outside", slot, number);
                }
            }
            case NUMBERS -> {
                if (!(value instanceof List<?> list) || list.isEmpty()) {
                    throw wrongKind(slot, value, RelationWords.of("kind.numbers"));
                }
                for (Object reading : list) {
                    if (!(reading instanceof Double number) || !slot.admits(number)) {
                        throw outside("input.holds", slot, reading);
                    }
                }
            }
            case CHOICE -> {
                if (!(value instanceof String word) || !slot.choices().contains(word)) {
                    throw wrongKind(
                            slot,
                            value,
                            RelationWords.of("kind.choice", String.join(", ", slot.choices())));
                }
            }
            case TEXT -> {
                if (!(value instanceof String)) {
                    throw wrongKind(slot, value, RelationWords.of("kind.text"));
                }
            }
        }
    }

    private RelationException wrongKind(Slot slot, Object value, String expected) {
        return new RelationException(
                slot.name(), RelationWords.of("input.kind", id, slot.name(), value, expected));
    }

    private static Values named(List<Slot> slots, Object[] values) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i++) {
            map.put(slots.get(i).name(), values[i]);
        }
        return Values.of(map);
    }

    private Values out(Working working) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < outputs.size(); i++) {
            map.put(outputs.get(i).name(), working.outputs()[i]);
        }
        return Values.of(map);
    }

    private static String listOf(List<Slot> slots) {
        return slots.stream().map(Slot::name).collect(Collectors.joining(", "));
    }

    @Override
    public String toString() {
        return id;
    }

    /** A relation being described. */
    public static final class Draft {
        private final String id;
        private final String title;
        private final String topic;
        private String says = "";
        private String tex = "";
        private Quantity measured = Quantity.AS_MEASURED;
        private final List<Slot> inputs = new ArrayList<>();
        private final List<Slot> outputs = new ArrayList<>();
        private final List<String> assumptions = new ArrayList<>();
        private final List<String> sources = new ArrayList<>();

        private Draft(String id, String title, String topic) {
            this.id = id;
            this.title = title;
            this.topic = topic;
        }

        public Draft says(String sentence) {
            says = sentence;
            return this;
        }

        public Draft tex(String law) {
            tex = law;
            return this;
        }

        public Draft input(Slot slot) {
            inputs.add(slot);
            return this;
        }

        public Draft output(Slot slot) {
            outputs.add(slot);
            return this;
        }

        /** Short for an output that needs no more than its meaning. */
        public Draft output(String name, String symbol, Quantity quantity, String meaning) {
            return output(Slot.number(name, symbol, quantity, meaning));
        }

        public Draft assumes(String... statements) {
            assumptions.addAll(List.of(statements));
            return this;
        }

        public Draft source(String... where) {
            sources.addAll(List.of(where));
            return this;
        }

        /** Finishes the relation with the function that works it out. */
        public Relation by(Consumer<Working> function) {
            return new Relation(this, function);
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Relations used one after the other, each under a name of its own, each slot fed by a fixed value,
 * a given or an earlier result. Worked examples, computed values in prose and problems are chains.
 *
 * <p>A value inside a chain has a place: a given is called by its name, a slot of a use by {@code
 * use.slot}.
 */
public final class Chain {
    /** What feeds a slot. */
    public sealed interface Feed permits Fixed, From {}

    /**
     * A value that never changes.
     *
     * @param value in SI, or a word
     */
    public record Fixed(Object value) implements Feed {}

    /**
     * A value from elsewhere in the chain.
     *
     * @param place a given, or {@code use.slot} of an earlier use
     */
    public record From(String place) implements Feed {}

    /**
     * One relation in the chain.
     *
     * @param name its own name in the chain
     * @param relation the relation
     * @param feeds what feeds each slot; every input but those that are optional or solved for, and
     *     one output if an input is solved for
     * @param solveFor the input to find from a known output; empty for the usual direction
     */
    public record Use(
            String name, Relation relation, Map<String, Feed> feeds, Optional<String> solveFor) {
        public Use {
            feeds = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(feeds));
        }
    }

    /**
     * Changes values as they pass, to see what a mistake would give.
     *
     * @see #run(Values, Tamper, Values)
     */
    @FunctionalInterface
    public interface Tamper {
        /**
         * @param place where the value stands
         * @param value what the chain found, SI
         * @param known every value found so far, by place
         * @return what to go on with
         */
        Object at(String place, Object value, Map<String, Object> known);
    }

    private final List<Use> uses;

    /**
     * @param uses in working order: a use may take from earlier ones only
     */
    public Chain(List<Use> uses) {
        this.uses = List.copyOf(uses);
    }

    public List<Use> uses() {
        return uses;
    }

    /** The slot at {@code use.slot}, if the chain has it. */
    public Optional<Slot> slotAt(String place) {
        int dot = place.indexOf('.');
        if (dot < 0) {
            return Optional.empty();
        }
        String name = place.substring(0, dot);
        return uses.stream()
                .filter(use -> use.name().equals(name))
                .findFirst()
                .flatMap(use -> use.relation().slot(place.substring(dot + 1)));
    }

    /** The quantity at {@code use.slot}, if the chain has it. */
    public Optional<Quantity> quantityAt(String place) {
        return slotAt(place).map(Slot::quantity);
    }

    /**
     * Works the whole chain.
     *
     * @param givens by name, SI
     * @return every given and slot by place, and the working of each use
     * @throws RelationException if a use cannot be worked
     */
    public Run run(Values givens) {
        Map<String, Object> known = new LinkedHashMap<>(givens.asMap());
        List<Worked> workings = new ArrayList<>();
        for (Use use : uses) {
            Values in = gather(use, known);
            if (use.solveFor().isPresent()) {
                in = turnedRound(use, in);
            }
            Worked worked = use.relation().work(in);
            worked.in().asMap().forEach((slot, value) -> known.put(use.name() + "." + slot, value));
            worked.out()
                    .asMap()
                    .forEach((slot, value) -> known.put(use.name() + "." + slot, value));
            workings.add(worked);
        }
        return new Run(Values.of(known), workings);
    }

    /** As {@link #run(Values, Tamper, Values)}, where nothing is known of the right values. */
    public Values run(Values givens, Tamper tamper) {
        return run(givens, tamper, Values.NONE);
    }

    /**
     * Works the whole chain with values changed on the way, ranges unguarded.
     *
     * @param right the values of the chain rightly worked, as far as they are known: where a use is
     *     turned round and several values would do, the one next to the right one is taken
     * @return every given and slot by place
     * @throws RelationException if nothing finite comes out
     */
    public Values run(Values givens, Tamper tamper, Values right) {
        Map<String, Object> known = new LinkedHashMap<>();
        givens.asMap().forEach((name, value) -> known.put(name, tamper.at(name, value, known)));
        for (Use use : uses) {
            Map<String, Object> in = new LinkedHashMap<>(gather(use, known).asMap());
            for (Slot slot : use.relation().inputs()) {
                Object value = in.get(slot.name());
                if (value == null && !use.solveFor().equals(Optional.of(slot.name()))) {
                    value = slot.fallback().orElse(null);
                }
                if (value != null) {
                    in.put(slot.name(), tamper.at(use.name() + "." + slot.name(), value, known));
                }
            }
            Values inputs = Values.of(in);
            if (use.solveFor().isPresent()) {
                String target = knownOutput(use);
                Object goal = tamper.at(use.name() + "." + target, inputs.get(target), known);
                String unknown = use.solveFor().get();
                String place = use.name() + "." + unknown;
                double found =
                        Solver.solveAstray(
                                use.relation(),
                                unknown,
                                target,
                                (Double) goal,
                                inputs.without(target),
                                right.has(place) ? right.number(place) : Double.NaN);
                inputs = inputs.without(target).with(unknown, tamper.at(place, found, known));
            }
            inputs.asMap().forEach((slot, value) -> known.put(use.name() + "." + slot, value));
            Values out = use.relation().solveUnguarded(inputs);
            for (String slot : out.names()) {
                String place = use.name() + "." + slot;
                known.put(place, tamper.at(place, out.get(slot), known));
            }
        }
        return Values.of(known);
    }

    private static Values turnedRound(Use use, Values in) {
        String output = knownOutput(use);
        String unknown = use.solveFor().orElseThrow();
        Values others = in.without(output);
        double found = Solver.solveFor(use.relation(), unknown, output, in.number(output), others);
        return others.with(unknown, found);
    }

    private static String knownOutput(Use use) {
        return use.feeds().keySet().stream()
                .filter(use.relation()::isOutput)
                .findFirst()
                .orElseThrow(
                        () ->
                                new RelationException(
                                        "", use.name() + ": no output is given to solve from"));
    }

    private static Values gather(Use use, Map<String, Object> known) {
        Map<String, Object> in = new LinkedHashMap<>();
        use.feeds()
                .forEach(
                        (slot, feed) -> {
                            Object value =
                                    feed instanceof Fixed fixed
                                            ? fixed.value()
                                            : known.get(((From) feed).place());
                            if (value == null) {
                                throw new RelationException(
                                        slot,
                                        use.name()
                                                + "."
                                                + slot
                                                + ": nothing is known at \""
                                                + ((From) feed).place()
                                                + "\"");
                            }
                            in.put(slot, value);
                        });
        return Values.of(in);
    }

    /**
     * A chain worked out.
     *
     * @param values every given and slot by place
     * @param workings the working of each use, in order
     */
    public record Run(Values values, List<Worked> workings) {
        public Run {
            workings = List.copyOf(workings);
        }

        public double number(String place) {
            return values.number(place);
        }
    }
}

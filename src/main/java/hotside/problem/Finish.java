// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.Chain;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.relation.Step;
import hotside.relation.Worked;
import hotside.unit.Quantity;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes a problem of a worked example: the numbers are fixed, the last result is asked for, and the
 * slips that its quantities invite are recognised.
 */
public final class Finish {
    private Finish() {}

    /**
     * The example as a problem.
     *
     * @param chain holds the example among other things
     * @param use the last relation of the example
     * @param title for people
     * @param givens fixed values, of which those are taken that the example needs
     * @param ambient absolute pressure of the air around, Pa
     * @throws RelationException if the example has no result
     */
    public static Template template(
            Chain chain, String use, String title, List<Given> givens, double ambient) {
        Chain needed = needed(chain, use);
        Set<String> fed = new LinkedHashSet<>(List.of(Variants.AMBIENT));
        needed.uses().forEach(u -> sources(u).forEach(fed::add));
        List<Given> used = givens.stream().filter(g -> fed.contains(g.name())).toList();
        Slot asked = asked(needed, used, ambient);
        return new Template(
                "finish-" + use,
                title,
                "",
                1,
                Template.Kind.NUMBER,
                used,
                needed,
                List.of(
                        new Ask(
                                use + "." + asked.name(),
                                asked.meaning(),
                                asked.quantity(),
                                SlotScale.of(asked, UnitSystem.SI_SHOP),
                                SlotScale.of(asked, UnitSystem.US_SHOP),
                                Ask.Tolerance.USUAL)),
                mistakes(needed),
                false,
                "",
                List.of(),
                "",
                TemplateReader.fingerprint(use + used));
    }

    /** The last relation of the example, worked out. */
    public static Worked last(Variant variant) {
        List<Worked> workings = variant.run().workings();
        return workings.get(workings.size() - 1);
    }

    /** The use and all that it takes from, in working order. */
    private static Chain needed(Chain chain, String use) {
        List<Chain.Use> kept = new ArrayList<>();
        Set<String> wanted = new LinkedHashSet<>(Set.of(use));
        for (int i = chain.uses().size() - 1; i >= 0; i--) {
            Chain.Use candidate = chain.uses().get(i);
            if (wanted.contains(candidate.name())) {
                kept.add(0, candidate);
                sources(candidate).forEach(place -> wanted.add(place.replaceFirst("\\..*", "")));
            }
        }
        return new Chain(kept);
    }

    private static List<String> sources(Chain.Use use) {
        return use.feeds().values().stream()
                .filter(Chain.From.class::isInstance)
                .map(feed -> ((Chain.From) feed).place())
                .toList();
    }

    /** The result that the last step of the last relation gives. */
    private static Slot asked(Chain chain, List<Given> givens, double ambient) {
        Chain.Use use = chain.uses().get(chain.uses().size() - 1);
        if (use.solveFor().isPresent()) {
            throw new RelationException(
                    use.solveFor().get(),
                    use.name() + " is worked backwards, and its last step is known beforehand");
        }
        List<Worked> workings = chain.run(Given.values(givens, ambient)).workings();
        Worked last = workings.get(workings.size() - 1);
        Step step = last.steps().get(last.steps().size() - 1);
        Slot asked = last.relation().slot(step.name()).orElseThrow();
        if (asked.quantity() == Quantity.FLAG) {
            throw new RelationException(
                    asked.name(), use.name() + " ends in yes or no, which is no number to find");
        }
        return asked;
    }

    private static List<Mistake> mistakes(Chain chain) {
        List<Mistake> mistakes = new ArrayList<>();
        for (Chain.Use use : chain.uses()) {
            Relation relation = use.relation();
            for (Slot slot : relation.inputs()) {
                if (slot.kind() == Slot.Kind.NUMBER) {
                    AskMe.slips(slot)
                            .forEach(
                                    slip ->
                                            mistakes.add(
                                                    new Mistake(
                                                            slip,
                                                            use.name() + "." + slot.name(),
                                                            Optional.empty(),
                                                            1,
                                                            Optional.empty(),
                                                            Optional.empty(),
                                                            Optional.empty())));
                }
            }
        }
        return mistakes;
    }
}

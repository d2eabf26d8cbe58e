// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.relation.Chain;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.SlotScale;
import hotside.statistics.draw.SplitMix64;
import hotside.unit.Dimension;
import hotside.unit.Quantity;
import hotside.unit.Scale;
import hotside.unit.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Makes a problem of any relation: fresh givens over the usual range of each input, one output to
 * find, and the slips that its quantities invite.
 */
public final class AskMe {
    private static final String USE = "r";

    private AskMe() {}

    /**
     * The relation as a problem.
     *
     * @param seed chooses which output is asked for; the same seed draws a sound variant of it
     * @param system the shop whose numbers shall be round
     * @return nothing if the relation takes or gives more than single numbers
     */
    public static Optional<Template> template(Relation relation, long seed, UnitSystem system) {
        List<Slot> outputs = relation.outputs().stream().filter(AskMe::asked).toList();
        if (outputs.isEmpty() || !relation.inputs().stream().allMatch(AskMe::drawn)) {
            return Optional.empty();
        }
        int first = new SplitMix64(seed).below(outputs.size());
        return IntStream.range(first, first + outputs.size())
                .mapToObj(i -> outputs.get(i % outputs.size()))
                .map(hidden -> asking(relation, hidden, system))
                .filter(template -> Variants.draws(template, seed, system))
                .findFirst();
    }

    /** Some results are given away by their nature, so the next one is tried. */
    private static Template asking(Relation relation, Slot hidden, UnitSystem system) {
        Map<String, Chain.Feed> feeds = new LinkedHashMap<>();
        List<Given> givens = new ArrayList<>();
        List<Mistake> mistakes = new ArrayList<>();
        StringBuilder prompt = new StringBuilder();
        for (Slot slot : relation.inputs()) {
            prompt.append("- ").append(slot.meaning());
            if (slot.kind() == Slot.Kind.NUMBER) {
                feeds.put(slot.name(), new Chain.From(slot.name()));
                givens.add(given(slot, system));
                slips(slot).forEach(slip -> mistakes.add(mistake(slip, slot)));
                prompt.append(" $").append(slot.symbol()).append("$: {{").append(slot.name());
                prompt.append("}}\n");
            } else {
                Object fixed = slot.fallback().orElse(slot.typical());
                feeds.put(slot.name(), new Chain.Fixed(fixed));
                prompt.append(": ").append(fixed).append('\n');
            }
        }
        prompt.append('\n')
                .append(
                        ProblemWords.of(
                                "ask-me.find", NounPhrase.of(hidden.meaning()), hidden.symbol()));
        return new Template(
                "ask-me-" + relation.id() + "-" + hidden.name().toLowerCase(Locale.ROOT),
                relation.title(),
                "relation." + relation.id(),
                1,
                Template.Kind.NUMBER,
                givens,
                new Chain(List.of(new Chain.Use(USE, relation, feeds, Optional.empty()))),
                List.of(ask(hidden)),
                mistakes,
                false,
                prompt.toString(),
                hints(relation),
                relation.says(),
                TemplateReader.fingerprint(relation.id()));
    }

    private static Ask ask(Slot hidden) {
        return new Ask(
                USE + "." + hidden.name(),
                hidden.meaning(),
                hidden.quantity(),
                SlotScale.of(hidden, UnitSystem.SI_SHOP),
                SlotScale.of(hidden, UnitSystem.US_SHOP),
                Ask.Tolerance.USUAL);
    }

    private static Mistake mistake(Slips slip, Slot slot) {
        return new Mistake(
                slip,
                USE + "." + slot.name(),
                Optional.empty(),
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static boolean drawn(Slot slot) {
        return slot.kind() == Slot.Kind.NUMBER || slot.kind() == Slot.Kind.CHOICE;
    }

    private static boolean asked(Slot slot) {
        return slot.quantity() != Quantity.FLAG && slot.quantity() != Quantity.COUNT;
    }

    private static Given given(Slot slot, UnitSystem system) {
        Scale scale = SlotScale.of(slot, system);
        double ambient = hotside.unit.Units.STANDARD_ATMOSPHERE;
        double low = scale.fromSi(slot.usualMin(), slot.quantity(), ambient);
        double high = scale.fromSi(slot.usualMax(), slot.quantity(), ambient);
        Grid grid =
                switch (slot.quantity()) {
                    case COUNT -> Grid.whole(low, high, scale);
                    case FLAG -> Grid.whole(0, 1, scale);
                    default -> Grid.natural(low, high, scale);
                };
        return Given.number(slot.name(), slot.quantity(), grid, Optional.of(grid));
    }

    /** The slips that a quantity invites. */
    static List<Slips> slips(Slot slot) {
        if (slot.quantity() == Quantity.PRESSURE) {
            return List.of(Slips.GAUGE_AS_ABSOLUTE, Slips.ABSOLUTE_AS_GAUGE);
        }
        if (slot.quantity() == Quantity.TEMPERATURE) {
            return List.of(Slips.CELSIUS_AS_KELVIN);
        }
        if (slot.quantity().dimension() == Dimension.LENGTH
                && slot.name().toLowerCase(Locale.ROOT).contains("diameter")) {
            return List.of(Slips.RADIUS_AS_DIAMETER, Slips.DIAMETER_AS_RADIUS);
        }
        return slot.quantity() == Quantity.PERCENTAGE
                ? List.of(Slips.PERCENT_AS_NUMBER)
                : List.of();
    }

    private static List<String> hints(Relation relation) {
        StringBuilder slots = new StringBuilder();
        relation.inputs()
                .forEach(s -> slots.append(slots.isEmpty() ? "" : "; ").append(s.meaning()));
        return List.of(
                ProblemWords.of("ask-me.told", slots),
                relation.says(),
                "$$" + relation.tex() + "$$");
    }
}

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
     * @param seed chooses which output is asked for
     * @param system the shop whose numbers shall be round
     * @return nothing if the relation takes or gives more than single numbers
     */
    public static Optional<Template> template(Relation relation, long seed, UnitSystem system) {
        boolean numbers =
                relation.inputs().stream().allMatch(AskMe::drawn)
                        && relation.outputs().stream().anyMatch(AskMe::asked);
        if (!numbers) {
            return Optional.empty();
        }
        List<Slot> outputs = relation.outputs().stream().filter(AskMe::asked).toList();
        Slot hidden = outputs.get(new SplitMix64(seed).below(outputs.size()));
        Map<String, Chain.Feed> feeds = new LinkedHashMap<>();
        List<Given> givens = new ArrayList<>();
        List<Mistake> mistakes = new ArrayList<>();
        StringBuilder prompt = new StringBuilder();
        for (Slot slot : relation.inputs()) {
            if (slot.kind() != Slot.Kind.NUMBER) {
                feeds.put(slot.name(), new Chain.Fixed(slot.fallback().orElse(slot.typical())));
                continue;
            }
            feeds.put(slot.name(), new Chain.From(slot.name()));
            givens.add(given(slot, system));
            prompt.append("- ")
                    .append(slot.meaning())
                    .append(" $")
                    .append(slot.symbol())
                    .append("$: {{")
                    .append(slot.name())
                    .append("}}\n");
            slips(slot)
                    .forEach(
                            slip ->
                                    mistakes.add(
                                            new Mistake(
                                                    slip,
                                                    USE + "." + slot.name(),
                                                    Optional.empty(),
                                                    1,
                                                    Optional.empty(),
                                                    Optional.empty(),
                                                    Optional.empty())));
        }
        Ask ask =
                new Ask(
                        USE + "." + hidden.name(),
                        hidden.meaning(),
                        hidden.quantity(),
                        SlotScale.of(hidden, UnitSystem.SI_SHOP),
                        SlotScale.of(hidden, UnitSystem.US_SHOP),
                        Ask.Tolerance.USUAL);
        return Optional.of(
                new Template(
                        "ask-me-" + relation.id() + "-" + hidden.name().toLowerCase(Locale.ROOT),
                        relation.title(),
                        "relation." + relation.id(),
                        1,
                        Template.Kind.NUMBER,
                        givens,
                        new Chain(List.of(new Chain.Use(USE, relation, feeds, Optional.empty()))),
                        List.of(ask),
                        mistakes,
                        false,
                        prompt + "\nFind the " + hidden.meaning() + " $" + hidden.symbol() + "$.",
                        hints(relation),
                        relation.says(),
                        TemplateReader.fingerprint(relation.id())));
    }

    private static boolean drawn(Slot slot) {
        return slot.kind() == Slot.Kind.NUMBER
                || slot.kind() == Slot.Kind.CHOICE
                || slot.fallback().isPresent();
    }

    private static boolean asked(Slot slot) {
        return slot.quantity() != Quantity.FLAG && slot.quantity() != Quantity.COUNT;
    }

    private static Given given(Slot slot, UnitSystem system) {
        Scale scale = SlotScale.of(slot, system);
        double ambient = hotside.unit.Units.STANDARD_ATMOSPHERE;
        double low = scale.fromSi(slot.usualMin(), slot.quantity(), ambient);
        double high = scale.fromSi(slot.usualMax(), slot.quantity(), ambient);
        Grid grid = Grid.natural(low, high, scale);
        return Given.number(slot.name(), slot.quantity(), grid, Optional.of(grid));
    }

    private static List<Slips> slips(Slot slot) {
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
                "What you are told: "
                        + slots
                        + ". Bring each to SI units, pressures absolute, temperatures in kelvin.",
                relation.says(),
                "$$" + relation.tex() + "$$");
    }
}

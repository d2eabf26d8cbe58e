// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.catalogue.Catalogue;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.ListNode;
import hotside.content.MapNode;
import hotside.content.Nearest;
import hotside.content.Node;
import hotside.content.ScalarNode;
import hotside.relation.Chain;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.unit.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads the {@code work} of a lesson or problem: relations under names of their own, their slots
 * fed by givens, earlier results or fixed values.
 */
public final class ChainReader {
    private static final Pattern NAME = Pattern.compile("[a-z][A-Za-z0-9]*");
    private static final Pattern PLACE =
            Pattern.compile("[a-z][A-Za-z0-9]*(\\.[a-z][A-Za-z0-9]*)?");

    private final Map<String, Quantity> givens;
    private final double ambient;
    private final Findings findings;
    private final List<Chain.Use> uses = new ArrayList<>();

    private ChainReader(Map<String, Quantity> givens, double ambient, Findings findings) {
        this.givens = givens;
        this.ambient = ambient;
        this.findings = findings;
    }

    /**
     * @param work a map from names to relations with their slots
     * @param givens the values that slots may be fed by, with what each measures by the unit it is
     *     written in
     * @param ambient absolute pressure of the air around, Pa, for fixed gauge values
     * @param findings where faults go; a use with a fault in its relation is left out
     */
    public static Chain read(MapNode work, MapNode givens, double ambient, Findings findings) {
        Map<String, Quantity> measured = new LinkedHashMap<>();
        givens.entries()
                .forEach(
                        (name, entry) ->
                                measured.put(
                                        name,
                                        GivenReader.measuredIn(entry.value())
                                                .orElse(Quantity.RATIO)));
        ChainReader reader = new ChainReader(measured, ambient, findings);
        work.entries().forEach((name, entry) -> reader.use(name, entry));
        return new Chain(reader.uses);
    }

    /** The map under a key, for a reader of its nodes; an empty one after a finding. */
    public static MapNode map(Fields fields, String key) {
        Fields inside = fields.map(key);
        return fields.optionalNode(key)
                .filter(MapNode.class::isInstance)
                .map(MapNode.class::cast)
                .orElse(new MapNode(inside.place(), Map.of()));
    }

    /** The slot that a given feeds first, which says what the given measures. */
    public static Optional<Slot> fedBy(Chain chain, String given) {
        for (Chain.Use use : chain.uses()) {
            for (Map.Entry<String, Chain.Feed> feed : use.feeds().entrySet()) {
                if (feed.getValue() instanceof Chain.From from && from.place().equals(given)) {
                    return use.relation().slot(feed.getKey());
                }
            }
        }
        return Optional.empty();
    }

    /** True if a value of one quantity may stand where another is expected. */
    public static boolean fits(Quantity value, Quantity place) {
        boolean plain =
                value.dimension() == hotside.unit.Dimension.RATIO
                        || value.dimension() == hotside.unit.Dimension.NONE;
        boolean plainPlace =
                place.dimension() == hotside.unit.Dimension.RATIO
                        || place.dimension() == hotside.unit.Dimension.NONE;
        return value == place || place == Quantity.AS_MEASURED || plain && plainPlace;
    }

    private void use(String name, MapNode.Entry entry) {
        if (!NAME.matcher(name).matches()) {
            findings.add(
                    entry.keyPlace(),
                    "\"" + name + "\" is no name",
                    "a name of letters and digits that begins with a small letter",
                    "");
            return;
        }
        if (!(entry.value() instanceof MapNode map)) {
            findings.add(
                    entry.value(),
                    name + " is " + entry.value().kind(),
                    "a map such as {relation: valve-force, seatDiameter: seat}",
                    "");
            return;
        }
        Optional<Relation> relation = relation(name, map);
        if (relation.isEmpty()) {
            return;
        }
        Optional<String> solve = solve(map, relation.get());
        Map<String, Chain.Feed> feeds = new LinkedHashMap<>();
        map.entries()
                .forEach(
                        (slot, value) -> {
                            if (!slot.equals("relation") && !slot.equals("solve")) {
                                feed(relation.get(), slot, value, solve)
                                        .ifPresent(feed -> feeds.put(slot, feed));
                            }
                        });
        if (complete(name, map, relation.get(), feeds, solve)) {
            uses.add(new Chain.Use(name, measuring(relation.get(), feeds), feeds, solve));
        }
    }

    /** Statistics give back what they are given: readings of power make a mean that is a power. */
    private Relation measuring(Relation relation, Map<String, Chain.Feed> feeds) {
        return feeds.entrySet().stream()
                .filter(
                        feed ->
                                relation.slot(feed.getKey()).orElseThrow().quantity()
                                        == Quantity.AS_MEASURED)
                .filter(feed -> feed.getValue() instanceof Chain.From)
                .map(feed -> measuredAt(((Chain.From) feed.getValue()).place()))
                .findFirst()
                .map(relation::measuring)
                .orElse(relation);
    }

    private Quantity measuredAt(String place) {
        return Optional.ofNullable(givens.get(place))
                .or(() -> new Chain(uses).quantityAt(place))
                .orElse(Quantity.AS_MEASURED);
    }

    private Optional<Relation> relation(String name, MapNode map) {
        Optional<Node> node = map.get("relation");
        if (node.isEmpty() || !(node.get() instanceof ScalarNode id)) {
            findings.add(map, name + " names no relation", "relation: and the id of one", "");
            return Optional.empty();
        }
        Optional<Relation> relation = Catalogue.find(id.text());
        if (relation.isEmpty()) {
            unknownRelation(id, findings);
        }
        return relation;
    }

    /** Adds the finding that there is no such relation. */
    public static void unknownRelation(ScalarNode id, Findings findings) {
        List<String> known = Catalogue.all().stream().map(Relation::id).toList();
        findings.add(
                id,
                "unknown relation \"" + id.text() + "\"",
                "one of "
                        + String.join(
                                ", ",
                                Nearest.sorted(id.text(), known)
                                        .subList(0, Math.min(6, known.size())))
                        + " … (the command \"relations\" lists all)",
                Nearest.to(id.text(), known).map(near -> "write \"" + near + "\"").orElse(""));
    }

    private Optional<String> solve(MapNode map, Relation relation) {
        Optional<Node> node = map.get("solve");
        if (node.isEmpty()) {
            return Optional.empty();
        }
        if (node.get() instanceof ScalarNode slot && relation.isInput(slot.text())) {
            return Optional.of(slot.text());
        }
        findings.add(
                node.get(),
                "solve must name an input of " + relation.id(),
                "one of " + names(relation.inputs()),
                "");
        return Optional.empty();
    }

    private Optional<Chain.Feed> feed(
            Relation relation, String name, MapNode.Entry entry, Optional<String> solve) {
        Optional<Slot> slot = relation.slot(name);
        boolean allowed = slot.isPresent() && (relation.isInput(name) || solve.isPresent());
        if (!allowed) {
            List<String> known =
                    new ArrayList<>(relation.inputs().stream().map(Slot::name).toList());
            if (solve.isPresent()) {
                relation.outputs().forEach(o -> known.add(o.name()));
            }
            findings.add(
                    entry.keyPlace(),
                    relation.id() + " has no slot \"" + name + "\" to feed",
                    "one of " + String.join(", ", known),
                    Nearest.to(name, known).map(near -> "write \"" + near + "\"").orElse(""));
            return Optional.empty();
        }
        if (entry.value() instanceof ListNode list) {
            return Optional.of(new Chain.Fixed(readings(list, slot.get())));
        }
        if (!(entry.value() instanceof ScalarNode scalar)) {
            findings.add(
                    entry.value(), name + " is " + entry.value().kind(), "a name or a value", "");
            return Optional.empty();
        }
        return scalar(scalar, slot.get());
    }

    private List<Double> readings(ListNode list, Slot slot) {
        List<Double> out = new ArrayList<>();
        for (Node item : list.items()) {
            Optional<Double> value =
                    item instanceof ScalarNode scalar
                            ? Literal.value(scalar.text(), slot.quantity(), ambient)
                            : Optional.empty();
            value.ifPresentOrElse(
                    out::add,
                    () ->
                            findings.add(
                                    item, "not a reading", Literal.expected(slot.quantity()), ""));
        }
        return out;
    }

    private Optional<Chain.Feed> scalar(ScalarNode scalar, Slot slot) {
        String text = scalar.text();
        if (slot.kind() == Slot.Kind.CHOICE || slot.kind() == Slot.Kind.TEXT) {
            if (slot.kind() == Slot.Kind.CHOICE && !slot.choices().contains(text)) {
                findings.add(
                        scalar,
                        "\"" + text + "\" is no choice",
                        "one of " + String.join(", ", slot.choices()),
                        "");
                return Optional.empty();
            }
            return Optional.of(new Chain.Fixed(text));
        }
        if (PLACE.matcher(text).matches()) {
            return place(scalar, slot);
        }
        Optional<Double> value = Literal.value(text, slot.quantity(), ambient);
        if (value.isEmpty()) {
            findings.add(
                    scalar,
                    "\"" + text + "\" is no value for " + slot.name(),
                    Literal.expected(slot.quantity())
                            + "; or the name of a given or of an earlier result",
                    "");
            return Optional.empty();
        }
        if (!slot.admits(value.get())) {
            findings.add(scalar, text + " is outside the range of " + slot.name(), "", "");
            return Optional.empty();
        }
        return Optional.of(new Chain.Fixed(value.get()));
    }

    private Optional<Chain.Feed> place(ScalarNode scalar, Slot slot) {
        String text = scalar.text();
        if (givens.containsKey(text)) {
            return Optional.of(new Chain.From(text));
        }
        Optional<Quantity> quantity = new Chain(uses).quantityAt(text);
        if (quantity.isEmpty()) {
            List<String> known = places();
            findings.add(
                    scalar,
                    "nothing is called \"" + text + "\" before this line",
                    known.isEmpty()
                            ? "a value with its unit"
                            : "one of " + String.join(", ", known),
                    Nearest.to(text, known).map(near -> "write \"" + near + "\"").orElse(""));
            return Optional.empty();
        }
        if (!fits(quantity.get(), slot.quantity())) {
            findings.add(
                    scalar,
                    text
                            + " is of the kind "
                            + quantity.get().words()
                            + ", "
                            + slot.name()
                            + " wants "
                            + slot.quantity().words(),
                    "a value of the same kind",
                    "");
        }
        return Optional.of(new Chain.From(text));
    }

    /** Everything that a slot could be fed by so far. */
    private List<String> places() {
        List<String> known = new ArrayList<>(givens.keySet());
        for (Chain.Use use : uses) {
            use.relation().outputs().forEach(slot -> known.add(use.name() + "." + slot.name()));
        }
        return known;
    }

    private boolean complete(
            String name,
            MapNode map,
            Relation relation,
            Map<String, Chain.Feed> feeds,
            Optional<String> solve) {
        boolean complete = true;
        for (Slot slot : relation.inputs()) {
            boolean needed = slot.fallback().isEmpty() && !solve.equals(Optional.of(slot.name()));
            if (needed && !map.entries().containsKey(slot.name())) {
                findings.add(
                        map,
                        name + " leaves " + slot.name() + " of " + relation.id() + " unfed",
                        slot.name() + ": " + slot.meaning(),
                        "");
            }
            complete &= !needed || feeds.containsKey(slot.name());
        }
        long known = feeds.keySet().stream().filter(relation::isOutput).count();
        if (solve.isPresent() && known != 1) {
            findings.add(
                    map,
                    name + " solves for " + solve.get() + " from " + known + " outputs",
                    "exactly one output that is known, out of " + names(relation.outputs()),
                    "");
            return false;
        }
        return complete;
    }

    private static String names(List<Slot> slots) {
        return slots.stream().map(Slot::name).collect(Collectors.joining(", "));
    }
}

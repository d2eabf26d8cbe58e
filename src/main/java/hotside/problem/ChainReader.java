// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.catalogue.Catalogue;
import hotside.content.Fields;
import hotside.content.Findings;
import hotside.content.ListNode;
import hotside.content.MapNode;
import hotside.content.Nearest;
import hotside.content.Node;
import hotside.content.Place;
import hotside.content.ScalarNode;
import hotside.relation.Chain;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.unit.Quantity;
import hotside.unit.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private static final Set<String> OWN_KEYS = Set.of("relation", "solve");

    /** Nobody follows a working of more relations than this. */
    private static final int MOST_USES = 40;

    private final Map<String, Quantity> givens;
    private final Set<String> rows;
    private final double ambient;
    private final Findings findings;
    private final List<Chain.Use> uses = new ArrayList<>();

    private ChainReader(
            Map<String, Quantity> givens, Set<String> rows, double ambient, Findings findings) {
        this.givens = givens;
        this.rows = rows;
        this.ambient = ambient;
        this.findings = findings;
    }

    /**
     * @param work a map from names to relations with their slots
     * @param givens the values that slots may be fed by, with what each measures by the unit it is
     *     written in
     * @param ambient absolute pressure of the air around, Pa, for fixed gauge values; NaN if it is
     *     drawn with the givens, so that no fixed value can hold it
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
        Set<String> rows =
                givens.entries().entrySet().stream()
                        .filter(entry -> GivenReader.isRow(entry.getValue().value()))
                        .map(Map.Entry::getKey)
                        .collect(Collectors.toSet());
        ChainReader reader = new ChainReader(measured, rows, ambient, findings);
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

    /**
     * Finds a given or named value that feeds slots of different kinds: gauge pressure taken once
     * as itself and once as a difference would be right in one place and wrong in the other.
     *
     * @param where the place of its name in the file
     * @param quantity what it is read as
     */
    public static void refuseMixedUse(
            String name, Place where, Chain chain, Quantity quantity, Findings findings) {
        for (Chain.Use use : chain.uses()) {
            use.feeds()
                    .forEach(
                            (slot, feed) -> {
                                Quantity wanted =
                                        use.relation().slot(slot).orElseThrow().quantity();
                                if (feed.equals(new Chain.From(name)) && !fits(quantity, wanted)) {
                                    findings.add(
                                            where,
                                            name
                                                    + " feeds "
                                                    + Literal.a(quantity)
                                                    + " and, in "
                                                    + use.name()
                                                    + "."
                                                    + slot
                                                    + ", "
                                                    + Literal.a(wanted),
                                            "one kind of value",
                                            "turn one kind into the other with a relation, or use two givens");
                                }
                            });
        }
    }

    private void use(String name, MapNode.Entry entry) {
        if (uses.size() == MOST_USES) {
            findings.add(
                    entry.keyPlace(),
                    "more than " + MOST_USES + " relations are worked",
                    "at most " + MOST_USES,
                    "split the file");
            return;
        }
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
                            if (!OWN_KEYS.contains(slot)) {
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
        if (findings.isFull()) {
            return;
        }
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
            return readings(list, slot.get());
        }
        if (!(entry.value() instanceof ScalarNode scalar)) {
            findings.add(
                    entry.value(), name + " is " + entry.value().kind(), "a name or a value", "");
            return Optional.empty();
        }
        return scalar(scalar, slot.get());
    }

    private Optional<Chain.Feed> readings(ListNode list, Slot slot) {
        if (slot.kind() != Slot.Kind.NUMBERS || list.items().isEmpty()) {
            findings.add(
                    list,
                    slot.name() + " is " + (list.items().isEmpty() ? "an empty list" : "a list"),
                    wanted(slot),
                    "");
            return Optional.empty();
        }
        List<Double> out = new ArrayList<>();
        for (Node item : list.items()) {
            Optional<Double> value =
                    item instanceof ScalarNode scalar
                            ? value(scalar.text(), slot)
                            : Optional.empty();
            value.ifPresentOrElse(
                    out::add,
                    () ->
                            findings.add(
                                    item, "not a reading", Literal.expected(slot.quantity()), ""));
        }
        return Optional.of(new Chain.Fixed(out));
    }

    private static String wanted(Slot slot) {
        return switch (slot.kind()) {
            case NUMBER -> "one number";
            case NUMBERS -> "a row of readings, [first, second]";
            case CHOICE -> "one of " + String.join(", ", slot.choices());
            case TEXT -> "text";
        };
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
        if (slot.kind() == Slot.Kind.NUMBERS) {
            findings.add(
                    scalar,
                    slot.name() + " is one value",
                    wanted(slot) + ", or the name of a given row",
                    "");
            return Optional.empty();
        }
        Optional<Double> value = value(text, slot);
        if (hangsOnAir(text, slot)) {
            findings.add(
                    scalar,
                    text + " hangs on the air around, which is drawn",
                    "an "
                            + (slot.quantity() == Quantity.PRESSURE ? "absolute" : "unmarked")
                            + " value",
                    "make it a given");
            return Optional.empty();
        }
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
            findings.add(
                    scalar,
                    text + " is outside the range of " + slot.name(),
                    "a value in " + slot.rangeText(),
                    "");
            return Optional.empty();
        }
        return Optional.of(new Chain.Fixed(value.get()));
    }

    private Optional<Double> value(String text, Slot slot) {
        double air = Double.isNaN(ambient) ? Units.STANDARD_ATMOSPHERE : ambient;
        return Literal.value(text, slot.quantity(), air);
    }

    private boolean hangsOnAir(String text, Slot slot) {
        return Double.isNaN(ambient)
                && !value(text, slot).equals(Literal.value(text, slot.quantity(), 0));
    }

    private Optional<Chain.Feed> place(ScalarNode scalar, Slot slot) {
        String text = scalar.text();
        boolean given = givens.containsKey(text);
        Optional<Slot> source = new Chain(uses).slotAt(text);
        if (!given && source.isEmpty()) {
            unknownPlace(scalar);
            return Optional.empty();
        }
        boolean row = given ? rows.contains(text) : isKind(source, Slot.Kind.NUMBERS);
        boolean number = given ? !row : isKind(source, Slot.Kind.NUMBER);
        if (slot.kind() == Slot.Kind.NUMBERS ? !row : !number) {
            findings.add(
                    scalar,
                    text + " is " + (row ? "a row of readings" : number ? "one number" : "a word"),
                    wanted(slot),
                    "");
            return Optional.empty();
        }
        if (!given && !fits(source.get().quantity(), slot.quantity())) {
            findings.add(
                    scalar,
                    text
                            + " is "
                            + Literal.a(source.get().quantity())
                            + ", but "
                            + slot.name()
                            + " wants "
                            + Literal.a(slot.quantity()),
                    "a value of the same kind",
                    "");
        }
        return Optional.of(new Chain.From(text));
    }

    private static boolean isKind(Optional<Slot> slot, Slot.Kind kind) {
        return slot.filter(s -> s.kind() == kind).isPresent();
    }

    private void unknownPlace(ScalarNode scalar) {
        if (findings.isFull()) {
            return;
        }
        String text = scalar.text();
        List<String> known = places();
        findings.add(
                scalar,
                "nothing is called \"" + text + "\" before this line",
                known.isEmpty() ? "a value with its unit" : "one of " + String.join(", ", known),
                Nearest.to(text, known).map(near -> "write \"" + near + "\"").orElse(""));
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
        List<String> inputs = relation.inputs().stream().map(Slot::name).toList();
        Set<String> misspelt =
                map.entries().keySet().stream()
                        .filter(key -> !OWN_KEYS.contains(key) && relation.slot(key).isEmpty())
                        .limit(MOST_USES)
                        .flatMap(key -> Nearest.to(key, inputs).stream())
                        .collect(Collectors.toSet());
        for (Slot slot : relation.inputs()) {
            boolean needed = slot.fallback().isEmpty() && !solve.equals(Optional.of(slot.name()));
            if (needed
                    && !map.entries().containsKey(slot.name())
                    && !misspelt.contains(slot.name())) {
                findings.add(
                        map,
                        name + " leaves " + slot.name() + " of " + relation.id() + " unfed",
                        slot.name() + ": " + slot.meaning(),
                        "");
            }
            complete &= !needed || feeds.containsKey(slot.name());
        }
        solve.filter(map.entries()::containsKey)
                .ifPresent(
                        slot ->
                                findings.add(
                                        map.keyPlace(slot),
                                        name + " solves for " + slot + " and feeds it too",
                                        "one or the other",
                                        "delete this key, or solve"));
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

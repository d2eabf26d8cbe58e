// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Walks a map of front matter by key. What is missing or of the wrong kind becomes a finding and a
 * harmless default comes back, so that a reader asks for everything and the author sees all
 * findings at once. Ends with {@link #noOthers}.
 *
 * <pre>{@code
 * Fields f = file.fields();
 * String title = f.text("title");
 * int level = f.whole("level", 1, 4);
 * List<String> skills = f.words("skills");
 * f.noOthers();
 * }</pre>
 */
public final class Fields {
    private final MapNode map;
    private final Findings findings;
    private final String within;
    private final Set<String> known = new LinkedHashSet<>();

    private Fields(MapNode map, Findings findings, String within) {
        this.map = map;
        this.findings = findings;
        this.within = within;
    }

    public static Fields of(MapNode map, Findings findings) {
        return new Fields(map, findings, "");
    }

    /** Where findings about this map go; a caller adds its own there. */
    public Findings findings() {
        return findings;
    }

    /** The keys that are there, in the order of the file; asking makes them all known. */
    public List<String> names() {
        known.addAll(map.entries().keySet());
        return List.copyOf(map.entries().keySet());
    }

    /** Whether the key is there, with whatever value. */
    public boolean has(String key) {
        known.add(key);
        return map.entries().containsKey(key);
    }

    /** Where this map starts. */
    public Place place() {
        return map.place();
    }

    /** Where the key's value starts; where this map starts if there is none. */
    public Place place(String key) {
        return map.get(key).map(Node::place).orElse(map.place());
    }

    /** Where the key stands; where this map starts if there is none. */
    public Place keyPlace(String key) {
        return map.keyPlace(key);
    }

    /** A value of any kind, if there is one. */
    public Optional<Node> optionalNode(String key) {
        known.add(key);
        return map.get(key).filter(node -> !isFaulty(node));
    }

    /** The value as written, with its place, for a caller that reads it further; required. */
    public Optional<ScalarNode> scalar(String key) {
        return need(key, Want.TEXT).flatMap(node -> scalar(key, node, Want.TEXT));
    }

    /** The value as written, with its place. */
    public Optional<ScalarNode> optionalScalar(String key) {
        return optionalNode(key).flatMap(node -> scalar(key, node, Want.TEXT));
    }

    /** Text; required, not blank. Empty after a finding. */
    public String text(String key) {
        return scalar(key).filter(node -> notBlank(key, node)).map(ScalarNode::text).orElse("");
    }

    /** Text, if the key is there. */
    public Optional<String> optionalText(String key) {
        return optionalScalar(key).map(ScalarNode::text);
    }

    /** One of some words; required. The first of them after a finding. */
    public String oneOf(String key, Collection<String> words) {
        String first = words.iterator().next();
        return scalar(key).map(node -> oneOf(key, node, words, first)).orElse(first);
    }

    /** One of some words, or another if the key is not there or wrong. */
    public String oneOf(String key, Collection<String> words, String otherwise) {
        return optionalScalar(key)
                .map(node -> oneOf(key, node, words, otherwise))
                .orElse(otherwise);
    }

    /** A whole number in a range, ends included; required. The least after a finding. */
    public int whole(String key, int min, int max) {
        return need(key, Want.whole(min, max))
                .map(node -> whole(key, node, min, max, min))
                .orElse(min);
    }

    /** A whole number in a range, or another if the key is not there or wrong. */
    public int whole(String key, int min, int max, int otherwise) {
        return optionalNode(key)
                .map(node -> whole(key, node, min, max, otherwise))
                .orElse(otherwise);
    }

    /** A finite number without a unit; required. 0 after a finding. */
    public double number(String key) {
        return need(key, Want.NUMBER).map(node -> number(key, node, 0)).orElse(0.0);
    }

    /** A finite number without a unit, or another if the key is not there or wrong. */
    public double number(String key, double otherwise) {
        return optionalNode(key).map(node -> number(key, node, otherwise)).orElse(otherwise);
    }

    /**
     * {@code yes} or {@code no}, {@code true} or {@code false}; another if the key is not there.
     */
    public boolean flag(String key, boolean otherwise) {
        String word = otherwise ? "yes" : "no";
        String read = oneOf(key, List.of("yes", "no", "true", "false"), word);
        return read.equals("yes") || read.equals("true");
    }

    /** The items of a list; required, one item at least. Empty after a finding. */
    public List<Node> list(String key) {
        return sound(need(key, Want.LIST).map(node -> list(key, node)).orElse(List.of()));
    }

    /** The items of a list; empty if the key is not there. */
    public List<Node> optionalList(String key) {
        return sound(optionalNode(key).map(node -> list(key, node)).orElse(List.of()));
    }

    /** A list of words, or a single one; required. Empty after a finding. */
    public List<String> words(String key) {
        return text(scalars(key));
    }

    /** A list of words, or a single one; empty if the key is not there. */
    public List<String> optionalWords(String key) {
        return text(optionalScalars(key));
    }

    /** As {@link #words}, with places. */
    public List<ScalarNode> scalars(String key) {
        return need(key, Want.WORDS).map(node -> scalars(key, node)).orElse(List.of());
    }

    /** As {@link #optionalWords}, with places. */
    public List<ScalarNode> optionalScalars(String key) {
        return optionalNode(key).map(node -> scalars(key, node)).orElse(List.of());
    }

    /** A map; required. After a finding an empty one that asks for nothing. */
    public Fields map(String key) {
        return need(key, Want.MAP).map(node -> map(key, node)).orElseGet(() -> nothing(key));
    }

    /** A map, if the key is there. */
    public Optional<Fields> optionalMap(String key) {
        return optionalNode(key).map(node -> map(key, node));
    }

    /** A list of maps; required, one at least. Items of another kind are findings and left out. */
    public List<Fields> maps(String key) {
        return need(key, Want.LIST).map(node -> maps(key, list(key, node))).orElse(List.of());
    }

    /** A list of maps; empty if the key is not there. */
    public List<Fields> optionalMaps(String key) {
        return optionalNode(key).map(node -> maps(key, list(key, node))).orElse(List.of());
    }

    /** Reports every key that nobody asked for. To be called last. */
    public void noOthers() {
        for (var entry : map.entries().entrySet()) {
            if (!known.contains(entry.getKey()) && !findings.isFull()) {
                unknown(entry.getKey(), entry.getValue().keyPlace());
            }
        }
    }

    private void unknown(String key, Place place) {
        findings.add(
                place,
                "unknown key " + named(key),
                known.isEmpty()
                        ? "no keys here"
                        : "one of: " + String.join(", ", Nearest.sorted(key, known)),
                Nearest.to(key, known)
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("delete the key, or look up its name"));
    }

    private Optional<Node> need(String key, Want want) {
        if (!has(key)) {
            findings.add(
                    map.place(),
                    "missing key " + named(key),
                    want.said(),
                    "add " + want.example(key));
        }
        return optionalNode(key);
    }

    private Optional<ScalarNode> scalar(String key, Node node, Want want) {
        if (node instanceof ScalarNode scalar && !scalar.isEmpty()) {
            return Optional.of(scalar);
        }
        wrong(key, node, node.kind(), want);
        return Optional.empty();
    }

    private boolean notBlank(String key, ScalarNode node) {
        if (node.text().isBlank()) {
            wrong(key, node, "empty", Want.TEXT);
        }
        return !node.text().isBlank();
    }

    private String oneOf(String key, ScalarNode node, Collection<String> words, String otherwise) {
        String word = node.text().strip();
        if (words.contains(word)) {
            return word;
        }
        findings.add(
                node,
                named(key) + " is " + quoted(word),
                "one of: " + String.join(", ", Nearest.sorted(word, words)),
                Nearest.to(word, words)
                        .map(near -> "did you mean \"" + near + "\"?")
                        .orElse("write one of these words"));
        return otherwise;
    }

    private int whole(String key, Node node, int min, int max, int otherwise) {
        Want want = Want.whole(min, max);
        Optional<String> text = scalar(key, node, want).map(s -> Want.digits(s.text()));
        if (text.isEmpty()) {
            return otherwise;
        }
        Optional<Integer> read = Want.whole(text.get()).filter(n -> n >= min && n <= max);
        if (read.isEmpty()) {
            wrong(key, node, quoted(text.get()), want);
        }
        return read.orElse(otherwise);
    }

    private double number(String key, Node node, double otherwise) {
        Optional<String> text = scalar(key, node, Want.NUMBER).map(s -> Want.digits(s.text()));
        if (text.isEmpty()) {
            return otherwise;
        }
        Optional<Double> read = Want.number(text.get());
        if (read.isEmpty()) {
            String mend = Want.mendNumber(text.get()).orElse(Want.NUMBER.example(key));
            findings.add(
                    node,
                    named(key) + " is " + quoted(text.get()),
                    Want.NUMBER.said(),
                    "write " + mend);
        }
        return read.orElse(otherwise);
    }

    private List<Node> list(String key, Node node) {
        if (node instanceof ListNode list && !list.items().isEmpty()) {
            return list.items();
        }
        wrong(key, node, node instanceof ListNode ? "an empty list" : node.kind(), Want.LIST);
        return List.of();
    }

    private List<ScalarNode> scalars(String key, Node node) {
        if (!(node instanceof ListNode)) {
            return scalar(key, node, Want.WORDS)
                    .filter(scalar -> notBlank(key, scalar))
                    .map(List::of)
                    .orElse(List.of());
        }
        List<ScalarNode> words = new ArrayList<>();
        int number = 0;
        for (Node item : list(key, node)) {
            number++;
            if (item instanceof ScalarNode scalar && !scalar.text().isBlank()) {
                words.add(scalar);
            } else if (!isFaulty(item)) {
                wrongItem(key, number, item, "a word");
            }
        }
        return words;
    }

    private Fields map(String key, Node node) {
        if (node instanceof MapNode inner) {
            return new Fields(inner, findings, key);
        }
        wrong(key, node, node.kind(), Want.MAP);
        return nothing(key);
    }

    private List<Fields> maps(String key, List<Node> items) {
        List<Fields> maps = new ArrayList<>();
        int number = 0;
        for (Node item : items) {
            number++;
            if (item instanceof MapNode inner) {
                maps.add(new Fields(inner, findings, key));
            } else if (!isFaulty(item)) {
                wrongItem(key, number, item, "a map, key: value");
            }
        }
        return maps;
    }

    private void wrongItem(String key, int number, Node item, String expected) {
        String kind = item instanceof ScalarNode s && s.text().isBlank() ? "empty" : item.kind();
        findings.add(
                item,
                "item " + number + " of " + named(key) + " is " + kind,
                expected,
                "write " + expected + " there, or delete the item");
    }

    private void wrong(String key, Node node, String found, Want want) {
        Place place = found.equals("empty") ? map.keyPlace(key) : node.place();
        findings.add(place, named(key) + " is " + found, want.said(), "write " + want.example(key));
    }

    private Fields nothing(String key) {
        return new Fields(MapNode.empty(place(key)), findings.silenced(), key);
    }

    private String named(String key) {
        return quoted(key) + (within.isEmpty() ? "" : " in " + quoted(within));
    }

    private static String quoted(String text) {
        return '"' + Visible.cut(text, 60) + '"';
    }

    private static boolean isFaulty(Node node) {
        return node instanceof ScalarNode scalar && scalar.isFaulty();
    }

    private static List<Node> sound(List<Node> items) {
        return items.stream().filter(item -> !isFaulty(item)).toList();
    }

    private static List<String> text(List<ScalarNode> scalars) {
        return scalars.stream().map(scalar -> scalar.text().strip()).toList();
    }
}

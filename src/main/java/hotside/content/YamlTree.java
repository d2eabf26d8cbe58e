// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Turns front matter into nodes. Works on the parser's events, never on its objects: nothing is
 * constructed, so a file can name no class, and every node keeps its place. Tags, anchors and
 * aliases are refused; depth and number of nodes are limited.
 */
final class YamlTree {
    private static final int DEEPEST = 20;
    private static final int MOST_NODES = 20_000;
    private static final int LONGEST_KEY = 200;

    /** Thrown where reading on makes no sense; the finding has been made. */
    private static final class Abandoned extends RuntimeException {
        private static final long serialVersionUID = 1;

        Abandoned() {
            super(null, null, false, false);
        }
    }

    private final String yaml;
    private final int linesBefore;
    private final Findings findings;
    private final Iterator<Event> events;
    private int nodes;
    private int knownIndex;
    private int knownOffset;

    private YamlTree(String yaml, int linesBefore, Findings findings) {
        this.yaml = yaml;
        this.linesBefore = linesBefore;
        this.findings = findings;
        this.events = new Parse(settings(yaml)).parseString(yaml).iterator();
    }

    /** One buffer for all: with small ones the parser's time grows with the square of a value's. */
    private static LoadSettings settings(String yaml) {
        int all = yaml.length() + 1;
        return LoadSettings.builder().setCodePointLimit(all).setBufferSize(all).build();
    }

    /**
     * Reads a map.
     *
     * @param yaml line ends {@code \n}, no control characters
     * @param linesBefore how many lines of the file stand before it
     * @return empty if it cannot be read to its end; there is a finding then
     */
    static Optional<MapNode> read(String yaml, int linesBefore, Findings findings) {
        try {
            return new YamlTree(yaml, linesBefore, findings).document();
        } catch (Abandoned e) {
            return Optional.empty();
        }
    }

    private Optional<MapNode> document() {
        next();
        Event event = next();
        if (event.getEventId() == Event.ID.StreamEnd) {
            return Optional.of(MapNode.empty(Place.START));
        }
        Node root = node(next(), 1);
        next();
        event = next();
        if (event.getEventId() != Event.ID.StreamEnd) {
            throw abandon(
                    place(event),
                    "a second set of keys and values",
                    "one, between the two \"---\" lines",
                    "delete the line that ends the first");
        }
        return asMap(root);
    }

    private Optional<MapNode> asMap(Node root) {
        if (root instanceof MapNode map) {
            return Optional.of(map);
        }
        if (root instanceof ScalarNode scalar && scalar.isEmpty()) {
            return Optional.of(MapNode.empty(Place.START));
        }
        findings.add(
                root,
                "the front matter is " + root.kind(),
                "lines of a key and its value, \"title: …\"",
                "put a key, a colon and a space before each value");
        return Optional.empty();
    }

    private Node node(Event event, int depth) {
        countNode(event, depth);
        if (event instanceof AliasEvent) {
            return refused(event, YamlFault.ALIAS);
        }
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar);
        }
        Node read = event instanceof MappingStartEvent ? map(event, depth) : list(event, depth);
        CollectionStartEvent start = (CollectionStartEvent) event;
        return decorated(start, start.getTag()) ? refusedDecoration(start, start.getTag()) : read;
    }

    private void countNode(Event event, int depth) {
        if (++nodes > MOST_NODES) {
            throw abandon(
                    place(event),
                    "more than " + MOST_NODES + " values in the front matter",
                    "at most " + MOST_NODES,
                    "split the file");
        }
        if (depth > DEEPEST) {
            throw abandon(
                    place(event),
                    "maps and lists are nested more than " + DEEPEST + " deep",
                    "at most " + DEEPEST + " levels",
                    "put text that holds brackets in quotes, or nest less");
        }
    }

    private ListNode list(Event start, int depth) {
        List<Node> items = new ArrayList<>();
        for (Event event = next(); !(event instanceof CollectionEndEvent); event = next()) {
            items.add(node(event, depth + 1));
        }
        return new ListNode(place(start), items);
    }

    private MapNode map(Event start, int depth) {
        Map<String, MapNode.Entry> entries = new LinkedHashMap<>();
        for (Event event = next(); !(event instanceof CollectionEndEvent); event = next()) {
            Node key = node(event, depth + 1);
            Node value = node(next(), depth + 1);
            if (isKey(key)) {
                enter(entries, (ScalarNode) key, value);
            }
        }
        return new MapNode(place(start), entries);
    }

    private boolean isKey(Node key) {
        if (key instanceof ScalarNode scalar && scalar.isFaulty()) {
            return false;
        }
        if (key instanceof ScalarNode scalar
                && !scalar.text().isBlank()
                && scalar.text().length() <= LONGEST_KEY) {
            return true;
        }
        if (key instanceof ScalarNode scalar && !scalar.text().isBlank()) {
            findings.add(
                    key,
                    "a key of " + scalar.text().length() + " characters",
                    "at most " + LONGEST_KEY,
                    "give it a shorter name");
        } else {
            findings.add(
                    key,
                    "a key that is " + (key instanceof ScalarNode ? "empty" : key.kind()),
                    "a word before the colon",
                    "name the key, or put text that begins with \"{\" or \"[\" in single quotes");
        }
        return false;
    }

    private void enter(Map<String, MapNode.Entry> entries, ScalarNode key, Node value) {
        String name = key.text().strip();
        MapNode.Entry first = entries.putIfAbsent(name, new MapNode.Entry(key.place(), value));
        if (first != null) {
            findings.add(
                    key,
                    "key \"" + name + "\" a second time; the first is at " + first.keyPlace(),
                    "each key once",
                    "delete one of the two, or join their values");
        }
    }

    private Node scalar(ScalarEvent event) {
        if (decorated(event, event.getTag())) {
            return refusedDecoration(event, event.getTag());
        }
        Place place = place(event);
        if (event.isDQuoted() && escapes(event, place)) {
            return ScalarNode.faulty(place);
        }
        String text = event.getValue();
        if (event.isLiteral()) {
            return new ScalarNode(place, text, ScalarNode.Style.LITERAL, literalStart(place, text));
        }
        if (event.isFolded() || place(event.getEndMark()).line() != place.line()) {
            return new ScalarNode(place, text, ScalarNode.Style.FOLDED, place);
        }
        return event.isPlain()
                ? new ScalarNode(place, text)
                : new ScalarNode(place, text, ScalarNode.Style.QUOTED, place.right(1));
    }

    /**
     * Literal text keeps its line ends, so what its first full line lacks of the file's is indent.
     */
    private Place literalStart(Place place, String text) {
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isEmpty()) {
                String inFile = findings.lines().line(place.line() + 1 + i);
                int indent = Math.max(0, inFile.length() - lines.get(i).length());
                return new Place(place.line() + 1, indent + 1);
            }
        }
        return place;
    }

    /**
     * Refuses backslashes other than {@code \\} and {@code \"} in double quotes: TeX put there
     * loses its commands without a word, {@code \theta} to a tab and {@code \frac} to a form feed.
     */
    private boolean escapes(ScalarEvent event, Place place) {
        int from = offset(event.getStartMark()) + 1;
        int to = Math.min(yaml.length(), offset(event.getEndMark())) - 1;
        for (int i = yaml.indexOf('\\', from); i >= 0 && i < to; i = yaml.indexOf('\\', i + 2)) {
            if ("\\\"".indexOf(yaml.charAt(i + 1)) < 0) {
                YamlFault.ESCAPE.report(findings, placeWithin(place, from - 1, i));
                return true;
            }
        }
        return false;
    }

    private Place placeWithin(Place start, int startOffset, int offset) {
        int lineStart = yaml.lastIndexOf('\n', offset) + 1;
        if (lineStart <= startOffset) {
            return start.right(yaml.codePointCount(startOffset, offset));
        }
        int below =
                (int) yaml.substring(startOffset, lineStart).chars().filter(c -> c == '\n').count();
        return new Place(start.line() + below, 1 + yaml.codePointCount(lineStart, offset));
    }

    private static boolean decorated(NodeEvent event, Optional<String> tag) {
        return tag.isPresent() || event.getAnchor().isPresent();
    }

    private Node refusedDecoration(Event event, Optional<String> tag) {
        return refused(event, tag.isPresent() ? YamlFault.TAG : YamlFault.ANCHOR);
    }

    private Node refused(Event event, YamlFault fault) {
        fault.report(findings, place(event));
        return ScalarNode.faulty(place(event));
    }

    private Event next() {
        try {
            return events.next();
        } catch (YamlEngineException e) {
            YamlFault.report(e, findings, this::place);
            throw new Abandoned();
        }
    }

    private Abandoned abandon(Place place, String what, String expected, String mend) {
        findings.add(place, what, expected, mend);
        return new Abandoned();
    }

    private Place place(Event event) {
        return place(event.getStartMark());
    }

    private Place place(Optional<Mark> mark) {
        return mark.map(m -> new Place(m.getLine() + 1 + linesBefore, m.getColumn() + 1))
                .orElse(new Place(linesBefore + 1, 1));
    }

    /** Marks count code points from the start; they come in order, so this walks the text once. */
    private int offset(Optional<Mark> mark) {
        int index = mark.map(Mark::getIndex).orElse(0);
        knownOffset = yaml.offsetByCodePoints(knownOffset, index - knownIndex);
        knownIndex = index;
        return knownOffset;
    }
}

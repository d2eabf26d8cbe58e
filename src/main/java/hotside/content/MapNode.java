// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Keys and values of front matter, in the order of the file. */
public record MapNode(Place place, Map<String, Entry> entries) implements Node {
    /** A value, and where its key stands. */
    public record Entry(Place keyPlace, Node value) {}

    public MapNode {
        entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    static MapNode empty(Place place) {
        return new MapNode(place, Map.of());
    }

    public Optional<Node> get(String key) {
        return Optional.ofNullable(entries.get(key)).map(Entry::value);
    }

    /** Where the key stands; the map's own place if there is no such key. */
    public Place keyPlace(String key) {
        Entry entry = entries.get(key);
        return entry == null ? place : entry.keyPlace();
    }

    @Override
    public String kind() {
        return "a map";
    }
}

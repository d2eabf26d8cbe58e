// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Values by slot name, in SI: a {@code Double}, a {@code List<Double>} or a {@code String} each.
 * Immutable, and in the order in which they were put in.
 */
public final class Values {
    /** No values at all. */
    public static final Values NONE = new Values(Map.of());

    private final Map<String, Object> byName;

    private Values(Map<String, Object> byName) {
        this.byName = byName;
    }

    /** The values of this map, copied in its order. */
    public static Values of(Map<String, ?> byName) {
        return new Values(new LinkedHashMap<>(byName));
    }

    /** Name, number, name, number …: short for tests and fixed inputs. */
    public static Values of(Object... namesAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            Object value = namesAndValues[i + 1];
            map.put(
                    (String) namesAndValues[i],
                    value instanceof Integer whole ? Double.valueOf(whole) : value);
        }
        return new Values(map);
    }

    /** A copy with one value put in or changed. */
    public Values with(String name, Object value) {
        Map<String, Object> map = new LinkedHashMap<>(byName);
        map.put(name, value);
        return new Values(map);
    }

    /** A copy with one value taken out. */
    public Values without(String name) {
        Map<String, Object> map = new LinkedHashMap<>(byName);
        map.remove(name);
        return new Values(map);
    }

    public boolean has(String name) {
        return byName.containsKey(name);
    }

    /** The value, or null if there is none of this name. */
    public Object get(String name) {
        return byName.get(name);
    }

    /** The number of this name. */
    public double number(String name) {
        return (Double) byName.get(name);
    }

    /** The readings of this name. */
    @SuppressWarnings("unchecked")
    public List<Double> numbers(String name) {
        return (List<Double>) byName.get(name);
    }

    public Set<String> names() {
        return byName.keySet();
    }

    /** All values by name; not to be changed. */
    public Map<String, Object> asMap() {
        return java.util.Collections.unmodifiableMap(byName);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Values that && byName.equals(that.byName);
    }

    @Override
    public int hashCode() {
        return byName.hashCode();
    }

    @Override
    public String toString() {
        return byName.toString();
    }
}

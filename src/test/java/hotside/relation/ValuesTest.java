// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ValuesTest {
    private static final Values TWO = Values.of("b", 2, "a", 1.5);

    @Test
    void wholeNumbersBecomeNumbersLikeAllOthers() {
        assertEquals(2.0, TWO.number("b"));
        assertEquals(List.of("b", "a"), List.copyOf(TWO.names()));
    }

    @Test
    void wordsAndReadingsStayWhatTheyAre() {
        Values values = Values.of("side", "left", "row", List.of(1.0, 2.0));
        assertEquals("left", values.get("side"));
        assertEquals(List.of(1.0, 2.0), values.numbers("row"));
        assertNull(values.get("nothing"));
    }

    @Test
    void changesGiveCopies() {
        assertEquals(Values.of("b", 9, "a", 1.5), TWO.with("b", 9.0));
        assertEquals(Values.of("a", 1.5), TWO.without("b"));
        assertEquals(TWO, TWO.without("c"));
        assertEquals(2.0, TWO.number("b"));
        assertTrue(TWO.has("b"));
        assertFalse(TWO.without("b").has("b"));
    }

    @Test
    void theMapItCameFromMayChangeAfterwards() {
        Map<String, Object> map = new LinkedHashMap<>(Map.of("a", 1.0));
        Values values = Values.of(map);
        map.put("a", 2.0);
        assertEquals(1.0, values.number("a"));
        assertThrows(UnsupportedOperationException.class, () -> values.asMap().put("a", 3.0));
    }

    @Test
    void equalMeansSameNamesAndSameValues() {
        assertEquals(Values.of("a", 1.5, "b", 2), TWO);
        assertEquals(Values.of("a", 1.5, "b", 2).hashCode(), TWO.hashCode());
        assertNotEquals(TWO.with("a", 1.6), TWO);
        assertEquals("{b=2.0, a=1.5}", TWO.toString());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    private static final List<String> WORDS =
            List.of("title", "strand", "skills", "minutes", "temperature");

    @ParameterizedTest
    @CsvSource({
        "titel, title",
        "tilte, title",
        "TITLE, title",
        "skill, skills",
        "skillls, skills",
        "minuts, minutes",
        "temp, temperature",
        "tempreature, temperature"
    })
    void aSlipOfTheKeyboardIsRecognised(String typed, String meant) {
        assertEquals(Optional.of(meant), Nearest.to(typed, WORDS));
    }

    @ParameterizedTest
    @CsvSource({"boost", "x", "''", "te", "strings"})
    void anotherWordIsNotGuessedAt(String typed) {
        assertEquals(Optional.empty(), Nearest.to(typed, WORDS));
    }

    @Test
    void sortsByNearness() {
        assertEquals("minutes", Nearest.sorted("minuets", WORDS).get(0));
        assertEquals(WORDS, Nearest.sorted("x".repeat(100_000), WORDS));
    }

    // Textbook pair of edit distance (Wagner and Fischer 1974): three edits. Damerau (1964) counts
    // a swap of neighbours as one.
    @Test
    void countsEdits() {
        assertEquals(3, Nearest.distance("kitten", "sitting"));
        assertEquals(1, Nearest.distance("gate", "gaet"));
        assertEquals(4, Nearest.distance("", "gate"));
    }

    @Property(seed = "20261125")
    void distanceIsSymmetricAndZeroToItself(@ForAll String one, @ForAll String other) {
        assertEquals(0, Nearest.distance(one, one));
        assertEquals(Nearest.distance(one, other), Nearest.distance(other, one));
        assertTrue(Nearest.distance(one, other) <= Math.max(one.length(), other.length()));
    }
}

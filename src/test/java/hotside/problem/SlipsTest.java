// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.catalogue.Catalogue;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Values;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SlipsTest {
    private static final Slips.Surroundings AIR = new Slips.Surroundings(100_000, 3, 2.5);

    /** What each slip makes of 180 or another number, reckoned by hand. */
    @ParameterizedTest
    @CsvSource({
        "gauge-as-absolute, 180000, 80000",
        "absolute-as-gauge, 180000, 280000",
        "celsius-as-kelvin, 1123.15, 850",
        // 850 °C are 1562 °F.
        "fahrenheit-as-kelvin, 1123.15, 1562",
        "kelvin-added-to-difference, 30, 303.15",
        "radius-as-diameter, 46, 23",
        "diameter-as-radius, 46, 92",
        // The square whose side is the bore has 4/π times the area, so √(4/π) = 1.128379 times the
        // side.
        "square-for-circle, 1000, 1128.379167",
        "left-out, 46, 0",
        "ignored, 46, 1",
        "sign-turned, 46, -46",
        "turned-over, 4, 0.25",
        "squared, 4, 16",
        "root-forgotten, 4, 16",
        "percent-as-number, 0.85, 85",
        "percent-twice, 0.85, 0.0085",
        "minutes-as-seconds, 2, 120",
        "thousand-too-big, 2, 2000",
        "thousand-too-small, 2, 0.002",
        // 30 psi are 206.843 kPa; divided by 6.894757 instead of multiplied they are 4.351133.
        "psi-wrong-way, 206.842719, 4.351133",
        "taken-instead, 46, 3",
        "added, 46, 49",
        "not-subtracted, 46, 49",
        "subtracted-twice, 46, 43",
        // A rise of 36 °F is one of 20 K; with 32 taken off first, 4 °F, it is one of 2.2222 K.
        "offset-in-difference, 20, 2.2222222",
        // 60°, of which the sine is the cosine of 30°.
        "sine-for-cosine, 1.0471975512, 0.5235987756",
        // From 3 to 12 an area grows sixteenfold; the one of 6 has grown fourfold, as the bore did.
        "linear-for-square, 12, 6",
        "ratio-turned, 12, 0.75",
        "ratio-squared, 12, 48",
        "difference-turned, 12, -6",
        "factor, 46, 115",
        // 4 to the power of 2.5.
        "raised, 4, 32",
    })
    void spoilsAsItsNameSays(String id, double value, double spoilt) {
        Slips slip = Slips.find(id).orElseThrow();
        assertEquals(spoilt, slip.spoil(value, AIR), 1e-6 * Math.max(1, Math.abs(spoilt)));
    }

    /** Rows spoilt by hand: the scatter about the mean stays, or the odd one goes. */
    @Test
    void rowsAreSpoiltAsTheirNamesSay() {
        List<Double> row = List.of(10.0, 13.0, 11.0, 20.0);
        // The mean is 13.5; ten for it takes 3.5 off each, twenty for it adds 6.5.
        assertEquals(List.of(6.5, 9.5, 7.5, 16.5), Slips.FIRST_FOR_MEAN.spoil(row));
        assertEquals(List.of(16.5, 19.5, 17.5, 26.5), Slips.BEST_FOR_MEAN.spoil(row));
        assertEquals(List.of(10.0, 13.0, 11.0), Slips.ODD_ONE_DROPPED.spoil(row));
        assertEquals(row, Slips.LEFT_OUT.spoil(row));
    }

    @ParameterizedTest
    @EnumSource(Slips.class)
    void hasWordsUnlessTheAuthorMustGiveThem(Slips slip) {
        assertEquals(Optional.of(slip), Slips.find(slip.id()));
        if (slip.needsWords()) {
            return;
        }
        assertTrue(slip.ifText().contains("{what}"), slip.ifText());
        assertEquals(slip.needsOther(), slip.ifText().contains("{other}"), slip.ifText());
        assertFalse(slip.ifText().endsWith(".") || slip.checkText().endsWith("."), slip.id());
    }

    static Stream<Relation> relations() {
        return Catalogue.all().stream();
    }

    /** What a mistaken person works with lies outside every range, and must do no harm there. */
    @ParameterizedTest
    @MethodSource("relations")
    void anySlipAtAnyInputEndsInANumberOrInNoResult(Relation relation) {
        assertTimeoutPreemptively(
                Duration.ofSeconds(60),
                () -> {
                    for (Slot slot : relation.inputs()) {
                        for (Slips slip : Slips.values()) {
                            if (slot.kind() == Slot.Kind.NUMBER) {
                                slipAt(relation, slot, slip);
                            }
                        }
                    }
                });
    }

    private static void slipAt(Relation relation, Slot slot, Slips slip) {
        double value = (Double) slot.typical();
        Values spoilt = relation.typical().with(slot.name(), slip.spoil(value, AIR));
        try {
            Values out = relation.solveUnguarded(spoilt);
            out.names().forEach(name -> assertTrue(Double.isFinite(out.number(name)), name));
        } catch (RelationException e) {
            assertTrue(e.getMessage().startsWith(relation.id() + ":"), e.getMessage());
        }
    }
}

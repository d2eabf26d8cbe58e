// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderBalanceTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            textBlock =
                    """
                    # by hand: places from the middle; B that follow B less A that follow B
                    AB,       1, 0,       0
                    ABA,      0, -1,      -0.5
                    ABBA,     0, -2,      0
                    ABAB,     1, 0,       -0.5
                    AABB,     2, 0,       0.5
                    ABBABAAB, 0, 0,       -0.25
                    """)
    void agreesWithArithmeticByHand(String order, double drift, double curve, double carry) {
        var balance = OrderBalance.of(order);
        assertEquals(drift, balance.driftBias(), 1e-12);
        assertEquals(curve, balance.curveBias(), 1e-12);
        assertEquals(carry, balance.carryBias(), 1e-12);
    }

    @Test
    void countsRunsAndChanges() {
        Values out = OrderBalance.RELATION.solve(Values.of("order", "abba-baab"));
        assertEquals(4, out.number("runsA"), 0.0);
        assertEquals(4, out.number("runsB"), 0.0);
        assertEquals(5, out.number("changes"), 0.0);
    }

    @Test
    void cautionsAgainstOneRunEach() {
        var worked = OrderBalance.RELATION.work(Values.of("order", "AB"));
        assertTrue(worked.cautions().stream().anyMatch(c -> c.about().equals("order")));
    }

    @Test
    void saysWhereAnOrderCannotBeRead() {
        var e = assertThrows(RelationException.class, () -> OrderBalance.of("ABCA"));
        assertEquals(
                "order-balance: order \"ABCA\" has \"C\" in place 3; write one letter a run, A to B,"
                        + " such as ABBA",
                e.getMessage());
    }

    @Test
    void refusesAnOrderWithoutAComparison() {
        assertThrows(RelationException.class, () -> OrderBalance.of("AAA"));
        assertThrows(RelationException.class, () -> OrderBalance.of(""));
    }

    @Property(seed = "20261125")
    void runningTheOrderBackwardsTurnsTheDriftBias(
            @ForAll @Chars({'A', 'B'}) @StringLength(min = 0, max = 14) String some) {
        String order = "AB" + some;
        String backwards = new StringBuilder(order).reverse().toString();
        assertEquals(
                OrderBalance.of(order).driftBias(), -OrderBalance.of(backwards).driftBias(), 1e-12);
        assertEquals(
                OrderBalance.of(order).curveBias(), OrderBalance.of(backwards).curveBias(), 1e-12);
    }

    @Property(seed = "20261125")
    void aDriftAddedToReadingsShowsUpAsTheBias(
            @ForAll @Chars({'A', 'B'}) @StringLength(min = 0, max = 14) String some) {
        String order = "BA" + some;
        double[] sum = new double[2];
        int[] count = new int[2];
        for (int i = 0; i < order.length(); i++) {
            sum[order.charAt(i) - 'A'] += 250 + 0.4 * i;
            count[order.charAt(i) - 'A']++;
        }
        double falseGain = sum[1] / count[1] - sum[0] / count[0];
        assertEquals(falseGain, 0.4 * OrderBalance.of(order).driftBias(), 1e-9);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Values;
import hotside.statistics.CombinedUncertainty.Term;
import hotside.statistics.MeanSpread.Summary;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CombinedUncertaintyTest {
    private static Values terms(List<Double> u, List<Double> dof) {
        return Values.of(
                "uncertainties",
                u,
                "sensitivities",
                u.stream().map(x -> 1.0).toList(),
                "degreesOfFreedom",
                dof);
    }

    @Test
    void agreesWithTheGaugeBlockOfTheGuide() {
        // JCGM 100:2008 (GUM), H.1, nm: standard 25 (18), comparator 9.7 (25.6), difference of
        // expansion 2.9 (50), difference of temperature 16.6 (2); u = 32, nu 16.7 cut to 16,
        // t99(16) = 2.92, U99 = 93 as printed (from memory)
        Values out =
                CombinedUncertainty.RELATION.solve(
                        terms(List.of(25.0, 9.7, 2.9, 16.6), List.of(18.0, 25.6, 50.0, 2.0))
                                .with("confidence", 0.99));
        assertEquals(31.671, out.number("combined"), 5e-4);
        assertEquals(16.7, out.number("effectiveFreedom"), 0.1);
        assertEquals(2.92, out.number("factor"), 5e-3);
        assertEquals(93, out.number("expanded"), 0.5);
    }

    @Test
    void agreesWithTheComparatorOfTheGuide() {
        // JCGM 100:2008, H.1.3.2: 5.8 (24), 3.9 (5), 6.7 (8) give 9.7 nm. The guide prints 25.6
        // from unrounded inputs; these rounded ones give 25.447
        Values out =
                CombinedUncertainty.RELATION.solve(
                        terms(List.of(5.8, 3.9, 6.7), List.of(24.0, 5.0, 8.0)));
        assertEquals(9.6819, out.number("combined"), 5e-5);
        assertEquals(25.447, out.number("effectiveFreedom"), 5e-4);
    }

    @Test
    void ofTwoSinglePullsWithAKnownSpreadSpansAboutSevenKilowatts() {
        // 1.96 sqrt(2) 2.5 = 6.93: half a percent of 500 kW, two pulls
        Values out =
                CombinedUncertainty.RELATION.solve(
                        Values.of(
                                "uncertainties", List.of(2.5, 2.5),
                                "sensitivities", List.of(1.0, -1.0),
                                "degreesOfFreedom", List.of(1e9, 1e9)));
        assertEquals(1.959963985 * Math.sqrt(2) * 2.5, out.number("expanded"), 1e-7);
        assertEquals(7, out.number("expanded"), 0.1);
    }

    @Test
    void ofNoUncertaintyAtAllIsNone() {
        Values out =
                CombinedUncertainty.RELATION.solve(terms(List.of(0.0, 0.0), List.of(3.0, 4.0)));
        assertEquals(0, out.number("combined"), 0.0);
        assertEquals(0, out.number("expanded"), 0.0);
        assertEquals(1e9, out.number("effectiveFreedom"), 0.0);
    }

    @Test
    void refusesTermsWithoutASensitivity() {
        Values in = terms(List.of(1.0, 2.0), List.of(3.0, 4.0)).with("sensitivities", List.of(1.0));
        var e = assertThrows(RelationException.class, () -> CombinedUncertainty.RELATION.solve(in));
        assertEquals("sensitivities", e.slot());
    }

    @Property(seed = "20261125")
    void ofTwoMeansCountsDegreesOfFreedomAsWelchDoes(
            @ForAll @IntRange(min = 2, max = 30) int na,
            @ForAll @IntRange(min = 2, max = 30) int nb,
            @ForAll @DoubleRange(min = 0.1, max = 20) double sa,
            @ForAll @DoubleRange(min = 0.1, max = 20) double sb) {
        Summary a = new Summary(na, 10, sa);
        Summary b = new Summary(nb, 12, sb);
        var combined =
                CombinedUncertainty.of(
                        List.of(
                                new Term(a.standardError(), -1, na - 1),
                                new Term(b.standardError(), 1, nb - 1)));
        Estimate gain = WelchGain.of(a, b);
        assertEquals(gain.standardError(), combined.uncertainty(), 1e-12 * sa * sb + 1e-12);
        assertEquals(
                gain.degreesOfFreedom(),
                combined.degreesOfFreedom(),
                1e-10 * gain.degreesOfFreedom());
    }

    @Property(seed = "20261125")
    void degreesOfFreedomLieBetweenTheLeastAndTheSum(
            @ForAll @DoubleRange(min = 0.1, max = 9) double u,
            @ForAll @DoubleRange(min = 1, max = 60) double one,
            @ForAll @DoubleRange(min = 1, max = 60) double other) {
        double dof =
                CombinedUncertainty.of(List.of(new Term(u, 2, one), new Term(3, 1, other)))
                        .degreesOfFreedom();
        assertTrue(dof >= Math.min(one, other) - 1e-9, "not below the least: " + dof);
        assertTrue(dof <= one + other + 1e-9, "not above the sum: " + dof);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import static hotside.physics.compressor.CoolerArrangement.COUNTERFLOW;
import static hotside.physics.compressor.CoolerArrangement.CROSSFLOW;
import static hotside.physics.compressor.CoolerArrangement.CROSSFLOW_MAX_MIXED;
import static hotside.physics.compressor.CoolerArrangement.CROSSFLOW_MIN_MIXED;
import static hotside.physics.compressor.CoolerArrangement.PARALLEL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CoolerEffectivenessTest {
    /**
     * Kays and London, Compact Heat Exchangers, table 2-2 onward; Incropera, table 11.3: formulas
     * from memory, values worked out by an independent script.
     */
    @ParameterizedTest(name = "NTU {0}, Cr {1}")
    @CsvSource(
            textBlock =
                    """
                    # NTU, Cr, counterflow, parallel, crossflow, Cmax mixed
                    0.5, 0.5, 0.362266, 0.351756, 0.357827, 0.357183
                    1,   0.5, 0.564733, 0.517913, 0.547490, 0.541969
                    1,   1,   0.500000, 0.432332, 0.476222, 0.468536
                    2,   1,   0.666667, 0.490842, 0.614247, 0.578807
                    3,   1,   0.750000, 0.498761, 0.681291, 0.613341
                    5,   1,   0.833333, 0.499977, 0.750904, 0.629633
                    """)
    void agreesWithTheTextbookLaws(
            double ntu, double ratio, double counter, double parallel, double cross, double mixed) {
        assertEquals(counter, COUNTERFLOW.effectiveness(ntu, ratio), 1e-6);
        assertEquals(parallel, PARALLEL.effectiveness(ntu, ratio), 1e-6);
        assertEquals(cross, CROSSFLOW.effectiveness(ntu, ratio), 1e-6);
        assertEquals(mixed, CROSSFLOW_MAX_MIXED.effectiveness(ntu, ratio), 1e-6);
    }

    @Test
    void agreesWithThePrintedCrossflowTable() {
        // Kays and London print 0.476 for crossflow, both unmixed, NTU 1, Cr 1; from memory
        assertEquals(0.476, CROSSFLOW.effectiveness(1, 1), 0.0005);
    }

    @Test
    void agreesWithTheMixedSmallerFlowByHand() {
        // 1 − exp(−(1 − e^(−0.5))/0.5) = 1 − exp(−0.786939) = 0.544764, formula from memory
        // (Incropera, table 11.3)
        assertEquals(0.544764, CROSSFLOW_MIN_MIXED.effectiveness(1, 0.5), 1e-6);
    }

    @ParameterizedTest
    @EnumSource
    void losesItsArrangementWhenOneFlowKeepsItsTemperature(CoolerArrangement arrangement) {
        double single = 1 - Math.exp(-1.3);
        assertEquals(single, arrangement.effectiveness(1.3, 0), 1e-15);
        assertEquals(single, arrangement.effectiveness(1.3, 1e-9), 1e-8);
    }

    @ParameterizedTest
    @EnumSource
    void isZeroForACoreWithoutSizeAndGrowsFromThereWithItsSize(CoolerArrangement arrangement) {
        assertEquals(0, arrangement.effectiveness(0, 0.7), 0.0);
        assertEquals(1, arrangement.effectiveness(1e-6, 0.7) / 1e-6, 1e-5);
    }

    @Test
    void reachesItsCeilingForAnEndlessCore() {
        assertEquals(1, COUNTERFLOW.effectiveness(1000, 0.5), 1e-12);
        assertEquals(1 / 1.5, PARALLEL.effectiveness(1000, 0.5), 1e-12);
        assertEquals(1, CROSSFLOW.effectiveness(1000, 0.5), 1e-12);
        // E[min] of two Poisson counts of mean a is a − √(a/π): 1 − 1/√(π NTU) for large NTU
        assertEquals(1 - 1 / Math.sqrt(Math.PI * 1000), CROSSFLOW.effectiveness(1000, 1), 1e-5);
    }

    @Test
    void passesSmoothlyThroughEqualFlows() {
        assertEquals(
                COUNTERFLOW.effectiveness(3, 1), COUNTERFLOW.effectiveness(3, 1 - 1e-12), 1e-11);
    }

    @Test
    void treatsEitherMixedFlowAlikeAtEqualRates() {
        assertEquals(
                CROSSFLOW_MAX_MIXED.effectiveness(2, 1),
                CROSSFLOW_MIN_MIXED.effectiveness(2, 1),
                1e-15);
    }

    @Test
    void chargeGoesLessOfTheWayWhereTheCoolantIsTheSmallerFlow() {
        Values in =
                Values.of(
                        "conductance", 300.0,
                        "airFlow", 0.4,
                        "coolantFlow", 0.2,
                        "arrangement", "counterflow");
        var worked = CoolerEffectiveness.RELATION.work(in);
        double ntu = 300 / (1005 * 0.2);
        assertEquals(ntu, worked.out().number("ntu"), 1e-12);
        assertEquals(
                worked.out().number("effectiveness") / 2,
                worked.out().number("airEffectiveness"),
                1e-12);
        assertTrue(worked.cautions().get(0).text().contains("airEffectiveness"));
    }

    @Test
    void findsTheCoreOfAnEffectiveness() {
        Values in = Values.of("airFlow", 0.25, "coolantFlow", 0.7);
        double size =
                Solver.solveFor(
                        CoolerEffectiveness.RELATION, "conductance", "effectiveness", 0.75, in);
        assertEquals(
                0.75,
                CoolerEffectiveness.RELATION.value("effectiveness", in.with("conductance", size)),
                1e-10);
    }

    @Test
    void refusesAnEndlessCore() {
        var e =
                assertThrows(
                        RelationException.class,
                        () ->
                                CoolerEffectiveness.RELATION.solve(
                                        Values.of(
                                                "conductance", 2010.0,
                                                "airFlow", 0.001,
                                                "coolantFlow", 0.5)));
        assertEquals(
                "cooler-effectiveness: conductance makes 2000 transfer units of the smaller flow; expected"
                        + " at most 1000, and real coolers have 0.5 to 5: look at the flows",
                e.getMessage());
    }

    @Test
    void namesTheArrangementsItKnows() {
        var e = assertThrows(IllegalArgumentException.class, () -> CoolerArrangement.of("zigzag"));
        assertTrue(e.getMessage().contains("crossflow, counterflow"), e.getMessage());
    }

    @Test
    void refusesARatioAboveOne() {
        assertThrows(IllegalArgumentException.class, () -> COUNTERFLOW.effectiveness(1, 1.2));
        assertThrows(
                IllegalArgumentException.class, () -> CROSSFLOW.effectiveness(Double.NaN, 0.5));
    }

    @Property(seed = "20261125")
    void ranksTheArrangements(
            @ForAll @DoubleRange(min = 0.05, max = 20) double ntu,
            @ForAll @DoubleRange(min = 0.05, max = 1) double ratio) {
        double best = COUNTERFLOW.effectiveness(ntu, ratio);
        double cross = CROSSFLOW.effectiveness(ntu, ratio);
        double max = CROSSFLOW_MAX_MIXED.effectiveness(ntu, ratio);
        double min = CROSSFLOW_MIN_MIXED.effectiveness(ntu, ratio);
        double worst = PARALLEL.effectiveness(ntu, ratio);
        double round = 1e-14;
        assertTrue(best >= cross - round && cross >= max - round && cross >= min - round);
        assertTrue(max >= worst - round && min >= worst - round);
    }

    @Property(seed = "20261125")
    void growsWithSizeAndFallsWithTheRatio(
            @ForAll @DoubleRange(min = 0.05, max = 8) double ntu,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double ratio) {
        for (CoolerArrangement a : CoolerArrangement.values()) {
            double one = a.effectiveness(ntu, ratio);
            assertTrue(a.effectiveness(ntu + 0.1, ratio) >= one, a.word());
            assertTrue(a.effectiveness(ntu, ratio + 0.05) <= one, a.word());
        }
    }
}

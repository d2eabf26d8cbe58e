// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.Discrimination.Trust;
import hotside.classroom.ItemAnalysis.Flag;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

class ItemAnalysisTest {
    /**
     * Ten students, ten questions, printed in K. L. Wuensch, "The Kuder-Richardson 20", East
     * Carolina University, core.ecu.edu/wuenschk/StatHelp/KR20.txt, with these shares right and
     * variances: sum of pq 2.18, of totals 5.84, so that KR-20 = 10/9 (1 - 2.18/5.84).
     */
    private static final List<String> PRINTED =
            List.of(
                    "1111110110",
                    "1011011101",
                    "1111011001",
                    "0010001000",
                    "0000010010",
                    "1110111111",
                    "1101110111",
                    "1111111101",
                    "0101111101",
                    "1101101110");

    private static final double[] PRINTED_SHARES = {.7, .7, .6, .7, .6, .8, .7, .7, .5, .6};

    private static double[][] scores(List<String> rows) {
        return rows.stream()
                .map(row -> row.chars().mapToDouble(c -> c - '0').toArray())
                .toArray(double[][]::new);
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }

    @Test
    void agreesWithPrintedExample() {
        ItemAnalysis analysis = ItemAnalysis.of(scores(PRINTED), ones(10));
        for (int i = 0; i < 10; i++) {
            assertEquals(PRINTED_SHARES[i], analysis.items().get(i).difficulty(), 1e-12);
        }
        double kr20 = 10.0 / 9 * (1 - 2.18 / 5.84);
        assertEquals(kr20, analysis.reliability().orElseThrow(), 1e-12);
        // The definition: spread of totals (sample) times the root of what is not reliable.
        assertEquals(Math.sqrt(5.84 * 10 / 9 * (1 - kr20)), analysis.error().orElseThrow(), 1e-12);
    }

    @Test
    void correlationAgreesWithAnotherLibrary() {
        double[][] scores = scores(PRINTED);
        ItemAnalysis analysis = ItemAnalysis.of(scores, ones(10));
        for (int j = 0; j < 10; j++) {
            int at = j;
            double[] item = Arrays.stream(scores).mapToDouble(r -> r[at]).toArray();
            double[] rest =
                    Arrays.stream(scores)
                            .mapToDouble(r -> Arrays.stream(r).sum() - r[at])
                            .toArray();
            Discrimination d = analysis.items().get(j).discrimination();
            assertEquals(new PearsonsCorrelation().correlation(item, rest), d.value(), 1e-12);
            assertEquals(Trust.ROUGH, d.trust());
            assertTrue(d.low() < d.value() && d.value() < d.high());
        }
    }

    /**
     * Half width 0.74, 0.48 and 0.29 for 10, 20 and 50 learners around r = 0: tanh(1.96/root(n-3)).
     */
    @Test
    void intervalsAreAsWideAsSmallClassesMakeThem() {
        for (int[] pair : new int[][] {{10, 63}, {20, 44}, {50, 28}}) {
            double[] x = new double[pair[0]];
            double[] y = new double[pair[0]];
            for (int i = 0; i < x.length; i++) {
                x[i] = i % 2;
                y[i] = i / 2 % 2 == 0 ? 1 : 0;
            }
            Discrimination d = Discrimination.of(x, y);
            double half = Math.tanh(1.959964 / Math.sqrt(pair[0] - 3));
            double drift = Math.abs(d.value());
            assertEquals(half, (d.high() - d.low()) / 2, 0.01 + drift * drift);
            assertEquals(pair[1] / 100.0, half, 0.005);
        }
    }

    @Test
    void aClassOfNineIsTooSmallForDiscrimination() {
        ItemAnalysis analysis = ItemAnalysis.of(scores(PRINTED.subList(0, 9)), ones(10));
        assertEquals(Trust.TOO_FEW, analysis.items().get(0).discrimination().trust());
        assertEquals(OptionalDouble.empty(), analysis.reliability());
        assertEquals(List.of(), analysis.items().get(0).flags());
    }

    @Test
    void whatDoesNotVaryIsNotDefined() {
        ItemAnalysis analysis = ItemAnalysis.of(scores(Collections.nCopies(40, "110")), ones(3));
        assertEquals(Trust.NOT_DEFINED, analysis.items().get(0).discrimination().trust());
        assertEquals(OptionalDouble.empty(), analysis.reliability());
        assertEquals(List.of(Flag.EASY), analysis.items().get(0).flags());
        assertEquals(List.of(Flag.HARD), analysis.items().get(2).flags());
    }

    @Test
    void oneProblemHasNoReliabilityAndNobodyHasNothing() {
        assertEquals(
                OptionalDouble.empty(),
                ItemAnalysis.of(scores(Collections.nCopies(40, "1")), ones(1)).reliability());
        assertTrue(
                Double.isNaN(
                        ItemAnalysis.of(new double[0][], ones(2)).items().get(0).difficulty()));
    }

    @Test
    void aProblemThatTheBetterOnesFailIsFlagged() {
        List<String> rows =
                java.util.stream.IntStream.range(0, 40)
                        .mapToObj(i -> i % 2 == 0 ? "1110" : i % 4 == 1 ? "0001" : "0101")
                        .toList();
        ItemAnalysis analysis = ItemAnalysis.of(scores(rows), ones(4));
        assertEquals(List.of(Flag.CHECK_THE_KEY), analysis.items().get(3).flags());
    }

    /**
     * The tea tasting of R. A. Fisher, The Design of Experiments (1935), chapter II: three of four
     * cups told rightly; the one-sided chance is 17/70, the two-sided 34/70. From memory.
     */
    @Test
    void fairnessIsJudgedByFishersExactTest() {
        assertEquals(34.0 / 70, Fairness.fisher(3, 4, 1, 4), 1e-9);
        assertEquals(2.0 / 70, Fairness.fisher(4, 4, 0, 4), 1e-9);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.unit.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What pulls gave is told in a table and worked with as it is told. */
class PullMeansTest {
    private static Variant draw(String id, UnitSystem system) {
        return Variants.draw(ProblemBank.shipped().find(id).orElseThrow(), 5, system);
    }

    @Test
    void eachPullHasItsRowInTheOrderInWhichItWasMade() {
        PullMeans means =
                PullMeans.of(draw("split-from-six-pulls", UnitSystem.SI_SHOP)).orElseThrow();
        assertEquals(List.of("pull", "part", "power, kW", "boost, kPa"), means.heads());
        assertEquals(
                List.of("A", "B", "B", "A", "A", "B"),
                means.rows().stream().map(row -> row.get(1)).toList());
        assertTrue(means.rows().stream().flatMap(List::stream).noneMatch(String::isEmpty));
    }

    /** By hand: the mean of the rows of B less that of A is the gain that is asked for. */
    @Test
    void theTableLeadsToTheAnswer() {
        for (UnitSystem system : UnitSystem.values()) {
            Variant variant = draw("split-from-six-pulls", system);
            PullMeans means = PullMeans.of(variant).orElseThrow();
            double gain = mean(means, "B") - mean(means, "A");
            String told = Answers.told(variant, 0);
            assertEquals(
                    gain, Double.parseDouble(told.substring(0, told.indexOf(' '))), 0.001, told);
        }
    }

    private static double mean(PullMeans means, String part) {
        return means.rows().stream()
                .filter(row -> row.get(1).equals(part))
                .mapToDouble(row -> Double.parseDouble(row.get(2)))
                .average()
                .orElseThrow();
    }

    @Test
    void rowsOfAllPullsStandInTheirOrder() {
        Variant variant = draw("boost-turned-up-on-purpose", UnitSystem.US_SHOP);
        PullMeans means = PullMeans.of(variant).orElseThrow();
        assertEquals(List.of("pull", "part", "power, hp", "boost, psi gauge"), means.heads());
        String first = variant.shown().get("power").split(";")[0];
        assertEquals(List.of("1", "A", first), means.rows().get(0).subList(0, 3));
        assertEquals(8, means.rows().size());
    }

    @Test
    void otherProblemsHaveNone() {
        assertTrue(PullMeans.of(draw("split-the-gain", UnitSystem.SI_SHOP)).isEmpty());
    }

    @Test
    void meansWithoutPullsAreRefused() {
        String file =
                """
                ---
                id: no-pulls
                title: No pulls
                skill: fair-test.spread
                level: 1
                kind: number
                givens:
                  powers: {means: A, of: power, steps: 0.1 kW}
                work:
                  it: {relation: mean-spread, sample: powers}
                ask:
                  - {of: it.mean, say: the mean}
                mistakes: []
                ---
                """
                        + SampleProblems.body("powers");
        assertTrue(
                SampleProblems.findings(file).toString().contains("comes out of pulls"),
                SampleProblems.findings(file).toString());
    }
}

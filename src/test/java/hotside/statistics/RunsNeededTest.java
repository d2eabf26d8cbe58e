// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.relation.RelationException;
import hotside.relation.Solver;
import hotside.relation.Values;
import hotside.statistics.RunsNeeded.Plan;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RunsNeededTest {
    private static Values needed(double sd, double gain, double power) {
        return Values.of("sd", sd, "smallestGain", gain, "power", power);
    }

    @Test
    void agreesWithThePowerOfAPrintedTest() {
        // R 4.2.2, power.t.test(n = 20, delta = 1, sd = 1): 0.868952801692 without the opposite
        // tail, 0.868953027725 with strict = TRUE
        Plan plan = new Plan(1, 0.95, false, false);
        assertEquals(0.868953027725, plan.power(20), 1e-10);
        double critical = Confidence.student(0.95, 38);
        assertEquals(0.868952801692, NoncentralT.upperTail(critical, 38, Math.sqrt(10)), 1e-10);
    }

    @Test
    void agreesWithSampleSizesOfAnotherProgram() {
        // R 4.2.2, power.t.test, which leaves out the opposite tail: so does one direction at half
        // the risk. Its own search for the root stops at 1e-4
        assertEquals(22.0210977039, new Plan(1, 0.975, false, true).runs(0.9), 1e-4);
        assertEquals(63.7657637, new Plan(0.5, 0.975, false, true).runs(0.8), 1e-4);
        assertEquals(19.6669729271, new Plan(2.0 / 3, 0.975, true, true).runs(0.8), 1e-4);
        assertEquals(274.722160019, new Plan(0.25, 0.95, false, true).runs(0.9), 1e-4);
        // with both tails, and roots to the last digits: SciPy 1.17.1, nct with brentq
        assertEquals(22.0210884264, new Plan(1, 0.95, false, false).runs(0.9), 1e-8);
        assertEquals(63.7656101910, new Plan(0.5, 0.95, false, false).runs(0.8), 1e-8);
        assertEquals(19.6669489669, new Plan(2.0 / 3, 0.95, true, false).runs(0.8), 1e-8);
        assertEquals(274.7221575834, new Plan(0.25, 0.95, false, true).runs(0.9), 1e-7);
    }

    @Test
    void roundsUpAndReachesAtLeastThePowerAskedFor() {
        Values out = RunsNeeded.RELATION.solve(needed(1, 0.5, 0.8));
        assertEquals(64, out.number("runsPerPart"), 0.0);
        assertTrue(out.number("powerReached") >= 0.8);
        Values one = RunsNeeded.RELATION.solve(needed(2, 0.5, 0.9).with("direction", "one"));
        assertEquals(275, one.number("runsPerPart"), 0.0);
    }

    @Test
    void needsTwoRunsAtLeast() {
        Values out = RunsNeeded.RELATION.solve(needed(0.1, 1000, 0.8));
        assertEquals(2, out.number("runsPerPart"), 0.0);
        assertEquals(1, out.number("powerReached"), 1e-9);
    }

    @Test
    void findsTheGainThatFiveRunsAPartCanShow() {
        double gain =
                Solver.solveFor(
                        RunsNeeded.RELATION, "smallestGain", "exactRuns", 5, Values.of("sd", 2.5));
        // SciPy 1.17.1: noncentral t with 8 degrees of freedom has both tails 0.8 at
        // delta = 3.200919649, so gain = 2.5 * delta / sqrt(5/2)
        assertEquals(5.061098348, gain, 1e-8);
    }

    @Test
    void refusesAGainLostInTheSpread() {
        var e =
                assertThrows(
                        RelationException.class,
                        () -> RunsNeeded.RELATION.solve(needed(50, 0.01, 0.8)));
        assertEquals("smallestGain", e.slot());
        assertTrue(
                e.getMessage()
                        .startsWith(
                                "runs-needed: smallestGain = 0.01 is so small against the spread that a"
                                        + " million runs do not show it"),
                e.getMessage());
    }

    @Test
    void hasNoPowerBeyondLuckForNoGain() {
        // both tails of Student's t at its own quantile
        assertEquals(0.05, new Plan(0, 0.95, false, false).power(6), 1e-11);
    }

    @Property(tries = 100, seed = "20261125")
    void onlyTheRatioOfGainAndSpreadCounts(
            @ForAll @DoubleRange(min = 0.5, max = 20) double sd,
            @ForAll @DoubleRange(min = 0.3, max = 3) double ratio) {
        double one = RunsNeeded.RELATION.value("exactRuns", needed(1, ratio, 0.8));
        double other = RunsNeeded.RELATION.value("exactRuns", needed(sd, ratio * sd, 0.8));
        assertEquals(one, other, 1e-7 * one);
    }

    @Property(tries = 100, seed = "20261125")
    void moreRunsGiveMorePower(
            @ForAll @DoubleRange(min = 0.2, max = 2) double effect,
            @ForAll @DoubleRange(min = 2, max = 60) double runs) {
        Plan plan = new Plan(effect, 0.95, false, false);
        assertTrue(plan.power(runs + 1) > plan.power(runs) - 1e-12);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Runs needed to find a gain of a given size.
 *
 * <p>Source: power of Student's t test by the noncentral t (NIST/SEMATECH e-Handbook of Statistical
 * Methods, section 7.2.2.2, for the normal approximation it refines). Both tails are counted: a
 * clear result with the wrong sign counts as found too, though it hardly ever happens.
 */
public final class RunsNeeded {
    private static final String ID = "runs-needed";
    private static final String TWO_PARTS = "two-parts";
    private static final String PAIRS = "pairs";
    private static final String EITHER = "either";
    private static final String ONE = "one";
    private static final double FEWEST = 2;
    private static final double MOST = 1e6;

    public static final Relation RELATION =
            Relation.named(ID, "Runs needed to see a gain", "Test design")
                    .says(
                            "A gain much smaller than the spread of single runs drowns in it. This is how many runs a"
                                    + " part are needed so that a gain of the size you care about is found with the"
                                    + " chance you want.")
                    .tex(
                            "\\delta = \\frac{g}{s}\\sqrt{\\frac{n}{2}}, \\quad"
                                    + " P(|T_{\\nu,\\delta}| > t_\\nu) = \\beta, \\quad \\nu = 2n - 2")
                    .input(
                            amount("sd", "s", "spread of single runs; of differences for pairs")
                                    .typical(2.5))
                    .input(
                            amount("smallestGain", "g", "smallest gain that you care about")
                                    .typical(4))
                    .input(Confidence.slot())
                    .input(
                            Slot.number(
                                            "power",
                                            "\\beta",
                                            Quantity.PERCENTAGE,
                                            "chance of finding that gain when it is there")
                                    .between(0, 1)
                                    .usual(0.5, 0.999, "power is usually 80 or 90 %")
                                    .orElse(0.8))
                    .input(
                            Slot.choice(
                                            "comparison",
                                            "two rows of runs, or runs in pairs",
                                            TWO_PARTS,
                                            PAIRS)
                                    .orElse(TWO_PARTS))
                    .input(
                            Slot.choice(
                                            "direction",
                                            "whether a change in either direction is looked for or in one only",
                                            EITHER,
                                            ONE)
                                    .orElse(EITHER))
                    .output(
                            "runsPerPart",
                            "n",
                            Quantity.COUNT,
                            "runs with each part, rounded up; pairs for runs in pairs")
                    .output(
                            "exactRuns",
                            "n_x",
                            Quantity.RATIO,
                            "the same before rounding; never below 2")
                    .output(
                            "powerReached",
                            "\\beta_n",
                            Quantity.PERCENTAGE,
                            "chance of finding the gain with the rounded number")
                    .assumes(
                            "runs are independent and about normal",
                            "the spread was guessed rightly: half as much again needs more than twice the runs")
                    .source(
                            "power of Student's t by the noncentral t distribution",
                            "NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.2.2")
                    .by(RunsNeeded::work);

    private RunsNeeded() {}

    private static Slot amount(String name, String symbol, String meaning) {
        return Slot.number(name, symbol, Quantity.AS_MEASURED, meaning)
                .above(0, 1e9)
                .usual(
                        0.01,
                        100,
                        "in kW, hp or N·m this lies between 0.01 and 100; check the unit");
    }

    /**
     * A comparison that is being planned.
     *
     * @param effect smallest gain over the spread, above 0
     * @param confidence of the interval, between 0 and 1
     * @param pairs true for runs in pairs, whose spread is that of the differences
     * @param oneSided true if only a gain in one direction is looked for
     */
    public record Plan(double effect, double confidence, boolean pairs, boolean oneSided) {
        /**
         * Chance of finding the gain.
         *
         * @param runs of each part or pairs, at least 2, need not be whole
         */
        public double power(double runs) {
            double dof = degreesOfFreedom(runs);
            double shift = shift(runs);
            double critical = critical(dof);
            double right = NoncentralT.upperTail(critical, dof, shift);
            return oneSided ? right : right + NoncentralT.lowerTail(-critical, dof, shift);
        }

        double degreesOfFreedom(double runs) {
            return pairs ? runs - 1 : 2 * runs - 2;
        }

        double shift(double runs) {
            return effect * Math.sqrt(pairs ? runs : runs / 2);
        }

        double critical(double degreesOfFreedom) {
            double both = oneSided ? 2 * confidence - 1 : confidence;
            if (both > 0) {
                return Confidence.student(both, degreesOfFreedom);
            }
            return both == 0 ? 0 : -Confidence.student(-both, degreesOfFreedom);
        }

        /**
         * Runs of each part, or pairs, for a power; not rounded, at least 2.
         *
         * @param power between 0 and 1
         * @return infinite if a million do not suffice
         */
        public double runs(double power) {
            if (power(FEWEST) >= power) {
                return FEWEST;
            }
            double high = 2 * FEWEST;
            while (high < MOST && power(high) < power) {
                high *= 2;
            }
            if (power(high) < power) {
                return Double.POSITIVE_INFINITY;
            }
            return new BrentSolver(1e-11, 1e-11, 1e-14)
                    .solve(200, n -> power(n) - power, high / 2, high);
        }
    }

    private static void work(Working w) {
        Plan plan =
                new Plan(
                        w.in("smallestGain") / w.in("sd"),
                        w.in("confidence"),
                        w.word("comparison").equals(PAIRS),
                        w.word("direction").equals(ONE));
        double exact = plan.runs(w.in("power"));
        if (exact > MOST) {
            throw Samples.refuse(
                    ID,
                    "smallestGain",
                    "= "
                            + Numbers.plain(w.in("smallestGain"))
                            + " is so small against the spread that a million runs do not show it; calm the bench"
                            + " first or look for a larger gain");
        }
        w.step(
                "effect",
                "g/s",
                Quantity.RATIO,
                "\\frac{@smallestGain}{@sd}",
                plan.effect,
                "The gain against the spread is all that counts.");
        w.out(
                "exactRuns",
                "",
                exact,
                "Found by trial: more runs narrow the interval and raise the degrees of freedom.");
        double runs =
                w.out(
                        "runsPerPart",
                        "\\lceil @exactRuns \\rceil",
                        Math.ceil(exact - 1e-9),
                        "Runs come whole; round up.");
        check(w, plan, runs);
    }

    private static void check(Working w, Plan plan, double runs) {
        double dof =
                w.step(
                        "dof",
                        "\\nu",
                        Quantity.COUNT,
                        plan.pairs ? "@runsPerPart - 1" : "2 \\cdot @runsPerPart - 2",
                        plan.degreesOfFreedom(runs),
                        "Degrees of freedom of the spread.");
        w.step(
                "critical",
                "t",
                Quantity.RATIO,
                "",
                plan.critical(dof),
                "Luck alone stays below this with the confidence asked for.");
        w.step(
                "shift",
                "\\delta",
                Quantity.RATIO,
                plan.pairs
                        ? "@effect \\cdot \\sqrt{@runsPerPart}"
                        : "@effect \\cdot \\sqrt{@runsPerPart / 2}",
                plan.shift(runs),
                "The gain in standard errors.");
        w.out(
                "powerReached",
                "",
                plan.power(runs),
                "Share of such tests that come out beyond it, by the noncentral t.");
    }
}

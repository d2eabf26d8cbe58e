// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import java.util.function.IntToDoubleFunction;

/**
 * What the order of runs does to the difference of two parts' means.
 *
 * <p>Source: arithmetic of the design, as for systematic orders in any text on experiments. A run k
 * places after the middle of the test reads k units of a drift of one unit a run. Carry-over is
 * what a run with B leaves to the run after it; the first run inherits nothing.
 */
public final class OrderBalance {
    private static final String ID = "order-balance";

    public static final Relation RELATION =
            Relation.named(ID, "What the order of runs does to a gain", "Test design")
                    .says(
                            "If the bench drifts, the part that is run later gets the drift. The order alone decides"
                                    + " how much of a drift, straight or bent, and of what a run leaves to the next"
                                    + " ends up in the difference of the means.")
                    .tex("b = \\frac{1}{n_B}\\sum_B x_i - \\frac{1}{n_A}\\sum_A x_i")
                    .input(
                            Slot.text(
                                            "order",
                                            "the runs in order, one letter each: A without the part, B with it")
                                    .typical("ABBA"))
                    .output("runsA", "n_A", Quantity.COUNT, "runs without the part")
                    .output("runsB", "n_B", Quantity.COUNT, "runs with it")
                    .output("changes", "n_c", Quantity.COUNT, "times that the part must be changed")
                    .output(
                            "driftBias",
                            "b_1",
                            Quantity.RATIO,
                            "false gain for a drift of one unit from each run to the next")
                    .output(
                            "curveBias",
                            "b_2",
                            Quantity.RATIO,
                            "false gain for a drift that bends by one unit times the square of the runs from the"
                                    + " middle")
                    .output(
                            "carryBias",
                            "b_c",
                            Quantity.RATIO,
                            "false gain if each run with the part leaves one unit to the run after it")
                    .assumes(
                            "runs follow each other at even steps",
                            "the gain is taken as the difference of the two means")
                    .source("arithmetic of the design")
                    .by(OrderBalance::work);

    private OrderBalance() {}

    /**
     * What an order does.
     *
     * @param runsA runs without the part
     * @param runsB runs with it
     * @param changes times that the part must be changed
     * @param driftBias false gain per unit of drift a run
     * @param curveBias false gain per unit of drift times the square of runs from the middle
     * @param carryBias false gain per unit that a run with B leaves to the next run
     */
    public record Balance(
            int runsA,
            int runsB,
            int changes,
            double driftBias,
            double curveBias,
            double carryBias) {}

    /**
     * Works out an order.
     *
     * @param order of A and B, both at least once; case, blanks, commas and hyphens do not matter
     * @throws hotside.relation.RelationException if there is anything else, or only one letter
     */
    public static Balance of(String order) {
        String runs = RunOrder.letters(ID, "order", order, 'B');
        int b = (int) runs.chars().filter(c -> c == 'B').count();
        int a = runs.length() - b;
        if (a == 0 || b == 0) {
            throw Samples.refuse(
                    ID,
                    "order",
                    "\""
                            + order
                            + "\" must hold both A and B; with one of them there is no comparison");
        }
        int changes = 0;
        for (int i = 1; i < runs.length(); i++) {
            changes += runs.charAt(i) == runs.charAt(i - 1) ? 0 : 1;
        }
        double middle = (runs.length() - 1) / 2.0;
        return new Balance(
                a,
                b,
                changes,
                difference(runs, i -> i - middle),
                difference(runs, i -> (i - middle) * (i - middle)),
                difference(runs, i -> i > 0 && runs.charAt(i - 1) == 'B' ? 1 : 0));
    }

    /** Mean over the B runs less mean over the A runs. */
    private static double difference(String runs, IntToDoubleFunction effect) {
        double[] sum = new double[2];
        int[] count = new int[2];
        for (int i = 0; i < runs.length(); i++) {
            int part = runs.charAt(i) - 'A';
            sum[part] += effect.applyAsDouble(i);
            count[part]++;
        }
        return sum[1] / count[1] - sum[0] / count[0];
    }

    private static void work(Working w) {
        Balance b = of(w.word("order"));
        w.out("runsA", "", b.runsA, "Count the A.");
        w.out("runsB", "", b.runsB, "Count the B.");
        w.out("changes", "", b.changes, "Count where the letter changes; each costs shop time.");
        w.out(
                "carryBias",
                "",
                b.carryBias,
                "Share of the B that follow a B, less share of the A that follow a B.");
        w.out(
                "curveBias",
                "",
                b.curveBias,
                "Mean square of the places, counted from the middle: of the B less of the A.");
        w.out(
                "driftBias",
                "",
                b.driftBias,
                "Mean place of the B less mean place of the A; 0 means a straight drift cancels.");
        w.caution(
                b.runsA + b.runsB == 2,
                "order",
                () -> "one run each: neither drift nor spread can be told from the part");
    }
}

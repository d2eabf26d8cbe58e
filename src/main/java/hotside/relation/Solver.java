// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * Turns a relation round: which input gives this output?
 *
 * <p>The input's whole range is scanned for changes of sign, each is closed by Brent's method, and
 * the answer counts only if it is the only one. A jump is told from a root by working the relation
 * at the place found.
 */
public final class Solver {
    private static final int LINEAR_POINTS = 160;
    private static final int LOG_POINTS = 160;
    private static final double RELATIVE_ACCURACY = 1e-14;

    /** How close the output must come to count as found, relative to the target. */
    private static final double FOUND = 1e-8;

    private Solver() {}

    /**
     * The input that makes an output reach a target.
     *
     * @param relation the relation to turn round
     * @param unknown an input slot of kind number
     * @param output an output slot
     * @param target what the output shall be, SI
     * @param others the other inputs, SI; a value for {@code unknown} is ignored
     * @return the input, SI, correct to about 1e-12 of itself
     * @throws RelationException if no value, several values or a whole range of values do it; the
     *     message says which and names them in SI
     */
    public static double solveFor(
            Relation relation, String unknown, String output, double target, Values others) {
        return solveFor(relation, unknown, output, target, others, true);
    }

    /**
     * As {@link #solveFor(Relation, String, String, double, Values)}, but the other inputs may lie
     * outside their ranges if {@code guarded} is false: what a mistaken person would find.
     */
    static double solveFor(
            Relation relation,
            String unknown,
            String output,
            double target,
            Values others,
            boolean guarded) {
        Slot slot = relation.slot(unknown).filter(s -> relation.isInput(unknown)).orElse(null);
        if (slot == null || slot.kind() != Slot.Kind.NUMBER) {
            throw new RelationException(
                    unknown, relation.id() + ": \"" + unknown + "\" is not an input to solve for");
        }
        if (!relation.isOutput(output)) {
            throw new RelationException(
                    output, relation.id() + ": \"" + output + "\" is not an output");
        }
        if (guarded) {
            checkOthers(relation, slot, others);
        }
        UnivariateFunction miss =
                x -> outputAt(relation, output, others.with(unknown, x), guarded) - target;
        double close = FOUND * Math.max(Math.abs(target), 1e-12);

        double[] grid = grid(slot);
        List<Double> roots = new ArrayList<>();
        int flat = 0;
        double flatFrom = Double.NaN;
        double before = Double.NaN;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < grid.length; i++) {
            double here = miss.value(grid[i]);
            if (!Double.isNaN(here)) {
                lowest = Math.min(lowest, here + target);
                highest = Math.max(highest, here + target);
            }
            if (Math.abs(here) <= close * 1e-3) {
                flatFrom = flat == 0 ? grid[i] : flatFrom;
                flat++;
                if (flat >= 4) {
                    throw new RelationException(
                            unknown,
                            relation.id()
                                    + ": "
                                    + unknown
                                    + " cannot be told from "
                                    + output
                                    + " = "
                                    + Numbers.plain(target)
                                    + ": every value from about "
                                    + shown(flatFrom, slot)
                                    + " on gives it");
                }
                if (flat == 1) {
                    addRoot(roots, grid[i]);
                }
            } else {
                flat = 0;
                if (i > 0 && before * here < 0 && Math.abs(before) > close * 1e-3) {
                    double root = close(miss, grid[i - 1], grid[i]);
                    if (Math.abs(miss.value(root)) <= close) {
                        addRoot(roots, root);
                    }
                }
            }
            before = here;
        }
        if (roots.isEmpty()) {
            throw new RelationException(
                    unknown,
                    relation.id()
                            + ": no "
                            + unknown
                            + " in "
                            + Relation.rangeOf(slot)
                            + " gives "
                            + output
                            + " = "
                            + Numbers.plain(target)
                            + (lowest <= highest
                                    ? "; it goes from "
                                            + Numbers.significant(lowest, 5)
                                            + " to "
                                            + Numbers.significant(highest, 5)
                                    : "; the relation has no result there"));
        }
        if (roots.size() > 1) {
            throw new RelationException(
                    unknown,
                    relation.id()
                            + ": more than one "
                            + unknown
                            + " gives "
                            + output
                            + " = "
                            + Numbers.plain(target)
                            + ": "
                            + roots.stream()
                                    .map(r -> shown(r, slot))
                                    .collect(Collectors.joining(", ")));
        }
        return roots.get(0);
    }

    private static void checkOthers(Relation relation, Slot unknown, Values others) {
        Values complete = others.with(unknown.name(), probe(unknown));
        try {
            relation.solve(complete);
        } catch (RelationException e) {
            // A fault in the unknown's probe value, or no result there, is not the caller's; a bad
            // slot is.
            if (relation.isInput(e.slot()) && !e.slot().equals(unknown.name())
                    || !relation.isInput(e.slot())
                            && !relation.isOutput(e.slot())
                            && !e.slot().isEmpty()) {
                throw e;
            }
        }
    }

    private static double probe(Slot slot) {
        return slot.typical() instanceof Double typical
                ? typical
                : (slot.usualMin() + slot.usualMax()) / 2;
    }

    private static double outputAt(
            Relation relation, String output, Values given, boolean guarded) {
        try {
            Values out = guarded ? relation.solve(given) : relation.solveUnguarded(given);
            return out.number(output);
        } catch (RelationException e) {
            return Double.NaN;
        }
    }

    private static double close(UnivariateFunction miss, double low, double high) {
        try {
            return new BrentSolver(RELATIVE_ACCURACY, 1e-300, 0).solve(200, miss, low, high);
        } catch (NoBracketingException | TooManyEvaluationsException e) {
            return Double.NaN;
        }
    }

    private static void addRoot(List<Double> roots, double root) {
        boolean known =
                roots.stream()
                        .anyMatch(r -> Math.abs(r - root) <= 1e-9 * Math.max(Math.abs(r), 1e-12));
        if (!known) {
            roots.add(root);
        }
    }

    /**
     * Points over the whole range, denser where the slot is usual, and even in ratio over wide
     * positive ranges.
     */
    private static double[] grid(Slot slot) {
        double low = slot.min() == -Double.MAX_VALUE ? slot.usualMin() : slot.min();
        double high = slot.max() == Double.MAX_VALUE ? slot.usualMax() : slot.max();
        if (low == -Double.MAX_VALUE || high == Double.MAX_VALUE) {
            throw new RelationException(
                    slot.name(), slot.name() + " has no bounded range to look in");
        }
        double edge = 1e-12 * (high - low);
        low = slot.minExcluded() ? low + edge : low;
        high = slot.maxExcluded() ? high - edge : high;
        TreeSet<Double> points = new TreeSet<>();
        for (int i = 0; i <= LINEAR_POINTS; i++) {
            points.add(i == LINEAR_POINTS ? high : low + (high - low) * i / LINEAR_POINTS);
        }
        if (Double.isFinite(slot.usualMin()) && slot.usualMax() < Double.MAX_VALUE) {
            for (int i = 0; i <= LINEAR_POINTS; i++) {
                points.add(
                        slot.usualMin() + (slot.usualMax() - slot.usualMin()) * i / LINEAR_POINTS);
            }
        }
        if (low >= 0 && high > 0) {
            double from = low > 0 ? low : high * 1e-9;
            double ratio = Math.pow(high / from, 1.0 / LOG_POINTS);
            double x = from;
            for (int i = 0; i < LOG_POINTS; i++) {
                points.add(x);
                x *= ratio;
            }
        }
        points.removeIf(x -> !slot.admits(x));
        return points.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static String shown(double value, Slot slot) {
        String unit = slot.quantity().siScale().label();
        return Numbers.significant(value, 5) + (unit.isEmpty() ? "" : " " + unit);
    }
}

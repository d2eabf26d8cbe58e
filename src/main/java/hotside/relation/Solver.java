// SPDX-License-Identifier: Apache-2.0
package hotside.relation;

import hotside.unit.DecimalHabit;
import hotside.unit.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
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
    private static final int POINTS = 160;
    private static final double RELATIVE_ACCURACY = 1e-14;

    /** How close the output must come to count as found, relative to the target. */
    private static final double FOUND = 1e-8;

    /** How close a point of the grid must come to be a root itself, relative to the target. */
    private static final double HIT = 1e-11;

    /** So many neighbours of the grid that all hit the target are no accident. */
    private static final int FLAT_POINTS = 4;

    /** How far to look first beside a known place, relative to it. */
    private static final double FIRST_STRIDE = 0.02;

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
        return search(relation, unknown, output, target, others, false).only();
    }

    /**
     * As {@link #solveFor}, for a person who went astray: the other inputs may lie outside their
     * ranges, and of several values that do it the one next to the right one counts.
     *
     * @param right what the person should have found, SI; NaN if nothing is known of it
     */
    static double solveAstray(
            Relation relation,
            String unknown,
            String output,
            double target,
            Values others,
            double right) {
        Search search = search(relation, unknown, output, target, others, true);
        return Double.isNaN(right) ? search.only() : search.nextTo(right);
    }

    private static Search search(
            Relation relation,
            String unknown,
            String output,
            double target,
            Values others,
            boolean astray) {
        Slot slot = relation.slot(unknown).filter(s -> relation.isInput(unknown)).orElse(null);
        if (slot == null || slot.kind() != Slot.Kind.NUMBER) {
            throw new RelationException(
                    unknown, RelationWords.of("solve.input", relation.id(), unknown));
        }
        if (!relation.isOutput(output)) {
            throw new RelationException(
                    output, RelationWords.of("solve.output", relation.id(), output));
        }
        if (!astray) {
            checkOthers(relation, slot, others);
        }
        DoubleUnaryOperator curve = relation.curve(unknown, output, others, astray);
        return new Search(relation, slot, output, target, x -> curve.applyAsDouble(x) - target);
    }

    /** One search over the whole range of the unknown. */
    private static final class Search {
        private final Relation relation;
        private final Slot slot;
        private final String output;
        private final double target;
        private final UnivariateFunction miss;
        private double[] grid;
        private double[] misses;

        Search(
                Relation relation,
                Slot slot,
                String output,
                double target,
                UnivariateFunction miss) {
            this.relation = relation;
            this.slot = slot;
            this.output = output;
            this.target = target;
            this.miss = miss;
        }

        /** The one root there is. */
        double only() {
            grid = grid(relation, slot);
            misses = Arrays.stream(grid).map(miss::value).toArray();
            refuseFlat();
            List<Double> roots = roots();
            if (roots.isEmpty()) {
                throw none();
            }
            if (roots.size() > 1) {
                throw several(roots);
            }
            return roots.get(0);
        }

        /**
         * The root next to a place: walks away from it to both sides, in strides that grow, until
         * the output passes the target. Takes a tenth of the trials of {@link #only}, which is
         * asked where that finds nothing.
         */
        double nextTo(double place) {
            double low = lowest(slot);
            double high = highest(slot);
            double[] at = {place, place};
            double[] missed = {miss.value(place), miss.value(place)};
            double stride = FIRST_STRIDE * Math.max(Math.abs(place), FIRST_STRIDE * (high - low));
            while (at[0] > low || at[1] < high) {
                for (int side = 0; side < at.length; side++) {
                    double to =
                            side == 0
                                    ? Math.max(low, at[0] - stride)
                                    : Math.min(high, at[1] + stride);
                    double there = miss.value(to);
                    if (missed[side] * there <= 0) {
                        double root = close(miss, Math.min(to, at[side]), Math.max(to, at[side]));
                        if (isRoot(root, missed[side], there)) {
                            return root;
                        }
                    }
                    at[side] = to;
                    missed[side] = there;
                }
                stride *= 2;
            }
            return only();
        }

        private boolean hits(int i) {
            return Math.abs(misses[i]) <= HIT * Math.max(Math.abs(target), 1e-12);
        }

        private void refuseFlat() {
            int flat = 0;
            for (int i = 0; i < grid.length; i++) {
                flat = hits(i) ? flat + 1 : 0;
                if (flat == FLAT_POINTS) {
                    throw fault("solve.flat", reached(), shown(grid[i + 1 - FLAT_POINTS], slot));
                }
            }
        }

        private List<Double> roots() {
            List<Double> roots = new ArrayList<>();
            for (int i = 0; i < grid.length; i++) {
                if (hits(i)) {
                    addRoot(roots, grid[i]);
                } else if (i > 0 && !hits(i - 1) && misses[i - 1] * misses[i] < 0) {
                    double root = close(miss, grid[i - 1], grid[i]);
                    if (isRoot(root, misses[i - 1], misses[i])) {
                        addRoot(roots, root);
                    }
                }
            }
            return roots;
        }

        /**
         * At a jump the output changes sign without coming near the target. Near is meant against
         * the target, or for a target of zero against the output on both sides.
         */
        private boolean isRoot(double root, double before, double after) {
            double scale = Math.max(Math.abs(target), Math.min(Math.abs(before), Math.abs(after)));
            return Math.abs(miss.value(root)) <= FOUND * scale;
        }

        private RelationException none() {
            double[] reached =
                    Arrays.stream(misses).filter(Double::isFinite).map(m -> m + target).toArray();
            String range = slot.range(lowest(slot), highest(slot)).rangeText();
            return reached.length == 0
                    ? fault("solve.none-at-all", range, reached())
                    : fault(
                            "solve.none",
                            range,
                            reached(),
                            told(Arrays.stream(reached).min().orElseThrow()),
                            told(Arrays.stream(reached).max().orElseThrow()));
        }

        private RelationException several(List<Double> roots) {
            return fault(
                    "solve.several",
                    reached(),
                    roots.stream()
                            .map(r -> shown(r, slot))
                            .collect(Collectors.joining(RelationWords.of("solve.between"))));
        }

        private String reached() {
            return output + " = " + DecimalHabit.spoken().write(Numbers.plain(target));
        }

        private RelationException fault(String key, Object... fillings) {
            List<Object> all = new ArrayList<>(List.of(relation.id(), slot.name()));
            all.addAll(Arrays.asList(fillings));
            return new RelationException(slot.name(), RelationWords.of(key, all.toArray()));
        }
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
    private static double[] grid(Relation relation, Slot slot) {
        double low = lowest(slot);
        double high = highest(slot);
        if (low == -Double.MAX_VALUE || high == Double.MAX_VALUE) {
            throw new RelationException(
                    slot.name(), RelationWords.of("solve.unbounded", relation.id(), slot.name()));
        }
        double edge = 1e-12 * (high - low);
        low = slot.minExcluded() ? low + edge : low;
        high = slot.maxExcluded() ? high - edge : high;
        double[] points = even(low, high);
        if (Double.isFinite(slot.usualMin()) && slot.usualMax() < Double.MAX_VALUE) {
            points = joined(points, even(slot.usualMin(), slot.usualMax()));
        }
        if (low >= 0 && high > 0) {
            points = joined(points, evenInRatio(low > 0 ? low : high * 1e-9, high));
        }
        Arrays.sort(points);
        return Arrays.stream(points).filter(slot::admits).toArray();
    }

    private static double[] even(double low, double high) {
        double[] points = new double[POINTS + 1];
        for (int i = 0; i < POINTS; i++) {
            points[i] = low + (high - low) * i / POINTS;
        }
        points[POINTS] = high;
        return points;
    }

    private static double[] evenInRatio(double low, double high) {
        double ratio = Math.pow(high / low, 1.0 / POINTS);
        double[] points = new double[POINTS];
        double x = low;
        for (int i = 0; i < POINTS; i++) {
            points[i] = x;
            x *= ratio;
        }
        return points;
    }

    private static double[] joined(double[] some, double[] more) {
        double[] all = Arrays.copyOf(some, some.length + more.length);
        System.arraycopy(more, 0, all, some.length, more.length);
        return all;
    }

    private static double lowest(Slot slot) {
        return slot.min() == -Double.MAX_VALUE ? slot.usualMin() : slot.min();
    }

    private static double highest(Slot slot) {
        return slot.max() == Double.MAX_VALUE ? slot.usualMax() : slot.max();
    }

    private static String shown(double value, Slot slot) {
        String unit = slot.quantity().siScale().told();
        return told(value) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String told(double value) {
        return DecimalHabit.spoken().write(Numbers.significant(value, 5));
    }
}

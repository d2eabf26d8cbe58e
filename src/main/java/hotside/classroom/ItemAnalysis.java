// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the marks say of the problems and of the set.
 *
 * @param learners how many were marked
 * @param items one for each problem
 * @param reliability coefficient alpha, which for right-or-wrong marks is KR-20; absent where it is
 *     not defined or the class is too small
 * @param error standard error of measurement of a total, in points; absent as alpha is
 */
public record ItemAnalysis(
        int learners, List<Item> items, OptionalDouble reliability, OptionalDouble error) {
    /** Below this, learners should not be ranked by the set. */
    public static final double RANKING = 0.60;

    private static final double HARD = 0.20;
    private static final double EASY = 0.90;
    private static final double WEAK = 0.20;

    public ItemAnalysis {
        items = List.copyOf(items);
    }

    /** What an instructor should look at. */
    public enum Flag {
        HARD,
        EASY,
        /** Those who know more do worse: is the key right? */
        CHECK_THE_KEY,
        WEAK
    }

    /**
     * One problem.
     *
     * @param difficulty mean share of its points, 0 to 1; NaN if nobody was marked
     * @param standardError of that mean
     * @param discrimination how it goes with the rest
     * @param flags what to look at
     */
    public record Item(
            double difficulty,
            double standardError,
            Discrimination discrimination,
            List<Flag> flags) {
        public Item {
            flags = List.copyOf(flags);
        }
    }

    /**
     * @param scores points, a row for each learner
     * @param most points that each problem has
     */
    public static ItemAnalysis of(double[][] scores, double[] most) {
        int n = scores.length;
        double[] totals = Arrays.stream(scores).mapToDouble(r -> Arrays.stream(r).sum()).toArray();
        List<Item> items = new ArrayList<>();
        for (int j = 0; j < most.length; j++) {
            double[] column = column(scores, j);
            double[] rest = new double[n];
            for (int i = 0; i < n; i++) {
                rest[i] = totals[i] - column[i];
            }
            items.add(item(column, rest, most[j]));
        }
        OptionalDouble alpha = alpha(scores, totals, most.length);
        OptionalDouble error =
                alpha.isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                Math.sqrt(
                                        Moments.variance(totals)
                                                * (1 - Math.min(1, alpha.getAsDouble()))));
        return new ItemAnalysis(n, items, alpha, error);
    }

    private static double[] column(double[][] scores, int j) {
        return Arrays.stream(scores).mapToDouble(row -> row[j]).toArray();
    }

    private static Item item(double[] column, double[] rest, double most) {
        double p = Moments.mean(column) / most;
        double error = Math.sqrt(Moments.variance(column) / column.length) / most;
        Discrimination discrimination = Discrimination.of(column, rest);
        List<Flag> flags = new ArrayList<>();
        if (column.length >= Discrimination.FEWEST) {
            if (p < HARD) {
                flags.add(Flag.HARD);
            }
            if (p > EASY) {
                flags.add(Flag.EASY);
            }
        }
        if (discrimination.trust() == Discrimination.Trust.FAIR) {
            if (discrimination.value() < 0) {
                flags.add(Flag.CHECK_THE_KEY);
            } else if (discrimination.value() < WEAK) {
                flags.add(Flag.WEAK);
            }
        }
        return new Item(p, error, discrimination, flags);
    }

    private static OptionalDouble alpha(double[][] scores, double[] totals, int k) {
        double all = Moments.variance(totals);
        if (k < 2 || scores.length < Discrimination.FEWEST || !(all > 1e-12)) {
            return OptionalDouble.empty();
        }
        double parts = 0;
        for (int j = 0; j < k; j++) {
            parts += Moments.variance(column(scores, j));
        }
        return OptionalDouble.of(k / (k - 1.0) * (1 - parts / all));
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.HypergeometricDistribution;

/**
 * Whether a problem was as hard with small numbers as with large ones: learners are halved by the
 * size of their right answer to its first question.
 *
 * @param low how many of the lower half have full credit, and how many there are
 * @param high the same of the upper half
 * @param chance Fisher's exact probability, two-sided, of so large a difference by luck; absent
 *     with fewer than thirty in a half, where it would find nothing, and where no number is asked
 *     for
 */
public record Fairness(Half low, Half high, OptionalDouble chance) {
    private static final int ENOUGH = 30;
    private static final double FULL = 1 - 1e-9;

    /** One half. */
    public record Half(int full, int of) {
        /** Share with full credit; NaN for nobody. */
        public double share() {
            return (double) full / of;
        }
    }

    /** Of one problem in which the learners have numbers of their own. */
    public static Fairness of(List<MarkedHandIn> marked, int slot) {
        List<MarkedItem> items =
                marked.stream()
                        .map(m -> m.items().get(slot))
                        .sorted(Comparator.comparingDouble(i -> i.right().get(0)))
                        .toList();
        int middle = items.size() / 2;
        Half low = half(items.subList(0, middle));
        Half high = half(items.subList(middle, items.size()));
        return new Fairness(
                low,
                high,
                Math.min(low.of, high.of) < ENOUGH || Double.isNaN(items.get(0).right().get(0))
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(fisher(low.full, low.of, high.full, high.of)));
    }

    private static Half half(List<MarkedItem> items) {
        return new Half(
                (int) items.stream().filter(i -> i.reached() > FULL * i.points()).count(),
                items.size());
    }

    /** The sum of the probabilities of all tables no more likely than this one. */
    static double fisher(int a, int n, int b, int m) {
        HypergeometricDistribution tables = new HypergeometricDistribution(null, n + m, a + b, n);
        double[] chances = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            chances[i] = tables.probability(i);
        }
        double here = chances[a] * (1 + 1e-7);
        return Math.min(1, Arrays.stream(chances).filter(p -> p <= here).sum());
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;

class GaussianTest {
    private static final int DRAWS = 1_000_000;

    /** Moments 0, 1, 0, 3 of the normal distribution, to five of their standard errors. */
    @Test
    void hasTheMomentsOfTheNormalDistribution() {
        Gaussian gaussian = new Gaussian(new SplitMix64(20261125));
        double[] sums = new double[4];
        for (int i = 0; i < DRAWS; i++) {
            double x = gaussian.next();
            sums[0] += x;
            sums[1] += x * x;
            sums[2] += x * x * x;
            sums[3] += x * x * x * x;
        }
        double root = Math.sqrt(DRAWS);
        assertEquals(0, sums[0] / DRAWS, 5 / root);
        assertEquals(1, sums[1] / DRAWS, 5 * Math.sqrt(2) / root);
        assertEquals(0, sums[2] / DRAWS, 5 * Math.sqrt(15) / root);
        assertEquals(3, sums[3] / DRAWS, 5 * Math.sqrt(96) / root);
    }

    /** 5 % of the normal distribution lie beyond 1.959964; any table. */
    @Test
    void hasTheTailsOfTheNormalDistribution() {
        Gaussian gaussian = new Gaussian(new SplitMix64(1));
        int beyond = 0;
        for (int i = 0; i < DRAWS; i++) {
            beyond += Math.abs(gaussian.next()) > 1.959964 ? 1 : 0;
        }
        assertEquals(0.05, beyond / (double) DRAWS, 5 * Math.sqrt(0.05 * 0.95 / DRAWS));
    }

    @Test
    void aSeedRepeatsAndAnotherDoesNot() {
        assertEquals(
                new Gaussian(new SplitMix64(5)).next(), new Gaussian(new SplitMix64(5)).next());
        assertNotEquals(
                new Gaussian(new SplitMix64(5)).next(), new Gaussian(new SplitMix64(6)).next());
    }
}

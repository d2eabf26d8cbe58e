// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

/**
 * Tail of the normal distribution, fast, for integrals that ask for it thousands of times.
 *
 * <p>Source: Hart and others, Computer Approximations (1968), number 5666, in the form of West
 * (2005), from memory; within 1e-14 of itself up to 7 and 1e-8 of itself (1e-20 in all) beyond.
 */
final class NormalTail {
    private static final double[] OVER = {
        3.52624965998911e-02,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };
    private static final double[] UNDER = {
        8.83883476483184e-02, 1.75566716318264, 16.064177579207, 86.7807322029461,
        296.564248779674, 637.333633378831, 793.826512519948, 440.413735824752
    };
    private static final double FAR = 7.07106781186547;
    private static final int LINKS = 12;

    private NormalTail() {}

    /** Probability of a standard normal value above z; any z. */
    static double above(double z) {
        if (z < 0) {
            return 1 - above(-z);
        }
        double bell = Math.exp(-z * z / 2);
        return z < FAR
                ? bell * polynomial(OVER, z) / polynomial(UNDER, z)
                : bell / (Math.sqrt(2 * Math.PI) * fraction(z));
    }

    private static double polynomial(double[] falling, double z) {
        double value = 0;
        for (double coefficient : falling) {
            value = value * z + coefficient;
        }
        return value;
    }

    /** Laplace's continued fraction z + 1/(z + 2/(z + 3/…)). */
    private static double fraction(double z) {
        double value = z;
        for (int i = LINKS; i >= 1; i--) {
            value = z + i / value;
        }
        return value;
    }
}

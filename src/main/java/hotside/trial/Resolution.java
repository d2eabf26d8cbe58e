// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.statistics.Confidence;
import hotside.statistics.NoncentralT;

/**
 * What difference a number of pulls can show, by the interval that a comparison states: Welch's,
 * which does not take the scatter of both parts for one. With two or three pulls a part it is much
 * wider than that of two rows with one scatter.
 */
final class Resolution {
    private static final double CONFIDENCE = 0.95;
    private static final double POWER = 0.8;

    /** Shares of the first part in the scatter seen, over which the chance is averaged. */
    private static final int SHARES = 32;

    private static final int HALVINGS = 40;

    private final double degreesOfFreedom;
    private final double[] weight = new double[SHARES];
    private final double[] critical = new double[SHARES];
    private final double standardError;

    private Resolution(int before, int after) {
        double b = before - 1.0;
        double a = after - 1.0;
        degreesOfFreedom = b + a;
        standardError = Math.sqrt(1.0 / before + 1.0 / after);
        double sum = 0;
        for (int i = 0; i < SHARES; i++) {
            // The share has a beta distribution; as a squared sine it has no infinite ends.
            double angle = (i + 0.5) * Math.PI / 2 / SHARES;
            double share = Math.pow(Math.sin(angle), 2);
            weight[i] = Math.pow(Math.sin(angle), b - 1) * Math.pow(Math.cos(angle), a - 1);
            sum += weight[i];
            double first = share / (b * before);
            double second = (1 - share) / (a * after);
            double both = first + second;
            double welch = both * both / (first * first / b + second * second / a);
            critical[i] =
                    Confidence.student(CONFIDENCE, welch)
                            * Math.sqrt(degreesOfFreedom * both)
                            / standardError;
        }
        for (int i = 0; i < SHARES; i++) {
            weight[i] /= sum;
        }
    }

    /** Chance that the interval lies clear of zero, for a difference in spreads of a pull. */
    private double chance(double difference) {
        double shift = difference / standardError;
        double chance = 0;
        for (int i = 0; i < SHARES; i++) {
            chance +=
                    weight[i]
                            * (NoncentralT.upperTail(critical[i], degreesOfFreedom, shift)
                                    + NoncentralT.lowerTail(-critical[i], degreesOfFreedom, shift));
        }
        return chance;
    }

    /**
     * The smallest difference that pulls find four times out of five, at 95 % confidence.
     *
     * @param scatter standard deviation of a single pull
     * @param before pulls with the one part
     * @param after pulls with the other
     * @return in the unit of the scatter; infinite with fewer than two pulls a part
     */
    static double of(double scatter, int before, int after) {
        if (before < 2 || after < 2) {
            return Double.POSITIVE_INFINITY;
        }
        Resolution resolution = new Resolution(before, after);
        double low = 0;
        double high = 64;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (resolution.chance(middle) < POWER) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high * scatter;
    }
}

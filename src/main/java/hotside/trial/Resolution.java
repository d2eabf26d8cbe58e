// SPDX-License-Identifier: Apache-2.0
package hotside.trial;

import hotside.statistics.RunsNeeded;

/** What difference a number of pulls can show. */
final class Resolution {
    private static final double CONFIDENCE = 0.95;
    private static final double POWER = 0.8;

    private Resolution() {}

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
        double pulls = 2.0 * before * after / (before + after);
        double low = 0;
        double high = 64;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (new RunsNeeded.Plan(middle, CONFIDENCE, false, false).power(pulls) < POWER) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high * scatter;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

/**
 * How well a problem tells those who know from those who don't: the correlation of its credit with
 * the rest of the total. What a small class cannot show is not shown.
 *
 * @param trust what may be made of it
 * @param value -1 to 1; NaN unless {@link Trust#ROUGH} or {@link Trust#FAIR}
 * @param low end of its 95 % interval by Fisher's z
 * @param high end of its 95 % interval by Fisher's z
 */
public record Discrimination(Trust trust, double value, double low, double high) {
    static final int FEWEST = 10;
    static final int ENOUGH = 30;

    /** What may be made of a correlation. */
    public enum Trust {
        /** Everybody did alike, or there is no other problem. */
        NOT_DEFINED,
        /** Fewer than ten learners. */
        TOO_FEW,
        /** Ten to 29: look at the interval. */
        ROUGH,
        /** Thirty and more. */
        FAIR
    }

    static Discrimination of(double[] item, double[] rest) {
        if (item.length < FEWEST) {
            return none(Trust.TOO_FEW);
        }
        double r = Moments.correlation(item, rest);
        if (!Double.isFinite(r)) {
            return none(Trust.NOT_DEFINED);
        }
        double z = atanh(Math.max(-0.999999, Math.min(0.999999, r)));
        double half = 1.959964 / Math.sqrt(item.length - 3);
        return new Discrimination(
                item.length < ENOUGH ? Trust.ROUGH : Trust.FAIR,
                r,
                Math.tanh(z - half),
                Math.tanh(z + half));
    }

    private static Discrimination none(Trust trust) {
        return new Discrimination(trust, Double.NaN, Double.NaN, Double.NaN);
    }

    private static double atanh(double r) {
        return 0.5 * Math.log((1 + r) / (1 - r));
    }
}

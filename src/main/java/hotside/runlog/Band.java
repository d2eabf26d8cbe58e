// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

/**
 * A stretch of engine speeds, both ends in it.
 *
 * @param low turns per second
 * @param high turns per second, above {@code low}
 */
public record Band(double low, double high) {
    public Band {
        if (!(low < high) || Double.isInfinite(high - low)) {
            throw new IllegalArgumentException("no band from " + low + " to " + high);
        }
    }

    /** Ends in turns per minute, as shops say them. */
    public static Band rpm(double low, double high) {
        return new Band(Speeds.of(low), Speeds.of(high));
    }

    public double width() {
        return high - low;
    }

    public double middle() {
        return (low + high) / 2;
    }

    /** {@code 4000 to 6500 rev/min}. */
    public String words() {
        return LogWords.of("band", Speeds.rpm(low), Speeds.rpm(high));
    }
}

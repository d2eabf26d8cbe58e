// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

/**
 * Even engine speeds on which curves are laid side by side.
 *
 * @param first turns per second
 * @param step turns per second, above 0
 * @param count how many, 1 at least
 */
public record Grid(double first, double step, int count) {
    private static final int MOST = 100_000;

    public Grid {
        if (!(step > 0) || count < 1 || count > MOST || !Double.isFinite(first + step * count)) {
            throw new IllegalArgumentException(count + " speeds from " + first + " by " + step);
        }
    }

    /** All whole multiples of the step inside the band; its lower end alone if there is none. */
    public static Grid inside(Band band, double step) {
        double slack = 1e-9;
        double from = Math.ceil(band.low() / step - slack);
        double to = Math.floor(band.high() / step + slack);
        return to < from
                ? new Grid(band.low(), step, 1)
                : new Grid(from * step, step, (int) Math.min(MOST, to - from + 1));
    }

    public double speed(int i) {
        return first + i * step;
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.statistics.Estimate;
import hotside.statistics.MeanSpread;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Curves of repeated pulls on one grid, summed up speed by speed. */
public final class Repeats {
    private final Grid grid;
    private final List<Curve> curves;

    /** Lays the curves on the grid. */
    public Repeats(Grid grid, List<Curve> curves) {
        this.grid = grid;
        this.curves = curves.stream().map(c -> c.on(grid)).toList();
    }

    public Grid grid() {
        return grid;
    }

    /** The readings at one speed, those that are there; one for each pull at most. */
    public double[] readings(int i) {
        return curves.stream().mapToDouble(c -> c.value(i)).filter(v -> !Double.isNaN(v)).toArray();
    }

    /** The mean at each speed of the pulls that were read there. */
    public Curve mean() {
        double[] means = new double[grid.count()];
        Arrays.setAll(means, i -> mean(readings(i)));
        return Curve.on(grid, means);
    }

    static double mean(double[] readings) {
        return readings.length == 0 ? Double.NaN : MeanSpread.of(readings).mean();
    }

    /** The mean at one speed with its Student interval; empty with fewer than two pulls there. */
    public Optional<Estimate> estimate(int i) {
        double[] readings = readings(i);
        return readings.length < 2
                ? Optional.empty()
                : Optional.of(MeanSpread.of(readings).estimate());
    }
}

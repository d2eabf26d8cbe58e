// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * Looks for the boost at which turbine and compressor balance, from none upwards: where there are
 * several, a rotor that spins up stops at the lowest. For one search in one thread.
 *
 * <p>The steps of the coarse search are the same for every pipe, so that two pipes are compared
 * fairly.
 */
final class PointSearch {
    /** Ratio of manifold pressures between two steps of the coarse search. */
    private static final double STRIDE = 1.15;

    /** Compressor ratio at which the search gives up. */
    static final double MOST = 8;

    private static final double TOLERANCE = 1e-10;

    private final Breathing breathing;
    private double guess = 1.1;

    PointSearch(Breathing breathing) {
        this.breathing = breathing;
    }

    /** The balanced flow. */
    Flow flow() {
        Control control = breathing.rig().control();
        double idle = breathing.idleWheel();
        double top = MOST * idle;
        double share = control.openLoopShare();
        if (!control.regulates()) {
            return lowest(share, idle, top);
        }
        double target = breathing.rig().ambient().pressure() + control.targetBoost();
        double root = root(share, idle, target);
        if (!Double.isNaN(root)) {
            return at(root, share);
        }
        double unhindered = surplus(target, share);
        double held = surplus(target, 1);
        if (held > 0) {
            return lowest(1, target, top);
        }
        double needed =
                Root.between(s -> surplus(target, s), share, unhindered, 1, held, TOLERANCE);
        return at(target, needed);
    }

    private Flow lowest(double share, double from, double top) {
        double root = root(share, from, top);
        if (Double.isNaN(root)) {
            throw new RigException(
                    CellWords.of("point.no-balance", breathing.rig().id(), (int) MOST),
                    CellWords.of("point.no-balance.wanted"));
        }
        return at(root, share);
    }

    /** The lowest manifold pressure between these at which the surplus turns negative, or NaN. */
    private double root(double share, double from, double top) {
        double low = from;
        double above = roughSurplus(low, share);
        while (low < top) {
            double high = Math.min(top, low * STRIDE);
            double there = roughSurplus(high, share);
            if (there < 0) {
                return Root.between(
                        pm -> surplus(pm, share), low, above, high, there, TOLERANCE * high);
            }
            low = high;
            above = there;
        }
        return Double.NaN;
    }

    private double surplus(double manifoldPressure, double share) {
        return breathing.surplus(at(manifoldPressure, share));
    }

    private double roughSurplus(double manifoldPressure, double share) {
        return breathing.surplus(at(manifoldPressure, share, Breathing.COARSE));
    }

    private Flow at(double manifoldPressure, double share) {
        return at(manifoldPressure, share, Breathing.FINE);
    }

    private Flow at(double manifoldPressure, double share, double tolerance) {
        Flow flow = breathing.at(manifoldPressure, share, guess, tolerance);
        guess = flow.turbineInletPressure() / manifoldPressure;
        return flow;
    }
}

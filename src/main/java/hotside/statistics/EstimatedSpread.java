// SPDX-License-Identifier: Apache-2.0
package hotside.statistics;

import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Averages over what a spread estimated from few readings could have been.
 *
 * <p>A standard deviation with ν degrees of freedom over the true one, s = √(χ²/ν), has the density
 * proportional to s^(ν−1) exp(−ν s²/2). Statistics that divide by an estimated spread, such as
 * noncentral t and the studentised range, are those of a known spread averaged over s.
 */
final class EstimatedSpread {
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(16);

    /** The density is below 1e-15 of its peak so many of its standard deviations away. */
    private static final double REACH = 12;

    private static final double NOTHING = 1e-16;
    private static final int PANELS = 6;
    private static final double[] ABOUT_A_STEP = {-8, -3, -1, 0, 1, 3, 8};

    private EstimatedSpread() {}

    /**
     * Mean of a function of s that has no step: few calls, by the trapezoid rule over ln s, which
     * converges exponentially for a density that falls off like this one.
     *
     * @param degreesOfFreedom at least 1
     * @param f as smooth as a tail of a normal distribution
     */
    static double average(double degreesOfFreedom, DoubleUnaryOperator f) {
        double h = Math.min(0.15, 0.7 / Math.sqrt(2 * degreesOfFreedom));
        double sum = f.applyAsDouble(1);
        double weight = 1;
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 1; ; i++) {
                double x = side * i * h;
                double density = Math.exp(degreesOfFreedom * (x - Math.expm1(2 * x) / 2));
                if (density < NOTHING) {
                    break;
                }
                weight += density;
                sum += density * f.applyAsDouble(Math.exp(x));
            }
        }
        return sum / weight;
    }

    /**
     * Mean of a function of s that changes fast in one place.
     *
     * @param degreesOfFreedom at least 1
     * @param f smooth but for one step
     * @param stepAt where f changes fast
     * @param stepWidth over about which length it does
     */
    static double average(
            double degreesOfFreedom, DoubleUnaryOperator f, double stepAt, double stepWidth) {
        double[] edges = edges(degreesOfFreedom, stepAt, stepWidth);
        double sum = 0;
        double weight = 0;
        for (int i = 1; i < edges.length; i++) {
            double half = (edges[i] - edges[i - 1]) / 2;
            double middle = (edges[i] + edges[i - 1]) / 2;
            for (int j = 0; j < RULE.getNumberOfPoints(); j++) {
                double s = middle + half * RULE.getPoint(j);
                double density = half * RULE.getWeight(j) * relativeDensity(s, degreesOfFreedom);
                weight += density;
                sum += density == 0 ? 0 : density * f.applyAsDouble(s);
            }
        }
        return sum / weight;
    }

    /** The density over its value at s = 1, written so that many degrees of freedom keep digits. */
    private static double relativeDensity(double s, double dof) {
        return Math.exp((dof - 1) * Math.log1p(s - 1) - dof * (s - 1) * (s + 1) / 2);
    }

    private static double[] edges(double dof, double stepAt, double stepWidth) {
        double reach = REACH / Math.sqrt(2 * dof);
        double low = Math.max(0, 1 - reach);
        double high = 1 + reach;
        TreeSet<Double> edges = new TreeSet<>();
        for (int i = 0; i <= PANELS; i++) {
            edges.add(low + (high - low) * i / PANELS);
        }
        // A broken power of s at 0 is smooth on panels that shrink towards it.
        for (double edge = (high - low) / PANELS; low == 0 && edge > 1e-8; edge /= 6) {
            edges.add(edge);
        }
        for (double steps : ABOUT_A_STEP) {
            double edge = stepAt + steps * stepWidth;
            if (edge > low && edge < high) {
                edges.add(edge);
            }
        }
        return edges.stream().mapToDouble(Double::doubleValue).toArray();
    }
}

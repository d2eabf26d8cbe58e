// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

/**
 * Mass flow of a perfect gas through a nozzle or an orifice, up to and beyond choking.
 *
 * <p>Source: isentropic flow from a still upstream to the throat; NACA Report 1135 (1953), or any
 * gas dynamics text. The gas is perfect, the flow steady and one-dimensional. An orifice passes
 * less than its area says: multiply the area by a discharge coefficient (0.6 for a sharp edge to
 * 0.98 for a rounded nozzle). A sharp orifice also chokes less abruptly than a nozzle.
 */
public final class NozzleFlow {
    private NozzleFlow() {}

    /**
     * Downstream over upstream total pressure at which the throat reaches the speed of sound; any
     * lower pressure passes no more.
     *
     * @param gamma ratio of specific heats, above 1
     */
    public static double criticalRatio(double gamma) {
        return Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
    }

    /**
     * Mass flow, kg/s, from a still reservoir through a throat.
     *
     * <p>It never gives a flow backwards: that one would carry the gas of the other side. Ask again
     * with the sides and their temperatures exchanged.
     *
     * @param area effective area of the throat (geometric area times discharge coefficient), m²
     * @param upstreamTotal absolute total pressure upstream, Pa, above 0
     * @param upstreamTotalTemperature total temperature upstream, K, above 0
     * @param downstream absolute static pressure downstream, Pa, at least 0
     * @param gamma ratio of specific heats, above 1
     * @param gasConstant specific gas constant, J/(kg·K)
     * @return at least 0; 0 where {@code downstream} is not below {@code upstreamTotal}
     */
    public static double massFlow(
            double area,
            double upstreamTotal,
            double upstreamTotalTemperature,
            double downstream,
            double gamma,
            double gasConstant) {
        double function =
                downstream <= criticalRatio(gamma) * upstreamTotal
                        ? chokedFunction(gamma)
                        : function((downstream - upstreamTotal) / upstreamTotal, gamma);
        return area * upstreamTotal / Math.sqrt(gasConstant * upstreamTotalTemperature) * function;
    }

    /** Largest value of ṁ √(R T0) / (A p0), reached at the critical ratio. */
    static double chokedFunction(double gamma) {
        return Math.sqrt(gamma) * Math.pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
    }

    /**
     * ṁ √(R T0) / (A p0) below choking.
     *
     * @param change pressure ratio minus 1; kept apart so that a small drop loses no digits
     */
    private static double function(double change, double gamma) {
        if (change >= 0) {
            return 0;
        }
        double log = Math.log1p(change);
        double cooling = -Math.expm1((gamma - 1) / gamma * log);
        return Math.exp(log / gamma) * Math.sqrt(2 * gamma / (gamma - 1) * cooling);
    }
}

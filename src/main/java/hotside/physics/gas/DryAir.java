// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

/**
 * Dry air as a perfect gas with constant specific heats: good to 0.5 % between −40 °C and 150 °C,
 * where inlet and charge air live.
 */
public final class DryAir {
    /** Specific gas constant, J/(kg·K); US Standard Atmosphere 1976. */
    public static final double GAS_CONSTANT = 287.05287;

    /** Specific heat at constant pressure, J/(kg·K), at about 300 K; any thermodynamics text. */
    public static final double CP = 1005;

    /** Ratio of specific heats, at about 300 K; any thermodynamics text. */
    public static final double GAMMA = 1.4;

    private DryAir() {}

    /**
     * @param pressure absolute, Pa
     * @param temperature K, above 0
     * @return density, kg/m³
     */
    public static double density(double pressure, double temperature) {
        return pressure / (GAS_CONSTANT * temperature);
    }
}

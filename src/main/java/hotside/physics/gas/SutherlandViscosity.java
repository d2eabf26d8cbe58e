// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

/**
 * Viscosity of air by Sutherland's law.
 *
 * <p>Source: US Standard Atmosphere 1976, eq. (51). Against the dilute-gas viscosity of Lemmon and
 * Jacobsen (2004) it reads 0.3 % low at 300 K, 2 % low at 600 K and 4 % low at 1000 K. In a rough
 * exhaust pipe 4 % of viscosity is a few tenths of a percent of pressure drop.
 */
public final class SutherlandViscosity {
    private SutherlandViscosity() {}

    /**
     * @param temperature K, 100 to 1900
     * @return Pa·s
     */
    public static double ofAir(double temperature) {
        return 1.458e-6 * temperature * Math.sqrt(temperature) / (temperature + 110.4);
    }
}

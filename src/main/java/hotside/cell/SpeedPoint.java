// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

/**
 * What of an engine changes with its speed.
 *
 * @param speed turns per second
 * @param volumetricEfficiency referred to the manifold, with equal pressures on both sides
 * @param friction mean effective pressure of friction and auxiliaries, Pa
 * @param exhaustTemperature before the turbine at full load, K
 */
public record SpeedPoint(
        double speed, double volumetricEfficiency, double friction, double exhaustTemperature) {

    /** The point at a speed on the straight line to another. */
    SpeedPoint towards(SpeedPoint other, double at) {
        double share = (at - speed) / (other.speed - speed);
        return new SpeedPoint(
                at,
                between(volumetricEfficiency, other.volumetricEfficiency, share),
                between(friction, other.friction, share),
                between(exhaustTemperature, other.exhaustTemperature, share));
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import java.util.List;

/**
 * A four-stroke engine.
 *
 * @param displacement m³
 * @param compressionRatio above 1
 * @param indicatedEfficiency gross work over the heat of the fuel that finds air
 * @param lambda air over the air that would just burn the fuel
 * @param hydrogenCarbonRatio of the fuel's atoms
 * @param fuelEnergy lower heating value, J/kg
 * @param curve by rising speed, one at least
 */
public record Engine(
        double displacement,
        double compressionRatio,
        double indicatedEfficiency,
        double lambda,
        double hydrogenCarbonRatio,
        double fuelEnergy,
        List<SpeedPoint> curve) {
    public Engine {
        curve = List.copyOf(curve);
    }

    /**
     * What changes with speed: straight between the points, level beyond them.
     *
     * @param speed turns per second
     */
    public SpeedPoint at(double speed) {
        int above = 0;
        while (above < curve.size() && curve.get(above).speed() < speed) {
            above++;
        }
        if (above == 0 || above == curve.size()) {
            return curve.get(Math.min(above, curve.size() - 1));
        }
        return curve.get(above - 1).towards(curve.get(above), speed);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * What a unit of boost is worth in power, by the trade's rule that power goes with absolute
 * manifold pressure.
 *
 * <p>Source: common practice, no source. It holds as long as the charge temperature, the mixture,
 * the spark and the breathing stay as they are; hotter charge and later spark make real boost worth
 * less, often by a fifth or more.
 */
public final class BoostWorth {
    public static final Relation RELATION =
            Relation.named("boost-worth", "Power that a unit of boost is worth", "Engine and power")
                    .says(
                            "If power goes with absolute manifold pressure, an engine that gives so much without boost at"
                                    + " ambient pressure gives the same again for each ambient pressure of boost. So a"
                                    + " change of boost has a price in power that can be taken out of a comparison.")
                    .tex("w = \\frac{P_0}{p_a}")
                    .input(
                            Slot.number(
                                            "naturallyAspiratedPower",
                                            "P_0",
                                            Quantity.POWER,
                                            "power that this engine gives, or would give, without boost")
                                    .range(0, 5e6)
                                    .usual(
                                            10e3,
                                            700e3,
                                            "engines without boost give about 10 to 700 kW")
                                    .typical(200e3))
                    .input(
                            Slot.number(
                                            "ambientPressure",
                                            "p_a",
                                            Quantity.PRESSURE,
                                            "pressure of the air around while that power was given")
                                    .range(10e3, 200e3)
                                    .usual(
                                            60e3,
                                            110e3,
                                            "the air around is between 60 kPa, on a high pass, and 110 kPa")
                                    .orElse(Units.STANDARD_ATMOSPHERE))
                    .output(
                            "powerPerPressure",
                            "w",
                            Quantity.POWER_PER_PRESSURE,
                            "power for each unit of manifold pressure")
                    .assumes(
                            "power is in proportion to absolute manifold pressure",
                            "charge temperature, mixture, spark and breathing stay the same")
                    .source("common practice in the trade, no source")
                    .by(BoostWorth::work);

    private BoostWorth() {}

    /**
     * @param naturallyAspiratedPower power without boost, W
     * @param ambientPressure absolute, Pa, above 0
     * @return power for each pascal of manifold pressure, W/Pa
     */
    public static double of(double naturallyAspiratedPower, double ambientPressure) {
        return naturallyAspiratedPower / ambientPressure;
    }

    private static void work(Working w) {
        w.out(
                "powerPerPressure",
                "\\frac{@naturallyAspiratedPower}{@ambientPressure}",
                of(w.in("naturallyAspiratedPower"), w.in("ambientPressure")),
                "Without boost the manifold holds ambient pressure, and this power goes with it.");
    }
}

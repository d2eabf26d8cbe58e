// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * The air of an average day at a height.
 *
 * <p>Source: US Standard Atmosphere 1976, the lowest layer, with geometric height turned into
 * geopotential height. Real weather differs by up to 5 % in pressure and 30 K. It is dry air.
 */
public final class StandardAtmosphere {
    public static final Relation RELATION =
            Relation.named(
                            "standard-atmosphere",
                            "The air of an average day up high",
                            "Air and gas")
                    .says(
                            "Higher up there is less air above, so its pressure is lower: about 1.2 kPa less for each 100 m at first."
                                    + " A gauge that reads from ambient hides this, an absolute one does not.")
                    .tex("p = p_0\\left(\\frac{T}{T_0}\\right)^{g/(R L)},\\qquad T = T_0 - L H")
                    .input(
                            Slot.number("altitude", "Z", Quantity.LENGTH, "height above the sea")
                                    .range(-1000, 11_000)
                                    .usual(-400, 5000, "roads lie between −400 and 5000 m")
                                    .typical(1000)
                                    .shown("m", "ft"))
                    .output("temperature", "T", Quantity.TEMPERATURE, "temperature of the air")
                    .output("pressure", "p", Quantity.PRESSURE, "pressure of the air")
                    .output("density", "\\rho", Quantity.DENSITY, "density of the dry air")
                    .assumes("an average day at middle latitudes", "dry air")
                    .source("US Standard Atmosphere 1976, layer from −5 to 11 km")
                    .by(StandardAtmosphere::work);

    private static final double EARTH_RADIUS = 6_356_766;
    private static final double SEA_LEVEL_TEMPERATURE = 288.15;
    private static final double LAPSE = 6.5e-3;
    private static final double GRAVITY = 9.80665;

    /** 8314.32 over 28.9644, the constants of 1976. */
    private static final double GAS_CONSTANT = 8314.32 / 28.9644;

    /**
     * @param temperature K
     * @param pressure absolute, Pa
     * @param density kg/m³
     */
    public record State(double temperature, double pressure, double density) {}

    private StandardAtmosphere() {}

    /**
     * @param altitude geometric height above the sea, m, −5000 to 11 000
     */
    public static State at(double altitude) {
        double temperature = SEA_LEVEL_TEMPERATURE - LAPSE * geopotential(altitude);
        double pressure =
                Units.STANDARD_ATMOSPHERE
                        * Math.pow(
                                temperature / SEA_LEVEL_TEMPERATURE,
                                GRAVITY / (GAS_CONSTANT * LAPSE));
        return new State(temperature, pressure, pressure / (GAS_CONSTANT * temperature));
    }

    private static double geopotential(double altitude) {
        return EARTH_RADIUS * altitude / (EARTH_RADIUS + altitude);
    }

    private static void work(Working w) {
        double altitude = w.in("altitude");
        State s = at(altitude);
        w.step(
                "geopotential",
                "H",
                Quantity.LENGTH,
                "\\frac{r\\,@altitude}{r + @altitude}",
                geopotential(altitude),
                "Gravity weakens a little with height; with r = 6356.766 km this height makes up for it.");
        w.out(
                "temperature",
                "288.15 - 0.0065\\,@geopotential",
                s.temperature,
                "The average air cools by 6.5 K for each kilometre.");
        w.out(
                "pressure",
                "101\\,325\\left(\\frac{@temperature}{288.15}\\right)^{5.25588}",
                s.pressure,
                "The weight of the air above.");
        w.out(
                "density",
                "\\frac{@pressure}{287.053\\,@temperature}",
                s.density,
                "The ideal gas law for dry air.");
    }
}

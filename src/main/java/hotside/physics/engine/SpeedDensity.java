// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.physics.gas.DryAir;
import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Air flow of a four-stroke engine from what its cylinders sweep and the density in its manifold.
 *
 * <p>Source: definition of volumetric efficiency referred to the manifold (Heywood 1988, section
 * 2.10, from memory) and the ideal gas law. Exact by definition; all that is unknown sits in the
 * volumetric efficiency.
 */
public final class SpeedDensity {
    public static final Relation RELATION =
            Relation.named("speed-density", "Air that an engine takes in", "Engine and power")
                    .says(
                            "A four-stroke engine sweeps its displacement once in two turns and fills it, more or less, with"
                                    + " air as dense as that in the manifold. Pressure and temperature there are absolute.")
                    .tex("\\dot m_a = \\eta_v\\,\\frac{p_m}{R\\,T_m}\\,V_d\\,\\frac{n}{2}")
                    .input(EngineSlots.displacement())
                    .input(EngineSlots.speed())
                    .input(EngineSlots.volumetricEfficiency())
                    .input(EngineSlots.manifoldPressure())
                    .input(EngineSlots.manifoldTemperature())
                    .output("airFlow", "\\dot m_a", Quantity.MASS_FLOW, "air flow")
                    .assumes(
                            "a four-stroke engine",
                            "the charge is an ideal gas with the gas constant of dry air; fuel vapour and moisture"
                                    + " displace a little of it",
                            "volumetric efficiency is referred to the manifold, not to ambient")
                    .source(
                            "Heywood, Internal Combustion Engine Fundamentals (1988), section 2.10, from memory",
                            "gas constant of dry air: US Standard Atmosphere 1976")
                    .by(SpeedDensity::work);

    private SpeedDensity() {}

    /**
     * @param displacement m³
     * @param speed turns of the crankshaft per second
     * @param volumetricEfficiency referred to the manifold
     * @param manifoldPressure absolute, Pa
     * @param manifoldTemperature K, above 0
     * @return air flow, kg/s
     */
    public static double airFlow(
            double displacement,
            double speed,
            double volumetricEfficiency,
            double manifoldPressure,
            double manifoldTemperature) {
        return volumetricEfficiency
                * DryAir.density(manifoldPressure, manifoldTemperature)
                * sweptFlow(displacement, speed);
    }

    /**
     * Crankshaft speed at which an engine takes an air flow; the inverse of {@link #airFlow}.
     *
     * @param airFlow kg/s
     * @return turns per second
     */
    public static double speed(
            double airFlow,
            double displacement,
            double volumetricEfficiency,
            double manifoldPressure,
            double manifoldTemperature) {
        return airFlow
                / airFlow(
                        displacement,
                        1,
                        volumetricEfficiency,
                        manifoldPressure,
                        manifoldTemperature);
    }

    /**
     * Volume swept in a second: the displacement once in two turns.
     *
     * @param displacement m³
     * @param speed turns of the crankshaft per second
     * @return m³/s
     */
    static double sweptFlow(double displacement, double speed) {
        return displacement * speed / 2;
    }

    private static void work(Working w) {
        double displacement = w.in("displacement");
        double speed = w.in("speed");
        double pressure = w.in("manifoldPressure");
        double temperature = w.in("manifoldTemperature");
        w.step(
                "density",
                "\\rho_m",
                Quantity.DENSITY,
                "\\frac{@manifoldPressure}{287.05 \\cdot @manifoldTemperature}",
                DryAir.density(pressure, temperature),
                "Density of the air in the manifold, from absolute pressure and kelvin.");
        w.step(
                "swept",
                "\\dot V",
                Quantity.VOLUME_FLOW,
                "@displacement \\cdot \\frac{@speed}{2}",
                sweptFlow(displacement, speed),
                "A four-stroke engine fills its displacement once in two turns.");
        w.out(
                "airFlow",
                "@volumetricEfficiency \\cdot @density \\cdot @swept",
                airFlow(displacement, speed, w.in("volumetricEfficiency"), pressure, temperature),
                "The swept volume is filled to this share.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * What it costs to push the exhaust out against more than the intake pushes in with.
 *
 * <p>Source: pumping mean effective pressure as exhaust less intake manifold pressure (Heywood
 * 1988, section 5.4, from memory). An idealised gas exchange: the flow through the valves adds to
 * it, at high speed by as much again, and pulses take some off.
 */
public final class PumpingLoss {
    public static final Relation RELATION =
            Relation.named("pumping-loss", "Power lost in pumping", "Engine and power")
                    .says(
                            "On the exhaust stroke the piston works against the pressure before the turbine, on the intake"
                                    + " stroke the manifold pushes back. The difference acts on the whole displacement once in"
                                    + " two turns: positive costs power, negative gives some.")
                    .tex("p_{mep} = p_3 - p_m,\\quad P = p_{mep}\\,V_d\\,\\frac{n}{2}")
                    .input(EngineSlots.turbineInletPressure())
                    .input(EngineSlots.manifoldPressure())
                    .input(EngineSlots.displacement())
                    .input(EngineSlots.speed())
                    .output(
                            "pumpingPressure",
                            "p_{mep}",
                            Quantity.PRESSURE_DIFFERENCE,
                            "pumping mean effective pressure, positive costs power")
                    .output(
                            "power",
                            "P_p",
                            Quantity.POWER,
                            "power that pumping costs; negative if it helps")
                    .assumes(
                            "a four-stroke engine",
                            "steady pressures in both manifolds and no loss in the valves")
                    .source(
                            "Heywood, Internal Combustion Engine Fundamentals (1988), section 5.4, from memory")
                    .by(PumpingLoss::work);

    private PumpingLoss() {}

    /**
     * @param turbineInletPressure absolute, Pa
     * @param manifoldPressure absolute, Pa
     * @return pumping mean effective pressure, Pa; positive costs power
     */
    public static double pressure(double turbineInletPressure, double manifoldPressure) {
        return turbineInletPressure - manifoldPressure;
    }

    /**
     * @param turbineInletPressure absolute, Pa
     * @param manifoldPressure absolute, Pa
     * @param displacement m³
     * @param speed turns of the crankshaft per second
     * @return power, W; positive is lost
     */
    public static double power(
            double turbineInletPressure,
            double manifoldPressure,
            double displacement,
            double speed) {
        return pressure(turbineInletPressure, manifoldPressure)
                * SpeedDensity.sweptFlow(displacement, speed);
    }

    private static void work(Working w) {
        double exhaust = w.in("turbineInletPressure");
        double intake = w.in("manifoldPressure");
        w.out(
                "pumpingPressure",
                "@turbineInletPressure - @manifoldPressure",
                pressure(exhaust, intake),
                "Pressure that the piston pushes against, less the pressure that pushes it.");
        w.out(
                "power",
                "@pumpingPressure \\cdot @displacement \\cdot \\frac{@speed}{2}",
                power(exhaust, intake, w.in("displacement"), w.in("speed")),
                "Pressure times the volume swept in a second; one exchange of gas in two turns.");
    }
}

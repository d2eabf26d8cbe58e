// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Slot;
import hotside.unit.Quantity;

/** Slots that several relations about an engine share, so that they mean and allow the same. */
public final class EngineSlots {
    private EngineSlots() {}

    /** {@code displacement}, m³. */
    public static Slot displacement() {
        return Slot.number("displacement", "V_d", Quantity.VOLUME, "swept volume of all cylinders")
                .above(0, 0.1)
                .usual(0.1e-3, 20e-3, "road engines sweep 0.1 to 20 litres, all cylinders together")
                .typical(2.5e-3);
    }

    /** {@code speed} of the crankshaft, 1/s. */
    public static Slot speed() {
        return Slot.number("speed", "n", Quantity.ROTATION, "speed of the crankshaft")
                .range(0, 500)
                .usual(5, 200, "crankshafts turn at about 300 to 12 000 rev/min")
                .typical(100);
    }

    /** {@code manifoldPressure}, Pa absolute. */
    public static Slot manifoldPressure() {
        return Slot.number(
                        "manifoldPressure",
                        "p_m",
                        Quantity.PRESSURE,
                        "pressure in the intake manifold")
                .above(0, 1.5e6)
                .usual(
                        20e3,
                        500e3,
                        "manifolds hold from 20 kPa, throttled, to about 500 kPa; is this absolute?")
                .typical(165e3);
    }

    /** {@code manifoldTemperature}, K. */
    public static Slot manifoldTemperature() {
        return Slot.number(
                        "manifoldTemperature",
                        "T_m",
                        Quantity.TEMPERATURE,
                        "temperature of the charge in the manifold")
                .range(150, 700)
                .usual(
                        240,
                        420,
                        "charge air is between about −30 and 150 °C; is this counted from absolute zero?")
                .typical(318.15);
    }

    /** {@code turbineInletPressure}, Pa absolute. */
    public static Slot turbineInletPressure() {
        return Slot.number(
                        "turbineInletPressure",
                        "p_3",
                        Quantity.PRESSURE,
                        "pressure in the exhaust manifold, before the turbine")
                .above(0, 2e6)
                .usual(
                        80e3,
                        700e3,
                        "exhaust manifolds hold from ambient to about 700 kPa; is this absolute?")
                .typical(190e3);
    }

    /** {@code volumetricEfficiency}, filling referred to the manifold's own density. */
    public static Slot volumetricEfficiency() {
        return Slot.number(
                        "volumetricEfficiency",
                        "\\eta_v",
                        Quantity.RATIO,
                        "how full the cylinders get, against the density in the manifold")
                .above(0, 2)
                .usual(
                        0.5,
                        1.2,
                        "referred to the manifold, engines fill to 0.5 to 1.2; referred to ambient the number is another")
                .typical(0.92);
    }

    /** {@code airFuelRatio}, by mass. */
    public static Slot airFuelRatio() {
        return Slot.number("airFuelRatio", "A", Quantity.RATIO, "mass of air for each mass of fuel")
                .range(2, 200)
                .usual(
                        4,
                        40,
                        "petrol runs at 10 to 16, alcohol at 4 to 9, a diesel at load at 18 to 40; is"
                                + " this a ratio of masses, and not lambda?")
                .typical(12.5);
    }
}

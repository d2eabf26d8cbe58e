// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Slot;
import hotside.unit.Quantity;
import hotside.unit.Units;

/** The slots that several gate relations share, so that a name means the same thing everywhere. */
final class GateSlots {
    private GateSlots() {}

    static Slot seatDiameter() {
        return Slot.number("seatDiameter", "d_s", Quantity.LENGTH, "bore of the valve seat")
                .above(0, 0.2)
                .usual(0.015, 0.07, "wastegate seats run from about 15 to 70 mm")
                .typical(0.046);
    }

    static Slot diaphragmDiameter() {
        return Slot.number(
                        "diaphragmDiameter",
                        "d_d",
                        Quantity.LENGTH,
                        "effective diameter of the diaphragm")
                .above(0, 0.3)
                .usual(
                        0.03,
                        0.12,
                        "diaphragms run from about 30 to 120 mm; the effective diameter lies between"
                                + " the piston and the bore of the can")
                .typical(0.0714);
    }

    static Slot preload() {
        return Slot.number(
                        "preload",
                        "F_0",
                        Quantity.FORCE,
                        "force of the fitted spring with the valve shut")
                .range(0, 5000)
                .usual(20, 1000, "gate springs are fitted with about 20 to 1000 N")
                .typical(260);
    }

    static Slot rate() {
        return Slot.number(
                        "rate",
                        "k",
                        Quantity.SPRING_RATE,
                        "force the spring gains per length of lift")
                .above(0, 1e6)
                .usual(500, 40e3, "gate springs run from about 0.5 to 40 N/mm")
                .typical(7000);
    }

    static Slot lift() {
        return Slot.number("lift", "x", Quantity.LENGTH, "how far the valve stands off its seat")
                .range(0, 0.1)
                .usual(0, 0.025, "gate valves lift by about 25 mm at most")
                .typical(0.006);
    }

    static Slot signalShare() {
        return Slot.number(
                        "signalShare",
                        "s",
                        Quantity.PERCENTAGE,
                        "share of the boost that reaches the diaphragm, gauge over gauge")
                .range(0, 1)
                .usual(0.2, 1, "below a fifth of the boost little is left to steer the gate by")
                .typical(0.7);
    }

    static Slot upstream() {
        return Slot.number("upstream", "p_u", Quantity.PRESSURE, "pressure under the valve")
                .range(0, 2e6)
                .usual(80e3, 600e3, "turbine inlets run from ambient to about 6 bar")
                .typical(181e3);
    }

    static Slot downstream() {
        return Slot.number("downstream", "p_d", Quantity.PRESSURE, "pressure behind the valve")
                .range(0, 2e6)
                .usual(60e3, 300e3, "a gate vents to ambient or to the pipe after the turbine")
                .typical(101_325);
    }

    static Slot turbineInletAtZeroBoost() {
        return Slot.number(
                        "turbineInletAtZeroBoost",
                        "p_{30}",
                        Quantity.PRESSURE,
                        "where the line of turbine inlet pressure meets zero boost")
                .range(0, 1e6)
                .usual(
                        80e3,
                        250e3,
                        "without boost a turbine inlet stands from about ambient to 1.5 bar above")
                .typical(111.3e3);
    }

    static Slot turbineInletSlope() {
        return Slot.number(
                        "turbineInletSlope",
                        "m",
                        Quantity.RATIO,
                        "rise of turbine inlet pressure for each unit of boost")
                .range(0, 10)
                .usual(
                        0,
                        3,
                        "turbine inlet pressure rises by about 0.5 to 3 times the boost; a straight line is"
                                + " good near the boost it was taken at")
                .typical(1.0);
    }

    static Slot boost() {
        return Slot.number("boost", "b", Quantity.GAUGE_PRESSURE, "boost at the signal source")
                .range(-100e3, 1e6)
                .usual(0, 300e3, "boost runs from nothing to about 300 kPa gauge")
                .typical(66e3);
    }

    static Slot maxLift() {
        return Slot.number("maxLift", "x_m", Quantity.LENGTH, "lift at the far stop")
                .above(0, 0.1)
                .usual(0.002, 0.025, "gate valves lift by about 2 to 25 mm at most")
                .typical(0.0115);
    }

    static Slot dischargeCoefficient() {
        return Slot.number(
                        "dischargeCoefficient",
                        "C_d",
                        Quantity.RATIO,
                        "flow over what the area would pass without loss")
                .above(0, 1)
                .usual(0.5, 1, "gate valves have a discharge coefficient of about 0.5 to 0.9")
                .typical(0.75);
    }

    static Slot temperature() {
        return Slot.number("temperature", "T", Quantity.TEMPERATURE, "temperature before the valve")
                .range(250, 2000)
                .usual(500, 1350, "exhaust before a turbine runs from about 500 to 1350 K")
                .typical(1150);
    }

    static Slot targetBoost() {
        return Slot.number(
                        "targetBoost", "b^*", Quantity.GAUGE_PRESSURE, "boost that is to be held")
                .above(0, 1e6)
                .usual(5e3, 300e3, "targets run from 5 to about 300 kPa gauge")
                .typical(66e3);
    }

    static Slot ambientPressure() {
        return Slot.number(
                        "ambientPressure", "p_a", Quantity.PRESSURE, "pressure of the air around")
                .range(30e3, 150e3)
                .usual(60e3, 110e3, "the air around is between 60 kPa, on a high pass, and 110 kPa")
                .orElse(Units.STANDARD_ATMOSPHERE);
    }
}

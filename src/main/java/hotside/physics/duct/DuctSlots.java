// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Slot;
import hotside.unit.Quantity;
import hotside.unit.Units;

/** Slots that several relations of a pipe share, so that they read alike everywhere. */
final class DuctSlots {
    private DuctSlots() {}

    static Slot massFlow() {
        return Slot.number("massFlow", "\\dot m", Quantity.MASS_FLOW, "exhaust through the pipe")
                .above(0, 5)
                .usual(
                        0.002,
                        1.5,
                        "engines pass from a few grams a second at idle to about 1.5 kg/s")
                .typical(0.15);
    }

    static Slot pressure() {
        return Slot.number("pressure", "p", Quantity.PRESSURE, "static pressure in the pipe")
                .above(1e3, 2e6)
                .usual(
                        60e3,
                        500e3,
                        "pressures here are absolute; less than 60 kPa is likely a gauge reading")
                .typical(Units.STANDARD_ATMOSPHERE);
    }

    static Slot temperature() {
        return Slot.number(
                        "temperature", "T", Quantity.TEMPERATURE, "static temperature of the gas")
                .range(200, 2000)
                .usual(
                        260,
                        1400,
                        "exhaust runs from about 400 K at a cool tail to 1300 K at the turbine")
                .typical(950);
    }

    static Slot diameter() {
        return bore("diameter", "D", "bore of the pipe, inside").typical(0.073);
    }

    static Slot smallDiameter() {
        return bore("smallDiameter", "d", "bore of the small pipe").typical(0.060);
    }

    static Slot largeDiameter() {
        return bore("largeDiameter", "D", "bore of the large pipe").typical(0.073);
    }

    static Slot bore(String name, String symbol, String meaning) {
        return Slot.number(name, symbol, Quantity.LENGTH, meaning)
                .above(0, 0.5)
                .usual(0.02, 0.2, "exhaust pipes have bores of about 20 to 200 mm");
    }

    static Slot length() {
        return Slot.number("length", "L", Quantity.LENGTH, "length along the middle of the pipe")
                .range(0, 100)
                .usual(0, 10, "an exhaust is seldom longer than 10 m")
                .typical(2.5)
                .shown("m", "ft");
    }

    static Slot roughness() {
        return Slot.number(
                        "roughness",
                        "\\varepsilon",
                        Quantity.LENGTH,
                        "height of the roughness of the wall, as sand grains")
                .range(0, 5e-3)
                .usual(
                        0,
                        1e-3,
                        "drawn tube has about 2 µm, commercial steel 45 µm, heavy rust up to 1 mm")
                .orElse(45e-6);
    }

    static Slot lossSum() {
        return Slot.number(
                        "lossSum",
                        "\\sum K",
                        Quantity.RATIO,
                        "sum of the loss coefficients of bends and fittings")
                .range(0, 100)
                .usual(0, 12, "more than about 12 velocity heads is no free-flowing exhaust")
                .orElse(0);
    }

    static Slot lambda() {
        return Slot.number("lambda", "\\lambda", Quantity.RATIO, "air supplied over air needed")
                .above(0.5, 20)
                .usual(
                        0.7,
                        3,
                        "below about 0.7 soot and unburned fuel appear, which are not counted; above"
                                + " about 3 no engine but an idling diesel runs")
                .orElse(1);
    }
}

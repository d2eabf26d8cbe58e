// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * Pressure ratio across a compressor from what gauges show: boost in the manifold, the drop before
 * and the drop behind.
 *
 * <p>Source: definition. Exact; static pressures stand for total ones, which leaves out 1 to 3 kPa
 * of velocity head at full flow.
 */
public final class PressureRatio {
    public static final Relation RELATION =
            Relation.named(
                            "compressor-pressure-ratio",
                            "Pressure ratio of a compressor",
                            "Compressor and cooler")
                    .says(
                            "A ratio needs absolute pressures on both sides. Filter and hose lower what the compressor gets,"
                                    + " cooler and pipes take some of what it gives: both make it work harder for the same boost.")
                    .tex("\\Pi_c = \\frac{p_a + b + \\Delta p_c}{p_a - \\Delta p_i}")
                    .input(
                            Slot.number(
                                            "boost",
                                            "b",
                                            Quantity.GAUGE_PRESSURE,
                                            "boost in the manifold, counted from ambient")
                                    .range(0, 1e6)
                                    .usual(0, 350e3, "one compressor gives up to about 350 kPa")
                                    .typical(80e3))
                    .input(
                            Slot.number(
                                            "inletDepression",
                                            "\\Delta p_i",
                                            Quantity.PRESSURE_DIFFERENCE,
                                            "how far filter and hose pull the inlet below ambient")
                                    .range(0, 60e3)
                                    .usual(0, 10e3, "a sound inlet loses 1 to 6 kPa at full flow")
                                    .orElse(0))
                    .input(
                            Slot.number(
                                            "chargeLoss",
                                            "\\Delta p_c",
                                            Quantity.PRESSURE_DIFFERENCE,
                                            "drop from compressor to manifold, through the cooler")
                                    .range(0, 100e3)
                                    .usual(0, 25e3, "a sound cooler and its pipes lose 3 to 15 kPa")
                                    .orElse(0))
                    .input(
                            Slot.number(
                                            "ambientPressure",
                                            "p_a",
                                            Quantity.PRESSURE,
                                            "pressure of the air around")
                                    .range(30e3, 150e3)
                                    .usual(
                                            60e3,
                                            110e3,
                                            "the air around is between 60 kPa, on a high pass, and 110 kPa")
                                    .orElse(Units.STANDARD_ATMOSPHERE))
                    .output("inletPressure", "p_1", Quantity.PRESSURE, "pressure at the inlet")
                    .output("outletPressure", "p_2", Quantity.PRESSURE, "pressure at the outlet")
                    .output(
                            "pressureRatio",
                            "\\Pi_c",
                            Quantity.RATIO,
                            "outlet over inlet pressure, both absolute")
                    .assumes("wall taps: the velocity head of the flow is left out")
                    .source("definition of pressure ratio and of gauge pressure")
                    .by(PressureRatio::work);

    private PressureRatio() {}

    /**
     * @param boost gauge, Pa
     * @param inletDepression Pa below ambient, less than {@code ambientPressure}
     * @param chargeLoss Pa from compressor to manifold
     * @param ambientPressure absolute, Pa
     * @return outlet over inlet pressure
     */
    public static double of(
            double boost, double inletDepression, double chargeLoss, double ambientPressure) {
        return (ambientPressure + boost + chargeLoss) / (ambientPressure - inletDepression);
    }

    private static void work(Working w) {
        double ambient = w.in("ambientPressure");
        double depression = w.in("inletDepression");
        if (depression >= ambient) {
            throw new RelationException(
                    "inletDepression",
                    "compressor-pressure-ratio: inletDepression = "
                            + Numbers.plain(depression)
                            + " Pa leaves no air of "
                            + Numbers.plain(ambient)
                            + " Pa; expected a drop of a few kPa");
        }
        w.out(
                "inletPressure",
                "@ambientPressure - @inletDepression",
                ambient - depression,
                "Filter and hose leave this much for the compressor.");
        double outlet =
                w.out(
                        "outletPressure",
                        "@ambientPressure + @boost + @chargeLoss",
                        ambient + w.in("boost") + w.in("chargeLoss"),
                        "The compressor must give what the cooler takes as well.");
        w.out(
                "pressureRatio",
                "\\frac{@outletPressure}{@inletPressure}",
                outlet / (ambient - depression),
                "Absolute over absolute.");
    }
}

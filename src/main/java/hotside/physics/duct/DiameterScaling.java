// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * What another bore does to a known drop.
 *
 * <p>Source: Darcy and Weisbach with one friction factor: the drop goes with the square of the flow
 * and the inverse fifth power of the bore. Three things pull at that power. Bends follow the
 * fourth, so a downpipe with bends of 0.6 has about 4.5. A wider pipe has another friction factor:
 * a straight one has about 4.85. Gas that swells and speeds up on its way adds to the larger drop:
 * 2 to 8 % for each 10 kPa of it when the bore changes by one size ({@link DuctFlow} has all
 * three).
 */
public final class DiameterScaling {
    public static final Relation RELATION =
            Relation.named("diameter-scaling", "What the next size is worth", "Exhaust flow")
                    .says(
                            "For a straight pipe the drop goes with the square of the flow and falls with the fifth power of the"
                                    + " bore. So the first step in size is worth most, and the last next to nothing.")
                    .tex(
                            "\\Delta p_B = \\Delta p_A\\left(\\frac{\\dot m_B}{\\dot m_A}\\right)^2\\left(\\frac{D_A}{D_B}\\right)^5")
                    .input(
                            Slot.number(
                                            "dropA",
                                            "\\Delta p_A",
                                            Quantity.PRESSURE_DIFFERENCE,
                                            "drop of the pipe that is known")
                                    .range(0, 1e6)
                                    .usual(
                                            0,
                                            30e3,
                                            "above 30 kPa the gas swells so much that the law is off by tens of percent;"
                                                    + " use duct-flow")
                                    .typical(5e3))
                    .input(DuctSlots.bore("diameterA", "D_A", "bore that is known").typical(0.073))
                    .input(
                            DuctSlots.bore("diameterB", "D_B", "bore that is asked about")
                                    .typical(0.086))
                    .input(
                            Slot.number(
                                            "flowRatio",
                                            "\\dot m_B/\\dot m_A",
                                            Quantity.RATIO,
                                            "flow of the second case over that of the first")
                                    .range(0, 10)
                                    .usual(
                                            0.2,
                                            3,
                                            "far from the known flow the friction factor is another one")
                                    .orElse(1))
                    .output(
                            "dropB",
                            "\\Delta p_B",
                            Quantity.PRESSURE_DIFFERENCE,
                            "drop of the pipe that is asked about")
                    .assumes(
                            "the same length, gas and temperature; no fittings",
                            "one friction factor for both",
                            "constant density: drops below a tenth of the pressure")
                    .source("Darcy and Weisbach; any fluid mechanics text")
                    .by(DiameterScaling::work);

    private static final double TENTH = Units.STANDARD_ATMOSPHERE / 10;

    private DiameterScaling() {}

    /**
     * @param dropA Pa, at least 0
     * @param diameterA m, above 0
     * @param diameterB m, above 0
     * @param flowRatio flow in B over flow in A, at least 0
     * @return drop in B, Pa
     */
    public static double of(double dropA, double diameterA, double diameterB, double flowRatio) {
        return dropA * flowRatio * flowRatio * Math.pow(diameterA / diameterB, 5);
    }

    private static void work(Working w) {
        double dropA = w.in("dropA");
        double ratio = w.in("diameterA") / w.in("diameterB");
        double dropB = of(dropA, w.in("diameterA"), w.in("diameterB"), w.in("flowRatio"));
        w.step(
                "boreFactor",
                "b",
                Quantity.RATIO,
                "\\left(\\frac{@diameterA}{@diameterB}\\right)^5",
                Math.pow(ratio, 5),
                "Area counts twice through the velocity squared, and the wall once more.");
        w.out(
                "dropB",
                "@dropA\\cdot\\left(@flowRatio\\right)^2\\cdot @boreFactor",
                dropB,
                "The flow counts squared.");
        double larger = Math.max(dropA, dropB);
        w.caution(
                larger > TENTH,
                "dropB",
                () ->
                        "a drop of "
                                + Numbers.significant(larger / 1000, 3)
                                + " kPa is more than a tenth of the ambient pressure: the gas swells and speeds up on"
                                + " its way, and against the smaller drop the larger one grows by a further 2 to 8 %"
                                + " for each 10 kPa; use duct-flow");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.physics.turbine.ExhaustSlots;
import hotside.relation.Working;
import hotside.unit.Quantity;

/** Lines of working that several gate relations begin with. */
final class GateSteps {
    private GateSteps() {}

    /** Writes {@code diaphragmArea} and {@code seatArea}. */
    static void areas(Working w) {
        w.step(
                "diaphragmArea",
                "A_d",
                Quantity.AREA,
                "\\frac{\\pi}{4}\\,@diaphragmDiameter^2",
                Disc.area(w.in("diaphragmDiameter")),
                "The signal acts on the diaphragm.");
        seatArea(w);
    }

    /** Writes {@code seatArea}. */
    static void seatArea(Working w) {
        w.step(
                "seatArea",
                "A_s",
                Quantity.AREA,
                "\\frac{\\pi}{4}\\,@seatDiameter^2",
                Disc.area(w.in("seatDiameter")),
                "The exhaust acts on the area inside the seat.");
    }

    /** Writes {@code boostArea}, after {@link #areas}. */
    static double boostArea(Working w) {
        return w.step(
                "boostArea",
                "A_b",
                Quantity.AREA,
                "@signalShare\\,@diaphragmArea + @turbineInletSlope\\,@seatArea",
                GateBalance.boostArea(
                        w.in("signalShare"),
                        w.in("diaphragmDiameter"),
                        w.in("turbineInletSlope"),
                        w.in("seatDiameter")),
                "Boost opens twice: by its share on the diaphragm, and by the exhaust pressure that comes with it.");
    }

    /** Writes {@code gasConstant} from {@code cp} and {@code gamma}. */
    static double gasConstant(Working w) {
        return w.step(
                "gasConstant",
                "R",
                Quantity.SPECIFIC_HEAT,
                "@cp\\,\\frac{@gamma - 1}{@gamma}",
                ExhaustSlots.gasConstant(w.in("gamma"), w.in("cp")),
                "The gas constant that belongs to the two.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Force of the signal pressure on the gate's diaphragm, positive in the opening direction.
 *
 * <p>Source: force is pressure times area. The far side of the diaphragm stands open to ambient, so
 * the gauge pressure is the difference that pushes.
 */
public final class DiaphragmForce {
    public static final Relation RELATION =
            Relation.named("diaphragm-force", "Push of the signal on the diaphragm", "Gate")
                    .says(
                            "The signal hose brings boost, or a share of it, under the diaphragm. Its gauge pressure"
                                    + " times the diaphragm's area is the force that the spring must hold.")
                    .tex("F = \\frac{\\pi}{4}\\,d_d^2\\,p_s")
                    .input(
                            Slot.number(
                                            "signalPressure",
                                            "p_s",
                                            Quantity.GAUGE_PRESSURE,
                                            "pressure in the signal hose")
                                    .range(-100e3, 1e6)
                                    .usual(
                                            0,
                                            300e3,
                                            "a signal is a share of the boost, about 0 to 300 kPa gauge; under"
                                                    + " vacuum the diaphragm pulls the valve shut")
                                    .typical(47e3))
                    .input(GateSlots.diaphragmDiameter())
                    .output(
                            "force",
                            "F",
                            Quantity.FORCE,
                            "push of the diaphragm, positive opens the valve")
                    .assumes(
                            "the other side of the diaphragm is open to ambient",
                            "the effective area does not change with lift; a worn or soft one loses some percent")
                    .source("force is pressure times area; any mechanics text")
                    .by(DiaphragmForce::work);

    private DiaphragmForce() {}

    /**
     * @param signalPressure gauge pressure under the diaphragm, Pa; negative under vacuum
     * @param diaphragmDiameter effective diameter, m, at least 0
     * @return force, N, positive opens
     */
    public static double of(double signalPressure, double diaphragmDiameter) {
        return Disc.area(diaphragmDiameter) * signalPressure;
    }

    private static void work(Working w) {
        double diameter = w.in("diaphragmDiameter");
        w.step(
                "area",
                "A_d",
                Quantity.AREA,
                "\\frac{\\pi}{4}\\,@diaphragmDiameter^2",
                Disc.area(diameter),
                "The signal acts on the diaphragm's effective area.");
        w.out(
                "force",
                "@area\\,@signalPressure",
                of(w.in("signalPressure"), diameter),
                "Ambient pushes on the other side, so only the gauge pressure counts.");
    }
}

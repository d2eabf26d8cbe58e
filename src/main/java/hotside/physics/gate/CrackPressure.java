// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Boost at which a wastegate begins to open: diaphragm and exhaust together first equal the
 * preload.
 *
 * <p>Source: balance of forces with the valve on its seat. Turbine inlet pressure is taken as a
 * straight line of boost, which makes the answer a closed form. Stem friction (commonly a few
 * percent of the preload) is left out.
 */
public final class CrackPressure {
    private static final String ID = "crack-pressure";

    public static final Relation RELATION =
            Relation.named(ID, "Boost at which the gate begins to open", "Gate")
                    .says(
                            "Three forces meet in one valve: the spring holds it shut, the signal on the diaphragm and"
                                    + " the exhaust on the valve itself open it. It cracks where the two together first"
                                    + " equal the preload, well before the diaphragm alone could do it.")
                    .tex("b = \\frac{F_0 - A_s\\,(p_{30} - p_d)}{s\\,A_d + m\\,A_s}")
                    .input(GateSlots.preload())
                    .input(GateSlots.diaphragmDiameter())
                    .input(GateSlots.seatDiameter())
                    .input(GateSlots.turbineInletAtZeroBoost())
                    .input(GateSlots.turbineInletSlope())
                    .input(GateSlots.downstream())
                    .input(GateSlots.signalShare().above(0, 1))
                    .output(
                            "boost",
                            "b",
                            Quantity.GAUGE_PRESSURE,
                            "boost at which the valve begins to lift")
                    .output(
                            "upstream",
                            "p_u",
                            Quantity.PRESSURE,
                            "pressure under the valve at that boost")
                    .output(
                            "boostIgnoringExhaust",
                            "b_0",
                            Quantity.GAUGE_PRESSURE,
                            "what one would expect if the exhaust did not push, for comparison")
                    .assumes(
                            "the valve is shut, and signal and exhaust both push it open",
                            "turbine inlet pressure is a straight line of boost",
                            "friction is left out")
                    .source("balance of forces; any mechanics text")
                    .by(CrackPressure::work);

    private CrackPressure() {}

    /**
     * Boost at which the forces balance at zero lift, Pa gauge.
     *
     * @param preload spring force with the valve shut, N
     * @param diaphragmDiameter effective diameter, m
     * @param seatDiameter bore of the seat, m
     * @param turbineInletAtZeroBoost absolute pressure, Pa, at which the line of turbine inlet
     *     pressure meets zero boost
     * @param turbineInletSlope pascals of turbine inlet pressure for each pascal of boost, at least
     *     0
     * @param downstream absolute pressure that the valve vents to, Pa
     * @param signalShare gauge pressure at the diaphragm over boost, 0 (hose off) to 1
     * @return boost above 0, Pa gauge
     * @throws RelationException if the exhaust alone opens the valve before there is boost, or if
     *     no boost opens it
     */
    public static double of(
            double preload,
            double diaphragmDiameter,
            double seatDiameter,
            double turbineInletAtZeroBoost,
            double turbineInletSlope,
            double downstream,
            double signalShare) {
        return GateBalance.boost(
                ID,
                preload,
                diaphragmDiameter,
                seatDiameter,
                turbineInletAtZeroBoost,
                turbineInletSlope,
                downstream,
                signalShare);
    }

    private static void work(Working w) {
        double preload = w.in("preload");
        double diaphragm = w.in("diaphragmDiameter");
        double seat = w.in("seatDiameter");
        double atZero = w.in("turbineInletAtZeroBoost");
        double slope = w.in("turbineInletSlope");
        double downstream = w.in("downstream");
        double share = w.in("signalShare");
        double boost = of(preload, diaphragm, seat, atZero, slope, downstream, share);
        GateSteps.areas(w);
        double exhaust =
                w.step(
                        "exhaustAtZero",
                        "F_{e0}",
                        Quantity.FORCE,
                        "@seatArea\\,(@turbineInletAtZeroBoost - @downstream)",
                        ValveForce.of(seat, atZero, downstream),
                        "What the exhaust pushes on the valve before there is boost.");
        w.step(
                "left",
                "F_b",
                Quantity.FORCE,
                "@preload - @exhaustAtZero",
                preload - exhaust,
                "What is left of the preload for boost to overcome.");
        GateSteps.boostArea(w);
        w.out(
                "boost",
                "\\frac{@left}{@boostArea}",
                boost,
                "The valve cracks where boost has made up what was left.");
        w.out(
                "upstream",
                "@turbineInletAtZeroBoost + @turbineInletSlope\\,@boost",
                atZero + slope * boost,
                "Turbine inlet pressure has come along this far.");
        w.out(
                "boostIgnoringExhaust",
                "\\frac{@preload}{@signalShare\\,@diaphragmArea}",
                preload / (share * Disc.area(diaphragm)),
                "If only the diaphragm opened it, the valve would stay shut up to this boost.");
    }
}

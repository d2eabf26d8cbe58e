// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Boost that a wastegate holds while it stands open by some lift: the cracking boost, and what the
 * spring gained on the way on top.
 *
 * <p>Source: balance of forces, Hooke's law. As {@link GateLift}, the exhaust is taken to push on
 * the open valve as on a shut one, so the rise is somewhat larger in truth.
 */
public final class HeldBoost {
    private static final String ID = "held-boost";

    public static final Relation RELATION =
            Relation.named(ID, "Boost that an open gate holds", "Gate")
                    .says(
                            "To pass more exhaust the valve must lift further, and each millimetre squeezes the spring: the"
                                    + " boost that balances rises with the lift the engine asks for. A stiff spring on a small"
                                    + " diaphragm makes a boost curve that climbs.")
                    .tex("b = \\frac{F_0 + k\\,x - A_s\\,(p_{30} - p_d)}{s\\,A_d + m\\,A_s}")
                    .input(GateSlots.preload())
                    .input(GateSlots.rate())
                    .input(GateSlots.lift())
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
                            "boost at which the forces balance at this lift")
                    .output(
                            "upstream",
                            "p_u",
                            Quantity.PRESSURE,
                            "pressure under the valve at that boost")
                    .output(
                            "rise",
                            "\\Delta b",
                            Quantity.PRESSURE_DIFFERENCE,
                            "boost above the one at which the valve cracked")
                    .assumes(
                            "the exhaust pushes on the open valve as on the shut one",
                            "turbine inlet pressure is a straight line of boost",
                            "linear spring, no friction")
                    .source("balance of forces and Hooke's law; any mechanics text")
                    .by(HeldBoost::work);

    private HeldBoost() {}

    /**
     * Boost at which the forces balance, Pa gauge.
     *
     * @param springForce closing, N; see {@link SpringForce#of}
     * @param diaphragmDiameter effective diameter, m
     * @param seatDiameter bore of the seat, m
     * @param turbineInletAtZeroBoost absolute pressure, Pa, at which the line of turbine inlet
     *     pressure meets zero boost
     * @param turbineInletSlope pascals of turbine inlet pressure for each pascal of boost, at least
     *     0
     * @param downstream absolute pressure that the valve vents to, Pa
     * @param signalShare gauge pressure at the diaphragm over boost, 0 to 1
     * @return boost above 0, Pa gauge
     * @throws RelationException if the exhaust alone opens the valve so far, or if no boost does
     */
    public static double of(
            double springForce,
            double diaphragmDiameter,
            double seatDiameter,
            double turbineInletAtZeroBoost,
            double turbineInletSlope,
            double downstream,
            double signalShare) {
        return GateBalance.boost(
                ID,
                springForce,
                diaphragmDiameter,
                seatDiameter,
                turbineInletAtZeroBoost,
                turbineInletSlope,
                downstream,
                signalShare);
    }

    private static void work(Working w) {
        double diaphragm = w.in("diaphragmDiameter");
        double seat = w.in("seatDiameter");
        double atZero = w.in("turbineInletAtZeroBoost");
        double slope = w.in("turbineInletSlope");
        double downstream = w.in("downstream");
        double spring = SpringForce.of(w.in("preload"), w.in("rate"), w.in("lift"));
        double boost = of(spring, diaphragm, seat, atZero, slope, downstream, w.in("signalShare"));
        GateSteps.areas(w);
        double gained =
                w.step(
                        "gained",
                        "\\Delta F",
                        Quantity.FORCE,
                        "@rate\\,@lift",
                        w.in("rate") * w.in("lift"),
                        "What the spring has gained on the way.");
        w.step(
                "springForce",
                "F_s",
                Quantity.FORCE,
                "@preload + @gained",
                spring,
                "With this the spring closes.");
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
                "@springForce - @exhaustAtZero",
                spring - exhaust,
                "What is left for boost to hold.");
        double area = GateSteps.boostArea(w);
        w.out("boost", "\\frac{@left}{@boostArea}", boost, "The boost that holds it.");
        w.out(
                "upstream",
                "@turbineInletAtZeroBoost + @turbineInletSlope\\,@boost",
                atZero + slope * boost,
                "Turbine inlet pressure has come along this far.");
        w.out(
                "rise",
                "\\frac{@gained}{@boostArea}",
                gained / area,
                "Of this boost so much is owed to the spring's rate alone.");
    }
}

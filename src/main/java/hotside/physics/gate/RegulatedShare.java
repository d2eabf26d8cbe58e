// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * What a regulating control does with the signal to hold a target boost, and what becomes of the
 * boost when it runs out of authority.
 *
 * <p>Source: balance of forces. A steady state: how the control finds the share (its gains, its
 * speed) does not matter here.
 */
public final class RegulatedShare {
    private static final String ID = "regulated-share";

    public static final Relation RELATION =
            Relation.named(ID, "What a boost control must do, and whether it can", "Gate")
                    .says(
                            "A control that measures boost bleeds the signal just so far that the forces balance at the target."
                                    + " It can pass on no more than all of the boost and no less than its least share. Within"
                                    + " that, whatever pushes on the valve is made up for; beyond, it is a plain bleed again.")
                    .tex(
                            "s = \\frac{F_0 + k\\,x - A_s\\,(p_{30} + m\\,b^* - p_d)}{A_d\\,b^*},\\quad s_m \\le s \\le 1")
                    .input(GateSlots.targetBoost())
                    .input(
                            Slot.number(
                                            "leastShare",
                                            "s_m",
                                            Quantity.PERCENTAGE,
                                            "least share of the boost that the control can leave at the diaphragm")
                                    .above(0, 1)
                                    .usual(
                                            0.05,
                                            1,
                                            "controls that bleed the hose hardly get below 5 to 30 %")
                                    .typical(0.3))
                    .input(GateSlots.preload())
                    .input(GateSlots.rate())
                    .input(GateSlots.lift())
                    .input(GateSlots.diaphragmDiameter())
                    .input(GateSlots.seatDiameter())
                    .input(GateSlots.turbineInletAtZeroBoost())
                    .input(GateSlots.turbineInletSlope())
                    .input(GateSlots.downstream())
                    .output(
                            "shareNeeded",
                            "s_n",
                            Quantity.PERCENTAGE,
                            "share at which the forces balance at the target; may lie out of reach")
                    .output("share", "s", Quantity.PERCENTAGE, "share that the control gives")
                    .output("boost", "b", Quantity.GAUGE_PRESSURE, "boost that results")
                    .output(
                            "outOfAuthority",
                            "z",
                            Quantity.FLAG,
                            "whether the control is at an end of its reach")
                    .assumes(
                            "steady state at the lift that the engine asks for at the target",
                            "the exhaust pushes on the open valve as on the shut one",
                            "turbine inlet pressure is a straight line of boost")
                    .source("balance of forces; any mechanics text")
                    .by(RegulatedShare::work);

    private RegulatedShare() {}

    /**
     * Share of a boost that must reach the diaphragm for the forces to balance.
     *
     * @param boost Pa gauge, above 0
     * @param springForce closing, N; see {@link SpringForce#of}
     * @param diaphragmDiameter effective diameter, m, above 0
     * @param seatDiameter bore of the seat, m
     * @param upstream absolute pressure under the valve at that boost, Pa
     * @param downstream absolute pressure behind it, Pa
     * @return gauge over gauge; above 1 or below 0 where no bleed can do it
     */
    public static double needed(
            double boost,
            double springForce,
            double diaphragmDiameter,
            double seatDiameter,
            double upstream,
            double downstream) {
        return (springForce - ValveForce.of(seatDiameter, upstream, downstream))
                / DiaphragmForce.of(boost, diaphragmDiameter);
    }

    /**
     * Share that a control with this reach gives.
     *
     * @param needed see {@link #needed}
     * @param leastShare 0 to 1
     */
    public static double given(double needed, double leastShare) {
        return Math.max(leastShare, Math.min(1, needed));
    }

    private static void work(Working w) {
        double target = w.in("targetBoost");
        double diaphragm = w.in("diaphragmDiameter");
        double seat = w.in("seatDiameter");
        double atZero = w.in("turbineInletAtZeroBoost");
        double slope = w.in("turbineInletSlope");
        double downstream = w.in("downstream");
        double upstream = atZero + slope * target;
        double spring = SpringForce.of(w.in("preload"), w.in("rate"), w.in("lift"));
        double needed = needed(target, spring, diaphragm, seat, upstream, downstream);
        double share = given(needed, w.in("leastShare"));
        boolean held = share == needed;
        double boost =
                held
                        ? target
                        : GateBalance.boost(
                                ID, spring, diaphragm, seat, atZero, slope, downstream, share);
        GateSteps.areas(w);
        w.step(
                "springForce",
                "F_s",
                Quantity.FORCE,
                "@preload + @rate\\,@lift",
                spring,
                "With this the spring closes at the lift that is asked for.");
        w.step(
                "upstreamAtTarget",
                "p_u",
                Quantity.PRESSURE,
                "@turbineInletAtZeroBoost + @turbineInletSlope\\,@targetBoost",
                upstream,
                "Turbine inlet pressure at the target.");
        w.step(
                "exhaustForce",
                "F_e",
                Quantity.FORCE,
                "@seatArea\\,(@upstreamAtTarget - @downstream)",
                ValveForce.of(seat, upstream, downstream),
                "So much of it the exhaust takes off.");
        w.out(
                "shareNeeded",
                "\\frac{@springForce - @exhaustForce}{@diaphragmArea\\,@targetBoost}",
                needed,
                "The diaphragm must do the rest, at the target.");
        w.out(
                "share",
                "\\max\\left(@leastShare,\\ \\min\\left(1,\\ @shareNeeded\\right)\\right)",
                share,
                held ? "The control can give that." : "The control can go no further than this.");
        w.out(
                "boost",
                held
                        ? ""
                        : "\\frac{@springForce - @seatArea\\,(@turbineInletAtZeroBoost - @downstream)}{@share\\,@diaphragmArea + @turbineInletSlope\\,@seatArea}",
                boost,
                held
                        ? "So boost is on target."
                        : needed > 1
                                ? "Even the whole boost on the diaphragm opens too little: the spring sets the least boost."
                                : "Even with the signal bled as far as it goes the exhaust opens too much: boost falls short.");
        w.out(
                "outOfAuthority",
                "",
                held ? 0 : 1,
                held
                        ? "Within its reach the control makes up for whatever pushes on the valve."
                        : "At the end of its reach the control is a plain bleed again: what pushes on the valve moves boost.");
        w.caution(
                !held,
                "boost",
                () ->
                        "Out of authority the lift and turbine inlet line of the target no longer hold quite; take the"
                                + " boost as a direction and a rough size.");
    }
}

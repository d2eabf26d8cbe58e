// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Lift at which the forces on a wastegate balance, between its seat and its stop.
 *
 * <p>Source: balance of forces, Hooke's law. The exhaust is taken to push on an open valve as on a
 * shut one; in truth the pressure on the face falls as gas streams past, and the real lift is
 * somewhat less (some tens of percent of the exhaust's part when wide open; common practice, no
 * source).
 */
public final class GateLift {
    public static final Relation RELATION =
            Relation.named("gate-lift", "How far the gate opens", "Gate")
                    .says(
                            "What signal and exhaust push beyond the preload squeezes the spring further, until the spring has"
                                    + " caught up or the valve is on its stop. On the seat the surplus is missing; on the stop it"
                                    + " is left over, and the gate no longer governs anything.")
                    .tex(
                            "x = \\frac{s\\,b\\,A_d + A_s\\,(p_u - p_d) - F_0}{k},\\quad 0 \\le x \\le x_m")
                    .input(GateSlots.preload())
                    .input(GateSlots.rate())
                    .input(GateSlots.maxLift())
                    .input(GateSlots.diaphragmDiameter())
                    .input(GateSlots.seatDiameter())
                    .input(GateSlots.boost())
                    .input(GateSlots.signalShare())
                    .input(GateSlots.upstream())
                    .input(GateSlots.downstream())
                    .output(
                            Slot.number(
                                    "lift",
                                    "x",
                                    Quantity.LENGTH,
                                    "how far the valve stands off its seat"))
                    .output(
                            "stopForce",
                            "F_x",
                            Quantity.FORCE,
                            "force left over: negative presses on the seat, positive on the far stop, 0 between")
                    .output("onStop", "z", Quantity.FLAG, "whether it rests on seat or stop")
                    .assumes(
                            "the exhaust pushes on the open valve as on the shut one",
                            "linear spring, effective area of the diaphragm the same at any lift, no friction")
                    .source("balance of forces and Hooke's law; any mechanics text")
                    .by(GateLift::work);

    private GateLift() {}

    /**
     * Opening force beyond the preload, N; negative while the valve is held shut.
     *
     * @param signal gauge pressure at the diaphragm, Pa
     * @param diaphragmDiameter effective diameter, m
     * @param upstream absolute pressure under the valve, Pa
     * @param downstream absolute pressure behind it, Pa
     * @param seatDiameter bore of the seat, m
     * @param preload spring force with the valve shut, N
     */
    public static double surplus(
            double signal,
            double diaphragmDiameter,
            double upstream,
            double downstream,
            double seatDiameter,
            double preload) {
        return DiaphragmForce.of(signal, diaphragmDiameter)
                + ValveForce.of(seatDiameter, upstream, downstream)
                - preload;
    }

    /**
     * Lift for a surplus of opening force.
     *
     * @param surplus N; see {@link #surplus}
     * @param rate of the spring, N/m, above 0
     * @param maxLift where the far stop is, m
     * @return lift, m, from 0 to {@code maxLift}
     */
    public static double of(double surplus, double rate, double maxLift) {
        return Math.max(0, Math.min(maxLift, surplus / rate));
    }

    /**
     * Force left over at the stops, N: negative on the seat, positive on the far stop, 0 between.
     *
     * @param surplus N; see {@link #surplus}
     * @param rate of the spring, N/m, above 0
     * @param maxLift where the far stop is, m
     */
    public static double stopForce(double surplus, double rate, double maxLift) {
        return surplus <= 0 ? surplus : Math.max(0, surplus - rate * maxLift);
    }

    private static void work(Working w) {
        double share = w.in("signalShare");
        double diaphragm = w.in("diaphragmDiameter");
        double seat = w.in("seatDiameter");
        double upstream = w.in("upstream");
        double downstream = w.in("downstream");
        double preload = w.in("preload");
        double rate = w.in("rate");
        double maxLift = w.in("maxLift");
        GateSteps.areas(w);
        double signal =
                w.step(
                        "signal",
                        "p_s",
                        Quantity.GAUGE_PRESSURE,
                        "@signalShare\\,@boost",
                        share * w.in("boost"),
                        "What of the boost reaches the diaphragm.");
        w.step(
                "diaphragmForce",
                "F_d",
                Quantity.FORCE,
                "@diaphragmArea\\,@signal",
                DiaphragmForce.of(signal, diaphragm),
                "The diaphragm opens.");
        w.step(
                "exhaustForce",
                "F_e",
                Quantity.FORCE,
                "@seatArea\\,(@upstream - @downstream)",
                ValveForce.of(seat, upstream, downstream),
                "The exhaust opens too.");
        double surplus =
                w.step(
                        "surplus",
                        "F_+",
                        Quantity.FORCE,
                        "@diaphragmForce + @exhaustForce - @preload",
                        surplus(signal, diaphragm, upstream, downstream, seat, preload),
                        "What is left when the preload has been overcome.");
        double free =
                w.step(
                        "freeLift",
                        "x_f",
                        Quantity.LENGTH,
                        "\\frac{@surplus}{@rate}",
                        surplus / rate,
                        "The lift at which the spring would have caught up, were there no stops.");
        boolean shut = surplus <= 0;
        boolean wide = !shut && free >= maxLift;
        w.out(
                "lift",
                "\\min\\left(\\max\\left(0,\\ @freeLift\\right),\\ @maxLift\\right)",
                of(surplus, rate, maxLift),
                shut
                        ? "The spring wins: the valve stays on its seat."
                        : wide ? "The far stop ends it." : "Nothing is in its way.");
        w.out(
                "stopForce",
                "",
                stopForce(surplus, rate, maxLift),
                shut
                        ? "The seat carries what the opening forces lack."
                        : wide
                                ? "The stop carries what the spring could not."
                                : "Between the stops all forces balance.");
        w.out(
                "onStop",
                "",
                shut || wide ? 1 : 0,
                shut
                        ? "Shut: small changes of boost move nothing."
                        : wide
                                ? "Wide open: more boost opens no more, the gate does not govern."
                                : "Between the stops: the gate governs.");
        w.caution(
                wide,
                "lift",
                () ->
                        "The gate is on its far stop and cannot hold boost back any further; boost creeps.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Net force of the exhaust on a closed, flat wastegate valve, positive in the opening direction.
 *
 * <p>Source: force is pressure difference times area; static pressures on the faces only. The
 * momentum of a jet is left out, so this is a closed valve: once it lifts, the flow takes up to
 * some tens of percent off.
 */
public final class ValveForce {
    public static final Relation RELATION =
            Relation.named("valve-force", "Push of the exhaust on a gate valve", "Gate")
                    .says(
                            "The exhaust pushes on the closed valve with the pressure difference across it times the"
                                    + " area of the seat. Downstream is what the gate vents to: the air around for a"
                                    + " vented gate, the pressure after the turbine for one that returns to the pipe.")
                    .tex("F = \\frac{\\pi}{4}\\,d_s^2\\,(p_u - p_d)")
                    .input(GateSlots.seatDiameter())
                    .input(GateSlots.upstream())
                    .input(GateSlots.downstream())
                    .output(
                            "force",
                            "F",
                            Quantity.FORCE,
                            "push of the exhaust, positive opens the valve")
                    .assumes(
                            "the valve is closed and flat, so pressure acts on the seat area",
                            "both pressures are static and steady")
                    .source("force is pressure difference times area; any mechanics text")
                    .by(ValveForce::work);

    private ValveForce() {}

    /**
     * @param seatDiameter bore of the seat, m, at least 0; not the diameter of the valve head
     * @param upstream absolute static pressure under the valve, Pa
     * @param downstream absolute static pressure behind the valve, Pa
     * @return force, N; negative if {@code downstream} exceeds {@code upstream}
     */
    public static double of(double seatDiameter, double upstream, double downstream) {
        return Disc.area(seatDiameter) * (upstream - downstream);
    }

    private static void work(Working w) {
        double diameter = w.in("seatDiameter");
        w.step(
                "area",
                "A_s",
                Quantity.AREA,
                "\\frac{\\pi}{4}\\,@seatDiameter^2",
                Disc.area(diameter),
                "The exhaust acts on the area inside the seat.");
        w.out(
                "force",
                "@area\\,(@upstream - @downstream)",
                of(diameter, w.in("upstream"), w.in("downstream")),
                "Only the difference of the two pressures pushes.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * How far boost moves when the pressures on a wastegate's valve move and nobody touches the
 * control.
 *
 * <p>Source: balance of forces for small changes. The balance is linear, so as far as share, slope
 * and the change of lift are right it is exact; what moves them (a new pipe also changes how much
 * must go round the turbine, and so the lift) has to be put in. Of a change of boost a bleed passes
 * on somewhat more than of boost itself; see {@link BleedSignal#shareOfChange}.
 */
public final class BoostShift {
    private static final String ID = "boost-shift";

    public static final Relation RELATION =
            Relation.named(ID, "What moves boost with nobody touching it", "Gate")
                    .says(
                            "With a bleed the diaphragm gets a share of the boost, not a target. If the exhaust pushes harder on"
                                    + " the valve, less boost is needed to hold it open, and boost settles lower. What the gate"
                                    + " vents to pushes back: on a vented gate it does not change, on a returned one it rises"
                                    + " with the pipe's own pressure.")
                    .tex(
                            "\\Delta b = \\frac{k\\,\\Delta x - A_s\\,(\\Delta p_3 - \\Delta p_d)}{s\\,A_d + m\\,A_s}")
                    .input(
                            change(
                                            "turbineInletChange",
                                            "\\Delta p_3",
                                            "change of the pressure under the valve")
                                    .typical(5e3))
                    .input(
                            change(
                                            "ventChange",
                                            "\\Delta p_d",
                                            "change of the pressure the gate vents to; 0 for a vented gate")
                                    .typical(0))
                    .input(GateSlots.diaphragmDiameter())
                    .input(GateSlots.seatDiameter())
                    .input(GateSlots.signalShare())
                    .input(GateSlots.rate())
                    .input(
                            Slot.number(
                                            "liftChange",
                                            "\\Delta x",
                                            Quantity.LENGTH,
                                            "how much further the valve must stand open to pass its share")
                                    .range(-0.1, 0.1)
                                    .usual(-0.01, 0.01, "valves move by some millimetres in all")
                                    .orElse(0))
                    .input(GateSlots.turbineInletSlope().orElse(0))
                    .output(
                            "boostChange",
                            "\\Delta b",
                            Quantity.PRESSURE_DIFFERENCE,
                            "change of boost")
                    .output(
                            "turbineInletTotalChange",
                            "\\Delta p_{3t}",
                            Quantity.PRESSURE_DIFFERENCE,
                            "change under the valve once boost has settled")
                    .assumes(
                            "a bled signal: give the share of a change of boost that arrives, a little more than the share of boost itself; a regulating control would make up for the shift",
                            "the valve stands open between its stops before and after",
                            "turbineInletChange is the whole change that was seen, or, with a slope, the change at"
                                    + " unchanged boost")
                    .source("balance of forces for small changes; any mechanics text")
                    .by(BoostShift::work);

    private BoostShift() {}

    /**
     * Change of boost, Pa.
     *
     * @param turbineInletChange of the pressure under the valve, Pa: all of it where {@code
     *     turbineInletSlope} is 0, else the part at unchanged boost
     * @param ventChange of the pressure behind the valve, Pa
     * @param diaphragmDiameter effective diameter, m
     * @param seatDiameter bore of the seat, m
     * @param signalShare share of a change of boost that reaches the diaphragm, 0 to 1
     * @param rate of the spring, N/m
     * @param liftChange m, positive opens further
     * @param turbineInletSlope pascals of turbine inlet pressure for each pascal of boost, at least
     *     0
     * @return positive for more boost
     * @throws RelationException if boost has no hold on the valve at all (no signal and no slope)
     */
    public static double of(
            double turbineInletChange,
            double ventChange,
            double diaphragmDiameter,
            double seatDiameter,
            double signalShare,
            double rate,
            double liftChange,
            double turbineInletSlope) {
        double area =
                GateBalance.boostArea(
                        signalShare, diaphragmDiameter, turbineInletSlope, seatDiameter);
        if (!(area > 0)) {
            throw new RelationException(
                    "signalShare",
                    ID
                            + ": boost has no hold on the valve: no signal reaches the diaphragm and turbine inlet"
                            + " pressure does not follow boost; expected signalShare or turbineInletSlope above 0");
        }
        return (rate * liftChange - ValveForce.of(seatDiameter, turbineInletChange, ventChange))
                / area;
    }

    private static Slot change(String name, String symbol, String meaning) {
        return Slot.number(name, symbol, Quantity.PRESSURE_DIFFERENCE, meaning)
                .range(-1e6, 1e6)
                .usual(
                        -60e3,
                        60e3,
                        "a change of pipe moves pressures by some tens of kPa at most; far beyond, share, slope"
                                + " and lift no longer stay as they were");
    }

    private static void work(Working w) {
        double seat = w.in("seatDiameter");
        double slope = w.in("turbineInletSlope");
        double inlet = w.in("turbineInletChange");
        double vent = w.in("ventChange");
        double shift =
                of(
                        inlet,
                        vent,
                        w.in("diaphragmDiameter"),
                        seat,
                        w.in("signalShare"),
                        w.in("rate"),
                        w.in("liftChange"),
                        slope);
        GateSteps.areas(w);
        w.step(
                "exhaustChange",
                "\\Delta F_e",
                Quantity.FORCE,
                "@seatArea\\,(@turbineInletChange - @ventChange)",
                ValveForce.of(seat, inlet, vent),
                "So much harder the exhaust pushes the valve open.");
        w.step(
                "springChange",
                "\\Delta F_s",
                Quantity.FORCE,
                "@rate\\,@liftChange",
                w.in("rate") * w.in("liftChange"),
                "So much harder the spring pushes if the valve must stand further open.");
        GateSteps.boostArea(w);
        w.out(
                "boostChange",
                "\\frac{@springChange - @exhaustChange}{@boostArea}",
                shift,
                shift < 0
                        ? "The forces balance again at less boost."
                        : shift > 0
                                ? "The forces balance again at more boost."
                                : "The pushes cancel: boost stays.");
        w.out(
                "turbineInletTotalChange",
                "@turbineInletChange + @turbineInletSlope\\,@boostChange",
                inlet + slope * shift,
                slope == 0
                        ? "The whole change under the valve was given."
                        : "Turbine inlet pressure follows boost and takes part of its change back.");
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.physics.gas.NozzleFlow;
import hotside.physics.turbine.ExhaustSlots;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Whether a wastegate, wide open, can pass what must go round the turbine; if not, boost creeps
 * whatever spring or control is fitted.
 *
 * <p>Source: compressible orifice flow as {@link GateFlow}.
 */
public final class CreepMargin {
    private static final String ID = "creep-margin";

    public static final Relation RELATION =
            Relation.named(ID, "Whether the gate is large enough", "Gate")
                    .says(
                            "The spring sets the least boost, not the most. Wide open, a gate passes what its area passes; if more"
                                    + " must go round the turbine, the turbine gets it and boost creeps up. Only a larger gate or"
                                    + " a better way to it helps, no spring and no control.")
                    .tex(
                            "\\mu = \\frac{\\dot m_{max}}{\\dot m_{need}} - 1,\\quad \\dot m_{max} = C_d\\,A(x_m)\\,G")
                    .input(
                            Slot.number(
                                            "bypassFlow",
                                            "\\dot m_{need}",
                                            Quantity.MASS_FLOW,
                                            "exhaust that must go round the turbine")
                                    .above(0, 5)
                                    .usual(0.001, 1, "gates pass up to about 1 kg/s")
                                    .typical(0.15))
                    .input(GateSlots.seatDiameter())
                    .input(GateSlots.maxLift())
                    .input(GateSlots.dischargeCoefficient())
                    .input(GateSlots.upstream().above(1e3, 2e6))
                    .input(GateSlots.temperature())
                    .input(GateSlots.downstream())
                    .input(ExhaustSlots.gamma())
                    .input(ExhaustSlots.cp())
                    .output(
                            "capacity",
                            "\\dot m_{max}",
                            Quantity.MASS_FLOW,
                            "flow of the open gate")
                    .output(
                            "margin",
                            "\\mu",
                            Quantity.PERCENTAGE,
                            "what it could pass beyond the need, over the need; negative creeps")
                    .output("creeps", "z", Quantity.FLAG, "whether boost creeps")
                    .output(
                            "seatNeeded",
                            "d_n",
                            Quantity.LENGTH,
                            "smallest seat that passes the need, if it lifts by a quarter of its bore")
                    .assumes(
                            "gas all but still before the valve; a gate that branches off badly passes much less",
                            "pressures are those of the target, before boost has crept")
                    .source("compressible orifice flow; NACA Report 1135 (1953)")
                    .by(CreepMargin::work);

    private CreepMargin() {}

    /**
     * Seat that passes a flow when its whole area is open, m.
     *
     * @param massFlow kg/s
     * @param dischargeCoefficient above 0
     * @param massFlux flow for each area of a perfect nozzle, kg/(s·m²), above 0
     */
    public static double seatNeeded(double massFlow, double dischargeCoefficient, double massFlux) {
        return Math.sqrt(4 / Math.PI * massFlow / (dischargeCoefficient * massFlux));
    }

    private static void work(Working w) {
        double need = w.in("bypassFlow");
        double coefficient = w.in("dischargeCoefficient");
        double upstream = w.in("upstream");
        double downstream = w.in("downstream");
        GateFlow.requireForwards(ID, upstream, downstream);
        double area =
                w.step(
                        "area",
                        "A",
                        Quantity.AREA,
                        "\\min\\left(\\pi\\,@seatDiameter\\,@maxLift,\\ \\frac{\\pi}{4}\\,@seatDiameter^2\\right)",
                        GateFlow.area(w.in("seatDiameter"), w.in("maxLift")),
                        "All that the gate can open: the curtain at full lift, or the seat if that is less.");
        double gasConstant = GateSteps.gasConstant(w);
        double ratio =
                w.step(
                        "ratio",
                        "r",
                        Quantity.RATIO,
                        "\\frac{@downstream}{@upstream}",
                        downstream / upstream,
                        "Downstream over upstream, both absolute.");
        w.step(
                "flowFunction",
                "\\psi",
                Quantity.RATIO,
                "",
                NozzleFlow.massFlow(1, 1, 1, ratio, w.in("gamma"), 1),
                "The flow for this ratio as a pure number, as in the flow through the gate.");
        double capacity =
                w.out(
                        "capacity",
                        "@dischargeCoefficient\\,@area\\,\\frac{@upstream}{\\sqrt{@gasConstant\\,@temperature}}\\,@flowFunction",
                        GateFlow.massFlow(
                                area,
                                coefficient,
                                upstream,
                                w.in("temperature"),
                                downstream,
                                w.in("gamma"),
                                gasConstant),
                        "What it passes wide open.");
        double margin =
                w.out(
                        "margin",
                        "\\frac{@capacity}{@bypassFlow} - 1",
                        capacity / need - 1,
                        "What is to spare, against what is needed.");
        w.out(
                "creeps",
                "",
                margin < 0 ? 1 : 0,
                margin < 0
                        ? "Not enough: the turbine gets the rest, and boost creeps."
                        : "Enough: the gate can hold boost back.");
        w.out(
                "seatNeeded",
                "\\sqrt{\\frac{4}{\\pi}\\,\\frac{@bypassFlow\\,\\sqrt{@gasConstant\\,@temperature}}{@dischargeCoefficient\\,@upstream\\,@flowFunction}}",
                seatNeeded(
                        need,
                        coefficient,
                        GateFlow.massFlow(
                                1,
                                1,
                                upstream,
                                w.in("temperature"),
                                downstream,
                                w.in("gamma"),
                                gasConstant)),
                "The area needed, as a bore: flow goes with its square.");
        w.caution(
                margin >= 0 && margin < 0.15,
                "margin",
                () ->
                        "So small a margin is within what is not known of a discharge coefficient, about 15 %.");
    }
}

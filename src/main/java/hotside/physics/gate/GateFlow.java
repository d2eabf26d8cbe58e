// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.physics.gas.NozzleFlow;
import hotside.physics.turbine.ExhaustSlots;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * Exhaust that passes an open wastegate.
 *
 * <p>Source: compressible flow through an orifice, {@link NozzleFlow}. The throat is the curtain
 * between valve and seat, π d x, until that equals the seat's own area at a lift of a quarter of
 * its bore (Heywood 1988, section 6.3, poppet valves, from memory). The discharge coefficient
 * refers to that area and holds whatever the geometry leaves out; it is commonly 0.6 to 0.9.
 */
public final class GateFlow {
    private static final String ID = "gate-flow";

    public static final Relation RELATION =
            Relation.named(ID, "Exhaust through the gate", "Gate")
                    .says(
                            "A lifted valve opens a curtain around its seat. At a lift of a quarter of the bore the curtain is as"
                                    + " large as the seat itself, and lifting further opens nothing more. Below a pressure ratio"
                                    + " of about 0.54 the gap is choked and passes no more however low the pressure behind.")
                    .tex(
                            "A = \\min\\left(\\pi\\,d_s\\,x,\\ \\frac{\\pi}{4} d_s^2\\right),\\quad \\dot m = C_d\\,A\\,\\frac{p_u}{\\sqrt{R\\,T}}\\,\\psi\\left(\\frac{p_d}{p_u},\\gamma\\right)")
                    .input(GateSlots.seatDiameter())
                    .input(GateSlots.lift())
                    .input(GateSlots.dischargeCoefficient())
                    .input(GateSlots.upstream().above(1e3, 2e6))
                    .input(GateSlots.temperature())
                    .input(GateSlots.downstream())
                    .input(ExhaustSlots.gamma())
                    .input(ExhaustSlots.cp())
                    .output("area", "A", Quantity.AREA, "geometric area that the valve opens")
                    .output("massFlow", "\\dot m", Quantity.MASS_FLOW, "exhaust through the gate")
                    .output(
                            "choked",
                            "z",
                            Quantity.FLAG,
                            "whether the gap runs at the speed of sound")
                    .assumes(
                            "gas all but still before the valve, so its pressure and temperature are total ones",
                            "a flat valve without a spigot in the bore")
                    .source(
                            "compressible orifice flow; NACA Report 1135 (1953)",
                            "curtain area of a poppet valve; Heywood, Internal Combustion Engine Fundamentals (1988),"
                                    + " section 6.3, from memory")
                    .by(GateFlow::work);

    private GateFlow() {}

    /**
     * Geometric area that a lifted valve opens, m².
     *
     * @param seatDiameter bore of the seat, m
     * @param lift from the seat, m, at least 0
     */
    public static double area(double seatDiameter, double lift) {
        return Math.min(Math.PI * seatDiameter * lift, Disc.area(seatDiameter));
    }

    /**
     * Mass flow through the gate, kg/s.
     *
     * @param area geometric, m²; see {@link #area}
     * @param dischargeCoefficient 0 to 1
     * @param upstream absolute total pressure before the valve, Pa, above 0
     * @param temperature total temperature before the valve, K, above 0
     * @param downstream absolute static pressure behind the valve, Pa, at least 0
     * @param gamma ratio of specific heats, above 1
     * @param gasConstant J/(kg·K)
     * @return at least 0; 0 where {@code downstream} is not below {@code upstream}
     */
    public static double massFlow(
            double area,
            double dischargeCoefficient,
            double upstream,
            double temperature,
            double downstream,
            double gamma,
            double gasConstant) {
        return NozzleFlow.massFlow(
                dischargeCoefficient * area, upstream, temperature, downstream, gamma, gasConstant);
    }

    /**
     * Whether the gap is choked.
     *
     * @param upstream absolute total pressure before the valve, Pa, above 0
     * @param downstream absolute static pressure behind the valve, Pa
     * @param gamma ratio of specific heats, above 1
     */
    public static boolean choked(double upstream, double downstream, double gamma) {
        return downstream <= NozzleFlow.criticalRatio(gamma) * upstream;
    }

    static void requireForwards(String relation, double upstream, double downstream) {
        if (downstream > upstream) {
            throw new RelationException(
                    "downstream",
                    relation
                            + ": downstream = "
                            + Numbers.plain(downstream)
                            + " Pa is above upstream = "
                            + Numbers.plain(upstream)
                            + " Pa, gas would run backwards through the gate; expected both absolute, and the"
                            + " higher one under the valve");
        }
    }

    private static void work(Working w) {
        double seat = w.in("seatDiameter");
        double lift = w.in("lift");
        double upstream = w.in("upstream");
        double downstream = w.in("downstream");
        double gamma = w.in("gamma");
        requireForwards(ID, upstream, downstream);
        GateSteps.seatArea(w);
        w.step(
                "curtain",
                "A_c",
                Quantity.AREA,
                "\\pi\\,@seatDiameter\\,@lift",
                Math.PI * seat * lift,
                "The curtain between valve and seat: circumference times lift.");
        double area =
                w.out(
                        "area",
                        "\\min\\left(@curtain,\\ @seatArea\\right)",
                        area(seat, lift),
                        4 * lift < seat
                                ? "The curtain is the narrower."
                                : "The seat itself is the narrower: more lift would open nothing more.");
        double ratio =
                w.step(
                        "ratio",
                        "r",
                        Quantity.RATIO,
                        "\\frac{@downstream}{@upstream}",
                        downstream / upstream,
                        "Downstream over upstream, both absolute.");
        boolean choked = choked(upstream, downstream, gamma);
        flowFunctionStep(w, ratio, gamma, choked);
        double gasConstant = GateSteps.gasConstant(w);
        w.out(
                "massFlow",
                "@dischargeCoefficient\\,@area\\,\\frac{@upstream}{\\sqrt{@gasConstant\\,@temperature}}\\,@flowFunction",
                massFlow(
                        area,
                        w.in("dischargeCoefficient"),
                        upstream,
                        w.in("temperature"),
                        downstream,
                        gamma,
                        gasConstant),
                "What the gap passes: its area as far as it counts, the gas before it, and the pure number.");
        w.out(
                "choked",
                "",
                choked ? 1 : 0,
                choked
                        ? "Choked: a lower pressure behind would draw no more through."
                        : "Not choked: a lower pressure behind would draw more through.");
    }

    private static void flowFunctionStep(Working w, double ratio, double gamma, boolean choked) {
        w.step(
                "criticalRatio",
                "r^*",
                Quantity.RATIO,
                "\\left(\\frac{2}{@gamma + 1}\\right)^{@gamma/(@gamma - 1)}",
                NozzleFlow.criticalRatio(gamma),
                "At or below this ratio the gap is choked.");
        w.step(
                "flowFunction",
                "\\psi",
                Quantity.RATIO,
                choked
                        ? "\\sqrt{@gamma}\\left(\\frac{2}{@gamma + 1}\\right)^{\\frac{@gamma + 1}{2(@gamma - 1)}}"
                        : "@ratio^{1/@gamma}\\sqrt{\\frac{2\\,@gamma}{@gamma - 1}\\left(1 - @ratio^{(@gamma - 1)/@gamma}\\right)}",
                NozzleFlow.massFlow(1, 1, 1, ratio, gamma, 1),
                choked
                        ? "The ratio is below the critical one: the largest flow there is, as a pure number."
                        : "The ratio is above the critical one: the flow for it, as a pure number.");
    }
}

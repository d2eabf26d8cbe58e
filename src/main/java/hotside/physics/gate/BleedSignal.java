// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.physics.gas.NozzleFlow;
import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Pressure that a restrictor and a bleed leave for the diaphragm: two orifices in series, from
 * boost through the restrictor to the hose, from the hose through the bleed to ambient.
 *
 * <p>Source: compressible flow through a nozzle, {@link NozzleFlow}, the same flow through both
 * (continuity). Both have the same discharge coefficient and the same total temperature, which
 * therefore drop out. The root is bracketed between ambient and boost and is the only one; it is
 * found to 1e-12 of the boost.
 */
public final class BleedSignal {
    /** Ratio of specific heats of air below 100 °C; any thermodynamics text. */
    private static final double GAMMA = 1.4;

    public static final Relation RELATION =
            Relation.named("bleed-signal", "What a bleed leaves of the signal", "Gate")
                    .says(
                            "A restrictor lets boost into the signal hose and a bleed lets part of it out again. The diaphragm"
                                    + " sees what is left: a share of the boost, set by the two holes. A bleed sets no target:"
                                    + " whatever moves boost moves the signal with it. The share grows somewhat with boost, as"
                                    + " the bleed nears choking.")
                    .tex(
                            "\\dot m(A_r,\\,p_b \\to p_s) = \\dot m(A_b,\\,p_s \\to p_a);\\quad s \\approx \\frac{A_r^2}{A_r^2 + A_b^2}\\text{ at low boost}")
                    .input(GateSlots.boost().above(0, 1e6))
                    .input(
                            hole(
                                            "restrictorDiameter",
                                            "d_r",
                                            "bore of the restrictor between boost and hose")
                                    .above(0, 0.02)
                                    .usual(
                                            0.0005,
                                            0.006,
                                            "restrictors have about 0.5 to 6 mm; smaller ones clog")
                                    .typical(0.0015))
                    .input(
                            hole(
                                            "bleedDiameter",
                                            "d_b",
                                            "bore of the bleed between hose and ambient; 0 is shut")
                                    .range(0, 0.02)
                                    .usual(0, 0.006, "bleeds have up to about 6 mm")
                                    .typical(0.0013))
                    .input(GateSlots.ambientPressure())
                    .output(
                            "signalPressure",
                            "p_s",
                            Quantity.GAUGE_PRESSURE,
                            "pressure at the diaphragm")
                    .output("share", "s", Quantity.PERCENTAGE, "signal over boost, both gauge")
                    .output(
                            "shareOfChange",
                            "s'",
                            Quantity.PERCENTAGE,
                            "share of a small change of boost that arrives; this is what counts when boost shifts")
                    .assumes(
                            "the hose itself takes no pressure, and nothing flows into the diaphragm (steady)",
                            "both holes have the same discharge coefficient; a sharp and a rounded one differ by up to"
                                    + " a third in flow",
                            "air at one total temperature")
                    .source(
                            "compressible nozzle flow in series; NACA Report 1135 (1953), any gas dynamics text")
                    .by(BleedSignal::work);

    private BleedSignal() {}

    /**
     * Gauge pressure between restrictor and bleed.
     *
     * @param boost gauge, Pa, above minus {@code ambientPressure}; under vacuum the bleed lets air
     *     in
     * @param restrictorDiameter m, above 0
     * @param bleedDiameter m, at least 0
     * @param ambientPressure absolute, Pa, above 0
     * @return signal, Pa gauge, between 0 and {@code boost}
     */
    public static double of(
            double boost, double restrictorDiameter, double bleedDiameter, double ambientPressure) {
        double restrictor = Disc.area(restrictorDiameter);
        double bleed = Disc.area(bleedDiameter);
        if (bleed == 0 || boost == 0) {
            return boost;
        }
        return boost > 0
                ? between(ambientPressure, boost, restrictor, bleed)
                : boost + between(ambientPressure + boost, -boost, bleed, restrictor);
    }

    /**
     * Share of a small boost, at which air hardly compresses; the limit of {@link #of} over boost.
     *
     * @param restrictorDiameter m, above 0
     * @param bleedDiameter m, at least 0
     */
    public static double shareAtLowBoost(double restrictorDiameter, double bleedDiameter) {
        double areaRatio = Disc.area(bleedDiameter) / Disc.area(restrictorDiameter);
        return 1 / (1 + areaRatio * areaRatio);
    }

    /**
     * Share of a small change of boost that reaches the diaphragm: slope of {@link #of} over boost,
     * by a central difference, good to about 1e-6.
     *
     * @param boost gauge, Pa, above 0
     * @param restrictorDiameter m, above 0
     * @param bleedDiameter m, at least 0
     * @param ambientPressure absolute, Pa, above 0
     */
    public static double shareOfChange(
            double boost, double restrictorDiameter, double bleedDiameter, double ambientPressure) {
        double step = 1e-4 * boost + 0.01; // wide enough not to drown in rounding
        double above = of(boost + step, restrictorDiameter, bleedDiameter, ambientPressure);
        double below = of(boost - step, restrictorDiameter, bleedDiameter, ambientPressure);
        return (above - below) / (2 * step);
    }

    /**
     * Pressure between two holes, counted from the low side.
     *
     * @param low absolute pressure after the second hole, Pa
     * @param drop over both holes, Pa, above 0
     * @param first area of the hole on the high side, m²
     * @param second area of the hole on the low side, m²
     */
    private static double between(double low, double drop, double first, double second) {
        UnivariateFunction gathering =
                x -> flow(first, low + drop, low + x) - flow(second, low + x, low);
        return new BrentSolver(1e-13, 1e-14 * drop, 0).solve(500, gathering, 0, drop);
    }

    /** Flow for √(RT) = 1: the temperature is the same at both holes and drops out. */
    private static double flow(double area, double upstream, double downstream) {
        return NozzleFlow.massFlow(area, upstream, 1, downstream, GAMMA, 1);
    }

    private static Slot hole(String name, String symbol, String meaning) {
        return Slot.number(name, symbol, Quantity.LENGTH, meaning);
    }

    private static void work(Working w) {
        double boost = w.in("boost");
        double restrictor = w.in("restrictorDiameter");
        double bleed = w.in("bleedDiameter");
        double ambient = w.in("ambientPressure");
        double signal = of(boost, restrictor, bleed, ambient);
        w.step(
                "areaRatio",
                "a",
                Quantity.RATIO,
                "\\left(\\frac{@bleedDiameter}{@restrictorDiameter}\\right)^2",
                Disc.area(bleed) / Disc.area(restrictor),
                "Bleed area over restrictor area goes with the square of the bores.");
        w.step(
                "lowBoostShare",
                "s_0",
                Quantity.PERCENTAGE,
                "\\frac{1}{1 + @areaRatio^2}",
                shareAtLowBoost(restrictor, bleed),
                "First guess, as if air did not compress: flow goes with the root of the drop, so drops go with"
                        + " one over area squared.");
        w.out(
                "signalPressure",
                "",
                signal,
                "Found by trying: where the restrictor lets in just what the bleed lets out.");
        restrictorStep(w, ambient + signal, ambient + boost);
        bleedStep(w, ambient, ambient + signal);
        w.out(
                "share",
                "\\frac{@signalPressure}{@boost}",
                signal / boost,
                "The share that reaches the diaphragm.");
        w.out(
                "shareOfChange",
                "",
                shareOfChange(boost, restrictor, bleed, ambient),
                "Worked again a little above and below: what arrives of a change of boost.");
    }

    private static void restrictorStep(Working w, double signal, double boost) {
        w.step(
                "restrictorRatio",
                "r_r",
                Quantity.RATIO,
                "\\frac{@ambientPressure + @signalPressure}{@ambientPressure + @boost}",
                signal / boost,
                "Absolute pressures after and before the restrictor: " + regime(signal / boost));
    }

    private static void bleedStep(Working w, double ambient, double signal) {
        w.step(
                "bleedRatio",
                "r_b",
                Quantity.RATIO,
                "\\frac{@ambientPressure}{@ambientPressure + @signalPressure}",
                ambient / signal,
                "Absolute pressures after and before the bleed: " + regime(ambient / signal));
    }

    private static String regime(double ratio) {
        return ratio <= NozzleFlow.criticalRatio(GAMMA)
                ? "below 0.528, it is choked."
                : "above 0.528, it is not choked.";
    }
}

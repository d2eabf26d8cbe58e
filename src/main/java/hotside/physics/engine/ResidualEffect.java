// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * How exhaust pressure spoils the filling: burnt gas that stays behind takes up room.
 *
 * <p>Source: pressure term of the ideal-cycle volumetric efficiency, Heywood 1988, equation (6.2),
 * from memory: {@code rc/(rc−1) − (p3/pm + γ − 1)/(γ (rc−1))}, which is {@code 1 − (p3/pm − 1)/(γ
 * (rc−1))}. The ideal cycle has no valve overlap; an engine with much of it loses more when p3
 * exceeds pm, and gains more when it does not.
 */
public final class ResidualEffect {
    /** Ratio of specific heats of the cylinder's gas; Heywood 1988, chapter 5, from memory. */
    public static final double GAMMA = 1.35;

    public static final Relation RELATION =
            Relation.named(
                            "residual-effect",
                            "Filling lost to exhaust pressure",
                            "Engine and power")
                    .says(
                            "What is left in the clearance volume at the end of the exhaust stroke has exhaust pressure. When"
                                    + " the intake opens it swells, or shrinks, to manifold pressure, and fresh charge gets only"
                                    + " the room that remains.")
                    .tex("k = 1 - \\frac{p_3/p_m - 1}{\\gamma\\,(r_c - 1)}")
                    .input(EngineSlots.turbineInletPressure().typical(210e3))
                    .input(EngineSlots.manifoldPressure())
                    .input(
                            Slot.number(
                                            "compressionRatio",
                                            "r_c",
                                            Quantity.RATIO,
                                            "compression ratio of the engine")
                                    .between(1, 40)
                                    .usual(
                                            7,
                                            22,
                                            "boosted petrol engines have 7 to 12, diesels 14 to 22")
                                    .typical(9.5))
                    .input(
                            Slot.number(
                                            "gamma",
                                            "\\gamma",
                                            Quantity.RATIO,
                                            "ratio of specific heats of the gas in the cylinder")
                                    .between(1, 1.7)
                                    .usual(1.2, 1.4, "burnt gas and charge have 1.2 to 1.4")
                                    .orElse(GAMMA))
                    .output(
                            "breathingFactor",
                            "k",
                            Quantity.RATIO,
                            "filling, against that with equal pressures before and behind")
                    .assumes(
                            "ideal gas exchange: no valve overlap, no flow loss, no heat",
                            "one ratio of specific heats for charge and burnt gas")
                    .source(
                            "Heywood, Internal Combustion Engine Fundamentals (1988), equation (6.2), from memory")
                    .by(ResidualEffect::work);

    private ResidualEffect() {}

    /**
     * @param pressureRatio exhaust over intake manifold pressure, both absolute
     * @param compressionRatio above 1
     * @param gamma above 1
     * @return volumetric efficiency over that at a pressure ratio of 1; below 0 the ideal cycle
     *     takes in nothing
     */
    public static double of(double pressureRatio, double compressionRatio, double gamma) {
        return 1 - (pressureRatio - 1) / (gamma * (compressionRatio - 1));
    }

    private static void work(Working w) {
        double ratio =
                w.step(
                        "pressureRatio",
                        "x",
                        Quantity.RATIO,
                        "\\frac{@turbineInletPressure}{@manifoldPressure}",
                        w.in("turbineInletPressure") / w.in("manifoldPressure"),
                        "How much the residual gas swells.");
        double factor = of(ratio, w.in("compressionRatio"), w.in("gamma"));
        if (factor <= 0) {
            throw new RelationException(
                    "turbineInletPressure",
                    "residual-effect: with turbineInletPressure "
                            + Numbers.significant(ratio, 4)
                            + " times manifoldPressure the residual gas fills the whole cylinder; expected"
                            + " two absolute pressures of like size");
        }
        w.out(
                "breathingFactor",
                "1 - \\frac{@pressureRatio - 1}{@gamma\\,(@compressionRatio - 1)}",
                factor,
                "Each part of swelling takes its room from the displacement, which is r − 1 clearance volumes.");
        w.caution(
                ratio > 2.5 || ratio < 0.5,
                "breathingFactor",
                () ->
                        "The ideal cycle knows no valve overlap; so far from equal pressures a real engine departs from it"
                                + " by several percent.");
    }
}

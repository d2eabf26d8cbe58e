// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * How far a weather correction made for unboosted engines overdoes it on one whose boost is held.
 *
 * <p>Source: the trade's rule that power goes with absolute manifold pressure; common practice, no
 * source. Left out: in thin air the turbo works harder, so charge temperature and back pressure
 * rise a little; a percent or so.
 */
public final class HeldBoostCorrection {
    public static final Relation RELATION =
            Relation.named(
                            "held-boost-correction",
                            "What is left to correct when boost is held",
                            "Engine and power")
                    .says(
                            "Power follows the pressure in the manifold, not that outside. If a control holds absolute"
                                    + " manifold pressure, a low barometer costs next to nothing; if it holds gauge boost, only"
                                    + " the ambient part is missing. A factor for unboosted engines pays for the whole.")
                    .tex(
                            "k_{gauge} = \\frac{p_r + b}{p_a + b},\\quad k_{absolute} = 1,\\quad k_{none} = \\frac{p_r}{p_a}")
                    .input(
                            Slot.number(
                                            "ambientPressure",
                                            "p_a",
                                            Quantity.PRESSURE,
                                            "pressure of the air around on the day")
                                    .range(30e3, 150e3)
                                    .usual(
                                            60e3,
                                            110e3,
                                            "the air around is between 60 kPa, on a high pass, and 110 kPa")
                                    .typical(94e3))
                    .input(
                            Slot.number(
                                            "boost",
                                            "b",
                                            Quantity.GAUGE_PRESSURE,
                                            "boost on the day, counted from ambient")
                                    .range(0, 1e6)
                                    .usual(0, 400e3, "boost runs to about 400 kPa")
                                    .typical(80e3))
                    .input(
                            Slot.choice(
                                    "held",
                                    "what the control holds: gauge boost, absolute pressure, or nothing",
                                    "gauge",
                                    "absolute",
                                    "none"))
                    .input(
                            Slot.number(
                                            "referencePressure",
                                            "p_r",
                                            Quantity.PRESSURE,
                                            "pressure that the correction goes back to")
                                    .range(30e3, 150e3)
                                    .usual(60e3, 110e3, "references are near 99 or 101.3 kPa")
                                    .orElse(99e3))
                    .output(
                            "fullFactor",
                            "k_0",
                            Quantity.RATIO,
                            "pressure factor made for an unboosted engine")
                    .output(
                            "fairFactor",
                            "k",
                            Quantity.RATIO,
                            "pressure factor that fits what the control holds")
                    .output(
                            "overCorrection",
                            "e",
                            Quantity.PERCENTAGE,
                            "how much too high the corrected power comes out")
                    .assumes(
                            "power is in proportion to absolute manifold pressure",
                            "charge temperature, mixture, spark and breathing stay the same",
                            "the control has authority left on both days")
                    .source("common practice in the trade, no source")
                    .by(HeldBoostCorrection::work);

    private HeldBoostCorrection() {}

    /**
     * @param ambientPressure absolute, Pa, above 0
     * @param boost gauge, Pa
     * @param held {@code gauge}, {@code absolute} or {@code none}
     * @param referencePressure absolute, Pa
     * @return manifold pressure at the reference over that on the day
     */
    public static double fair(
            double ambientPressure, double boost, String held, double referencePressure) {
        return switch (held) {
            case "absolute" -> 1;
            case "gauge" -> (referencePressure + boost) / (ambientPressure + boost);
            default -> referencePressure / ambientPressure;
        };
    }

    private static void work(Working w) {
        double ambient = w.in("ambientPressure");
        double reference = w.in("referencePressure");
        double full =
                w.out(
                        "fullFactor",
                        "\\frac{@referencePressure}{@ambientPressure}",
                        reference / ambient,
                        "As if manifold pressure followed the air around.");
        double fair =
                w.out(
                        "fairFactor",
                        formula(w.word("held")),
                        fair(ambient, w.in("boost"), w.word("held"), reference),
                        why(w.word("held")));
        w.out(
                "overCorrection",
                "\\frac{@fullFactor}{@fairFactor} - 1",
                full / fair - 1,
                "What the whole factor adds beyond the fair one.");
    }

    private static String formula(String held) {
        return switch (held) {
            case "absolute" -> "1";
            case "gauge" -> "\\frac{@referencePressure + @boost}{@ambientPressure + @boost}";
            default -> "\\frac{@referencePressure}{@ambientPressure}";
        };
    }

    private static String why(String held) {
        return switch (held) {
            case "absolute" -> "The manifold holds the same on both days: nothing to correct.";
            case "gauge" ->
                    "The same boost stands on another ambient pressure: only that part changes.";
            default -> "Nothing holds it: manifold pressure follows the air around.";
        };
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * Weather correction of a petrol engine's power by the old SAE J607, on many sheets called
 * standard.
 *
 * <p>Source: SAE J607, withdrawn; formula from memory, the standard itself was not read. Reference
 * 29.92 inHg of dry air and 60 °F.
 */
public final class SaeJ607 {
    public static final Relation RELATION =
            Correction.card("sae-j607", "SAE J607")
                    .says(
                            "SAE J607, withdrawn long ago and on many sheets still called standard, asks what the engine would"
                                    + " have given at 29.92 inHg of dry air and 60 °F. Its dense reference makes it the most"
                                    + " flattering of the four: about 4 % over SAE J1349.")
                    .tex(
                            "k = \\frac{101.325\\,\\mathrm{kPa}}{p_d}\\,\\sqrt{\\frac{T}{288.71\\,\\mathrm{K}}}")
                    .input(
                            Correction.pressure(
                                    "p_d",
                                    "barometer reading less the pressure of the water vapour",
                                    60e3,
                                    110e3,
                                    "air around an engine has 60 to 110 kPa; no band of SAE J607 itself is known here"))
                    .input(
                            Correction.temperature(
                                    Units.ZERO_CELSIUS - 10,
                                    Units.ZERO_CELSIUS + 45,
                                    "no band of SAE J607 itself is known here; −10 to 45 °C is sensible"))
                    .input(Correction.boosted())
                    .source(
                            "SAE J607, withdrawn; formula from memory, the standard itself was not read")
                    .by(SaeJ607::work);

    private SaeJ607() {}

    /**
     * @param dryPressure absolute pressure less vapour pressure, Pa, above 0
     * @param temperature of the inlet air, K
     * @return factor on measured power
     */
    public static double factor(double dryPressure, double temperature) {
        return pressureTerm(dryPressure) * Math.sqrt(temperature / 288.71);
    }

    private static double pressureTerm(double dryPressure) {
        return Units.STANDARD_ATMOSPHERE / dryPressure;
    }

    private static void work(Working w) {
        double pressure = w.in("drypressure");
        w.step(
                "pressureTerm",
                "k_p",
                Quantity.RATIO,
                "\\frac{" + Numbers.plain(Units.STANDARD_ATMOSPHERE) + "}{@drypressure}",
                pressureTerm(pressure),
                "Power goes with the pressure of the dry air; 29.92 inHg is one standard atmosphere.");
        double factor =
                w.out(
                        "factor",
                        "@pressureTerm \\cdot \\sqrt{\\frac{@temperature}{288.71}}",
                        factor(pressure, w.in("temperature")),
                        "Warm air enters faster, so the temperature counts by its root; 60 °F is 288.71 K.");
        Correction.cautions(
                w,
                factor,
                "No band of SAE J607 is known here; later standards give no correction of more than about 7 %.",
                "SAE J607 knows nothing of boost (from memory).");
    }
}

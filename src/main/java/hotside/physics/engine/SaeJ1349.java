// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * Weather correction of a petrol engine's power by SAE J1349.
 *
 * <p>Source: SAE J1349, issues of June 1990 and August 2004, formula and band from memory; the
 * standard itself was not read. Indicated power is corrected to 99 kPa dry and 25 °C; friction is
 * taken as a constant 15 % of the power, whence 1.18 and 0.18.
 */
public final class SaeJ1349 {
    public static final Relation RELATION =
            Correction.card("sae-j1349", "SAE J1349")
                    .says(
                            "SAE J1349 asks what the engine would have given at 99 kPa of dry air and 25 °C. It corrects the"
                                    + " power in the cylinders and leaves friction as it is.")
                    .tex(
                            "k = 1.18\\,\\frac{99\\,\\mathrm{kPa}}{p_d}\\,\\sqrt{\\frac{T}{298\\,\\mathrm{K}}} - 0.18")
                    .input(
                            Correction.pressure(
                                    "p_d",
                                    "barometer reading less the pressure of the water vapour",
                                    90e3,
                                    105e3,
                                    "SAE J1349 asks for 90 to 105 kPa of dry air (from memory)"))
                    .input(
                            Correction.temperature(
                                    Units.ZERO_CELSIUS + 15,
                                    Units.ZERO_CELSIUS + 35,
                                    "SAE J1349 asks for 15 to 35 °C at the inlet (from memory)"))
                    .input(Correction.boosted())
                    .assumes("mechanical efficiency is 0.85")
                    .source(
                            "SAE J1349, issues of June 1990 and August 2004; formula and band from memory, the standard"
                                    + " itself was not read")
                    .by(SaeJ1349::work);

    private SaeJ1349() {}

    /**
     * @param dryPressure absolute pressure less vapour pressure, Pa, above 0
     * @param temperature of the inlet air, K
     * @return factor on measured power
     */
    public static double factor(double dryPressure, double temperature) {
        return 1.18 * atmosphere(dryPressure, Correction.roundKelvin(temperature)) - 0.18;
    }

    private static double atmosphere(double dryPressure, double counted) {
        return 99e3 / dryPressure * Math.sqrt(counted / 298);
    }

    private static void work(Working w) {
        double pressure = w.in("drypressure");
        double counted = Correction.roundKelvinStep(w);
        w.step(
                "atmosphere",
                "f_a",
                Quantity.RATIO,
                "\\frac{99000}{@drypressure} \\cdot \\sqrt{\\frac{@counted}{298}}",
                atmosphere(pressure, counted),
                "Air at the reference over air today, as the cylinders take it in.");
        double factor =
                w.out(
                        "factor",
                        "1.18 \\cdot @atmosphere - 0.18",
                        factor(pressure, w.in("temperature")),
                        "Power in the cylinders goes with the air; friction does not.");
        Correction.cautions(
                w,
                factor,
                "SAE J1349 gives no correction of more than about 7 % (from memory); wait for other weather.",
                "SAE J1349 uses one formula for engines with and without boost (from memory).");
    }
}

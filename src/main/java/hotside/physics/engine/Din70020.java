// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * Weather correction of a petrol engine's power by the old DIN 70020.
 *
 * <p>Source: DIN 70020 part 6 (1976), withdrawn; formula from memory, the standard itself was not
 * read. It takes the barometer as read: moisture is not allowed for.
 */
public final class Din70020 {
    public static final Relation RELATION =
            Correction.card("din-70020", "DIN 70020")
                    .says(
                            "DIN 70020, long withdrawn and still on sheets, asks what the engine would have given at 1013 mbar"
                                    + " and 20 °C. It takes the barometer as read, moisture and all; its colder, denser reference"
                                    + " gives about 3 % more than ISO 1585.")
                    .tex(
                            "k = \\frac{101.3\\,\\mathrm{kPa}}{p}\\,\\sqrt{\\frac{T}{293\\,\\mathrm{K}}}")
                    .input(
                            Correction.pressure(
                                    "p",
                                    "barometer reading; this standard takes nothing off for moisture",
                                    60e3,
                                    110e3,
                                    "air around an engine has 60 to 110 kPa; no band of DIN 70020 itself is known here"))
                    .input(
                            Correction.temperature(
                                    Units.ZERO_CELSIUS - 10,
                                    Units.ZERO_CELSIUS + 45,
                                    "no band of DIN 70020 itself is known here; −10 to 45 °C is sensible"))
                    .input(Correction.boosted())
                    .source(
                            "DIN 70020 part 6 (1976), withdrawn; formula from memory, the standard itself was not read")
                    .by(Din70020::work);

    private Din70020() {}

    /**
     * @param pressure absolute ambient pressure as read, moisture included, Pa, above 0
     * @param temperature of the inlet air, K
     * @return factor on measured power
     */
    public static double factor(double pressure, double temperature) {
        return pressureTerm(pressure) * Math.sqrt(Correction.roundKelvin(temperature) / 293);
    }

    private static double pressureTerm(double pressure) {
        return 101.3e3 / pressure;
    }

    private static void work(Working w) {
        double pressure = w.in("drypressure");
        Correction.roundKelvinStep(w);
        w.step(
                "pressureTerm",
                "k_p",
                Quantity.RATIO,
                "\\frac{101300}{@drypressure}",
                pressureTerm(pressure),
                "Power goes with the pressure of the air around.");
        double factor =
                w.out(
                        "factor",
                        "@pressureTerm \\cdot \\sqrt{\\frac{@counted}{293}}",
                        factor(pressure, w.in("temperature")),
                        "Warm air enters faster, so the temperature counts by its root.");
        Correction.cautions(
                w,
                factor,
                "No band of DIN 70020 is known here; later standards give no correction of more than about 7 %.",
                "DIN 70020 knows nothing of boost (from memory).");
    }
}

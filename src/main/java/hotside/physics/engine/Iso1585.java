// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * Weather correction of a petrol engine's power by ISO 1585, which UN Regulation 85 shares.
 *
 * <p>Source: ISO 1585 (1992), formula and band from memory; the standard itself was not read. That
 * a boosted engine whose control makes up for the weather needs no factor: summary of GRPE-70-02
 * (2014), a proposal for UN Regulation 85.
 */
public final class Iso1585 {
    public static final Relation RELATION =
            Correction.card("iso-1585", "ISO 1585")
                    .says(
                            "ISO 1585 asks what the engine would have given at 99 kPa of dry air and 25 °C. Its exponents"
                                    + " stand for what cylinders and friction together make of the weather.")
                    .tex(
                            "k = \\left(\\frac{99\\,\\mathrm{kPa}}{p_d}\\right)^{1.2}\\left(\\frac{T}{298\\,\\mathrm{K}}\\right)^{0.6}")
                    .input(
                            Correction.pressure(
                                    "p_d",
                                    "barometer reading less the pressure of the water vapour",
                                    80e3,
                                    110e3,
                                    "ISO 1585 asks for 80 to 110 kPa of dry air (from memory)"))
                    .input(
                            Correction.temperature(
                                    Units.ZERO_CELSIUS + 15,
                                    Units.ZERO_CELSIUS + 35,
                                    "ISO 1585 asks for 15 to 35 °C at the inlet of a spark-ignition engine (from memory)"))
                    .input(Correction.boosted())
                    .source(
                            "ISO 1585 (1992); formula and band from memory, the standard itself was not read",
                            "on boosted engines: summary of GRPE-70-02 (2014), a proposal for UN Regulation 85")
                    .by(Iso1585::work);

    private Iso1585() {}

    /**
     * @param dryPressure absolute pressure less vapour pressure, Pa, above 0
     * @param temperature of the inlet air, K
     * @return factor on measured power
     */
    public static double factor(double dryPressure, double temperature) {
        return pressureTerm(dryPressure) * temperatureTerm(Correction.roundKelvin(temperature));
    }

    private static double pressureTerm(double dryPressure) {
        return Math.pow(99e3 / dryPressure, 1.2);
    }

    private static double temperatureTerm(double counted) {
        return Math.pow(counted / 298, 0.6);
    }

    private static void work(Working w) {
        double pressure = w.in("drypressure");
        double counted = Correction.roundKelvinStep(w);
        w.step(
                "pressureTerm",
                "k_p",
                Quantity.RATIO,
                "\\left(\\frac{99000}{@drypressure}\\right)^{1.2}",
                pressureTerm(pressure),
                "Less pressure than at the reference asks for more than 1.");
        w.step(
                "temperatureTerm",
                "k_T",
                Quantity.RATIO,
                "\\left(\\frac{@counted}{298}\\right)^{0.6}",
                temperatureTerm(counted),
                "Warmer air than at the reference asks for more than 1.");
        double factor =
                w.out(
                        "factor",
                        "@pressureTerm \\cdot @temperatureTerm",
                        factor(pressure, w.in("temperature")),
                        "Both together.");
        Correction.cautions(
                w,
                factor,
                "ISO 1585 takes factors between 0.93 and 1.07 (from memory); outside, give the factor and the weather"
                        + " with the power, or wait.",
                "ISO 1585 (1992) puts the same formula on engines with and without boost (from memory); UN Regulation 85,"
                        + " which shares it, was to drop it (proposal GRPE-70-02, 2014) where the control makes up for the"
                        + " weather.");
    }
}

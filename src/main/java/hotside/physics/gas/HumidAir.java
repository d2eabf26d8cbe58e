// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;
import hotside.unit.Units;

/**
 * Air with moisture in it: an ideal mixture of dry air and water vapour.
 *
 * <p>Source: saturation pressure over water by Buck's equation (J. Appl. Meteorology 20, 1981, as
 * revised in 1996; constants from memory), within 0.1 % of the IAPWS formula from 0 to 45 °C. The
 * density is within 0.15 % of CIPM-2007 (Picard and others, Metrologia 45, 2008) from 5 to 45 °C
 * and 60 to 110 kPa: compressibility and the enhancement of the vapour pressure, which that formula
 * has, are left out.
 */
public final class HumidAir {
    public static final Relation RELATION =
            Relation.named("humid-air", "What a cubic metre of air weighs", "Air and gas")
                    .says(
                            "Air gets lighter when it is warmer, at a lower pressure or damper. The vapour takes a share of the"
                                    + " pressure; only the dry share brings oxygen.")
                    .tex("\\rho = \\frac{p - p_v}{R_d\\,T} + \\frac{p_v}{R_v\\,T}")
                    .input(
                            Slot.number(
                                            "pressure",
                                            "p",
                                            Quantity.PRESSURE,
                                            "pressure of the air, not reduced to sea level")
                                    .above(1e3, 300e3)
                                    .usual(
                                            60e3,
                                            110e3,
                                            "ambient air lies between 60 and 110 kPa; a reading outside is likely gauge"
                                                    + " or in another unit")
                                    .typical(99e3))
                    .input(
                            Slot.number(
                                            "temperature",
                                            "T",
                                            Quantity.TEMPERATURE,
                                            "temperature of the air")
                                    .range(233.15, 333.15)
                                    .usual(
                                            263.15,
                                            323.15,
                                            "the saturation pressure is good to 0.1 % between 0 and 50 °C, and over ice"
                                                    + " another one holds")
                                    .typical(298.15))
                    .input(
                            Slot.number(
                                            "relativeHumidity",
                                            "\\varphi",
                                            Quantity.PERCENTAGE,
                                            "vapour held over vapour that the air could hold")
                                    .range(0, 1)
                                    .typical(0.5))
                    .output("density", "\\rho", Quantity.DENSITY, "density of the moist air")
                    .output(
                            "vapourPressure",
                            "p_v",
                            Quantity.PRESSURE,
                            "share of the pressure that is vapour")
                    .output(
                            "dryPressure",
                            "p_d",
                            Quantity.PRESSURE,
                            "share of the pressure that is dry air")
                    .assumes(
                            "air and vapour are ideal gases that do not disturb each other",
                            "the vapour is over water, not ice")
                    .source(
                            "Buck, J. Applied Meteorology 20 (1981) 1527, revised 1996; from memory",
                            "checked against CIPM-2007, Picard and others, Metrologia 45 (2008) 149")
                    .by(HumidAir::work);

    private static final double DRY_AIR = GasMix.DRY_AIR.gasConstant();
    private static final double VAPOUR = GasMix.MOLAR_GAS_CONSTANT / Species.H2O.molarMass();

    /**
     * @param density kg/m³
     * @param vapourPressure Pa
     * @param dryPressure absolute pressure less the vapour's, Pa
     */
    public record State(double density, double vapourPressure, double dryPressure) {}

    private HumidAir() {}

    /**
     * Pressure of water vapour that is in balance with liquid water.
     *
     * @param temperature K, 233 to 333
     * @return Pa
     */
    public static double saturationPressure(double temperature) {
        double t = temperature - Units.ZERO_CELSIUS;
        return 611.21 * Math.exp((18.678 - t / 234.5) * (t / (257.14 + t)));
    }

    /**
     * @param pressure absolute, Pa
     * @param temperature K, 233 to 333
     * @param relativeHumidity 0 to 1
     * @throws RelationException if there would be more vapour than pressure
     */
    public static State of(double pressure, double temperature, double relativeHumidity) {
        double vapour = relativeHumidity * saturationPressure(temperature);
        double dry = pressure - vapour;
        if (dry < 0) {
            throw new RelationException(
                    "pressure",
                    "humid-air: pressure = "
                            + pressure
                            + " Pa is less than the vapour alone, "
                            + vapour
                            + " Pa; water boils there");
        }
        double density = (dry / DRY_AIR + vapour / VAPOUR) / temperature;
        return new State(density, vapour, dry);
    }

    private static void work(Working w) {
        double temperature = w.in("temperature");
        State state = of(w.in("pressure"), temperature, w.in("relativeHumidity"));
        w.step(
                "celsius",
                "t",
                Quantity.RATIO,
                "@temperature - " + Units.ZERO_CELSIUS,
                temperature - Units.ZERO_CELSIUS,
                "Buck's equation counts in degrees Celsius.");
        w.step(
                "saturation",
                "p_s",
                Quantity.PRESSURE,
                "611.21\\,\\exp\\left(\\left(18.678 - \\frac{@celsius}{234.5}\\right)\\frac{@celsius}{257.14 + @celsius}\\right)",
                saturationPressure(temperature),
                "The most vapour that air of this temperature holds.");
        w.out(
                "vapourPressure",
                "@relativeHumidity\\,@saturation",
                state.vapourPressure,
                "The humidity says which part of it is there.");
        w.out(
                "dryPressure",
                "@pressure - @vapourPressure",
                state.dryPressure,
                "The rest of the pressure is dry air.");
        w.step(
                "dryConstant",
                "R_d",
                Quantity.SPECIFIC_HEAT,
                "",
                DRY_AIR,
                "The gas constant of dry air.");
        w.step(
                "vapourConstant",
                "R_v",
                Quantity.SPECIFIC_HEAT,
                "",
                VAPOUR,
                "The gas constant of water vapour, which is lighter.");
        w.out(
                "density",
                "\\frac{@dryPressure}{@dryConstant\\,@temperature} + \\frac{@vapourPressure}{@vapourConstant\\,@temperature}",
                state.density,
                "Each gas adds its own density.");
    }
}

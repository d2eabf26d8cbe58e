// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Air–fuel ratio from lambda for a fuel of carbon and hydrogen.
 *
 * <p>Source: Heywood 1988, equation (3.6), from memory: {@code (A/F)s = 34.56 (4 + y)/(12.011 +
 * 1.008 y)} with y the hydrogen–carbon ratio. Fuels that bring oxygen along, such as alcohol, need
 * less air than this says: pure ethanol 9.0 (from memory).
 */
public final class MixtureRatio {
    public static final Relation RELATION =
            Relation.named("mixture-ratio", "From lambda to air–fuel ratio", "Engine and power")
                    .says(
                            "Lambda counts air in portions of just enough; the air–fuel ratio counts it in kilograms for each"
                                    + " kilogram of fuel. What just enough is depends on the fuel.")
                    .tex(
                            "A = \\lambda\\,A_s,\\quad A_s = \\frac{34.56\\,(4 + y)}{12.011 + 1.008\\,y}")
                    .input(
                            Slot.number(
                                            "lambda",
                                            "\\lambda",
                                            Quantity.RATIO,
                                            "air over the air that would just burn the fuel")
                                    .above(0, 12)
                                    .usual(
                                            0.6,
                                            3,
                                            "petrol runs at lambda 0.75 to 1.1, a diesel at load at 1.2 to 3; is this lambda, and"
                                                    + " not an air–fuel ratio?")
                                    .typical(0.85))
                    .input(
                            Slot.number(
                                            "hydrogenCarbonRatio",
                                            "y",
                                            Quantity.RATIO,
                                            "hydrogen atoms for each carbon atom of the fuel")
                                    .range(0, 4)
                                    .usual(
                                            1,
                                            4,
                                            "benzene has 1, petrol about 1.87, methane 4; fuels with oxygen in them do not"
                                                    + " fit this formula")
                                    .orElse(1.87))
                    .output(
                            "stoichiometricRatio",
                            "A_s",
                            Quantity.RATIO,
                            "air–fuel ratio at lambda 1")
                    .output("airFuelRatio", "A", Quantity.RATIO, "air–fuel ratio by mass")
                    .assumes("the fuel holds carbon and hydrogen only")
                    .source(
                            "Heywood, Internal Combustion Engine Fundamentals (1988), equation (3.6), from memory")
                    .by(MixtureRatio::work);

    private MixtureRatio() {}

    /**
     * @param hydrogenCarbonRatio atoms of hydrogen for each of carbon, at least 0
     * @return mass of air that just burns one mass of fuel
     */
    public static double stoichiometric(double hydrogenCarbonRatio) {
        return 34.56 * (4 + hydrogenCarbonRatio) / (12.011 + 1.008 * hydrogenCarbonRatio);
    }

    /**
     * @param lambda relative air–fuel ratio
     * @param hydrogenCarbonRatio atoms of hydrogen for each of carbon, at least 0
     * @return air–fuel ratio by mass
     */
    public static double of(double lambda, double hydrogenCarbonRatio) {
        return lambda * stoichiometric(hydrogenCarbonRatio);
    }

    private static void work(Working w) {
        double hydrogen = w.in("hydrogenCarbonRatio");
        w.out(
                "stoichiometricRatio",
                "\\frac{34.56\\,(4 + @hydrogenCarbonRatio)}{12.011 + 1.008 \\cdot @hydrogenCarbonRatio}",
                stoichiometric(hydrogen),
                "Air that burns each carbon to carbon dioxide and each two hydrogens to water, over the mass of the fuel.");
        w.out(
                "airFuelRatio",
                "@lambda \\cdot @stoichiometricRatio",
                of(w.in("lambda"), hydrogen),
                "Lambda times just enough.");
    }
}

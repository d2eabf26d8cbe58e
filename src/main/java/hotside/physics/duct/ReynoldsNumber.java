// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Inertia against viscosity in a round pipe: which friction factor holds.
 *
 * <p>Source: Reynolds (1883) in the form 4 ṁ / (π D µ), which needs no density. Viscosity by {@link
 * ExhaustGas#viscosity}, 4 % low at 1000 K.
 */
public final class ReynoldsNumber {
    public static final Relation RELATION =
            Relation.named("reynolds-number", "Smooth or swirling flow", "Exhaust flow")
                    .says(
                            "The Reynolds number tells whether gas slides along in layers or swirls. An exhaust swirls at any"
                                    + " load; hot gas has a lower number than cold at the same mass flow.")
                    .tex(
                            "\\mathrm{Re} = \\frac{\\rho v D}{\\mu} = \\frac{4\\,\\dot m}{\\pi D \\mu}")
                    .input(DuctSlots.massFlow())
                    .input(DuctSlots.diameter())
                    .input(DuctSlots.temperature())
                    .input(DuctSlots.lambda())
                    .output("viscosity", "\\mu", Quantity.VISCOSITY, "viscosity of the gas")
                    .output("reynolds", "\\mathrm{Re}", Quantity.RATIO, "Reynolds number")
                    .assumes("a round pipe that runs full", "burned petrol at the given lambda")
                    .source(
                            "Reynolds (1883); any fluid mechanics text",
                            "viscosity: US Standard Atmosphere 1976, eq. (51), and Heywood 1988, chapter 4")
                    .by(ReynoldsNumber::work);

    private ReynoldsNumber() {}

    /**
     * @param massFlow kg/s
     * @param diameter bore, m, above 0
     * @param viscosity Pa·s, above 0
     */
    public static double of(double massFlow, double diameter, double viscosity) {
        return 4 * massFlow / (Math.PI * diameter * viscosity);
    }

    private static void work(Working w) {
        double viscosity = ExhaustGas.at(w.in("lambda")).viscosity(w.in("temperature"));
        w.out("viscosity", "", viscosity, "From Sutherland's law for air and the mixture.");
        w.out(
                "reynolds",
                "\\frac{4\\,@massFlow}{\\pi\\,@diameter\\,@viscosity}",
                of(w.in("massFlow"), w.in("diameter"), viscosity),
                "Density and velocity need not be known: their product is the mass flow over the area.");
    }
}

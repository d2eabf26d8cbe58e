// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.physics.gas.DryAir;
import hotside.relation.Relation;
import hotside.relation.RelationException;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;

/**
 * Effectiveness of a cooler from its size and the two flows.
 *
 * <p>Source: ε–NTU method, Kays and London, Compact Heat Exchangers; Incropera, table 11.3; both
 * from memory. See {@link CoolerArrangement} for the laws. Conductance itself falls when the flows
 * fall, roughly with their power of 0.6 to 0.8: take it at the flow in question.
 */
public final class CoolerEffectiveness {
    public static final Relation RELATION =
            Relation.named(
                            "cooler-effectiveness",
                            "What a cooler's size is worth",
                            "Compressor and cooler")
                    .says(
                            "A core passes so much heat for each kelvin between its two sides. Against the flow that has to be"
                                    + " cooled this makes a number of transfer units; each further unit brings less than the one"
                                    + " before.")
                    .tex(
                            "\\mathrm{NTU} = \\frac{UA}{C_{min}},\\quad \\varepsilon = f(\\mathrm{NTU},\\ C_{min}/C_{max})")
                    .input(
                            Slot.number(
                                            "conductance",
                                            "UA",
                                            Quantity.CONDUCTANCE,
                                            "heat through the core for each kelvin between its sides")
                                    .range(0, 20e3)
                                    .usual(20, 5000, "charge coolers have about 20 to 5000 W/K")
                                    .typical(420))
                    .input(
                            Slot.number(
                                            "airFlow",
                                            "\\dot m_a",
                                            Quantity.MASS_FLOW,
                                            "flow of charge air")
                                    .above(0, 20)
                                    .usual(
                                            0.005,
                                            3,
                                            "engines on wheels take 5 g/s to 3 kg/s of air")
                                    .typical(0.25))
                    .input(
                            Slot.number(
                                            "coolantFlow",
                                            "\\dot m_k",
                                            Quantity.MASS_FLOW,
                                            "flow of what cools it: air or water")
                                    .above(0, 100)
                                    .usual(0.01, 20, "coolers get 10 g/s to 20 kg/s")
                                    .typical(0.7))
                    .input(
                            Slot.choice(
                                            "arrangement",
                                            "how the two flows meet",
                                            CoolerArrangement.words())
                                    .orElse(CoolerArrangement.CROSSFLOW.word()))
                    .input(
                            Slot.number(
                                            "coolantCp",
                                            "c_k",
                                            Quantity.SPECIFIC_HEAT,
                                            "specific heat of the coolant")
                                    .range(500, 6000)
                                    .usual(
                                            900,
                                            4300,
                                            "air has 1005 J/(kg·K), water 4180, water with glycol about 3500")
                                    .orElse(DryAir.CP))
                    .output("ntu", "\\mathrm{NTU}", Quantity.RATIO, "number of transfer units")
                    .output(
                            "effectiveness",
                            "\\varepsilon",
                            Quantity.RATIO,
                            "heat over the greatest heat that could pass")
                    .output(
                            "airEffectiveness",
                            "\\varepsilon_a",
                            Quantity.RATIO,
                            "share of the way to the coolant's inlet temperature that the charge goes")
                    .assumes(
                            "the conductance is that at these flows",
                            "constant specific heats; no water condenses; no heat to elsewhere")
                    .source(
                            "ε–NTU method: Kays and London, Compact Heat Exchangers, table 2-2 onward; Incropera, table"
                                    + " 11.3; both from memory")
                    .by(CoolerEffectiveness::work);

    private CoolerEffectiveness() {}

    private static void work(Working w) {
        double air =
                w.step(
                        "airCapacity",
                        "C_a",
                        Quantity.CONDUCTANCE,
                        "1005 \\cdot @airFlow",
                        DryAir.CP * w.in("airFlow"),
                        "Heat that the charge gives for each kelvin of cooling, in a second.");
        double coolant =
                w.step(
                        "coolantCapacity",
                        "C_k",
                        Quantity.CONDUCTANCE,
                        "@coolantCp \\cdot @coolantFlow",
                        w.in("coolantCp") * w.in("coolantFlow"),
                        "Heat that the coolant takes for each kelvin of warming, in a second.");
        double least = Math.min(air, coolant);
        double ratio =
                w.step(
                        "capacityRatio",
                        "C_r",
                        Quantity.RATIO,
                        air <= coolant
                                ? "\\frac{@airCapacity}{@coolantCapacity}"
                                : "\\frac{@coolantCapacity}{@airCapacity}",
                        least / Math.max(air, coolant),
                        "The smaller over the larger.");
        double ntu =
                w.out(
                        "ntu",
                        air <= coolant
                                ? "\\frac{@conductance}{@airCapacity}"
                                : "\\frac{@conductance}{@coolantCapacity}",
                        w.in("conductance") / least,
                        "Size of the core against the smaller of the two.");
        refuseEndless(ntu);
        CoolerArrangement arrangement = CoolerArrangement.of(w.word("arrangement"));
        double effectiveness =
                w.out(
                        "effectiveness",
                        arrangement.formula(),
                        arrangement.effectiveness(ntu, ratio),
                        arrangement.text());
        w.out(
                "airEffectiveness",
                air <= coolant
                        ? "@effectiveness"
                        : "@effectiveness \\cdot \\frac{@coolantCapacity}{@airCapacity}",
                effectiveness * least / air,
                air <= coolant
                        ? "The charge has the smaller capacity rate, so for it the two are the same."
                        : "The coolant has the smaller capacity rate: it warms up before the charge has cooled.");
        w.caution(
                coolant < air,
                "coolantFlow",
                () ->
                        "The coolant can take less heat than the charge brings: use airEffectiveness, not effectiveness, for the"
                                + " charge.");
    }

    private static void refuseEndless(double ntu) {
        if (ntu > CoolerArrangement.MOST_UNITS) {
            throw new RelationException(
                    "conductance",
                    "cooler-effectiveness: conductance makes "
                            + Numbers.significant(ntu, 4)
                            + " transfer units of the smaller flow; expected at most 1000, and real coolers have 0.5 to 5:"
                            + " look at the flows");
        }
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Burned gas of a hydrocarbon fuel in dry air. Immutable: its make-up is worked out once, its
 * properties at as many temperatures as wanted.
 *
 * <p>Source: Heywood, Internal Combustion Engine Fundamentals (1988), chapter 4: lean and
 * stoichiometric mixtures burn completely; rich ones share what oxygen there is by the water-gas
 * reaction, frozen at K = 3.5. Viscosity: air by Sutherland's law divided by 1 + 0.027/lambda, same
 * chapter. Method from memory. Heat capacities: {@link Species}.
 *
 * <p>Left out: unburned fuel and oxygen that leave together (1 to 2 % of a real exhaust); moisture
 * of the air, which adds up to 1 % to cp; dissociation, which counts above about 1800 K. Argon is
 * counted as nitrogen (3.773 per oxygen), which makes cp 0.65 % and the gas constant 0.4 % too
 * large, gamma 0.001 too small.
 */
public final class ExhaustGas {
    /** Hydrogen atoms per carbon atom of ordinary petrol (Heywood 1988). */
    public static final double PETROL = 1.87;

    /** What petrol leaves when neither fuel nor air is left over. */
    public static final ExhaustGas STOICHIOMETRIC = at(1, PETROL);

    public static final Relation RELATION =
            Relation.named("exhaust-gas", "What comes out of the engine", "Air and gas")
                    .says(
                            "Burned gas is mostly nitrogen, with carbon dioxide and water. It holds more heat per kilogram"
                                    + " than air, its gamma is lower, and a rich mixture makes it lighter.")
                    .tex(
                            "c_p = \\frac{1}{M}\\sum x_i\\,c_{p,i}(T),\\qquad \\gamma = \\frac{c_p}{c_p - R}")
                    .input(lambdaSlot())
                    .input(
                            Slot.number(
                                            "temperature",
                                            "T",
                                            Quantity.TEMPERATURE,
                                            "static temperature of the gas")
                                    .range(200, 3000)
                                    .usual(
                                            330,
                                            1800,
                                            "below about 325 K water condenses out of the gas; above about 1800 K"
                                                    + " molecules break up and cp grows by several percent")
                                    .typical(1100))
                    .input(
                            Slot.number(
                                            "hydrogenCarbonRatio",
                                            "y",
                                            Quantity.RATIO,
                                            "hydrogen atoms per carbon atom of the fuel")
                                    .range(0, 4)
                                    .usual(
                                            1.6,
                                            2.7,
                                            "petrol and diesel lie between 1.7 and 2.0, liquefied gas at 2.7; alcohols"
                                                    + " carry oxygen, which is not counted here")
                                    .orElse(PETROL))
                    .output("molarMass", "M", Quantity.MOLAR_MASS, "mean molar mass")
                    .output("gasConstant", "R", Quantity.SPECIFIC_HEAT, "specific gas constant")
                    .output(
                            "cp",
                            "c_p",
                            Quantity.SPECIFIC_HEAT,
                            "heat capacity at constant pressure")
                    .output("gamma", "\\gamma", Quantity.RATIO, "ratio of the heat capacities")
                    .output("viscosity", "\\mu", Quantity.VISCOSITY, "viscosity")
                    .assumes(
                            "complete combustion when lean; water-gas equilibrium frozen at K = 3.5 when rich",
                            "dry air, its argon counted as nitrogen: cp 0.65 % large",
                            "no dissociation: below about 1800 K")
                    .source(
                            "Heywood, Internal Combustion Engine Fundamentals (1988), chapter 4; from memory",
                            "NASA/TP-2002-211556 for the heat capacities, coefficients read in a public copy",
                            "US Standard Atmosphere 1976, eq. (51), for the viscosity of air")
                    .by(ExhaustGas::work);

    /** Nitrogen (and argon) molecules per oxygen molecule of air; Heywood 1988, section 3.2. */
    private static final double NITROGEN_PER_OXYGEN = 3.773;

    /** Water-gas equilibrium constant at which the exhaust freezes; Heywood 1988, chapter 4. */
    private static final double WATER_GAS = 3.5;

    private final double lambda;
    private final GasMix mix;

    private ExhaustGas(double lambda, GasMix mix) {
        this.lambda = lambda;
        this.mix = mix;
    }

    /**
     * The burned gas of a fuel CHy.
     *
     * @param lambda air supplied over air needed, above 0.5
     * @param hydrogenCarbonRatio y, hydrogen atoms per carbon atom, at least 0
     * @throws IllegalArgumentException if there is not oxygen enough to make carbon monoxide of all
     *     the carbon
     */
    public static ExhaustGas at(double lambda, double hydrogenCarbonRatio) {
        double oxygen = lambda * (1 + hydrogenCarbonRatio / 4);
        if (!(oxygen > 0.5)) {
            throw new IllegalArgumentException("too little air to burn: lambda = " + lambda);
        }
        double[] moles = new double[Species.values().length];
        moles[Species.N2.ordinal()] = NITROGEN_PER_OXYGEN * oxygen;
        if (lambda >= 1) {
            burnLean(moles, oxygen, hydrogenCarbonRatio);
        } else {
            burnRich(moles, oxygen, hydrogenCarbonRatio);
        }
        return new ExhaustGas(lambda, GasMix.ofMoles(moles));
    }

    /** The burned gas of petrol; lambda above 0.5. */
    public static ExhaustGas at(double lambda) {
        return at(lambda, PETROL);
    }

    private static void burnLean(double[] moles, double oxygen, double y) {
        moles[Species.CO2.ordinal()] = 1;
        moles[Species.H2O.ordinal()] = y / 2;
        moles[Species.O2.ordinal()] = Math.max(0, oxygen - 1 - y / 4);
    }

    /**
     * With x of CO2: (H2O · CO)/(CO2 · H2) = K is a quadratic in x, solved without cancellation.
     */
    private static void burnRich(double[] moles, double oxygen, double y) {
        double left = 2 * oxygen - 1;
        double b = WATER_GAS * (y / 2 - left) + left + 1;
        double x = 2 * left / (b + Math.sqrt(b * b + 4 * (WATER_GAS - 1) * left));
        moles[Species.CO2.ordinal()] = x;
        moles[Species.CO.ordinal()] = 1 - x;
        moles[Species.H2O.ordinal()] = Math.max(0, left - x);
        moles[Species.H2.ordinal()] = Math.max(0, y / 2 - left + x);
    }

    /**
     * Kilograms of air that burn a kilogram of fuel CHy exactly.
     *
     * <p>Source: Heywood 1988, eq. (3.6), from memory; dry air of 28.96 g/mol.
     *
     * @param hydrogenCarbonRatio y, at least 0
     */
    public static double stoichiometricAirFuelRatio(double hydrogenCarbonRatio) {
        return 34.56 * (4 + hydrogenCarbonRatio) / (12.011 + 1.008 * hydrogenCarbonRatio);
    }

    /** Air supplied over air needed. */
    public double lambda() {
        return lambda;
    }

    /** What it is made of. */
    public GasMix mix() {
        return mix;
    }

    /** Molar mass, kg/mol. */
    public double molarMass() {
        return mix.molarMass();
    }

    /** Specific gas constant, J/(kg·K). */
    public double gasConstant() {
        return mix.gasConstant();
    }

    /** Heat capacity at constant pressure, J/(kg·K); {@code temperature} in K, 200 to 3000. */
    public double cp(double temperature) {
        return mix.cp(temperature);
    }

    /** Ratio of the heat capacities; {@code temperature} in K, 200 to 3000. */
    public double gamma(double temperature) {
        return mix.gamma(temperature);
    }

    /** Specific enthalpy, J/kg, of which only differences matter; {@code temperature} in K. */
    public double enthalpy(double temperature) {
        return mix.enthalpy(temperature);
    }

    /** Speed of sound, m/s; static {@code temperature} in K. */
    public double speedOfSound(double temperature) {
        return mix.speedOfSound(temperature);
    }

    /** Density, kg/m³; absolute static {@code pressure} in Pa, static {@code temperature} in K. */
    public double density(double pressure, double temperature) {
        return mix.density(pressure, temperature);
    }

    /** Viscosity, Pa·s; {@code temperature} in K. */
    public double viscosity(double temperature) {
        return SutherlandViscosity.ofAir(temperature) / (1 + 0.027 / lambda);
    }

    /** The slot for lambda where the gas itself is the question. */
    private static Slot lambdaSlot() {
        return Slot.number("lambda", "\\lambda", Quantity.RATIO, "air supplied over air needed")
                .above(0.5, 20)
                .usual(
                        0.7,
                        3,
                        "below about 0.7 soot and unburned fuel appear, which are not counted; above about 3"
                                + " no engine but an idling diesel runs")
                .typical(1);
    }

    private static void work(Working w) {
        double temperature = w.in("temperature");
        ExhaustGas gas = at(w.in("lambda"), w.in("hydrogenCarbonRatio"));
        writeMakeUp(w, gas);
        w.out(
                "molarMass",
                "0.028013\\,@nitrogen + 0.031999\\,@oxygen + 0.044010\\,@carbonDioxide + 0.018015\\,@water"
                        + " + 0.028010\\,@carbonMonoxide + 0.002016\\,@hydrogen",
                gas.molarMass(),
                "Each part adds its molar mass by its share.");
        w.out(
                "gasConstant",
                "\\frac{8.31446}{@molarMass}",
                gas.gasConstant(),
                "The molar gas constant over the molar mass.");
        w.out(
                "cp",
                "\\frac{1}{@molarMass}\\sum x_i\\,c_{p,i}(@temperature)",
                gas.cp(temperature),
                "Each part's heat capacity at this temperature comes from its NASA polynomial.");
        w.out(
                "gamma",
                "\\frac{@cp}{@cp - @gasConstant}",
                gas.gamma(temperature),
                "For an ideal gas the two heat capacities differ by the gas constant.");
        w.step(
                "airViscosity",
                "\\mu_a",
                Quantity.VISCOSITY,
                "\\frac{1.458\\times10^{-6}\\,@temperature^{1.5}}{@temperature + 110.4}",
                SutherlandViscosity.ofAir(temperature),
                "Sutherland's law for air.");
        w.out(
                "viscosity",
                "\\frac{@airViscosity}{1 + 0.027/@lambda}",
                gas.viscosity(temperature),
                "Burned gas is a little less viscous than air.");
    }

    private static void writeMakeUp(Working w, ExhaustGas gas) {
        boolean rich = gas.lambda < 1;
        GasMix mix = gas.mix;
        share(
                w,
                "nitrogen",
                "x_{\\mathrm{N_2}}",
                mix.share(Species.N2),
                "Nitrogen passes through the engine unchanged.");
        share(
                w,
                "oxygen",
                "x_{\\mathrm{O_2}}",
                mix.share(Species.O2),
                "Oxygen is left over only from a lean mixture.");
        share(
                w,
                "carbonDioxide",
                "x_{\\mathrm{CO_2}}",
                mix.share(Species.CO2),
                rich
                        ? "Rich: oxygen is short, so not all carbon burns to carbon dioxide."
                        : "All carbon burns to carbon dioxide.");
        share(
                w,
                "water",
                "x_{\\mathrm{H_2O}}",
                mix.share(Species.H2O),
                rich
                        ? "Rich: the water-gas reaction, frozen at K = 3.5, settles what becomes water."
                        : "All hydrogen burns to water.");
        share(
                w,
                "carbonMonoxide",
                "x_{\\mathrm{CO}}",
                mix.share(Species.CO),
                "Carbon monoxide comes of too little air.");
        share(
                w,
                "hydrogen",
                "x_{\\mathrm{H_2}}",
                mix.share(Species.H2),
                "Hydrogen is left where oxygen is short.");
    }

    private static void share(Working w, String name, String symbol, double value, String text) {
        w.step(name, symbol, Quantity.RATIO, "", value, text);
    }
}

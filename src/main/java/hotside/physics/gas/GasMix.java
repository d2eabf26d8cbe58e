// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

import java.util.Map;

/**
 * A mixture of ideal gases that do not react: molar mass, heat capacity, enthalpy. Immutable; the
 * polynomials of its parts are added up once, so that a heat capacity costs one polynomial.
 *
 * <p>Source: NASA/TP-2002-211556, see {@link Species}. Good from 200 to 6000 K; dissociation, which
 * counts above about 1800 K, is left out.
 */
public final class GasMix {
    /** Molar gas constant, J/(mol·K): CODATA 2018, exact by definition. */
    public static final double MOLAR_GAS_CONSTANT = 8.31446261815324;

    /**
     * Dry air by mole: N2 0.78084, O2 0.20946, Ar 0.00934 as in the US Standard Atmosphere 1976,
     * and 0.0004 of CO2.
     */
    public static final GasMix DRY_AIR =
            of(
                    Map.of(
                            Species.N2, 0.78084,
                            Species.O2, 0.20946,
                            Species.AR, 0.00934,
                            Species.CO2, 0.0004));

    private final double[] shares;
    private final double molarMass;
    private final double[] cold;
    private final double[] hot;

    private GasMix(double[] shares) {
        this.shares = shares;
        this.cold = new double[8];
        this.hot = new double[8];
        double mass = 0;
        for (Species part : Species.values()) {
            double share = shares[part.ordinal()];
            if (share > 0) {
                mass += share * part.molarMass();
                add(share, part.cold(), cold);
                add(share, part.hot(), hot);
            }
        }
        this.molarMass = mass;
    }

    private static void add(double share, double[] from, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += share * from[i];
        }
    }

    /**
     * A mixture of these amounts.
     *
     * @param amounts moles of each part, at least 0, not all 0; they need not add up to 1
     */
    public static GasMix of(Map<Species, Double> amounts) {
        double[] moles = new double[Species.values().length];
        amounts.forEach((part, amount) -> moles[part.ordinal()] = amount);
        return ofMoles(moles);
    }

    /**
     * As {@link #of(Map)}, without its wrapping.
     *
     * @param moles in the order of {@link Species}; overwritten and kept
     */
    static GasMix ofMoles(double[] moles) {
        double sum = 0;
        for (double amount : moles) {
            if (!(amount >= 0)) {
                throw new IllegalArgumentException("an amount of gas is " + amount);
            }
            sum += amount;
        }
        if (!(sum > 0)) {
            throw new IllegalArgumentException("a mixture of nothing");
        }
        for (int i = 0; i < moles.length; i++) {
            moles[i] /= sum;
        }
        return new GasMix(moles);
    }

    /** Share of the molecules that are of this kind, 0 to 1. */
    public double share(Species part) {
        return shares[part.ordinal()];
    }

    /** Mean molar mass, kg/mol. */
    public double molarMass() {
        return molarMass;
    }

    /** Specific gas constant, J/(kg·K). */
    public double gasConstant() {
        return MOLAR_GAS_CONSTANT / molarMass;
    }

    /**
     * Heat capacity at constant pressure, J/(kg·K).
     *
     * @param temperature K, 200 to 6000
     */
    public double cp(double temperature) {
        return gasConstant() * cpOverR(temperature);
    }

    /**
     * Ratio of the heat capacities at constant pressure and at constant volume.
     *
     * @param temperature K, 200 to 6000
     */
    public double gamma(double temperature) {
        double cp = cpOverR(temperature);
        return cp / (cp - 1);
    }

    /**
     * Specific enthalpy, J/kg, counted from the elements at 298.15 K: only differences matter.
     *
     * @param temperature K, 200 to 6000
     */
    public double enthalpy(double temperature) {
        double t = temperature;
        double[] a = t < Species.SEAM ? cold : hot;
        double polynomial =
                t * (a[2] + t * (a[3] / 2 + t * (a[4] / 3 + t * (a[5] / 4 + t * a[6] / 5))));
        return gasConstant() * (-a[0] / t + a[1] * Math.log(t) + polynomial + a[7]);
    }

    /**
     * Speed of sound, m/s.
     *
     * @param temperature static temperature, K
     */
    public double speedOfSound(double temperature) {
        return Math.sqrt(gamma(temperature) * gasConstant() * temperature);
    }

    /**
     * Density, kg/m³.
     *
     * @param pressure absolute static pressure, Pa
     * @param temperature static temperature, K
     */
    public double density(double pressure, double temperature) {
        return pressure / (gasConstant() * temperature);
    }

    private double cpOverR(double t) {
        double[] a = t < Species.SEAM ? cold : hot;
        double over = 1 / t;
        return over * (a[1] + over * a[0]) + a[2] + t * (a[3] + t * (a[4] + t * (a[5] + t * a[6])));
    }
}

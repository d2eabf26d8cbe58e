// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gas;

/**
 * The gases that air and burned petrol are made of, with their heat capacity and enthalpy from the
 * nine-coefficient polynomials of NASA.
 *
 * <p>Source: McBride, Zehe and Gordon, NASA/TP-2002-211556 (2002), read in a public copy of the
 * coefficients. Good from 200 to 6000 K; the two ranges meet at 1000 K. The polynomials give
 * multiples of the molar gas constant; that of CODATA 2018 is used, which is 5.7 parts per million
 * below the one of 2002.
 */
public enum Species {
    N2(
            28.0134e-3,
            new double[] {
                2.210371497e+04, -3.818461820e+02, 6.082738360e+00, -8.530914410e-03,
                1.384646189e-05, -9.625793620e-09, 2.519705809e-12, 7.108460860e+02
            },
            new double[] {
                5.877124060e+05, -2.239249073e+03, 6.066949220e+00, -6.139685500e-04,
                1.491806679e-07, -1.923105485e-11, 1.061954386e-15, 1.283210415e+04
            }),
    O2(
            31.9988e-3,
            new double[] {
                -3.425563420e+04, 4.847000970e+02, 1.119010961e+00, 4.293889240e-03,
                -6.836300520e-07, -2.023372700e-09, 1.039040018e-12, -3.391454870e+03
            },
            new double[] {
                -1.037939022e+06, 2.344830282e+03, 1.819732036e+00, 1.267847582e-03,
                -2.188067988e-07, 2.053719572e-11, -8.193467050e-16, -1.689010929e+04
            }),
    CO2(
            44.0095e-3,
            new double[] {
                4.943650540e+04, -6.264116010e+02, 5.301725240e+00, 2.503813816e-03,
                -2.127308728e-07, -7.689988780e-10, 2.849677801e-13, -4.528198460e+04
            },
            new double[] {
                1.176962419e+05, -1.788791477e+03, 8.291523190e+00, -9.223156780e-05,
                4.863676880e-09, -1.891053312e-12, 6.330036590e-16, -3.908350590e+04
            }),
    H2O(
            18.01528e-3,
            new double[] {
                -3.947960830e+04, 5.755731020e+02, 9.317826530e-01, 7.222712860e-03,
                -7.342557370e-06, 4.955043490e-09, -1.336933246e-12, -3.303974310e+04
            },
            new double[] {
                1.034972096e+06, -2.412698562e+03, 4.646110780e+00, 2.291998307e-03,
                -6.836830480e-07, 9.426468930e-11, -4.822380530e-15, -1.384286509e+04
            }),
    CO(
            28.0101e-3,
            new double[] {
                1.489045326e+04, -2.922285939e+02, 5.724527170e+00, -8.176235030e-03,
                1.456903469e-05, -1.087746302e-08, 3.027941827e-12, -1.303131878e+04
            },
            new double[] {
                4.619197250e+05, -1.944704863e+03, 5.916714180e+00, -5.664282830e-04,
                1.398814540e-07, -1.787680361e-11, 9.620935570e-16, -2.466261084e+03
            }),
    H2(
            2.01588e-3,
            new double[] {
                4.078323210e+04, -8.009186040e+02, 8.214702010e+00, -1.269714457e-02,
                1.753605076e-05, -1.202860270e-08, 3.368093490e-12, 2.682484665e+03
            },
            new double[] {
                5.608128010e+05, -8.371504740e+02, 2.975364532e+00, 1.252249124e-03,
                -3.740716190e-07, 5.936625200e-11, -3.606994100e-15, 5.339824410e+03
            }),
    AR(
            39.948e-3,
            new double[] {0, 0, 2.5, 0, 0, 0, 0, -7.453750000e+02},
            new double[] {
                2.010538475e+01, -5.992661070e-02, 2.500069401e+00, -3.992141160e-08,
                1.205272140e-11, -1.819015576e-15, 1.078576636e-19, -7.449939610e+02
            });

    /** Temperature at which the two ranges of the polynomials meet, K. */
    static final double SEAM = 1000;

    private final double molarMass;
    private final double[] cold;
    private final double[] hot;

    Species(double molarMass, double[] cold, double[] hot) {
        this.molarMass = molarMass;
        this.cold = cold;
        this.hot = hot;
    }

    /** Molar mass, kg/mol. */
    public double molarMass() {
        return molarMass;
    }

    /** a1 to a7 and b1 below {@link #SEAM}; not to be changed. */
    double[] cold() {
        return cold;
    }

    /** a1 to a7 and b1 above {@link #SEAM}; not to be changed. */
    double[] hot() {
        return hot;
    }
}

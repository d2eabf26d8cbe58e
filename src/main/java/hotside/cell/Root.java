// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import java.util.function.DoubleUnaryOperator;

/**
 * Bracketed root of a function.
 *
 * <p>Source: Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of a
 * nonlinear function without using derivatives, Advances in Engineering Software 28 (1997): inverse
 * quadratic steps while they are sure to gain, halving otherwise. Ends whose values are known are
 * not asked for again, which matters where each value is itself found by a search.
 */
final class Root {
    private static final int MOST_STEPS = 200;

    private Root() {}

    /**
     * @param a one end
     * @param fa value there
     * @param b the other end
     * @param fb value there, of the other sign or zero
     * @param tolerance of the root, absolute
     */
    static double between(
            DoubleUnaryOperator f, double a, double fa, double b, double fb, double tolerance) {
        if (fa == 0 || fb == 0) {
            return fa == 0 ? a : b;
        }
        double x1 = b;
        double f1 = fb;
        double x2 = a;
        double f2 = fa;
        double share = f1 / (f1 - f2);
        for (int i = 0; i < MOST_STEPS; i++) {
            double least = tolerance / Math.abs(x2 - x1);
            if (!(least < 0.5)) {
                break;
            }
            share = Math.max(least, Math.min(1 - least, share));
            double x = x1 + share * (x2 - x1);
            double fx = f.applyAsDouble(x);
            if (fx == 0) {
                return x;
            }
            boolean sameSide = fx > 0 == f1 > 0;
            double x3 = sameSide ? x1 : x2;
            double f3 = sameSide ? f1 : f2;
            if (!sameSide) {
                x2 = x1;
                f2 = f1;
            }
            x1 = x;
            f1 = fx;
            share = step(x1, f1, x2, f2, x3, f3);
        }
        return Math.abs(f1) < Math.abs(f2) ? x1 : x2;
    }

    private static double step(double x1, double f1, double x2, double f2, double x3, double f3) {
        double place = (x1 - x2) / (x3 - x2);
        double height = (f1 - f2) / (f3 - f2);
        boolean sure = height * height < place && (1 - height) * (1 - height) < 1 - place;
        return sure
                ? f1 / (f2 - f1) * f3 / (f2 - f3)
                        + (x3 - x1) / (x2 - x1) * f1 / (f3 - f1) * f2 / (f3 - f2)
                : 0.5;
    }

    /**
     * The root of a rising function, sought from a guess outwards.
     *
     * @param guess where to begin, between the ends
     * @param stride first step away from it, above 0; the next ones grow fourfold
     * @param low where the function is not above zero
     * @param high where it is not below zero
     * @param tolerance of the root, absolute
     */
    static double rising(
            DoubleUnaryOperator f,
            double guess,
            double stride,
            double low,
            double high,
            double tolerance) {
        double at = guess;
        double value = f.applyAsDouble(at);
        boolean up = value < 0;
        for (double step = stride; ; step *= 4) {
            double next = up ? Math.min(high, at + step) : Math.max(low, at - step);
            double there = f.applyAsDouble(next);
            if (there >= 0 == up || next == (up ? high : low)) {
                return between(f, at, value, next, there, tolerance);
            }
            at = next;
            value = there;
        }
    }
}

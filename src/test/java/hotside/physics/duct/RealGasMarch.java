// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.physics.gas.ExhaustGas;

/**
 * Adiabatic flow with friction whose heat capacity follows the static temperature: the yardstick
 * for the closed form, of which it uses nothing.
 *
 * <p>Momentum dp + G dv = −f/(2D) · G v dx, energy h(T) + v²/2 = h(T0) and p = G R T/v give f dx/D
 * = −2 (R T/v² + R/cp − 1) dv/v, a plain integral over ln v.
 */
final class RealGasMarch {
    private static final int PANELS = 400;

    private final ExhaustGas gas;
    private final double totalTemperature;

    private RealGasMarch(ExhaustGas gas, double totalTemperature) {
        this.gas = gas;
        this.totalTemperature = totalTemperature;
    }

    /** Absolute static pressure at the inlet, Pa, of a pipe that ends at this pressure. */
    static double inletStatic(
            double flow, double t0, double outside, Pipe pipe, double factor, ExhaustGas gas) {
        RealGasMarch march = new RealGasMarch(gas, t0);
        double flux = flow / pipe.area();
        double sonic = march.sonic();
        double free = march.freeExit(flux, outside, sonic);
        double exit = Math.min(free, sonic);
        double inlet = march.inlet(exit, pipe.resistance(factor));
        return flux * gas.gasConstant() * march.temperature(inlet) / inlet;
    }

    private double temperature(double v) {
        double t = totalTemperature;
        double target = gas.enthalpy(totalTemperature) - v * v / 2;
        for (int i = 0; i < 20; i++) {
            t -= (gas.enthalpy(t) - target) / gas.cp(t);
        }
        return t;
    }

    /** Velocity at which R T/v² = 1 − R/cp. */
    private double sonic() {
        return bisect(1, 2000, v -> slope(v) > 0);
    }

    /** Velocity at which the exit has the pressure outside; may be beyond that of sound. */
    private double freeExit(double flux, double outside, double sonic) {
        return bisect(1e-3, sonic, v -> flux * gas.gasConstant() * temperature(v) / v > outside);
    }

    private double inlet(double exit, double resistance) {
        return bisect(1e-3 * exit, exit, v -> integral(v, exit) > resistance);
    }

    private double slope(double v) {
        double t = temperature(v);
        double r = gas.gasConstant();
        return 2 * (r * t / (v * v) + r / gas.cp(t) - 1);
    }

    /** Simpson's rule over ln v. */
    private double integral(double from, double to) {
        double h = Math.log(to / from) / PANELS;
        double sum = slope(from) + slope(to);
        for (int i = 1; i < PANELS; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * slope(from * Math.exp(i * h));
        }
        return sum * h / 3;
    }

    private interface Above {
        boolean test(double v);
    }

    /** Where a condition that holds for small values ends. */
    private static double bisect(double low, double high, Above holds) {
        double a = low;
        double b = high;
        for (int i = 0; i < 60; i++) {
            double middle = (a + b) / 2;
            if (holds.test(middle)) {
                a = middle;
            } else {
                b = middle;
            }
        }
        return (a + b) / 2;
    }
}

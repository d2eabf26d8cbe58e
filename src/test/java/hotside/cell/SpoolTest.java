// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SpoolTest {
    private static final Rig EIGHT = SomeRigs.named("eight-vented-bleed");

    /** 2700 rev/min: the turbine can make the boost asked for. */
    private static final double SPEED = 45;

    private static double time(Rig rig) {
        return Spool.time(rig, SPEED, 5e3, 50e3, 60).orElseThrow();
    }

    /** t = ∫ J ω dω / P: Simpson's rule instead of the integrator. */
    @Test
    void agreesWithTheIntegralOverSpeed() {
        double from = 2 * Math.PI * Spool.turboSpeed(EIGHT, 5e3);
        double to = 2 * Math.PI * Spool.turboSpeed(EIGHT, 50e3);
        int strips = 400;
        double sum = 0;
        for (int i = 0; i <= strips; i++) {
            double omega = from + (to - from) * i / strips;
            double power =
                    OperatingPoint.spinning(EIGHT, SPEED, omega / (2 * Math.PI)).shaftSurplus();
            int weight = i == 0 || i == strips ? 1 : i % 2 == 0 ? 2 : 4;
            sum += weight * EIGHT.turbo().rotorInertia() * omega / power;
        }
        double integral = sum * (to - from) / strips / 3;
        assertEquals(integral, time(EIGHT), 1e-6 * integral);
    }

    @Test
    void growsWithTheRotorsInertia() {
        double inertia = EIGHT.turbo().rotorInertia();
        double heavy = time(EIGHT.with("turbo.rotorInertia", 2 * inertia));
        assertEquals(2 * time(EIGHT), heavy, 1e-7 * heavy);
    }

    /** Less pressure behind the wheel leaves more expansion: quicker, never slower. */
    @Test
    void isShorterWithALargerPipe() {
        double small = time(EIGHT.with("exhaust.bore", 50e-3));
        double large = time(EIGHT.with("exhaust.bore", 100e-3));
        assertTrue(large < 0.9 * small, large + " s against " + small + " s");
    }

    @Test
    void doesNotReachWhatTheTurbineCannotMake() {
        assertTrue(Spool.time(EIGHT, 20, 1e3, 50e3, 60).isEmpty());
    }

    /** Where nothing accelerates the rotor, the point is the steady one. */
    @Test
    void atTheSteadySpeedThereIsNothingLeftOver() {
        OperatingPoint steady = OperatingPoint.solve(EIGHT, 80);
        OperatingPoint turning = OperatingPoint.spinning(EIGHT, 80, steady.turboSpeed());
        assertEquals(steady.boost(), turning.boost(), 1e-4);
        assertEquals(0, turning.shaftSurplus(), 1e-4 * turning.turbinePower());
        assertTrue(
                OperatingPoint.spinning(EIGHT, 80, 0.9 * steady.turboSpeed()).shaftSurplus() > 0);
    }

    /** Euler: work = coefficient × rim speed²; 84 mm at 60 000 rev/min has a rim of 263.9 m/s. */
    @Test
    void boostAndRotorSpeedBelongTogether() {
        double boost = Spool.manifoldPressure(EIGHT, 1000) - EIGHT.ambient().pressure();
        assertEquals(1000, Spool.turboSpeed(EIGHT, boost), 1e-6);
        double rim = Math.PI * 0.084 * 1000;
        double ideal = 0.72 * rim * rim * 0.74 / (1005 * 298.15);
        double ratio = Math.pow(1 + ideal, 3.5);
        assertEquals(ratio * 98.5e3 - 6e3 - 98.5e3, boost, 1e-3);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.compressor.CompressorOutlet;
import hotside.physics.turbine.RotorSpinUp;
import java.util.OptionalDouble;

/**
 * The rotor on its way: how boost and rotor speed belong together, and how long it takes.
 *
 * <p>Gas and gate follow the rotor at once; volumes that have to fill are left out, which makes the
 * times of small turbos with long charge pipes a little too short.
 */
public final class Spool {
    /** Half the width of the band of boost in which a regulating control moves its signal, Pa. */
    private static final double BAND = 2e3;

    private Spool() {}

    /** Manifold pressure that a rotor speed makes, absolute, Pa. */
    static double manifoldPressure(Rig rig, double turboSpeed) {
        Turbo turbo = rig.turbo();
        double ratio =
                CompressorOutlet.pressureRatio(
                        rig.ambient().temperature(),
                        turbo.work(turboSpeed),
                        turbo.compressorEfficiency());
        // A trial step of the integrator may overshoot what any wheel does.
        return Math.min(PointSearch.MOST, ratio) * rig.ambient().pressure()
                - rig.cooler().chargeLoss();
    }

    /** Rotor speed that a boost needs, turns per second; 0 where the wheel has nothing to do. */
    public static double turboSpeed(Rig rig, double boost) {
        double ambient = rig.ambient().pressure();
        double ratio = (ambient + boost + rig.cooler().chargeLoss()) / ambient;
        return rig.turbo()
                .speed(
                        CompressorOutlet.specificWork(
                                rig.ambient().temperature(),
                                Math.max(1, ratio),
                                rig.turbo().compressorEfficiency()));
    }

    /**
     * The share of a signal while boost moves: a regulating control goes from its least to all
     * within a narrow band about its target.
     */
    static double share(Rig rig, double boost) {
        Control control = rig.control();
        double least = control.openLoopShare();
        if (!control.regulates()) {
            return least;
        }
        double way = (boost - control.targetBoost() + BAND) / (2 * BAND);
        return least + (1 - least) * Math.max(0, Math.min(1, way));
    }

    /**
     * How long the rotor takes from one boost to another at a held engine speed and full load.
     *
     * @param speed of the crankshaft, turns per second
     * @param fromBoost Pa gauge; the rotor has to turn there already
     * @param toBoost Pa gauge
     * @param longest to wait, s
     * @return s; empty if it is not reached by then
     */
    public static OptionalDouble time(
            Rig rig, double speed, double fromBoost, double toBoost, double longest) {
        return RotorSpinUp.timeTo(
                rig.turbo().rotorInertia(),
                turboSpeed(rig, fromBoost),
                turboSpeed(rig, toBoost),
                longest,
                (time, turning) -> surplus(rig, speed, turning));
    }

    /**
     * Rotor speed a while later.
     *
     * @param from engine speed at the start, turns per second
     * @param rate at which the engine speeds up, turns per second each second
     * @param turning rotor speed at the start, turns per second
     * @param duration s
     */
    static double after(Rig rig, double from, double rate, double turning, double duration) {
        return RotorSpinUp.speedAfter(
                rig.turbo().rotorInertia(),
                turning,
                duration,
                // The integrator tries its first step freely: hold it to the time asked for.
                (time, now) -> surplus(rig, from + rate * Math.min(time, duration), now));
    }

    private static double surplus(Rig rig, double speed, double turning) {
        return OperatingPoint.spinning(rig, speed, turning).shaftSurplus();
    }
}

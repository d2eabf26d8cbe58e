// SPDX-License-Identifier: Apache-2.0
package hotside.statistics.reading;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * What a slow sensor reads of a step and of a ramp.
 *
 * <p>Source: response of a first-order lag, any text on measurement: the exact solution of τ dr/dt
 * = y − r for a truth that steps at time zero and then rises evenly.
 */
public final class SensorLag {
    public static final Relation RELATION =
            Relation.named("sensor-lag", "Error of a slow sensor", "Reading curves")
                    .says(
                            "A sensor with a time constant closes 63 % of a step in that time. On a ramp it trails"
                                    + " behind by the ramp's rate times the time constant, however long it runs.")
                    .tex("e = -\\Delta\\,e^{-t/\\tau} - r\\,\\tau\\,(1 - e^{-t/\\tau})")
                    .input(
                            Slot.number(
                                            "timeConstant",
                                            "\\tau",
                                            Quantity.TIME,
                                            "time constant of the sensor")
                                    .above(0, 1e5)
                                    .usual(
                                            0.001,
                                            30,
                                            "sensors of a test cell take from a millisecond to half a minute")
                                    .typical(0.4))
                    .input(
                            Slot.number(
                                            "elapsed",
                                            "t",
                                            Quantity.TIME,
                                            "time since the step, or since the ramp began")
                                    .range(0, 1e6)
                                    .usual(0, 600, "a pull is over within ten minutes")
                                    .typical(2))
                    .input(amount("step", "\\Delta", "sudden change of the truth", 0))
                    .input(amount("rate", "r", "even rise of the truth in one second", 25))
                    .output(
                            "reached",
                            "f",
                            Quantity.PERCENTAGE,
                            "share of a step that the reading has reached")
                    .output("error", "e", Quantity.AS_MEASURED, "reading less truth")
                    .output(
                            "settlingTime",
                            "t_s",
                            Quantity.TIME,
                            "time until 99 % of a step is reached")
                    .assumes("the sensor lags by one first-order stage", "before, all was steady")
                    .source("first-order lag; any text on measurement")
                    .by(SensorLag::work);

    private SensorLag() {}

    private static Slot amount(String name, String symbol, String meaning, double typical) {
        return Slot.number(name, symbol, Quantity.AS_MEASURED, meaning)
                .range(-1e9, 1e9)
                .usual(-1000, 1000, "in kPa, K or rev/min/s this lies within 1000; check the unit")
                .orElse(0)
                .typical(typical);
    }

    /**
     * Share of a step that the reading has reached.
     *
     * @param elapsed s, at least 0
     * @param timeConstant s, above 0
     */
    public static double reached(double elapsed, double timeConstant) {
        return -Math.expm1(-elapsed / timeConstant);
    }

    /**
     * Reading less truth.
     *
     * @param step sudden change of the truth at time zero
     * @param rate its even rise from then on, per second
     * @param elapsed s, at least 0
     * @param timeConstant s, above 0
     * @return in the unit of {@code step}
     */
    public static double error(double step, double rate, double elapsed, double timeConstant) {
        return -step * Math.exp(-elapsed / timeConstant)
                - rate * timeConstant * reached(elapsed, timeConstant);
    }

    private static void work(Working w) {
        double tau = w.in("timeConstant");
        double t = w.in("elapsed");
        w.out(
                "settlingTime",
                "@timeConstant \\cdot \\ln 100",
                tau * Math.log(100),
                "About four and a half time constants.");
        w.out(
                "reached",
                "1 - e^{-@elapsed/@timeConstant}",
                reached(t, tau),
                "How much of a step shows by now.");
        w.out(
                "error",
                "-@step \\cdot (1 - @reached) - @rate \\cdot @timeConstant \\cdot @reached",
                error(w.in("step"), w.in("rate"), t, tau),
                "What of the step is still missing, and how far the reading trails the ramp.");
    }
}

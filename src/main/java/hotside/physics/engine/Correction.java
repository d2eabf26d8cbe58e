// SPDX-License-Identifier: Apache-2.0
package hotside.physics.engine;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Numbers;
import hotside.unit.Quantity;
import hotside.unit.Units;

/** What the four weather corrections share: their slots, and what they do to a boosted engine. */
final class Correction {
    /** Departure from 1 beyond which the newer standards give no factor; from memory. */
    private static final double BAND = 0.07;

    private Correction() {}

    static Relation.Draft card(String id, String standard) {
        return Relation.named(id, "Power corrected by " + standard, "Engine and power")
                .output(
                        "factor",
                        "k",
                        Quantity.RATIO,
                        "corrected power over measured power, by " + standard)
                .assumes(
                        "a spark-ignition engine at full throttle",
                        "without boost: manifold pressure follows the air around");
    }

    static Slot pressure(
            String symbol, String meaning, double usualMin, double usualMax, String reason) {
        return Slot.number("drypressure", symbol, Quantity.PRESSURE, meaning)
                .range(30e3, 150e3)
                .usual(usualMin, usualMax, reason)
                .typical(97.5e3);
    }

    static Slot temperature(double usualMin, double usualMax, String reason) {
        return Slot.number(
                        "temperature",
                        "T",
                        Quantity.TEMPERATURE,
                        "temperature of the air that the engine takes in, before any compressor")
                .range(220, 340)
                .usual(usualMin, usualMax, reason)
                .typical(297.15);
    }

    static Slot boosted() {
        return Slot.choice(
                        "boosted", "is it boosted, with a control that holds boost?", "no", "yes")
                .orElse("no");
    }

    /**
     * Kelvin as these standards count them: degrees Celsius plus a round 273, so that their
     * reference temperature gives a factor of exactly 1.
     */
    static double roundKelvin(double temperature) {
        return temperature - Units.ZERO_CELSIUS + 273;
    }

    static double roundKelvinStep(Working w) {
        return w.step(
                "counted",
                "T'",
                Quantity.TEMPERATURE,
                "@temperature - " + Units.ZERO_CELSIUS + " + 273",
                roundKelvin(w.in("temperature")),
                "The formula counts kelvin as degrees Celsius plus a round 273.");
    }

    /** Warns where the factor leaves its band, and where boost is held by a controller. */
    static void cautions(Working w, double factor, String band, String whenBoosted) {
        w.caution(Math.abs(factor - 1) > BAND, "factor", () -> band);
        w.caution(
                w.word("boosted").equals("yes"),
                "boosted",
                () -> whenBoosted + " " + misuse(factor));
    }

    private static String misuse(double factor) {
        double percent = 100 * (factor - 1);
        return "The factor treats the engine as if manifold pressure followed the weather. A control that holds absolute"
                + " pressure has already made up for the air, and one that holds gauge boost for part of it; corrected"
                + " again, the power comes out up to "
                + Numbers.significant(Math.abs(percent), 2)
                + " % too "
                + (percent < 0 ? "low" : "high")
                + " here. Compare at equal manifold pressure, or give the measured power with the weather beside it.";
    }
}

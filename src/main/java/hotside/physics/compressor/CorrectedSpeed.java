// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import hotside.relation.Relation;
import hotside.relation.Slot;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Shaft speed as a compressor map counts it.
 *
 * <p>Source: similarity of compressible flow: the same Mach number of the wheel's tip; default
 * reference 298 K as in SAE J1826, from memory.
 */
public final class CorrectedSpeed {
    public static final Relation RELATION =
            Relation.named(
                            "corrected-speed",
                            "Speed as a compressor map counts it",
                            "Compressor and cooler")
                    .says(
                            "What counts for the flow in a wheel is its tip speed against the speed of sound. In warm air the"
                                    + " same turns are slower on the map. The true speed, not this one, bursts wheels.")
                    .tex("n_c = \\frac{n}{\\sqrt{T_1/T_{ref}}}")
                    .input(
                            Slot.number(
                                            "speed",
                                            "n",
                                            Quantity.ROTATION,
                                            "true speed of the turbo's shaft")
                                    .range(0, 10e3)
                                    .usual(
                                            0,
                                            5e3,
                                            "turbo shafts turn at up to about 300 000 rev/min; the smallest fastest")
                                    .typical(100_000 / 60.0))
                    .input(AirSlots.inletTemperature("inletTemperature", "T_1"))
                    .input(AirSlots.referenceTemperature())
                    .output("correctedSpeed", "n_c", Quantity.ROTATION, "speed at the reference")
                    .assumes("the same gas", "inlet temperature is the total one")
                    .source(
                            "similarity of compressible flow; reference of SAE J1826 (298 K), from memory")
                    .by(CorrectedSpeed::work);

    private CorrectedSpeed() {}

    /**
     * @param speed turns per second
     * @param inletTemperature K, above 0
     * @param referenceTemperature K
     * @return corrected speed, turns per second
     */
    public static double of(double speed, double inletTemperature, double referenceTemperature) {
        return speed / Math.sqrt(inletTemperature / referenceTemperature);
    }

    private static void work(Working w) {
        w.out(
                "correctedSpeed",
                "\\frac{@speed}{\\sqrt{@inletTemperature/@refTemperature}}",
                of(w.in("speed"), w.in("inletTemperature"), w.in("refTemperature")),
                "The speed of sound goes with the root of absolute temperature.");
    }
}

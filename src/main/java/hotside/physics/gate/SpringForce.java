// SPDX-License-Identifier: Apache-2.0
package hotside.physics.gate;

import hotside.relation.Relation;
import hotside.relation.Working;
import hotside.unit.Quantity;

/**
 * Force of the gate's spring, positive in the closing direction.
 *
 * <p>Source: Hooke's law. Linear; a coil gate spring keeps to it within a few percent until it
 * nears coil bind.
 */
public final class SpringForce {
    public static final Relation RELATION =
            Relation.named("spring-force", "Force of the gate spring", "Gate")
                    .says(
                            "The spring is squeezed when the gate is put together and holds the valve shut with its"
                                    + " preload. Each millimetre of lift squeezes it further.")
                    .tex("F = F_0 + k\\,x")
                    .input(GateSlots.preload())
                    .input(GateSlots.rate())
                    .input(GateSlots.lift())
                    .output(
                            "force",
                            "F",
                            Quantity.FORCE,
                            "force of the spring, which closes the valve")
                    .assumes(
                            "the spring is linear and does not bind",
                            "friction of the stem is left out; it shows as a boost that differs going up and down")
                    .source("Hooke's law; any mechanics text")
                    .by(SpringForce::work);

    private SpringForce() {}

    /**
     * @param preload force with the valve shut, N
     * @param rate N/m
     * @param lift from the seat, m; not the spring's length
     * @return force, N, positive closes
     */
    public static double of(double preload, double rate, double lift) {
        return preload + rate * lift;
    }

    private static void work(Working w) {
        double rate = w.in("rate");
        double lift = w.in("lift");
        w.step(
                "gained",
                "\\Delta F",
                Quantity.FORCE,
                "@rate\\,@lift",
                rate * lift,
                "What the lift adds: rate times the way gone, not times the spring's length.");
        w.out(
                "force",
                "@preload + @gained",
                of(w.in("preload"), rate, lift),
                "On top of the preload that was there with the valve shut.");
    }
}

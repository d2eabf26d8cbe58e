// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import hotside.physics.duct.DuctFlow;
import hotside.physics.duct.Pipe;
import hotside.physics.gas.ExhaustGas;
import java.util.Optional;

/**
 * The way out: a pipe from the turbine, and at its end the open air or a muffler. The gas comes to
 * rest where the pipe enters the muffler and is sped up again in the muffler's own bore.
 *
 * @param pipe with the losses of its bends and fittings
 * @param muffler as a short pipe of its own bore; empty for an open end
 */
public record Exhaust(Pipe pipe, Optional<Pipe> muffler) {

    /**
     * The state of the pipe while it carries this flow.
     *
     * @param massFlow kg/s
     * @param temperature total, K
     * @param outside absolute, Pa
     */
    DuctFlow.State carrying(double massFlow, double temperature, double outside, ExhaustGas gas) {
        double end = outside;
        if (muffler.isPresent()) {
            end = DuctFlow.of(massFlow, temperature, outside, muffler.get(), gas).inletTotal();
        }
        return DuctFlow.of(massFlow, temperature, end, pipe, gas);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import hotside.relation.Relation;
import hotside.relation.Working;

/**
 * The velocity head that leaves with the jet.
 *
 * <p>Source: a jet into still air gives up all its kinetic energy; any fluid mechanics text. A real
 * turbulent profile carries 3 to 6 % more than the mean velocity says. A wall tap does not feel
 * this loss: the pressure in the jet is the one outside.
 */
public final class ExitLoss {
    public static final Relation RELATION =
            Fitting.withFlow(
                            Relation.named("exit-loss", "What leaves with the jet", "Exhaust flow")
                                    .says(
                                            "The jet out of the tail takes its whole velocity head with it, whatever the end looks like. No tap"
                                                    + " shows it, but the total pressure upstream has paid for it.")
                                    .tex("\\Delta p_0 = \\tfrac12\\rho v^2,\\qquad K = 1")
                                    .input(DuctSlots.diameter()),
                            "at the exit")
                    .assumes("one velocity over the bore", "constant density: below Mach 0.3")
                    .source("a free jet loses its kinetic energy; any fluid mechanics text")
                    .by(ExitLoss::work);

    /** Velocity heads lost, whatever the end looks like. */
    public static final double COEFFICIENT = 1;

    private ExitLoss() {}

    private static void work(Working w) {
        w.out(
                "lossCoefficient",
                "1",
                COEFFICIENT,
                "All of the velocity head is lost to the air outside.");
        Fitting.writeDrop(w, COEFFICIENT, Fitting.writeHead(w, "diameter"));
    }
}

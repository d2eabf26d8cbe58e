// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.physics.gas.ExhaustGas;
import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ReynoldsNumberTest {
    @Test
    void agreesWithTheHandCalculation() {
        // air of 4.152198e-5 Pa s at 1000 K (US Standard Atmosphere 1976, eq. 51), less Heywood's
        // 1.027 for burned gas; 0.15 kg/s in 73 mm: Re = 4 · 0.15 / (pi · 0.073 · 4.043036e-5)
        double reynolds =
                ReynoldsNumber.RELATION.value(
                        "reynolds",
                        Values.of("massFlow", 0.15, "diameter", 0.073, "temperature", 1000.0));
        assertEquals(64_709, reynolds, 2);
    }

    @Property(seed = "20261125")
    void isDensityTimesVelocityTimesBoreOverViscosity(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 1) double flow,
            @ForAll @Scale(7) @DoubleRange(min = 0.02, max = 0.2) double bore) {
        PipeVelocity.State s = PipeVelocity.of(flow, 1e5, 900, bore, ExhaustGas.STOICHIOMETRIC);
        double viscosity = ExhaustGas.STOICHIOMETRIC.viscosity(900);
        double defined = s.density() * s.velocity() * bore / viscosity;
        assertEquals(defined, ReynoldsNumber.of(flow, bore, viscosity), 1e-12 * defined);
    }

    @Test
    void findsTheFlowOfAReynoldsNumber() {
        double flow =
                Solver.solveFor(
                        ReynoldsNumber.RELATION,
                        "massFlow",
                        "reynolds",
                        64_709,
                        Values.of("diameter", 0.073, "temperature", 1000.0));
        assertEquals(0.15, flow, 1e-5);
    }
}

// SPDX-License-Identifier: Apache-2.0
package hotside.physics.duct;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ExitLossTest {
    @Test
    void losesExactlyOneHead() {
        // any text: 1.0. Head of 0.15 kg/s, 73 mm, 950 K, 101 325 Pa worked by hand: 1732.1 Pa
        Values out = ExitLoss.RELATION.solve(ExitLoss.RELATION.typical());
        assertEquals(1, out.number("lossCoefficient"), 0.0);
        assertEquals(1732.1, out.number("drop"), 0.2);
    }

    @Property(seed = "20261125")
    void twiceTheFlowLeavesWithFourTheHeads(
            @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 0.2) double flow) {
        Values in = ExitLoss.RELATION.typical();
        double one = ExitLoss.RELATION.value("drop", in.with("massFlow", flow));
        double two = ExitLoss.RELATION.value("drop", in.with("massFlow", 2 * flow));
        assertEquals(4 * one, two, 1e-9 * two);
    }

    @Test
    void isWhatDuctFlowLeavesAtItsExit() {
        // an open pipe without wall: total pressure at the inlet less ambient is the exit's head,
        // and a quarter of Mach squared more
        DuctFlow.State s =
                DuctFlow.of(
                        0.15,
                        950,
                        101_325,
                        new Pipe(0.073, 0, 0, 0),
                        hotside.physics.gas.ExhaustGas.STOICHIOMETRIC);
        double head = ExitLoss.RELATION.value("drop", ExitLoss.RELATION.typical());
        assertEquals(head, s.inletTotal() - 101_325, 0.01 * head);
    }
}

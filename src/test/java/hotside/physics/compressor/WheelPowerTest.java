// SPDX-License-Identifier: Apache-2.0
package hotside.physics.compressor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.relation.Solver;
import hotside.relation.Values;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class WheelPowerTest {
    @Test
    void takesSomeThirtyKilowattsForThreeHundred() {
        // 0.34 kg/s at ratio 2, 298.15 K, efficiency 0.72: 0.34 × 91 146.411 J/kg by hand
        double work = CompressorOutlet.specificWork(298.15, 2, 0.72);
        assertEquals(30_989.78, WheelPower.of(0.34, work), 0.01);
    }

    @Test
    void findsTheFlowOfAPower() {
        double flow =
                Solver.solveFor(
                        WheelPower.RELATION,
                        "massFlow",
                        "power",
                        20e3,
                        Values.of("specificWork", 80e3));
        assertEquals(0.25, flow, 1e-10);
    }

    @Property(seed = "20261125")
    void goesWithFlowAndWork(@ForAll @DoubleRange(min = 0, max = 5) double flow) {
        assertEquals(6 * WheelPower.of(flow, 1e5), WheelPower.of(2 * flow, 3e5), 1e-6);
    }
}
